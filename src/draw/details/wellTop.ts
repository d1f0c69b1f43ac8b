/** Detail A, the well top: cap or seal, spare loop, conduit, frost, pitless adapter and the joint that carries the string. */
import { inches, show } from '../../model/units.ts';
import type { Solution } from '../../model/solution.ts';
import type { DetailFrame, DetailScene } from './contract.ts';
import { drawDetail } from './detail.ts';
import type { DetailContext } from './context.ts';
import type { Wanted } from './wanted.ts';
import { dimensionWidth, drawDimension } from './dimension.ts';
import { isAnyAssumed, RESTS_ON } from '../assumed.ts';
import type { Segment } from '../hatch/clip.ts';
import { forgetful } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { stringAxisOf } from '../parts/stringAxis.ts';
import { SLIDING_HALF } from '../well/stage.ts';
import { wellTopDepths } from './windows.ts';

/** From the top down; shares say where on the part the leader's dot sits. */
const WANTED: readonly Wanted[] = [
  { key: 'cap', across: 0.6, down: 0.14 },
  { key: 'tee', across: 0.6, down: 0.4 },
  { key: 'tap', across: 0.5, down: 0.2 },
  { key: 'union', across: 0.5, down: 0.3 },
  { key: 'support', across: 0.5, down: 0.5 },
  { key: 'capSplice', across: 0.5, down: 0.5 },
  { key: 'seal', across: 0.9, down: 0.6 },
  { key: 'bond', across: 0.5, down: 0.5 },
  { key: 'rope', across: 0.5, down: 0.22 },
  { key: 'cable', across: 0.5, down: 0.34 },
  { key: 'conduit', across: 0.5, down: 0.38 },
  { key: 'casing', across: 0.5, down: 0.5 },
  { key: 'grout', across: 0.5, down: 0.28 },
  { key: 'frost', across: 1, down: 0.5 },
  { key: SLIDING_HALF, across: 0.2, down: 0.3 },
  { key: 'pitlessAdapter', across: 0.5, down: 0.4 },
  { key: 'buriedLine', across: 0.5, down: 0.5 },
  { key: 'insertFitting/top', across: 0.7, down: 0.6 },
  { key: 'dropPipe', across: 0.6, down: 0.62 },
  { key: 'staticLevel', across: 0.9, down: 0.5 },
  { key: 'pumpingLevel', across: 0.9, down: 0.5 },
];

/** Under a seal the cable passes behind the pipe. */
const UNDER_SEAL: Readonly<Record<string, number>> = { cable: 0.12, conduit: 0.55 };
const WANTED_UNDER_SEAL: readonly Wanted[] = WANTED.map((each) => ({
  ...each,
  down: UNDER_SEAL[each.key] ?? each.down,
}));

/** Conduit, and past it what the line rests on. */
const BESIDE_CONDUIT = inches(3.2);
/** Gasket, nut, a wrench on it, and past that the conduit. */
const BESIDE_NUT = inches(3.3);

export function drawWellTop(solution: Solution, frame: DetailFrame, memory = forgetful): DetailScene {
  const outer = (solution.facts.well.casings[0]?.outsideDiameter ?? 0.16) / 2;
  const isSeal = solution.facts.top.kind === 'seal';
  const { topDepth, bottomDepth } = wellTopDepths(solution);
  return drawDetail(
    solution,
    frame,
    {
      topDepth,
      bottomDepth,
      roomLeft: outer + inches(1.6),
      roomRight: outer + (isSeal ? BESIDE_CONDUIT : BESIDE_NUT),
      sparePx: 24,
      trueProportion: false,
      wanted: isSeal ? WANTED_UNDER_SEAL : WANTED,
      extra: frostClearance,
    },
    memory,
  );
}

/** What of the adapter must be seen beside a figure, and over its outlet [px]. */
const ADAPTER_PX = 24;

/** The rule on adapter and frost. */
const FROST_RULE = 'PR-19';

/** How far the outlet is under the frost, or in it: a dimension in the free bore between cable and pipe. */
function frostClearance({ solution, frame, pen, box }: DetailContext, leaders: readonly Segment[]): Shape[] {
  const { values, facts, parts } = solution;
  const frost = values.frostDepth;
  if (frost === null || frost <= 0 || facts.top.kind !== 'pitless') return [];
  const gap = facts.top.depth - frost;
  if (Math.abs(gap) < 0.02) return [];
  const { ink, type } = frame;
  const axis = stringAxisOf(solution);
  const bad = solution.findings.some(({ rule, severity }) => rule === FROST_RULE && severity !== 'note');
  const adapter = parts.find(({ kind }) => kind === 'pitlessAdapter');
  const beside = adapter === undefined ? facts.top.depth : adapter.bottom;
  const cable = pen.x(axis.cable(beside)) + 6;
  const x = (cable + pen.x(axis.pipe(beside) - facts.dropPipe.outsideDiameter * 0.62)) / 2;
  const words = show(frame.units).small(Math.abs(gap));
  const wide = dimensionWidth(words, type);
  const casing = facts.well.casings[0];
  const wall = pen.x((casing?.insideDiameter ?? 0.15) / 2);
  // In a narrow casing, close over the adapter, the figure would lie on it: it stands outside, on the cable's side.
  const outside = pen.x(-(casing?.outsideDiameter ?? 0.16) / 2) - 4 - wide / 2;
  const isClose = wall - cable < wide + ADAPTER_PX && gap * pen.down < 2 * ADAPTER_PX;
  const figureX = isClose ? outside : Math.max(x, cable + wide / 2);
  return [
    drawDimension('frostClearance', {
      x,
      // Above the frost the adapter's own sign stands by its upper end; below it, the figure keeps clear of the cable.
      ...(gap < 0 ? { share: 0.76 } : { figureX }),
      from: pen.y(frost),
      to: pen.y(facts.top.depth),
      words,
      ink: bad ? ink.danger : ink.ink,
      patch: pen.tones.bore,
      type,
      assumed: isAnyAssumed(solution, RESTS_ON.underFrost),
      leaders,
      box,
      reach: wall,
    }),
  ];
}
