/** The depth rail: ticks in the reader's units, the true extent of what a symbol stands for, brackets of the details. */
import type { Metres } from '../../model/si.ts';
import { Pen } from '../hatch/pen.ts';
import { depthTicks } from '../scale.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, line, path, polyline, rect, tenth, text, textWith } from '../shapes.ts';
import { LINE } from '../theme.ts';
import type { DepthSpan, FramePlace, ViewName } from '../view.ts';
import { arrow } from './beyond.ts';
import { isSeen, within, type SectionFrame } from './frame.ts';

const SIZE = 12;
/** For a figure, between the brackets and the ticks [px]. */
const ROOM = 27;

export function drawRail(frame: SectionFrame): Shape {
  const { left, top, bottom, ink, type, show, words: language } = frame;
  const ticks = depthTicks(frame, show.units, 54).filter(({ depth }) => depth > -0.01);
  const strokes = new Pen();
  for (const { depth, words } of ticks)
    strokes.stroke(left, frame.y(depth), left - (words === '' ? 4 : 7), frame.y(depth));
  const widest = Math.max(...ticks.map(({ words }) => type.width(words, SIZE)), 1);
  const size = tenth(Math.min(SIZE, (SIZE * ROOM) / widest));
  const figures = ticks
    .filter(({ words }) => words !== '')
    .map(({ depth, words }) => textWith(words, { x: left - 11, y: frame.y(depth) + 4 }, words));
  const head = isSeen(frame, 0) ? frame.y(0) : top;
  const unit = text('unit', left - 11, head - 13, language.section.unit[show.units], {
    size: 12,
    fill: ink.ink2,
    anchor: 'end',
  });
  return group('rail', [
    line('rail/line', left, top, left, bottom, inked(ink.ink2, LINE.narrow)),
    path('rail/ticks', strokes.path, inked(ink.ink2, LINE.narrow)),
    unit,
    group('figures', figures, { 'font-size': size, fill: ink.ink2, 'text-anchor': 'end' }),
  ]);
}

/** Where a symbol is drawn larger than its part, the rail shows the part's own length. */
export function drawTrueExtents(
  extents: readonly { key: string; top: Metres; bottom: Metres }[],
  frame: SectionFrame,
): Shape[] {
  return extents
    .filter(({ top, bottom }) => isSeen(frame, (top + bottom) / 2))
    .map(({ key, top, bottom }) => {
      const y = within(frame, frame.y(top));
      const tall = Math.max(1.5, within(frame, frame.y(bottom)) - y);
      return rect(`extent/${key}`, frame.left - 2, y, 4, tall, { fill: frame.ink.pump });
    });
}

/** Letters and brackets for what the details and a lens show. */
export function drawBrackets(
  details: readonly FramePlace[],
  lens: DepthSpan | undefined,
  frame: SectionFrame,
  besideRail: number,
): Shape[] {
  let lastEnd = -Infinity;
  const away = { above: 0, below: 0 };
  /** Where letters stand already. */
  const letters: number[] = [];
  const shapes = details.map(({ view, topDepth, bottomDepth }) => {
    const beyond = whereIs({ topDepth, bottomDepth }, frame);
    if (beyond !== null) return pointer(view, beyond, { x: besideRail, place: away[beyond]++ }, frame);
    const x = frame.y(topDepth) < lastEnd + 4 ? besideRail - 11 : besideRail;
    lastEnd = frame.y(bottomDepth);
    const [from, to] = endsOf({ topDepth, bottomDepth }, frame);
    const letter = Math.min((from + to) / 2 + 4.5, from + 12);
    letters.push(letter);
    return bracket({ view, x, from, to, letter, width: LINE.narrow }, frame);
  });
  if (lens === undefined) return shapes;
  const beyond = whereIs(lens, frame);
  if (beyond !== null) return [...shapes, pointer('C', beyond, { x: besideRail, place: away[beyond] }, frame)];
  // It may stand within what a detail shows: heavier, on the same line, its letter clear of the other's.
  const [from, to] = endsOf(lens, frame);
  const letter = clearOf(letters, (from + to) / 2 + 4.5);
  return [...shapes, bracket({ view: 'C', x: besideRail, from, to, letter, width: LINE.wide }, frame)];
}

/** Upper and lower end of a bracket, which is never so short that it could not be seen. */
function endsOf({ topDepth, bottomDepth }: DepthSpan, frame: SectionFrame): readonly [number, number] {
  const from = within(frame, frame.y(topDepth));
  const to = within(frame, frame.y(bottomDepth));
  const middle = (from + to) / 2;
  const half = Math.max(6, (to - from) / 2);
  return [middle - half, middle + half];
}

/** A letter takes this much of the line [px]. */
const LETTER = 14;

/** The nearest height at which no letter stands yet: below rather than above. */
function clearOf(letters: readonly number[], wanted: number): number {
  const isFree = (y: number): boolean => letters.every((each) => Math.abs(each - y) >= LETTER - 1e-6);
  if (isFree(wanted)) return wanted;
  let nearest = Infinity;
  for (const each of letters)
    for (const y of [each + LETTER, each - LETTER])
      if (isFree(y) && Math.abs(y - wanted) < Math.abs(nearest - wanted)) nearest = y;
  return nearest;
}

interface Bracket {
  readonly view: ViewName;
  readonly x: number;
  readonly from: number;
  readonly to: number;
  /** Baseline of its letter [px]. */
  readonly letter: number;
  readonly width: number;
}

function bracket({ view, x, from, to, letter, width }: Bracket, { ink }: SectionFrame): Shape {
  return group(`bracket/${view}`, [
    path(
      'bracket',
      polyline([
        [x + 5, from],
        [x, from],
        [x, to],
        [x + 5, to],
      ]),
      faced('none', ink.hair, width),
    ),
    text('letter', x - 3, letter, view, { size: 13, weight: 600, fill: ink.ink, anchor: 'end' }),
  ]);
}

/** Above or below the section's window; null where something of it is seen. */
export function whereIs({ topDepth, bottomDepth }: DepthSpan, frame: SectionFrame): 'above' | 'below' | null {
  if (frame.cut.top && bottomDepth <= frame.topDepth) return 'above';
  return frame.cut.bottom && topDepth >= frame.bottomDepth ? 'below' : null;
}

/**
 * Letter and arrow towards what a detail shows beyond the window.
 *
 * @param at  x of the arrow, and how many stand there already
 */
function pointer(
  view: ViewName,
  beyond: 'above' | 'below',
  { x, place }: { readonly x: number; readonly place: number },
  frame: SectionFrame,
): Shape {
  const y = beyond === 'above' ? frame.top - 9 - place * 16 : frame.bottom + 9 + place * 16;
  return group(`bracket/${view}`, [
    arrow(x, y, beyond, frame.ink.ink2),
    text('letter', x - 6, y + 4.5, view, { size: 13, weight: 600, fill: frame.ink.ink, anchor: 'end' }),
  ]);
}
