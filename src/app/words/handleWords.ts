/** What is said of a handle: its value with its unit, what it stands to, and the worst that is wrong with it. */
import type { Handle } from '../../model/handles.ts';
import type { Finding, Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import { SEVERITY_WORD } from './findingWords.ts';

/** The parts whose findings a handle answers for. */
const PARTS: Readonly<Record<string, readonly string[]>> = {
  pumpSetting: ['pump', 'motor', 'intake'],
  pitlessDepth: ['pitlessAdapter', 'buriedLine'],
  frostDepth: ['frost'],
  staticLevel: ['staticLevel'],
  pumpingLevel: ['pumpingLevel'],
  casingBottom: ['casing', 'grout'],
  casingHeight: ['cap', 'casing', 'seal'],
  wellBottom: ['well'],
};

/** "62 ft", "15 in above the ground", "4 ft above the pump". */
export function sayReading(handle: Handle, depth: Metres, solution: Solution, show: Show): string {
  if (!handle.known) return 'not known';
  if (handle.id === 'casingHeight') return `${show.small(-depth)} above the ground`;
  const above = heightAboveDischarge(handle, depth, solution);
  if (above !== null) return `${show.length(above)} above the pump`;
  if (depth < 0) return `${show.depth(-depth)} above the ground`;
  return handle.id === 'frostDepth' || handle.id === 'pitlessDepth' ? show.small(depth) : show.length(depth);
}

/** Null for a handle that is no height in the string. */
export function heightAboveDischarge(handle: Handle, depth: Metres, { values }: Solution): Metres | null {
  return handle.path.startsWith('string.') && values.pumpDischargeDepth !== null
    ? values.pumpDischargeDepth - depth
    : null;
}

/** Two measures at most: where it is, and the one distance that matters most for it. */
export function sayHandle(handle: Handle, depth: Metres, solution: Solution, show: Show): string {
  if (!handle.known) return `${handle.label}, not known.`;
  const relation = sayRelation(handle, solution, show);
  const wrong = findingsOf(handle, solution.findings);
  const worst = wrong[0];
  const said = worst === undefined ? '' : ` ${SEVERITY_WORD[worst.severity]}: ${worst.title}.`;
  return `${handle.label}, ${sayReading(handle, depth, solution, show)}.${relation}${said}`;
}

export function findingsOf(handle: Handle, findings: readonly Finding[]): readonly Finding[] {
  const kinds = PARTS[handle.id] ?? [];
  return findings.filter((finding) => kinds.includes(finding.partKind) || finding.part === handle.id);
}

function sayRelation({ id }: Handle, { values }: Solution, show: Show): string {
  if (id === 'pumpSetting' && values.clearanceToBottom !== null) {
    const clearance = values.clearanceToBottom;
    return ` Motor ${show.length(Math.abs(clearance))} ${clearance < 0 ? 'below' : 'above'} the bottom.`;
  }
  if (id === 'pumpingLevel' && values.submergence !== null) {
    const water = values.submergence;
    return ` ${show.length(Math.abs(water))} ${water < 0 ? 'below' : 'above'} the intake.`;
  }
  if ((id === 'pitlessDepth' || id === 'frostDepth') && values.pitlessBelowFrost !== null) {
    const below = values.pitlessBelowFrost;
    return ` Line ${show.small(Math.abs(below))} ${below < 0 ? 'above' : 'below'} the frost.`;
  }
  if (id === 'staticLevel' && values.drawdown !== null)
    return ` ${show.length(values.drawdown)} of drawdown while pumping.`;
  return '';
}
