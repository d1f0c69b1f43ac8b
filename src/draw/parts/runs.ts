/**
 * Where what runs down the hole stands on paper, seen from afar: cable and rope keep so far off the pipe that they can
 * be told from it, however wide it is drawn.
 */
import type { Metres } from '../../model/si.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Point } from '../shapes.ts';
import type { Pen } from './pen.ts';
import type { StringAxis } from './stringAxis.ts';

/** The least that a pipe is drawn wide [px]. */
const LEAST_PIPE = 6;
/** From the pipe's edge to the middle of the cable, and of the rope beyond it [px]. */
const CABLE_OFF = 3;
const ROPE_OFF = 7.5;

export interface Runs {
  /** Half of what the pipe is drawn wide [px]. */
  readonly pipeHalf: number;
  /** Middles of what runs there [px]. */
  pipe(depth: Metres): number;
  cable(depth: Metres): number;
  rope(depth: Metres): number;
  /** A probe's wires: never behind the pipe where that hangs plumb. */
  wire(depth: Metres): number;
  readonly centredFrom: Metres;
}

export function runsOf(pipe: PlacedPart | undefined, axis: StringAxis, pen: Pen): Runs {
  const pipeHalf = pipe === undefined ? 0 : Math.max(LEAST_PIPE, 2 * pipe.radius * pen.across) / 2;
  const at = (depth: Metres): number => pen.x(axis.pipe(depth));
  const { centredFrom } = axis;
  return {
    pipeHalf,
    centredFrom,
    pipe: at,
    cable: (depth) => Math.min(pen.x(axis.cable(depth)), at(depth) - pipeHalf - CABLE_OFF),
    rope: (depth) => Math.min(pen.x(axis.rope(depth)), at(depth) - pipeHalf - ROPE_OFF),
    wire: (depth) => Math.max(pen.x(axis.wire(depth)), depth > centredFrom ? at(depth) + pipeHalf : 0),
  };
}

/** Points of a drift are this far apart on paper [px], and there are no more of them. */
const STEP = 3;
const MOST = 28;

/**
 * The points that a run goes through, between the edges of what is shown: closely where it drifts, its ends where it
 * hangs straight.
 */
export function runPoints(
  x: (depth: Metres) => number,
  { top, bottom }: Pick<PlacedPart, 'top' | 'bottom'>,
  straightFrom: Metres,
  pen: Pen,
): Point[] {
  const from = Math.max(top, pen.top);
  const to = Math.min(bottom, pen.bottom);
  if (to <= from) return [];
  const at = (depth: Metres): Point => [x(depth), pen.y(depth)];
  const drift = Math.min(to, straightFrom);
  const points: Point[] = [];
  if (drift > from) {
    const steps = Math.max(2, Math.min(MOST, Math.round(((drift - from) * pen.down) / STEP)));
    for (let i = 0; i < steps; i++) points.push(at(from + ((drift - from) * i) / steps));
    points.push(at(drift));
  } else points.push(at(from));
  if (to > drift) points.push(at(to));
  return bent(points);
}

/** Without the points that lie on the way from the one before to the next: a run hangs straight for most of its length. */
function bent(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  points.forEach((point, i) => {
    const before = kept[kept.length - 1];
    const after = points[i + 1];
    if (before === undefined || after === undefined) return kept.push(point);
    const off = (point[0] - before[0]) * (after[1] - before[1]) - (point[1] - before[1]) * (after[0] - before[0]);
    const far = Math.abs(off) > 0.05 * Math.hypot(after[0] - before[0], after[1] - before[1]);
    return far ? kept.push(point) : 0;
  });
  return kept;
}
