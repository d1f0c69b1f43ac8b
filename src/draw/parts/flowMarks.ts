/** Small chevrons along the ways that water takes, pointing where it goes. */
import { Pen } from '../hatch/pen.ts';
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { path, type Point } from '../shapes.ts';

export interface FlowWay {
  /** From where the water comes to where it goes [px]. */
  readonly course: readonly Point[];
  /** From the middle of a mark to its wings [px]. */
  readonly half: number;
  /** From mark to mark along the way [px]. */
  readonly pitch: number;
}

export interface FlowLook {
  readonly stroke: string;
  readonly width: number;
  /** How far each mark has come towards the place of the next, 0 to 1. */
  readonly phase: number;
}

/**
 * All marks of some ways as one path, so that a frame of their movement rewrites a single attribute.
 *
 * @param within  marks that would reach out of it are left out
 */
export function drawFlow(key: string, ways: readonly FlowWay[], look: FlowLook, within: Box): Shape {
  const pen = new Pen();
  for (const way of ways) {
    const { half } = way;
    for (const { at, towards } of marksOf(way, look.phase)) {
      const [x, y] = at;
      if (x < within.left + half || x > within.right - half || y < within.top + half || y > within.bottom - half)
        continue;
      const [dx, dy] = [towards[0] * half, towards[1] * half];
      const wing = (side: 1 | -1): Point => [x - dx * 0.5 - side * dy, y - dy * 0.5 + side * dx];
      pen.through([wing(1), [x + dx * 0.5, y + dy * 0.5], wing(-1)]);
    }
  }
  return path(key, pen.path, {
    fill: 'none',
    stroke: look.stroke,
    'stroke-width': look.width,
    'stroke-linecap': 'round',
    'stroke-linejoin': 'round',
  });
}

interface FlowMark {
  readonly at: Point;
  /** Unit step along the way. */
  readonly towards: Point;
}

/** Evenly along the way, clear of its two ends. */
function marksOf({ course, half, pitch }: FlowWay, phase: number): FlowMark[] {
  const marks: FlowMark[] = [];
  let next = phase * pitch;
  let walked = 0;
  const end = lengthOf(course) - half;
  for (let i = 1; i < course.length; i++) {
    const [from, to] = [course[i - 1], course[i]];
    if (from === undefined || to === undefined) break;
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const long = Math.hypot(dx, dy);
    for (; long > 0 && next <= walked + long; next += pitch) {
      if (next < half || next > end) continue;
      const share = (next - walked) / long;
      marks.push({ at: [from[0] + dx * share, from[1] + dy * share], towards: [dx / long, dy / long] });
    }
    walked += long;
  }
  return marks;
}

function lengthOf(course: readonly Point[]): number {
  let long = 0;
  for (let i = 1; i < course.length; i++) {
    const [from, to] = [course[i - 1], course[i]];
    if (from !== undefined && to !== undefined) long += Math.hypot(to[0] - from[0], to[1] - from[1]);
  }
  return long;
}
