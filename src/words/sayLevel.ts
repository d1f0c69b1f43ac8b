/** What is said of a level: its name, its value with its unit, what it stands to, and the worst that is wrong with it. */
import type { Block, HandleName } from '../model/handleNames.ts';
import type { Handle } from '../model/handles.ts';
import type { Metres } from '../model/si.ts';
import type { Finding, Solution } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { sayShort } from './sayJudgement.ts';
import type { FirstWords, ShortLanguage } from './words.ts';

/** "Check valve 2" */
export function nameLevel({ variant, numbers }: HandleName, { levels }: ShortLanguage): string {
  // Name and numbers belong together by their types, which a look-up cannot follow.
  return (levels[variant] as (numbers: object) => string)(numbers);
}

/** The same within a sentence: "pump intake". */
export function nameLevelWithin(label: HandleName, short: ShortLanguage): string {
  const name = nameLevel(label, short);
  return name.charAt(0).toLowerCase() + name.slice(1);
}

/** Why a level stops or stands still, as the end of a sentence. */
export function sayBlock(block: Block, { long }: FirstWords): string {
  return long.levels.blocks[block];
}

/** "62 ft", "15 in above the ground", "4 ft above the pump". */
export function sayReading(
  handle: Handle,
  depth: Metres,
  solution: Solution,
  { long }: FirstWords,
  show: Show,
): string {
  const { levels } = long;
  if (!handle.known) return levels.notKnown;
  if (handle.id === 'casingHeight') return levels.aboveGround(show.small(-depth));
  const above = heightAboveDischarge(handle, depth, solution);
  if (above !== null) return levels.abovePump(show.length(above));
  if (depth < 0) return levels.aboveGround(show.depth(-depth));
  return handle.id === 'frostDepth' || handle.id === 'pitlessDepth' ? show.small(depth) : show.length(depth);
}

/** Null for a handle that is no height in the string. */
export function heightAboveDischarge(handle: Handle, depth: Metres, { values }: Solution): Metres | null {
  return handle.path.startsWith('string.') && values.pumpDischargeDepth !== null
    ? values.pumpDischargeDepth - depth
    : null;
}

/** Two measures at most: where it is, and the one distance that matters most for it. */
export function sayHandle(handle: Handle, depth: Metres, solution: Solution, words: FirstWords, show: Show): string {
  const { levels, findings } = words.long;
  const name = nameLevel(handle.label, words.short);
  if (!handle.known) return levels.heardUnknown(name);
  const worst = findingsOf(handle, solution.findings)[0];
  return levels.heard({
    name,
    reading: handle.assumed
      ? levels.assumed(sayReading(handle, depth, solution, words, show))
      : sayReading(handle, depth, solution, words, show),
    relation: sayRelation(handle, solution, words, show),
    wrong:
      worst === undefined
        ? ''
        : levels.wrong(findings.severities[worst.severity], sayShort(worst, words.short, show).title),
  });
}

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

export function findingsOf(handle: Handle, findings: readonly Finding[]): readonly Finding[] {
  const kinds = PARTS[handle.id] ?? [];
  return findings.filter((finding) => kinds.includes(finding.partKind) || finding.part === handle.id);
}

function sayRelation({ id }: Handle, { values }: Solution, { long }: FirstWords, show: Show): string {
  const { relations } = long.levels;
  if (id === 'pumpSetting' && values.clearanceToBottom !== null) {
    const clearance = values.clearanceToBottom;
    return (clearance < 0 ? relations.motorBelowBottom : relations.motorAboveBottom)(show.length(Math.abs(clearance)));
  }
  if (id === 'pumpingLevel' && values.submergence !== null) {
    const water = values.submergence;
    return (water < 0 ? relations.belowIntake : relations.aboveIntake)(show.length(Math.abs(water)));
  }
  if ((id === 'pitlessDepth' || id === 'frostDepth') && values.pitlessBelowFrost !== null) {
    const below = values.pitlessBelowFrost;
    return (below < 0 ? relations.lineAboveFrost : relations.lineBelowFrost)(show.small(Math.abs(below)));
  }
  if (id === 'staticLevel' && values.drawdown !== null) return relations.drawdown(show.length(values.drawdown));
  return '';
}
