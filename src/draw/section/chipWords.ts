/** What the chips beside the section say: a name, a depth, and a line or two on what follows from it. */
import { levelHandlesOf, type Handle } from '../../model/levelHandles.ts';
import type { Metres } from '../../model/si.ts';
import type { Finding, PartKind, Severity, Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import type { Note } from '../../words/labels.ts';
import { sayShort } from '../../words/sayJudgement.ts';
import { nameLevel } from '../../words/sayLevel.ts';
import type { ShortLanguage } from '../../words/words.ts';
import type { Ink } from '../theme.ts';
import { kindOfKey } from '../keys.ts';
import { hold } from '../type/width.ts';
import { CHIP_LOOKS, say } from './chipNotes.ts';
import type { SectionFrame } from './frame.ts';

export interface ChipWords {
  readonly handle: string;
  readonly name: string;
  /** For a narrow column. */
  readonly short: string;
  /** With its unit, or that it is not known. */
  readonly value: string;
  /** At most two lines. */
  readonly notes: readonly Note[];
  readonly depth: Metres;
  readonly known: boolean;
  /** Nobody said it: the value was put in. */
  readonly assumed: boolean;
  readonly locked: boolean;
  readonly ink: string;
  readonly weight: number;
  readonly priority: number;
  /** The worst finding about what it moves. */
  readonly finding: Finding | null;
}

/** Chips of the section: what is too small to be told apart here is dragged in the details. */
export function chipWords(solution: Solution, frame: SectionFrame): ChipWords[] {
  return levelHandlesOf(solution)
    .filter(({ id }) => CHIP_LOOKS[kindOfKey(id)] !== undefined)
    .map((handle) => chipOf(handle, solution, frame));
}

function chipOf(handle: Handle, solution: Solution, { words, show, unbroken, ink }: SectionFrame): ChipWords {
  const { chips } = words;
  const look = CHIP_LOOKS[kindOfKey(handle.id)];
  const finding = look === undefined ? null : worstAbout(look.parts, solution.findings);
  const notes = (look?.notes(solution, chips, unbroken) ?? []).filter((note) => note !== null);
  const shown =
    finding !== null && finding.severity !== 'note'
      ? [say(sayShort(finding, words, show).amount), ...notes.slice(0, 1)]
      : notes;
  const name = nameLevel(handle.label, words);
  return {
    handle: handle.id,
    name,
    short: (chips.names as Readonly<Record<string, string | undefined>>)[handle.label.variant] ?? name,
    value: handle.known ? hold((look?.value ?? defaultValue)(handle.depth, chips, show)) : chips.notKnown,
    notes: shown.slice(0, 2),
    depth: handle.known ? handle.depth : placeOfUnknown(handle.id, solution),
    known: handle.known,
    assumed: handle.assumed,
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

/** Over the ground is told as a height. */
function defaultValue(depth: Metres, { up }: ShortLanguage['chips'], show: Show): string {
  return depth < 0 ? up(show.depth(-depth)) : show.depth(depth);
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
