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
import { waysIn, waysUp, type Outlet } from '../parts/waterWays.ts';
import type { Shape } from '../scene.ts';
import { group } from '../shapes.ts';
import type { DetailContext } from './context.ts';
import { isClear, nearestFree } from './leaders.ts';

/** @param taken  signs and figures, which no word stands over */
export function drawDetailFlow(
  context: DetailContext,
  leaders: readonly Segment[],
  taken: () => readonly Box[],
  memory: Memory,
): Shape[] {
  const { solution, frame, pen, window } = context;
  const { moment, ink, type, words } = frame;
  const pumping = moment?.pumping;
  if (moment === undefined || pumping === undefined) return [];
  const clear = memory.same('taken', taken());
  const said = pumpWord(words, pumping);
  const word = memory.recall(
    'pumpWord',
    [said, solution.parts, pen, window.top, window.bottom, leaders, clear, ink, type],
    () => wordOnMotor(context, said, leaders, clear),
  );
  return [group('flow', [...drawMarks(context, moment, memory), ...word])];
}

/** Half a mark of what comes out of the ground: large while the pump draws it, small while the level comes back. */
export const INFLOW_HALF = { strong: 5, weak: 3.4 } as const;

function drawMarks(context: DetailContext, moment: Moment, { recall }: Memory): Shape[] {
  const { solution, pen, window } = context;
  const { ink } = context.frame;
  const { facts, parts, bore, levels } = solution;
  if (moment.flow === undefined) return [];
  const inflow = inflowAt(levels, moment);
  const shapes: Shape[] = [];
  if (inflow !== 'none') {
    const half = INFLOW_HALF[inflow];
    const ways = recall('waysIn', [facts.well, bore, pen, half], () => waysIn(solution, pen, half));
    shapes.push(drawFlow('in', ways, { stroke: ink.static, width: half * 0.42, phase: moment.flow }, window));
  }
  if (flows(moment, facts.string.arrow)) {
    const ways = recall('waysUp', [parts, facts.dropPipe, facts.well, facts.top, bore, pen, window.right], () =>
      waysInDetail(solution, pen, window.right),
    );
    shapes.push(drawFlow('up', ways, { stroke: ink.tones.waterEdge, width: 1.7, phase: moment.flow }, window));
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
  { solution: { parts }, frame: { ink, type }, pen, window }: DetailContext,
  words: string,
  leaders: readonly Segment[],
  taken: readonly Box[],
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
  const reach = { from: Math.max(top, window.top) + half, to: Math.min(top + tall, window.bottom) - half, step: 2 };
  const isFree = (at: number): boolean => {
    const box = { left: x - wide / 2, right: x + wide / 2, top: at - half, bottom: at + half };
    return isClear(leaders, x, at, wide / 2, half) && !taken.some((each) => overlap(each, box));
  };
  const y = nearestFree(top + tall * 0.7, reach, isFree);
  return y === null ? [] : drawPumpWord(words, { x, y, width: room }, ink, type);
}
