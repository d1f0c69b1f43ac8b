/** A pump's curve through the points that its maker prints. */
import type { CubicMetresPerSecond, Metres } from '../si.ts';
import type { PumpCurve } from './headCurve.ts';

export interface PumpPoint {
  readonly flow: CubicMetresPerSecond;
  readonly head: Metres;
}

/** What keeps points from being a pump's curve, or null. Order does not matter. */
export function pumpPointsFault(points: readonly PumpPoint[]): string | null {
  if (points.length < 2) return 'a curve needs two points or more';
  let last: PumpPoint | null = null;
  for (const point of byFlow(points)) {
    if (!(point.flow >= 0 && point.flow < Infinity)) return 'a flow is negative or not a number';
    if (!(point.head >= 0 && point.head < Infinity)) return 'a head is negative or not a number';
    if (last && point.flow === last.flow) return 'two points have the same flow';
    if (last && point.head >= last.head) return 'the head must fall from each point to the next larger flow';
    last = point;
  }
  return null;
}

/**
 * Smooth curve through a maker's points that never swings past them.
 *
 * Between points a cubic whose slope at each point is the weighted harmonic mean of the slopes on both sides, so that
 * it falls wherever the points fall. To the left of the first point, where the maker gives none at no flow, a parabola
 * that starts flat at no flow and meets the point with the curve's slope. To the right of the last point a straight
 * line down to no head, with the steeper of the curve's slope there and that of the last two points.
 *
 * @param points  flow [m³/s] and head [m], in any order
 * @returns  the curve
 *
 * Range    between the points as good as they are; both ends beyond them are our extension
 * Throws   RangeError when `pumpPointsFault` finds a fault
 * Source   Fritsch & Butland (1984), SIAM J. Sci. Stat. Comput. 5, 300: slopes for which the monotone condition of
 *          Fritsch & Carlson (1980), SIAM J. Numer. Anal. 17, 238, holds
 */
export function pointsCurve(points: readonly PumpPoint[]): PumpCurve {
  const fault = pumpPointsFault(points);
  if (fault !== null) throw new RangeError(`pointsCurve: ${fault}`);
  const sorted = byFlow(points);
  const slopes = pointSlopes(sorted);
  const pieces: Piece[] = [];
  for (let i = 0; i + 1 < sorted.length; i++) pieces.push(cubicPiece(sorted, slopes, i));

  const [first, last] = [at(sorted, 0), at(sorted, sorted.length - 1)];
  const firstSlope = at(slopes, 0);
  const shutOffHead = first.head - (firstSlope * first.flow) / 2;
  const lastSlope = Math.min(at(slopes, slopes.length - 1), secant(at(sorted, sorted.length - 2), last));

  const headAt = (flow: CubicMetresPerSecond): Metres => {
    if (flow < first.flow) return shutOffHead + (firstSlope / (2 * first.flow)) * flow * flow;
    if (flow >= last.flow) return last.head + lastSlope * (flow - last.flow);
    for (const { to, from, a, b, c, d } of pieces) {
      if (flow < to) {
        const x = flow - from;
        return a + x * (b + x * (c + x * d));
      }
    }
    return last.head;
  };
  return { shutOffHead, runOutFlow: last.flow - last.head / lastSlope, headAt };
}

/** a + b x + c x² + d x³ over x = flow - from. */
interface Piece {
  readonly from: number;
  readonly to: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

function cubicPiece(points: readonly PumpPoint[], slopes: readonly number[], i: number): Piece {
  const [left, right] = [at(points, i), at(points, i + 1)];
  const [start, end] = [at(slopes, i), at(slopes, i + 1)];
  const width = right.flow - left.flow;
  const chord = secant(left, right);
  return {
    from: left.flow,
    to: right.flow,
    a: left.head,
    b: start,
    c: (3 * chord - 2 * start - end) / width,
    d: (start + end - 2 * chord) / (width * width),
  };
}

function pointSlopes(points: readonly PumpPoint[]): number[] {
  if (points.length === 2) return Array<number>(2).fill(secant(at(points, 0), at(points, 1)));
  return points.map((_, i) => {
    if (i === 0) return endSlope(at(points, 0), at(points, 1), at(points, 2));
    if (i === points.length - 1) return endSlope(at(points, i), at(points, i - 1), at(points, i - 2));
    const [left, middle, right] = [at(points, i - 1), at(points, i), at(points, i + 1)];
    const [before, after] = [middle.flow - left.flow, right.flow - middle.flow];
    return (
      (3 * (before + after)) /
      ((2 * after + before) / secant(left, middle) + (after + 2 * before) / secant(middle, right))
    );
  });
}

/** Slope at an end from the parabola through three points, held between flat and three times the first chord. */
function endSlope(end: PumpPoint, next: PumpPoint, third: PumpPoint): number {
  const [near, far] = [Math.abs(next.flow - end.flow), Math.abs(third.flow - next.flow)];
  const [chord, farChord] = [secant(end, next), secant(next, third)];
  const slope = ((2 * near + far) * chord - near * farChord) / (near + far);
  return Math.max(Math.min(slope, 0), 3 * chord);
}

function secant(one: PumpPoint, other: PumpPoint): number {
  return (other.head - one.head) / (other.flow - one.flow);
}

function byFlow(points: readonly PumpPoint[]): PumpPoint[] {
  return [...points].sort((one, other) => one.flow - other.flow);
}

function at<T>(list: readonly T[], index: number): T {
  const item = list[index];
  if (item === undefined) throw new RangeError(`pointsCurve: no item ${index} of ${list.length}`);
  return item;
}
