/** Detail B, the pump end: motor, intake, pump, valve, joint, arrestor and splice, down to the bottom when it is near. */
import type { Metres } from '../../model/si.ts';
import { inches, show } from '../../model/units.ts';
import type { Solution } from '../../model/solution.ts';
import type { Segment } from '../hatch/clip.ts';
import { forgetful } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path } from '../shapes.ts';
import { isAnyAssumed, RESTS_ON } from '../assumed.ts';
import { stroke } from '../parts/outline.ts';
import { pxText } from '../tenths.ts';
import type { Callout } from './callouts.ts';
import type { DetailFrame, DetailScene } from './contract.ts';
import { drawDetail } from './detail.ts';
import type { DetailContext } from './context.ts';
import { roomIn } from './layout.ts';
import { drawSlimPump, isWorthIt, stripWidth } from './slimPump.ts';
import { inflowsOf, type Wanted } from './wanted.ts';
import { drawDimension } from './dimension.ts';
import { pumpEndDepths } from './windows.ts';

const WANTED: readonly Wanted[] = [
  { key: 'pumpingLevel', across: 0.9, down: 0.5 },
  { key: 'staticLevel', across: 0.9, down: 0.5 },
  { key: 'casing', across: 0.5, down: 0.2 },
  { key: 'splice', across: 0.62, down: 0.5 },
  { key: 'dropPipe', across: 0.6, down: 0.3 },
  { key: 'probe', across: 0.8, down: 0.8 },
  { key: 'torqueArrestor', across: 0.97, down: 0.5 },
  { key: 'insertFitting/pump', across: 0.8, down: 0.62 },
  { key: 'checkValve', across: 0.9, down: 0.5 },
  { key: 'flowLimiter', across: 0.9, down: 0.5 },
  { key: 'pump', across: 0.8, down: 0.45 },
  { key: 'shroud', across: 0.98, down: 0.3 },
  { key: 'intake', across: 0.92, down: 0.5 },
  { key: 'motor', across: 0.8, down: 0.5 },
  { key: 'screen', across: 0.5, down: 0.9 },
];

export function drawPumpEnd(solution: Solution, frame: DetailFrame, memory = forgetful): DetailScene {
  const { facts, bore } = solution;
  const depths = pumpEndDepths(solution);
  const widest = bore.reduce(
    (most, each) =>
      each.bottom > depths.topDepth && each.top < depths.bottomDepth ? Math.max(most, each.outsideRadius) : most,
    facts.pump.diameter / 2,
  );
  const { topDepth, bottomDepth } = frame.frozen ?? depths;
  const down = frame.height / (bottomDepth - topDepth);
  const roomLeft = widest + inches(0.5);
  const roomRight = widest + inches(0.3);
  const strip = stripWidth(frame, 2 * widest, down);
  const fits = roomIn(frame, { sparePx: SPARE_PX, leftPx: strip }) / (roomLeft + roomRight) / down;
  const isSlim = isWorthIt(facts.pump.diameter, down) && fits >= LEAST_BESIDE;
  return drawDetail(
    solution,
    frame,
    {
      topDepth: depths.topDepth,
      bottomDepth: depths.bottomDepth,
      roomLeft,
      roomRight,
      sparePx: SPARE_PX,
      ...(isSlim ? { leftPx: strip } : {}),
      trueProportion: false,
      wanted: [...WANTED, ...inflowsOf(solution)],
      notes: bottomNote,
      extra: (context, leaders) => [
        ...(isSlim ? [drawSlimPump(solution, frame, { pen: context.pen, strip, radius: widest })] : []),
        ...drawClearance(context, leaders),
      ],
    },
    memory,
  );
}

/** For what does not grow with widths [px]. */
const SPARE_PX = 24;
/** With a slim picture of the pump beside it the well keeps at least this factor: else there is no contrast to show. */
const LEAST_BESIDE = 2;

/** From the motor to the bottom of the well. */
interface Clearance {
  readonly motorFoot: Metres;
  readonly bottom: Metres;
  readonly gap: Metres;
}

function clearanceOf({ solution: { facts, parts, values }, placed }: DetailContext): Clearance | null {
  const motor = parts.find(({ kind }) => kind === 'motor');
  if (motor === undefined || !placed.some(({ kind }) => kind === 'motor')) return null;
  const { bottom } = facts.well;
  return { motorFoot: motor.bottom, bottom, gap: values.clearanceToBottom ?? bottom - motor.bottom };
}

/** A bottom that lies below the frame is told in a label, beside the arrow that points to it. */
function bottomNote(context: DetailContext): Callout[] {
  const { frame, pen } = context;
  const clearance = clearanceOf(context);
  if (clearance === null || clearance.bottom < pen.bottom) return [];
  const { motorFoot, bottom, gap } = clearance;
  return [
    {
      ...frame.words.partLabels.toBottom({ gap, bottom }, show(frame.units)),
      key: 'toBottom',
      assumed: { name: isAnyAssumed(context.solution, RESTS_ON.underMotor), note: false },
      x: pen.x(0),
      y: (pen.y(motorFoot) + frame.y + frame.height - ARROW_FOOT) / 2,
      weight: 4,
    },
  ];
}

/** The arrow's point, over the frame's lower edge [px]. */
const ARROW_FOOT = 12;

/** Motor to bottom: a dimension with its figure while the bottom is in the frame, else a break and an arrow. */
function drawClearance(context: DetailContext, leaders: readonly Segment[]): Shape[] {
  const { frame, pen, box, faults } = context;
  const { ink } = frame;
  const clearance = clearanceOf(context);
  if (clearance === null) return [];
  const { motorFoot, bottom, gap } = clearance;
  const bad = ['motor', 'well'].some((key) => faults.get(key)?.finding.severity === 'danger');
  const colour = bad ? ink.danger : ink.ink;
  if (bottom < pen.bottom) {
    if (gap < 0.02) return [];
    return [
      drawDimension('bottomClearance', {
        x: pen.x(0),
        from: pen.y(motorFoot),
        to: pen.y(bottom),
        words: show(frame.units).depth(gap),
        ink: colour,
        patch: ink.paper,
        type: frame.type,
        assumed: isAnyAssumed(context.solution, RESTS_ON.underMotor),
        leaders,
        box,
      }),
    ];
  }
  const x = pen.x(0);
  const from = pen.y(motorFoot);
  const end = frame.y + frame.height;
  const shaft = path(
    'shaft',
    `${stroke(x, from + 2, x, end - ARROW_FOOT)}M${pxText(x - 3.4)} ${pxText(end - 19)}L${pxText(x)} ${pxText(end - ARROW_FOOT)}L${pxText(x + 3.4)} ${pxText(end - 19)}`,
    faced('none', colour, 1.2),
  );
  return [group('bottomClearance', [shaft]), drawBreak(frame)];
}

/** The drawing is broken off here: the well goes on. */
function drawBreak({ x, y, width, height, ink }: DetailFrame): Shape {
  const foot = y + height;
  // Its ends and its lower edge lie outside the frame, which crops them.
  let upper = `M${pxText(x - 3)} ${pxText(foot - 5)}`;
  for (let at = -3; at < width; at += 48) upper += 'h33l4-4 5 8 4-4h2';
  return path('break', `${upper}V${pxText(foot + 3)}H${pxText(x - 3)}z`, { fill: ink.paper, stroke: ink.hair });
}
