/** Along the rail, where the section shows a part of the well: a strip for the whole of it, with what is seen marked. */
import type { Solution } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, inked, line, rect } from '../shapes.ts';
import { sectionWindow, type SectionFrame } from './frame.ts';

/** Width of the strip, and with the ground beside it of what it takes from the section [px]. */
const WIDE = 6;
export const OVERVIEW = WIDE + 5;

/** The mark is never lower than this, or a short window in a deep well would not be seen [px]. */
const LEAST_MARK = 4;

export function drawOverview(solution: Solution, frame: SectionFrame): Shape[] {
  if (!frame.cut.top && !frame.cut.bottom) return [];
  const { ink } = frame;
  const whole = sectionWindow(solution);
  const left = frame.left + 3;
  const top = frame.top + 4;
  const tall = frame.bottom - 4 - top;
  const at = (depth: number): number =>
    top + Math.min(1, Math.max(0, (depth - whole.topDepth) / (whole.bottomDepth - whole.topDepth))) * tall;
  const from = at(frame.topDepth);
  const mark = Math.max(LEAST_MARK, at(frame.bottomDepth) - from);
  const start = Math.min(from, top + tall - mark);
  const { bottom } = solution.facts.well;
  return [
    group('overview', [
      rect('whole', left, top, WIDE, tall, { rx: 2, fill: ink.paper, stroke: ink.ink2, 'stroke-width': 1 }),
      line('well', left + WIDE / 2, at(0), left + WIDE / 2, at(bottom), inked(ink.hair, 2)),
      rect('seen', left, start, WIDE, mark, { rx: 2, fill: ink.ink }),
    ]),
  ];
}
