/** The depth rail inside a detail: a quiet strip with its own ticks. */
import { decimals, feet } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { ShortLanguage } from '../../words/words.ts';
import { Pen as LinePen } from '../hatch/pen.ts';
import type { Shape } from '../scene.ts';
import { slack } from '../looks.ts';
import { group, path, rect, text, textWith } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import type { Measure } from '../type/measure.ts';
import { stroke, tenth } from '../parts/outline.ts';
import type { Pen } from '../parts/pen.ts';

export const RAIL_PX = 30;

const STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10];
const LEAST_PX = 26;

export interface RailPlace {
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly units: 'us' | 'metric';
  readonly words: ShortLanguage;
  readonly type: Measure;
  /** Its figures are heights over depth nought, not depths below it. */
  readonly upward?: boolean;
}

const SIZE = 11;
/** For a figure, right of the frame's edge [px]. */
const ROOM = RAIL_PX - 9;
/** Ticks without a figure are no closer [px]. */
const LEAST_MINOR_PX = 12;

/** Width of the longest figure as far as this depth: a deep well has no room for tenths. */
function widest(depth: number, step: number, type: Measure): number {
  const whole = decimals(Math.floor(Math.abs(depth)), 0);
  return type.width(`${depth < 0 ? '\u2212' : ''}${whole}${step < 1 ? '.8' : ''}`, SIZE);
}

const unitOf = (units: RailPlace['units']): Metres => (units === 'us' ? feet(1) : 1);

/** Width of the longest figure in a window. */
function widestIn({ top, bottom }: Pen, unit: Metres, step: number, type: Measure): number {
  return Math.max(widest(top / unit, step, type), widest(bottom / unit, step, type));
}

/**
 * From one named tick to the next, in the reader's unit.
 * @param before  the step that was shown last: it stays while it has nearly room, and a finer one is taken with some to spare
 */
export function tickStep(
  pen: Pen,
  { units, type }: Pick<RailPlace, 'units' | 'type'>,
  before: number | undefined,
): number {
  const unit = unitOf(units);
  const room = (each: number): number =>
    LEAST_PX * (before === undefined || each > before ? 1 : slack(each === before));
  return STEPS.find((each) => each * unit * pen.down >= room(each) && widestIn(pen, unit, each, type) <= ROOM) ?? 10;
}

/** Ticks in the reader's unit; every tick is a true depth, so that a ruler laid on the sheet agrees. */
export function drawRail(
  pen: Pen,
  ink: Ink,
  { x, y, height, units, words: { section }, type, upward = false }: RailPlace,
  step: number,
): Shape {
  const unit = unitOf(units);
  const size = tenth(Math.min(SIZE, (SIZE * ROOM) / widestIn(pen, unit, step, type)));
  const texts: Shape[] = [];
  const ticks = new LinePen();
  const first = Math.ceil(pen.top / unit / step);
  const last = Math.floor(pen.bottom / unit / step);
  const apart = step * unit * pen.down;
  const parts = [10, 5, 2].find((each) => apart / each >= LEAST_MINOR_PX) ?? 1;
  const isShown = (at: number): boolean => at >= y + 24 && at < y + height;
  for (let n = first - 1; n <= last; n++) {
    const at = pen.y(n * step * unit);
    for (let i = 1; i < parts; i++) {
      const minor = at + (apart * i) / parts;
      if (isShown(minor)) ticks.stroke(x + RAIL_PX - 3, minor, x + RAIL_PX, minor);
    }
    if (n < first || !isShown(at) || at > y + height - 6) continue;
    const words = decimals((upward ? 0 - n : n) * step, 1);
    ticks.stroke(x + RAIL_PX - 5, at, x + RAIL_PX, at);
    texts.push(textWith(`at ${words}`, { x: x + RAIL_PX - 8, y: at + 4 }, words.replace('-', '\u2212')));
  }
  return group('rail', [
    rect('strip', x, y, RAIL_PX, height, { fill: ink.paper }),
    path('edge', stroke(x + RAIL_PX, y, x + RAIL_PX, y + height), { stroke: ink.hair }),
    path('ticks', ticks.path, { stroke: ink.ink }),
    group('figures', texts, { 'font-size': size, fill: ink.ink2, 'text-anchor': 'end' }),
    text('unit', x + 5, y + 13, section.unit[units], { size: 11, fill: ink.ink2 }),
  ]);
}
