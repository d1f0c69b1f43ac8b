/** Where on the drop pipe nothing sits yet: a fix that puts a part there hits no valve, splice, arrestor, joint or tie. */
import type { Metres } from '../si.ts';
import type { PartKind, Solved } from '../solution.ts';
import { SPLICE, TIE } from '../string/lengths.ts';
import { inches, readQuantity } from '../units.ts';
import { exceeds } from './grace.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';

interface Span {
  readonly from: Metres;
  readonly to: Metres;
}

/** What sits in the pipe or round it and cannot give way. */
const FIXED: readonly PartKind[] = ['nipple', 'checkValve', 'insertFitting', 'clamp', 'coupling'];

/** A tie above and one below each splice. */
const SPLICE_WITH_TIES = SPLICE + 2 * (inches(2) + TIE / 2);

/**
 * The first of some heights at which a part hits nothing; one that only a tie shares where there is no better.
 *
 * @param heights  above the pump's discharge, as one would type them
 * @param length   of the part, centred on its height [m]
 * @param kind     what is put there: it does not stand in its own way
 * @returns  null where every height is taken
 */
export function freeHeight(
  solved: Solved,
  kind: 'torqueArrestor' | 'splice',
  length: Metres,
  heights: readonly string[],
): { readonly text: string; readonly height: Metres } | null {
  const taken = kind === 'splice' ? [...fixed(solved), ...arrestor(solved)] : [...fixed(solved), ...splices(solved)];
  const ties = regularTies(solved);
  const places = heights.flatMap((text) => {
    const read = readQuantity(text, 'length');
    return read.ok ? [{ text, height: read.si }] : [];
  });
  const clearOf = (spans: readonly Span[]) =>
    places.find(({ height }) => !spans.some((span) => overlap(span, around(height, length))));
  return clearOf([...taken, ...ties]) ?? clearOf(taken) ?? null;
}

/** The first of some spacings, as typed, whose ties fall on no valve and none of its joints; null where each does. */
export function freeSpacing(
  solved: Solved,
  spacings: readonly string[],
): { readonly text: string; readonly spacing: Metres } | null {
  const spans = fixed(solved);
  for (const text of spacings) {
    const read = readQuantity(text, 'length');
    if (!read.ok) continue;
    const spacing = read.si;
    // The lowest tie is one spacing above the pump.
    const nearest = (span: Span) => Math.max(Math.round(middle(span) / spacing), 1) * spacing;
    const hit = spans.some((span) => overlap(span, around(nearest(span), TIE)));
    if (!hit) return { text, spacing };
  }
  return null;
}

function fixed(solved: Solved): Span[] {
  return solved.parts.filter(({ kind }) => FIXED.includes(kind)).map((part) => heightsOf(solved, part));
}

function arrestor(solved: Solved): Span[] {
  return solved.parts.filter(({ kind }) => kind === 'torqueArrestor').map((part) => heightsOf(solved, part));
}

function splices({ facts }: Solved): Span[] {
  return facts.string.splices.map((height) => around(height, SPLICE_WITH_TIES));
}

/** Those at the planned spacing, as far up as the parts near the pump reach. */
function regularTies({ facts }: Solved): Span[] {
  const { ties } = facts.string;
  return Array.from({ length: Math.min(Math.ceil(NEAR_PUMP / ties), 20) }, (_, i) => around((i + 1) * ties, TIE));
}

const NEAR_PUMP = inches(72);

function heightsOf({ facts }: Solved, { top, bottom }: { readonly top: Metres; readonly bottom: Metres }): Span {
  const discharge = dischargeDepth(facts.pump);
  return { from: discharge - bottom, to: discharge - top };
}

function around(height: Metres, length: Metres): Span {
  return { from: height - length / 2, to: height + length / 2 };
}

function middle({ from, to }: Span): Metres {
  return (from + to) / 2;
}

function overlap(one: Span, other: Span): boolean {
  return exceeds(Math.min(one.to, other.to) - Math.max(one.from, other.from), 'length');
}
