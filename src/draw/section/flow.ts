/** What moves in the section at a moment: marks of the flow up the pipe and out to the house, of what comes in, and a word. */
import { isBlackPlastic } from '../well/stage.ts';
import type { Solution } from '../../model/solution.ts';
import { INFLOW_HALF, waysInDetail } from '../details/flow.ts';
import type { Memory } from '../memory.ts';
import { flows, inflowAt, type Moment } from '../moment.ts';
import { drawFlow, type FlowWay } from '../parts/flowMarks.ts';
import { drawPumpWord, pumpWord } from '../parts/pumpWord.ts';
import { stringAxisOf } from '../parts/stringAxis.ts';
import { waysIn, waysUp } from '../parts/waterWays.ts';
import type { Shape } from '../scene.ts';
import { group } from '../shapes.ts';
import { isTwoTone } from '../theme.ts';
import type { SectionFrame } from './frame.ts';
import { housePlace } from './house.ts';
import { SYMBOL } from '../looks.ts';
import { dischargeDepth, motorBottomDepth } from '../../model/string/pumpDepths.ts';

export function drawSectionFlow(
  solution: Solution,
  moment: Moment | undefined,
  frame: SectionFrame,
  memory: Memory,
): Shape[] {
  const pumping = moment?.pumping;
  if (moment === undefined || pumping === undefined) return [];
  const { facts, bore } = solution;
  const word = memory.recall('pumpWord', [pumping, facts.pump, facts.well, bore, frame], () =>
    wordUnderPump(solution, pumping, frame),
  );
  return [group('flow', [...drawMarks(solution, moment, frame, memory), ...word])];
}

function drawMarks(solution: Solution, moment: Moment, frame: SectionFrame, { recall }: Memory): Shape[] {
  const { facts, parts, bore, levels } = solution;
  const { ink } = frame;
  if (moment.flow === undefined) return [];
  const inflow = inflowAt(levels, moment);
  const shapes: Shape[] = [];
  if (inflow !== 'none') {
    const half = INFLOW_HALF[inflow];
    const ways = recall('waysIn', [facts.well, bore, frame, half], () => waysIn(solution, frame.pen, half));
    shapes.push(drawFlow('in', ways, { stroke: ink.static, width: half * 0.42, phase: moment.flow }, frame));
  }
  if (flows(moment, facts.string.arrow)) {
    const from = [parts, facts.dropPipe, facts.well, facts.top, bore, frame];
    const ways = recall('waysUp', from, () => courseUp(solution, frame));
    shapes.push(drawFlow('up', ways, { stroke: inkInPipe(solution, frame), width: 1.5, phase: moment.flow }, frame));
  }
  return shapes;
}

function courseUp(solution: Solution, frame: SectionFrame): FlowWay[] {
  const { parts } = solution;
  const { pen } = frame;
  const line = parts.find(({ key }) => key === 'buriedLine');
  const y = line === undefined ? 0 : frame.y((line.top + line.bottom) / 2);
  const house = housePlace(y, frame).pipeX;
  if (pen.closed === null) return waysInDetail(solution, pen, house);
  const axis = stringAxisOf(solution);
  const pipe = parts.find(({ key }) => key === 'dropPipe');
  const bendTo = pen.x(pipe === undefined ? 0 : axis.pipe(pipe.top));
  const outlet = line === undefined ? null : { y, bendTo, from: bendTo, to: house };
  return waysUp(solution, pen, outlet, SYMBOL);
}

/** The pipe is closed at this scale: marks lie on its wall, pale on dark plastic and dark on all else. From near it is cut open. */
function inkInPipe({ facts }: Solution, frame: SectionFrame): string {
  const { ink, theme } = frame;
  if (frame.pen.closed === null) return ink.tones.waterEdge;
  if (isTwoTone(theme)) return ink.ink;
  return theme === 'dark' || isBlackPlastic(facts.dropPipe.material) ? ink.paper : ink.ink;
}

/** Below the motor, in the water of the hole. */
function wordUnderPump({ facts, bore }: Solution, pumping: boolean, frame: SectionFrame): Shape[] {
  const bottom = motorBottomDepth(facts.pump);
  const middle = frame.y((dischargeDepth(facts.pump) + bottom) / 2);
  const y = Math.max(frame.y(bottom), middle + SYMBOL / 2) + 9;
  const hole = bore.find((stretch) => stretch.bottom >= bottom) ?? bore[bore.length - 1];
  if (hole === undefined || y < frame.top || y + 8 > Math.min(frame.bottom, frame.y(facts.well.bottom))) return [];
  const words = pumpWord(frame.words, pumping);
  const place = { x: frame.axis, y, width: 2 * hole.insideRadius * frame.kx - 2 };
  return drawPumpWord(words, place, frame.ink, frame.type);
}
