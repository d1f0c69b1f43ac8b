/**
 * The well as it stands inside a window, cut open, back to front: the hole, the string in it, the works on top.
 * The three details differ only in their window and their words.
 */
import type { Solution } from '../../model/solution.ts';
import type { Pen } from '../parts/pen.ts';
import { stringAxisOf } from '../parts/stringAxis.ts';
import type { Shape } from '../scene.ts';
import type { Ink } from '../theme.ts';
import { drawHole } from './hole.ts';
import type { Placed, Stage } from './stage.ts';
import { drawString } from './string.ts';
import { drawTopWorks } from './topWorks.ts';

export interface WellDrawing {
  readonly shapes: readonly Shape[];
  readonly placed: readonly Placed[];
}

/** @param right  right edge of the window, where line and conduit leave it [px] */
export function drawWell(solution: Solution, pen: Pen, ink: Ink, right: number): WellDrawing {
  const stage: Stage = { solution, pen, ink, axis: stringAxisOf(solution), right, placed: [] };
  return { shapes: [...drawHole(stage), ...drawString(stage), ...drawTopWorks(stage)], placed: stage.placed };
}
