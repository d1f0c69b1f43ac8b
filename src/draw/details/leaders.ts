/** What the labels' leaders leave free: a sign or a figure that stands over one would cut it in two. */
import { clipSegment, type Segment } from '../hatch/clip.ts';
import { leaderPoints, type Laid, type Track } from './callouts.ts';

/** Half of a leader's dot, the widest thing on it [px]. */
const HALF_DOT = 2.4;

export function leadersOf(laid: readonly Laid[], track: Track): Segment[] {
  const leaders: Segment[] = [];
  for (const each of laid) {
    let last: readonly [number, number] | undefined;
    for (const point of leaderPoints(each, track)) {
      if (last !== undefined) leaders.push([last[0], last[1], point[0], point[1]]);
      last = point;
    }
  }
  return leaders;
}

/** Does no leader touch a block of this half width and half height round (x, y)? */
export function isClear(
  leaders: readonly Segment[],
  x: number,
  y: number,
  halfWidth: number,
  halfHeight: number,
): boolean {
  const left = x - halfWidth - HALF_DOT;
  const right = x + halfWidth + HALF_DOT;
  const top = y - halfHeight - HALF_DOT;
  const bottom = y + halfHeight + HALF_DOT;
  for (const leader of leaders) {
    const [fromX, fromY, toX, toY] = leader;
    if (fromX >= right || toX <= left) continue;
    if ((fromY < top && toY < top) || (fromY > bottom && toY > bottom)) continue;
    if (fromY === toY ? fromY <= top || fromY >= bottom : clipSegment(leader, { left, right, top, bottom }) === null)
      continue;
    return false;
  }
  return true;
}

/** How far a thing may be moved along a plumb line, and how far from one another places are tried [px]. */
export interface Reach {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** The free place nearest to the one that is wanted. */
export function nearestFree(wanted: number, { from, to, step }: Reach, isFree: (at: number) => boolean): number | null {
  const far = Math.max(wanted - from, to - wanted);
  for (let away = 0; away <= far; away += step) {
    if (wanted - away >= from && wanted - away <= to && isFree(wanted - away)) return wanted - away;
    if (away > 0 && wanted + away <= to && wanted + away >= from && isFree(wanted + away)) return wanted + away;
  }
  return null;
}
