/** What the chips beside the section say: a name, a depth, and a line or two on what follows from it. */
import { handlesOf, type Handle } from '../../model/handles.ts';
import type { Metres } from '../../model/si.ts';
import type { Finding, PartKind, Severity, Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import type { Ink } from '../theme.ts';
import { kindOfKey } from '../keys.ts';
import { hold } from '../type/width.ts';
import { CHIP_LOOKS, say, type Note } from './chipNotes.ts';

export interface ChipWords {
  readonly handle: string;
  readonly name: string;
  /** For a narrow column. */
  readonly short: string;
  /** With its unit; "?" when not known. */
  readonly value: string;
  /** At most two lines. */
  readonly notes: readonly Note[];
  readonly depth: Metres;
  readonly known: boolean;
  readonly locked: boolean;
  readonly ink: string;
  readonly weight: number;
  readonly priority: number;
  /** The worst finding about what it moves. */
  readonly finding: Finding | null;
}

/** Chips of the section: what is too small to be told apart here is dragged in the details. */
export function chipWords(solution: Solution, show: Show, ink: Ink): ChipWords[] {
  return handlesOf(solution)
    .filter(({ id }) => CHIP_LOOKS[kindOfKey(id)] !== undefined)
    .map((handle) => chipOf(handle, solution, show, ink));
}

function chipOf(handle: Handle, solution: Solution, show: Show, ink: Ink): ChipWords {
  const look = CHIP_LOOKS[kindOfKey(handle.id)];
  const finding = look === undefined ? null : worstAbout(look.parts, solution.findings);
  const notes = (look?.notes(solution, show) ?? []).filter((note) => note !== null);
  const shown = finding !== null && finding.severity !== 'note' ? [say(finding.amount), ...notes.slice(0, 1)] : notes;
  return {
    handle: handle.id,
    name: handle.label,
    short: SHORT[handle.label] ?? SHORT[kindOfKey(handle.id)] ?? handle.label,
    value: handle.known ? hold((look?.value ?? defaultValue)(handle.depth, show)) : '?',
    notes: shown.slice(0, 2),
    depth: handle.known ? handle.depth : placeOfUnknown(handle.id, solution),
    known: handle.known,
    locked: handle.locked !== null,
    ink: inkOf(handle, ink),
    weight: look?.weight ?? 2,
    priority: look?.weight ?? 2,
    finding,
  };
}

/** What nobody knows has no depth: its chip waits where such a level often is, dashed and without a line. */
function placeOfUnknown(handle: string, { facts, levels }: Solution): Metres {
  const { bottom } = facts.well;
  if (handle === 'staticLevel') return bottom * 0.3;
  if (handle === 'pumpingLevel')
    return levels.static === null ? bottom * 0.45 : (levels.static + facts.pump.setting) / 2;
  if (handle === 'frostDepth') return 0;
  return bottom * 0.6;
}

/** By the handle's name where that tells more, else by what it moves. */
const SHORT: Readonly<Record<string, string | undefined>> = {
  casingHeight: 'Top',
  frostDepth: 'Frost',
  pitlessDepth: 'Pitless',
  staticLevel: 'Static',
  pumpingLevel: 'Pumping',
  pumpSetting: 'Pump',
  wellBottom: 'Bottom',
  'Liner bottom': 'Liner',
  casingBottom: 'Casing',
  screenTop: 'Scr. top',
  screenBottom: 'Scr. end',
};

/** Over the ground is told as a height. */
function defaultValue(depth: Metres, show: Show): string {
  return depth < 0 ? `${show.depth(-depth)} up` : show.depth(depth);
}

function inkOf(handle: Handle, ink: Ink): string {
  const inks: Readonly<Record<Handle['ink'], string>> = {
    static: ink.static,
    pumping: ink.pumping,
    frost: ink.frost,
    pump: ink.pump,
    casing: ink.casing,
    ground: ink.casing,
    pitless: ink.dropPipe,
  };
  return inks[handle.ink];
}

const RANK: Readonly<Record<Severity, number>> = { danger: 3, warning: 2, note: 1 };

function worstAbout(parts: readonly PartKind[], findings: readonly Finding[]): Finding | null {
  let worst: Finding | null = null;
  for (const finding of findings) {
    if (!parts.includes(finding.partKind) || finding.quantity !== 'length') continue;
    if (worst === null || RANK[finding.severity] > RANK[worst.severity]) worst = finding;
  }
  return worst;
}
