/** What moves in a detail at a moment: marks of the flow, and the word that says whether the pump runs. */
import { inches } from '../../model/units.ts';
import type { Solution } from '../../model/solution.ts';
import { overlap, type Box, type Segment } from '../hatch/clip.ts';
import type { Memory } from '../memory.ts';
import { flows, inflowAt, type Moment } from '../moment.ts';
import { lineMiddle } from '../parts/buriedLine.ts';
import { drawFlow, type FlowWay } from '../parts/flowMarks.ts';
import type { Pen } from '../parts/pen.ts';
import { drawPumpWord, pumpWord, pumpWordSize } from '../parts/pumpWord.ts';
import type { Measure } from '../type/measure.ts';
import { waysIn, waysUp, type Outlet } from '../parts/waterWays.ts';
import type { Shape } from '../scene.ts';
import { group } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import type { WindowBox } from './context.ts';
import type { DetailFrame } from './contract.ts';
import { isClear, nearestFree } from './leaders.ts';

export function drawDetailFlow(
  solution: Solution,
  { moment, ink, type, words }: Pick<DetailFrame, 'moment' | 'ink' | 'type' | 'words'>,
  pen: Pen,
  box: WindowBox,
  leaders: readonly Segment[],
  /** Signs and figures, which no word stands over. */
  taken: () => readonly Box[],
  memory: Memory,
): Shape[] {
  const pumping = moment?.pumping;
  if (moment === undefined || pumping === undefined) return [];
  const clear = memory.same('taken', taken());
  const said = pumpWord(words, pumping);
  const word = memory.recall(
    'pumpWord',
    [said, solution.parts, pen, box.top, box.bottom, leaders, clear, ink, type],
    () => wordOnMotor(solution, said, pen, box, leaders, clear, ink, type),
  );
  return [group('flow', [...drawMarks(solution, moment, ink, pen, box, memory), ...word])];
}

/** Half a mark of what comes out of the ground: large while the pump draws it, small while the level comes back. */
export const INFLOW_HALF = { strong: 5, weak: 3.4 } as const;

function drawMarks(solution: Solution, moment: Moment, ink: Ink, pen: Pen, box: WindowBox, memory: Memory): Shape[] {
  const { recall } = memory;
  const { facts, parts, bore, levels } = solution;
  if (moment.flow === undefined) return [];
  const inflow = inflowAt(levels, moment);
  const shapes: Shape[] = [];
  if (inflow !== 'none') {
    const half = INFLOW_HALF[inflow];
    const ways = recall('waysIn', [facts.well, bore, pen, half], () => waysIn(solution, pen, half));
    shapes.push(drawFlow('in', ways, { stroke: ink.static, width: half * 0.42, phase: moment.flow }, box));
  }
  if (flows(moment, facts.string.arrow)) {
    const ways = recall('waysUp', [parts, facts.dropPipe, facts.well, facts.top, bore, pen, box.right], () =>
      waysInDetail(solution, pen, box.right),
    );
    shapes.push(drawFlow('up', ways, { stroke: ink.tones.waterEdge, width: 1.7, phase: moment.flow }, box));
  }
  return shapes;
}

/** From the pump to the window's edge. */
export function waysInDetail(solution: Solution, pen: Pen, right: number): FlowWay[] {
  return waysUp(solution, pen, outletOf(solution, pen, right));
}

/** Length of what is screwed and clamped on the line's end, as it is drawn. */
const FITTING = inches(4.5);
/** From the axis, past tee, union and tap too, where the line leaves a seal. */
const FITTINGS_AT_SEAL = inches(8.8);

function outletOf({ parts, facts }: Solution, pen: Pen, to: number): Outlet | null {
  const line = parts.find(({ kind }) => kind === 'buriedLine');
  if (line === undefined) return null;
  const casing = (facts.well.casings[0]?.outsideDiameter ?? 0) / 2;
  const isPitless = facts.top.kind === 'pitless';
  const bendTo = isPitless ? pen.x(casing) : pen.x(0);
  return {
    y: lineMiddle(line, pen),
    bendTo,
    from: bendTo + Math.max(28, (isPitless ? FITTING : FITTINGS_AT_SEAL) * pen.across),
    to,
  };
}

function wordOnMotor(
  { parts }: Solution,
  words: string,
  pen: Pen,
  box: WindowBox,
  leaders: readonly Segment[],
  taken: readonly Box[],
  ink: Ink,
  type: Measure,
): Shape[] {
  const motor = parts.find(({ kind }) => kind === 'motor');
  if (motor === undefined) return [];
  const top = pen.y(motor.top);
  const tall = pen.y(motor.bottom) - top;
  if (tall < 40) return [];
  const x = pen.x(0);
  const room = 2 * motor.radius * pen.across + 6;
  const [wide, high] = pumpWordSize(words, room, type);
  const half = high / 2;
  // Under the dot of its label, and on the can itself.
  const y = nearestFree(
    top + tall * 0.7,
    Math.max(top, box.top) + half,
    Math.min(top + tall, box.bottom) - half,
    2,
    (at) =>
      isClear(leaders, x, at, wide / 2, half) &&
      !taken.some((each) =>
        overlap(each, { left: x - wide / 2, right: x + wide / 2, top: at - half, bottom: at + half }),
      ),
  );
  return y === null ? [] : drawPumpWord(words, { x, y, width: room }, ink, type);
}
