/** Detail B, the pump end: motor, intake, pump, valve, joint, arrestor and splice, down to the bottom when it is near. */
import { inches, show } from '../../model/units.ts';
import type { Solution } from '../../model/solution.ts';
import { forgetful } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { stroke } from '../parts/outline.ts';
import { pxText } from '../tenths.ts';
import type { Callout } from './callouts.ts';
import type { DetailFrame, DetailScene } from './contract.ts';
import { drawDetail } from './detail.ts';
import type { DetailContext } from './context.ts';
import { inflowsOf } from './wanted.ts';
import type { Wanted } from './wanted.ts';
import { drawDimension } from './dimension.ts';
import { pumpEndDepths } from './windows.ts';

const WANTED: readonly Wanted[] = [
  { key: 'pumpingLevel', across: 0.9, down: 0.5 },
  { key: 'staticLevel', across: 0.9, down: 0.5 },
  { key: 'casing', across: 0.5, down: 0.2 },
  { key: 'splice', across: 0.62, down: 0.5 },
  { key: 'dropPipe', across: 0.6, down: 0.3 },
  { key: 'torqueArrestor', across: 0.97, down: 0.5 },
  { key: 'insertFitting/pump', across: 0.8, down: 0.62 },
  { key: 'checkValve', across: 0.9, down: 0.5 },
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
  return drawDetail(
    solution,
    frame,
    {
      ...depths,
      roomLeft: widest + inches(0.5),
      roomRight: widest + inches(0.3),
      sparePx: 24,
      trueProportion: false,
      wanted: [...WANTED, ...inflowsOf(solution)],
      extra: drawClearance,
    },
    memory,
  );
}

/** Motor to bottom: a dimension with its figure while the bottom is in the frame, else a break and a label. */
function drawClearance({ solution, frame, pen, placed, severityOf }: DetailContext): {
  shapes: Shape[];
  callouts: Callout[];
} {
  const { facts, parts, values } = solution;
  const { ink } = frame;
  const motor = parts.find(({ kind }) => kind === 'motor');
  const body = placed.find(({ kind }) => kind === 'motor');
  if (motor === undefined || body === undefined) return { shapes: [], callouts: [] };
  const gap = values.clearanceToBottom ?? facts.well.bottom - motor.bottom;
  const say = show(frame.units);
  const bad = severityOf('motor') === 'danger' || severityOf('well') === 'danger';
  const colour = bad ? ink.danger : ink.ink;
  if (facts.well.bottom < pen.bottom) {
    if (gap < 0.02) return { shapes: [], callouts: [] };
    return {
      shapes: [
        drawDimension('bottomClearance', {
          x: pen.x(0),
          from: pen.y(motor.bottom),
          to: pen.y(facts.well.bottom),
          words: say.depth(gap),
          ink: colour,
          patch: ink.paper,
          type: frame.type,
        }),
      ],
      callouts: [],
    };
  }
  const x = pen.x(0);
  const from = pen.y(motor.bottom);
  const end = frame.y + frame.height;
  const shaft = path(
    'shaft',
    `${stroke(x, from + 2, x, end - 12)}M${pxText(x - 3.4)} ${pxText(end - 19)}L${pxText(x)} ${pxText(end - 12)}L${pxText(x + 3.4)} ${pxText(end - 19)}`,
    {
      fill: 'none',
      stroke: colour,
      'stroke-width': 1.2,
    },
  );
  return {
    shapes: [group('bottomClearance', [shaft]), drawBreak(frame)],
    callouts: [
      {
        key: 'toBottom',
        x,
        y: (from + end - 12) / 2,
        name: `${say.depth(gap)} to the bottom`,
        short: `${say.depth(gap)} to bottom`,
        note: `well ends at ${say.depth(facts.well.bottom)}`,
        weight: 4,
      },
    ],
  };
}

/** The drawing is broken off here: the well goes on. */
function drawBreak({ x, y, width, height, ink }: DetailFrame): Shape {
  const foot = y + height;
  // Its ends and its lower edge lie outside the frame, which crops them.
  let upper = `M${pxText(x - 3)} ${pxText(foot - 5)}`;
  for (let at = -3; at < width; at += 48) upper += 'h33l4-4 5 8 4-4h2';
  return path('break', `${upper}V${pxText(foot + 3)}H${pxText(x - 3)}z`, { fill: ink.paper, stroke: ink.hair });
}
