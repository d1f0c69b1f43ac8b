/** A tie: a strap round pipe and cable with its head on the cable's side; and a guard, the rubber ring that keeps the cable off the wall. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path, rect } from '../shapes.ts';
import { Pen as Line } from '../hatch/pen.ts';
import { block } from './outline.ts';
import type { Pen } from './pen.ts';
import type { Runs } from './runs.ts';
import { turned } from './turned.ts';

const LEAST_TIE_PX = 2.6;

export function drawTie(part: PlacedPart, pen: Pen, left: Metres, right: Metres): Shape {
  const middle = (pen.y(part.top) + pen.y(part.bottom)) / 2;
  const tall = Math.max(LEAST_TIE_PX, (part.bottom - part.top) * pen.down);
  const from = pen.x(left) - 1.4;
  const to = pen.x(right) + 1.4;
  const tone = pen.tones.tape;
  return group(part.key, [
    rect('strap', from, middle - tall / 2, to - from, tall, { fill: tone, rx: Math.min(1.5, tall / 3) }),
    path('head', block(from - 1.6, middle - tall * 0.75, from + 2, middle + tall * 0.75), { fill: tone }),
  ]);
}

export function drawGuard(part: PlacedPart, pen: Pen, offset: Metres): Shape {
  const half = Math.max(part.radius, 0.02) * pen.across;
  const top = pen.y(part.top);
  const bottom = Math.max(pen.y(part.bottom), top + 5);
  const bulge = (bottom - top) * 0.3;
  return group(part.key, [
    turned(
      'ring',
      {
        centre: pen.x(offset),
        profile: [
          [top, half * 0.8],
          [top + bulge, half],
          [bottom - bulge, half],
          [bottom, half * 0.8],
        ],
      },
      pen.tones.rubber,
    ),
  ]);
}

/**
 * From afar, all in one line: from the pump up, as they are numbered, so that the ones kept stay while the top moves.
 *
 * @param gap  two that are drawn are no closer [px]
 */
export function closedTies(ties: readonly PlacedPart[], pen: Pen, runs: Runs, gap: number): Shape[] {
  const bands = new Line();
  let last = Infinity;
  for (const { top, bottom, radius } of ties) {
    const middle = (top + bottom) / 2;
    const y = pen.y(middle);
    if (last - y < gap) continue;
    last = y;
    if (middle < pen.top || middle > pen.bottom) continue;
    const x = runs.pipe(middle);
    const half = Math.max(4, radius * pen.across) + 1;
    bands.stroke(x - half - 5, y, x + half, y);
  }
  return bands.path === '' ? [] : [path('ties', bands.path, inked(pen.tones.tape, 2.4))];
}
