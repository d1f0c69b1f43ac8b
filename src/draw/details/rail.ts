/** The depth rail inside a detail: a quiet strip with its own ticks. */
import { feet, show } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { group, path, rect, text } from '../shapes.ts';
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
  readonly type: Measure;
}

/** Width of the longest figure down to this depth: a deep well has no room for tenths. */
const widest = (depth: number, step: number, type: Measure): number =>
  type.width(step < 1 ? `${Math.floor(depth)}.8` : String(Math.floor(depth)), 11);

/** Ticks in the reader's unit; every tick is a true depth, so that a ruler laid on the sheet agrees. */
export function drawRail(pen: Pen, ink: Ink, { x, y, height, units, type }: RailPlace): Shape {
  const unit: Metres = units === 'us' ? feet(1) : 1;
  const step =
    STEPS.find((each) => each * unit * pen.down >= LEAST_PX && widest(pen.bottom / unit, each, type) <= RAIL_PX - 9) ??
    10;
  const texts: Shape[] = [];
  let ticks = '';
  const first = Math.ceil(pen.top / unit / step);
  const last = Math.floor(pen.bottom / unit / step);
  for (let n = first; n <= last; n++) {
    const at = pen.y(n * step * unit);
    if (at < y + 24 || at > y + height - 5) continue;
    const words = String(Math.round(n * step * 10) / 10);
    ticks += stroke(x + RAIL_PX - 5, at, x + RAIL_PX, at);
    texts.push({
      key: `at ${words}`,
      tag: 'text',
      attrs: { x: tenth(x + RAIL_PX - 8), y: tenth(at + 4) },
      text: words.replace('-', '\u2212'),
    });
    const half = at + (step * unit * pen.down) / 2;
    if (half < y + height) ticks += stroke(x + RAIL_PX - 3, half, x + RAIL_PX, half);
  }
  const unitWord = show(units)
    .depth(0)
    .replace(/^[\d.,\s\u00a0]+/, '');
  return group('rail', [
    rect('strip', x, y, RAIL_PX, height, { fill: ink.paper }),
    path('edge', stroke(x + RAIL_PX, y, x + RAIL_PX, y + height), { stroke: ink.hair }),
    path('ticks', ticks, { stroke: ink.ink }),
    group('figures', texts, { 'font-size': 11, fill: ink.ink2, 'text-anchor': 'end' }),
    text('unit', x + 5, y + 13, unitWord, { size: 11, fill: ink.ink2 }),
  ]);
}
