/**
 * The well as it stands inside a window, cut open, back to front: the hole, the string in it, the works on top.
 * The three details differ only in their window and their words.
 */
import { isFlowing } from '../../model/rules/highestStatic.ts';
import type { Solution } from '../../model/solution.ts';
import type { Memory } from '../memory.ts';
import { valveOpenAt, type Moment } from '../moment.ts';
import type { Pen } from '../parts/pen.ts';
import { stringAxisOf } from '../parts/stringAxis.ts';
import type { Shape } from '../scene.ts';
import type { Ink } from '../theme.ts';
import { HOLE } from './hole.ts';
import { joined } from '../joined.ts';
import { nearParts, topParts } from './nearParts.ts';
import type { Placed, Stage } from './stage.ts';
import { drawString } from './string.ts';
import { drawTopWorks } from './topWorks.ts';

export interface WellDrawing {
  readonly shapes: readonly Shape[];
  readonly placed: readonly Placed[];
}

/** @param right  right edge of the window, where line and conduit leave it [px] */
export function drawWell(
  solution: Solution,
  pen: Pen,
  ink: Ink,
  right: number,
  memory: Memory,
  moment?: Moment,
): WellDrawing {
  const { recall, same } = memory;
  const { facts, bore, assumed } = solution;
  const axis = stringAxisOf(solution, memory);
  const parts = same('parts', nearParts(solution.parts, pen));
  const top = same('topParts', topParts(parts));
  const nearby = { ...solution, parts };
  const atTop = { ...solution, parts: top };
  const on = (draw: (stage: Stage) => Shape[], some: Solution) => (): WellDrawing => {
    const stage: Stage = { solution: some, pen, ink, axis, right, placed: [], moment };
    return { shapes: draw(stage), placed: stage.placed };
  };
  const { diameter, wires } = facts.pump;
  const hung = [axis, pen, ink, facts.well, facts.dropPipe, facts.string, facts.top];
  const strung = [...hung, facts.rope, assumed, diameter, wires];
  const pieces = [
    ...HOLE.map(({ name, draw, from }) =>
      recall(name, [facts.well, bore, pen, ink, ...from(solution, moment, pen)], on(draw, nearby)),
    ),
    recall(
      'string',
      [parts, valveOpenAt(moment, facts.string.arrow), ...strung],
      on((stage) => drawString(stage, memory, strung), nearby),
    ),
    recall('topWorks', [top, ...hung, facts.house, right, isFlowing(solution)], on(drawTopWorks, atTop)),
  ];
  return recall('well', pieces, () => ({
    shapes: joined(pieces.map(({ shapes }) => shapes)),
    placed: joined(pieces.map(({ placed }) => placed)),
  }));
}
