/** The drop pipe cut along its middle: two walls and the bore, along its centre line down the well. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path, roundLine, type Point } from '../shapes.ts';
import { Pen as Line } from '../hatch/pen.ts';
import { block, curveDown } from './outline.ts';
import { pxText } from '../tenths.ts';
import type { Pen } from './pen.ts';
import { runPoints, type Runs } from './runs.ts';
import type { StringAxis } from './stringAxis.ts';
import type { Cut, Ramp } from '../theme.ts';

/** Pieces of curve that follow the drift; the rest of the pipe hangs plumb. */
const PIECES = 2;

export interface DropPipeTones {
  readonly wall: Cut;
  /** Inside it: water or air. */
  readonly bore: string;
  readonly glint: string;
}

export function drawDropPipe(part: PlacedPart, pen: Pen, axis: StringAxis, tones: DropPipeTones): Shape {
  const outside = part.radius;
  const inside = Math.min(part.insideRadius ?? part.radius * 0.8, part.radius - 1.2 / pen.across);
  const from = Math.max(part.top, pen.top - 0.1);
  const to = Math.max(from, Math.min(part.bottom, pen.bottom + 0.1));
  if (to - from < 1e-6) return group(part.key, []);
  const band = (left: Metres, right: Metres): string => ribbon(pen, axis, { from, to, left, right });
  return group(part.key, [
    path('wall', band(-outside, outside), { fill: tones.wall.fill, stroke: tones.wall.ink }),
    path('bore', band(-inside, inside), faced(tones.bore, tones.wall.ink, 0.6)),
    path('glint', band(inside * 0.2, inside * 0.62), { fill: tones.glint, 'fill-opacity': 0.55 }),
  ]);
}

/** A strip of the string between two depths and two distances from its centre line. */
interface Ribbon {
  readonly from: Metres;
  readonly to: Metres;
  readonly left: Metres;
  readonly right: Metres;
}

function ribbon(pen: Pen, axis: StringAxis, { from, to, left, right }: Ribbon): string {
  const bend = Math.min(to, axis.centredFrom);
  const depth = (y: number): Metres => pen.top + (y - pen.y(pen.top)) / pen.down;
  const edge =
    (offset: Metres) =>
    (y: number): number =>
      pen.x(axis.pipe(depth(y)) + offset);
  if (from >= axis.centredFrom) {
    return block(pen.x(left), pen.y(from), pen.x(right), pen.y(to));
  }
  const downLeft = curveDown(edge(left), pen.y(from), pen.y(bend), PIECES);
  const upRight = curveDown(edge(right), pen.y(bend), pen.y(from), PIECES);
  const plumb = to > bend ? `V${pxText(pen.y(to))}H${pxText(edge(right)(pen.y(to)))}V${pxText(pen.y(bend))}` : '';
  return `${downLeft}${plumb}L${upRight.slice(1)}z`;
}

export interface ClosedPipe {
  readonly runs: Runs;
  readonly ramp: Ramp;
  /** Where it turns into a spool that is drawn larger than it is; null where the scale shows the way between. */
  readonly carrier: Point | null;
  /** What stands under it, which a symbol may hide the last inches to [px]. */
  readonly pumpTop: number;
}

/** From afar: a round pipe, closed. */
export function closedPipe(part: PlacedPart, pen: Pen, { runs, ramp, carrier, pumpTop }: ClosedPipe): Shape {
  const wide = runs.pipeHalf * 2;
  const points = runPoints((depth) => runs.pipe(depth), part, runs.centredFrom, pen);
  const [first] = points;
  if (carrier !== null && first !== undefined && first[0] < carrier[0]) points.unshift(carrier);
  if (part.bottom <= pen.bottom) points.push([pen.x(0), pumpTop]);
  const d = new Line().through(points).path;
  return group(part.key, [
    path('wall', d, roundLine(ramp.edge, wide)),
    path('body', d, roundLine(ramp.base, Math.max(1, wide - 2.4))),
    path('shine', d, roundLine(ramp.light, Math.max(1, wide * 0.24))),
  ]);
}
