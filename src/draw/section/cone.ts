/** The water's level in the ground beside the pumped well: a dashed line, because in cased rock it is a pressure, not a surface. */
import type { ConePoint, Solution } from '../../model/solution.ts';
import { Pen } from '../hatch/pen.ts';
import type { Shape } from '../scene.ts';
import { group, path, type Point } from '../shapes.ts';
import type { SectionFrame } from './frame.ts';

/** Points closer together than this add nothing to the line [px]. */
const LEAST_STEP = 9;

/**
 * Distances run from the hole's wall to the ground's edge by their square root: the cone spans from a hand's width to
 * half a mile, so no straight scale could show it. Depths are true.
 */
export function drawCone(
  { cone, facts, bore }: Pick<Solution, 'cone' | 'facts' | 'bore'>,
  frame: SectionFrame,
): Shape[] {
  const last = cone?.[cone.length - 1];
  const first = cone?.[0];
  if (!cone || last === undefined || first === undefined || last.distance <= first.distance) return [];
  // A driven casing has no ring of backfill round it.
  const half = facts.well.intake.kind === 'driven point' ? (bore[0]?.outsideRadius ?? 0) * frame.kx : frame.holeHalf;
  const side = (sign: number, room: number): string => {
    const points: Point[] = [];
    for (const at of inTheGround(cone)) {
      const { distance, depth } = at;
      const share = Math.sqrt((distance - first.distance) / (last.distance - first.distance));
      const point: Point = [frame.axis + sign * (half + share * room), frame.y(depth)];
      const before = points[points.length - 1];
      if (
        at.depth === 0 ||
        at === last ||
        before === undefined ||
        Math.hypot(point[0] - before[0], point[1] - before[1]) >= LEAST_STEP
      )
        points.push(point);
    }
    return new Pen().through(points).path;
  };
  const d = side(-1, frame.axis - half - frame.left) + side(1, frame.right - frame.axis - half);
  if (d === '') return [];
  return [
    group('cone', [
      path('cone/line', d, {
        fill: 'none',
        stroke: frame.ink.pumping,
        'stroke-width': 1.2,
        'stroke-dasharray': '5 3.5',
      }),
    ]),
  ];
}

/** Over the ground there is no water beside the well: a pressure that would lift it higher stands in the pipe alone. */
function inTheGround(cone: readonly ConePoint[]): ConePoint[] {
  const points: ConePoint[] = [];
  let before: ConePoint | undefined;
  for (const at of cone) {
    if (at.depth >= 0) points.push(at);
    else {
      if (before !== undefined && before.depth > 0) {
        const share = before.depth / (before.depth - at.depth);
        points.push({ distance: before.distance + (at.distance - before.distance) * share, depth: 0 });
      }
      break;
    }
    before = at;
  }
  return points;
}
