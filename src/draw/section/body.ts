/** The well in the section: as every frame shows it, with what of it answers to the pointer there. */
import type { Solution } from '../../model/solution.ts';
import { kindsWith } from '../kinds.ts';
import type { Memory } from '../memory.ts';
import type { Moment } from '../moment.ts';
import type { Shape } from '../scene.ts';
import { group } from '../shapes.ts';
import type { HitPlace } from '../view.ts';
import { drawWell, type WellDrawing } from '../well/drawWell.ts';
import type { SectionFrame } from './frame.ts';
import { housePlace } from './house.ts';

export interface Body {
  readonly shape: Shape;
  readonly hits: readonly HitPlace[];
  readonly closed: WellDrawing['closed'];
}

/** How far a fracture can be followed: short of the words that name it [px]. */
const FRACTURE = 32;
const FRACTURE_NEAR = 54;

/** The hole itself answers to the pointer from near alone: from afar it is a strip between things that do. */
const OF_THE_HOLE = kindsWith(({ of }) => of === 'hole');

export function drawBody(solution: Solution, frame: SectionFrame, moment: Moment | undefined, memory: Memory): Body {
  const { recall } = memory;
  const { pen, ink } = frame;
  const right = lineEnd(solution, frame);
  const fractures = recall('fractures', [frame], () => fracturesIn(frame));
  const well = drawWell(solution, { pen, ink, right, fractures }, memory, moment);
  return recall('body', [well, pen], () => ({
    shape: group('well', well.shapes, { 'stroke-width': 1.1, 'stroke-linejoin': 'round' }),
    hits: well.placed
      .filter(({ kind, part }) => (pen.closed === null ? !part.startsWith('inflow/') : !OF_THE_HOLE.has(kind)))
      .map(({ part, kind, left, right: end, top, bottom }) => ({
        part,
        kind,
        x: left,
        y: top,
        width: end - left,
        height: bottom - top,
        view: 'O' as const,
      })),
    closed: well.closed,
  }));
}

/** A line under the ground turns up to the house; cut open above it, it ends behind the house, short of its far wall. */
function lineEnd({ parts }: Solution, frame: SectionFrame): number {
  const line = parts.find(({ key }) => key === 'buriedLine');
  const arrives = line === undefined ? 0 : (line.top + line.bottom) / 2;
  if (frame.pen.closed === null && arrives <= 0) return frame.right - 5;
  return housePlace(frame.y(arrives), frame).pipeX + 2;
}

const fracturesIn =
  ({ axis, holeHalf, right, pen }: SectionFrame) =>
  (half: number): number =>
    pen.closed === null ? FRACTURE_NEAR : Math.max(0, Math.min(FRACTURE + holeHalf - half, right - axis - half - 6));
