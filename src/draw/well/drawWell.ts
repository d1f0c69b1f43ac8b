/**
 * The well as it stands inside a frame, back to front: the hole, the string in it, the works on top. Section, details and
 * the small picture in a list differ in their frame, in how near they come, and in their words.
 */
import { isFlowing } from '../../model/rules/highestStatic.ts';
import type { Solution } from '../../model/solution.ts';
import { joined } from '../joined.ts';
import type { Memory } from '../memory.ts';
import { valveOpenAt, type Moment } from '../moment.ts';
import type { Pen } from '../parts/pen.ts';
import { stringAxisOf } from '../parts/stringAxis.ts';
import type { Shape } from '../scene.ts';
import type { Ink } from '../theme.ts';
import { drawClosedString, type ClosedString } from './closedString.ts';
import { HOLE } from './hole.ts';
import { closedTopParts, nearParts, topParts } from './nearParts.ts';
import type { Placed, Stage } from './stage.ts';
import { drawString } from './string.ts';
import { drawTopWorks } from './topWorks.ts';

export interface WellFrame {
  readonly pen: Pen;
  readonly ink: Ink;
  /** Where line and conduit leave the frame, or turn up to the house [px]. */
  readonly right: number;
  readonly fractures: Stage['fractures'];
}

export interface WellDrawing {
  readonly shapes: readonly Shape[];
  readonly placed: readonly Placed[];
  /** What is known only of a string seen from afar. */
  readonly closed: Pick<ClosedString, 'trueExtents' | 'clear'> | null;
}

type Piece = Pick<WellDrawing, 'shapes' | 'placed'> & Partial<Pick<WellDrawing, 'closed'>>;

export function drawWell(solution: Solution, frame: WellFrame, memory: Memory, moment?: Moment): WellDrawing {
  const { pen, ink, right, fractures } = frame;
  const { recall, same } = memory;
  const { facts, bore, assumed } = solution;
  const axis = stringAxisOf(solution, memory);
  // From afar nearly all of it is in the frame, and which symbols stand clear hangs on those below it.
  const parts = pen.closed === null ? same('parts', nearParts(solution.parts, pen)) : solution.parts;
  const top = same('topParts', pen.closed === null ? topParts(parts) : closedTopParts(parts));
  const nearby = { ...solution, parts };
  const atTop = { ...solution, parts: top };
  const on = (draw: (stage: Stage) => readonly Shape[], some: Solution) => (): Piece => {
    const stage: Stage = { solution: some, pen, ink, axis, right, fractures, placed: [], moment };
    return { shapes: draw(stage), placed: stage.placed };
  };
  const { diameter, wires } = facts.pump;
  const hung = [axis, pen, ink, facts.well, facts.dropPipe, facts.string, facts.top];
  const strung = [...hung, facts.rope, assumed, diameter, wires];
  const { closed } = pen;
  const string =
    closed === null
      ? recall(
          'string',
          [parts, valveOpenAt(moment, facts.string.arrow), ...strung],
          on((stage) => drawString(stage, memory, strung), nearby),
        )
      : recall('closedString', [parts, facts.pump, bore, ...hung], (): Piece => {
          const stage: Stage = { solution, pen, ink, axis, right, fractures, placed: [], moment };
          const drawn = drawClosedString(stage, closed);
          return { shapes: drawn.shapes, placed: stage.placed, closed: drawn };
        });
  const pieces: Piece[] = [
    ...HOLE.map(({ name, draw, from }) =>
      recall(name, [facts.well, bore, pen, ink, fractures, ...from(solution, moment, pen)], on(draw, nearby)),
    ),
    string,
    recall(
      'topWorks',
      [top, ...hung, facts.house, facts.rope?.tied, right, isFlowing(solution)],
      on(drawTopWorks, atTop),
    ),
  ];
  return recall('well', pieces, () => ({
    shapes: joined(pieces.map(({ shapes }) => shapes)),
    placed: joined(pieces.map(({ placed }) => placed)),
    closed: string.closed ?? null,
  }));
}
