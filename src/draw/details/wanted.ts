/** Which parts want a label in a window, what it says, and where its leader touches the part. */
import type { Box } from '../hatch/clip.ts';
import type { Metres } from '../../model/si.ts';
import type { Severity, Solution } from '../../model/solution.ts';
import { show } from '../../model/units.ts';
import { sayShort } from '../../words/sayJudgement.ts';
import { isAnyAssumed, toldBy } from '../assumed.ts';
import { kindOfKey } from '../keys.ts';
import type { AssumedLines, Callout } from './callouts.ts';
import type { DetailContext, Fault } from './context.ts';
import type { DetailFrame } from './contract.ts';
import { BARB_UP } from '../well/nearParts.ts';
import { lookOfLabel, type Look } from './partLabels.ts';
import { SLIDING_HALF, type Placed } from '../well/stage.ts';

/** A part that wants a label, and where its leader touches it: shares of its box. */
export interface Wanted {
  readonly key: string;
  readonly across: number;
  readonly down: number;
  /** How it is said, where a detail says it in its own way. */
  readonly look?: Look;
}

/** Findings come worst first, so the first one of a part is its worst. */
export function worstByPart({ findings }: Solution): Map<string, Fault> {
  const worst = new Map<string, Fault>();
  findings.forEach((finding, i) => {
    if (!worst.has(finding.part)) worst.set(finding.part, { finding, number: i + 1 });
  });
  return worst;
}

const FAULT_WEIGHT: Readonly<Record<Severity, number>> = { danger: 8, warning: 5, note: 3 };

/** A label that waits for its part's place. */
export interface Waiting extends Callout {
  readonly want: Wanted;
}

export function calloutFor(want: Wanted, { solution, frame, pen, faults }: DetailContext): Waiting | null {
  const { key } = want;
  const look = want.look ?? lookOfLabel(key, kindOfKey(key));
  if (look === undefined) return null;
  const { words } = frame;
  const figures = show(frame.units);
  const { weight } = look;
  const part = solution.parts.find((each) => each.key === key);
  const { name, note, short, brief } = look.say(solution, words.partLabels, figures, { part, key, shown: pen });
  const fault = faults.get(key);
  const lit = isLit(solution, frame, key);
  const assumed = assumedLines(solution, key);
  // Written out, not spread: this runs for every label of every frame that is dragged.
  if (fault === undefined)
    return {
      key,
      want,
      x: 0,
      y: 0,
      name,
      short,
      note,
      brief,
      weight,
      severity: undefined,
      number: undefined,
      lit,
      assumed,
    };
  const { finding, number } = fault;
  const { severity } = finding;
  // A note leaves the label's own figure; what is wrong takes its place.
  const amount = severity === 'note' ? '' : sayShort(finding, words, figures).amount;
  const said = amount === '' ? note : amount;
  return {
    key,
    want,
    x: 0,
    y: 0,
    name,
    short,
    note: said,
    brief: said === note ? brief : undefined,
    weight: Math.max(weight, FAULT_WEIGHT[severity]),
    severity,
    number,
    lit,
    assumed: assumed === undefined || said === note ? assumed : { name: assumed.name, note: false },
  };
}

function assumedLines(solution: Solution, key: string): AssumedLines | undefined {
  const told = toldBy(key, kindOfKey(key));
  if (told === undefined) return undefined;
  return { name: told.unasked === true || isAnyAssumed(solution, told.name), note: isAnyAssumed(solution, told.note) };
}

/** `lit` are keys of parts or the number of a finding. */
function isLit({ findings }: Solution, { lit }: DetailFrame, key: string): boolean {
  return lit !== undefined && ([lit].flat().includes(key) || findings[Number(lit) - 1]?.part === key);
}

/** Could this part show between these depths? What is no part of the string is asked for when all is placed. */
export function isWithin({ parts, levels, values, bore }: Solution, key: string, top: Metres, bottom: Metres): boolean {
  const part = parts.find((each) => each.key === (key === SLIDING_HALF ? kindOfKey(key) : key));
  if (part !== undefined) return part.bottom > top && part.top < bottom;
  const level =
    key === 'staticLevel'
      ? levels.static
      : key === 'pumpingLevel'
        ? levels.pumping
        : key === 'frost'
          ? values.frostDepth
          : undefined;
  if (level !== undefined) return level !== null && level > top && level < bottom && (key !== 'frost' || level > 0);
  if (key.startsWith('inflow/')) return true;
  return key === 'grout' || bore.some((each) => each.kind === key && each.bottom > top && each.top < bottom);
}

/** Labels with the point where their leader touches the part. */
export function touching(
  waiting: readonly Waiting[],
  placed: readonly Placed[],
  box: Box,
  /** No leader's dot stands right of it [px]. */
  limit: number,
): Callout[] {
  const callouts: Callout[] = [];
  for (const each of waiting) {
    const part = placed.find(({ part: key, spots }) => key === each.key || spots?.[each.key] !== undefined);
    if (part === undefined) continue;
    const top = Math.max(part.top, box.top);
    const bottom = Math.min(part.bottom, box.bottom);
    if (bottom <= top) continue;
    const { across, down } = each.want;
    const spot = part.spots?.[each.key];
    const wanted = Math.min(Math.max(spot?.[1] ?? top + (bottom - top) * down, box.top + 8), box.bottom - 8);
    const y = part.kind === 'dropPipe' ? offStraps(wanted, placed) : wanted;
    const at = spot?.[0] ?? part.middleAt?.(y) ?? part.left + (part.right - part.left) * across;
    const x = Math.max(Math.min(at, limit), box.left + 4);
    const { key, name, short, note, brief, weight, severity, number, lit, assumed } = each;
    callouts.push({ key, x, y, name, short, note, brief, weight, severity, number, lit, assumed });
  }
  return callouts;
}

/** A dot on a tie, or on a fitting inside the pipe, would name these. */
function offStraps(y: number, placed: readonly Placed[]): number {
  for (const { part, kind, top, bottom } of placed) {
    if (kind !== 'tie' && kind !== 'insertFitting') continue;
    if (y <= top - DOT_ROOM || y >= bottom + DOT_ROOM) continue;
    // Of a joint whose barb points up, the pipe stands above.
    return BARB_UP.test(part) ? top - DOT_ROOM : bottom + DOT_ROOM;
  }
  return y;
}

/** Between a dot's middle and what it must not touch [px]. */
const DOT_ROOM = 5;

/** Every crack that was reported. */
export const inflowsOf = ({ facts }: Solution): Wanted[] =>
  (facts.well.inflows ?? []).map((_, i) => ({ key: `inflow/${i + 1}`, across: 0.7, down: 0.5 }));
