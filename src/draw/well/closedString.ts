/** The string from afar: parts closed, those closer together than a symbol merged into what is below them. */
import { boreRadiusAt } from '../../model/bore.ts';
import type { Metres } from '../../model/si.ts';
import type { PartKind, PlacedPart } from '../../model/solution.ts';
import { SMALL, slack, SYMBOL, type SectionLooks } from '../looks.ts';
import { closedCable } from '../parts/cable.ts';
import { closedCheckValve } from '../parts/checkValve.ts';
import { onPaper } from '../parts/closed.ts';
import { closedPipe } from '../parts/dropPipe.ts';
import { closedCoupling } from '../parts/nipple.ts';
import { closedProbe, closedProbeOn, closedProbeWires } from '../parts/probe.ts';
import { drawPumpStick, pumpStick, type PumpStick } from '../parts/pumpStick.ts';
import { closedRope } from '../parts/rope.ts';
import { runsOf, type Runs } from '../parts/runs.ts';
import { closedSplice } from '../parts/splice.ts';
import { closedTies } from '../parts/tie.ts';
import { closedArms } from '../parts/torqueArrestor.ts';
import type { Shape } from '../scene.ts';
import { group } from '../shapes.ts';
import { pipeRamp, place, type Stage } from './stage.ts';
import { spoolOver } from './topWorks.ts';

export interface ClosedString {
  readonly shapes: readonly Shape[];
  /** True extents of what a symbol stands for: ticks on the rail. */
  readonly trueExtents: readonly { readonly key: string; readonly top: Metres; readonly bottom: Metres }[];
  /** Keys of the small parts that stand clear of one another. */
  readonly clear: readonly string[];
}

export function drawClosedString(stage: Stage, looks: SectionLooks): ClosedString {
  const { solution, pen, axis } = stage;
  const { parts, facts } = solution;
  const find = (kind: PartKind): PlacedPart | undefined => parts.find((part) => part.kind === kind);
  const [pipe, rope, cable, probe] = [find('dropPipe'), find('rope'), find('cable'), find('probe')];
  const runs = runsOf(pipe, axis, pen);
  const pump = pumpStick(facts.pump, pen);
  const probeOn = probe === undefined ? null : closedProbeOn(probe, pen, runs, pump);
  const small = smallParts(parts, looks, pump, stage);
  const shapes: Shape[] = [];
  if (rope !== undefined) shapes.push(closedRope(rope, pen, runs));
  if (cable !== undefined) shapes.push(closedCable(cable, pen, runs, pump));
  if (probe !== undefined && probeOn !== null)
    shapes.push(closedProbeWires(probe, pen, runs, probeOn, -facts.well.casingHeight));
  if (pipe !== undefined) {
    const ramp = pipeRamp(facts.dropPipe.material, pen.tones);
    shapes.push(closedPipe(pipe, pen, { runs, ramp, carrier: spoolOver(stage, pipe), pumpTop: pump.top }));
    place(stage, pipe, pen.x(0) - PIPE_HIT, pen.x(0) + PIPE_HIT);
  }
  shapes.push(
    ...closedTies(
      parts.filter(({ kind }) => kind === 'tie'),
      pen,
      runs,
      looks.tieGap,
    ),
  );
  for (const part of small) {
    shapes.push(closedSmall(part, runs, stage));
    placeSmall(part, stage);
  }
  shapes.push(drawPumpStick(pump, find('shroud'), pen));
  stage.placed.push({
    part: 'pump',
    kind: 'pump',
    left: pump.left,
    right: pump.left + pump.width,
    top: pump.top,
    bottom: pump.bottom,
  });
  if (probe !== undefined && probeOn !== null && probe.bottom >= pen.top && probe.bottom <= pen.bottom) {
    shapes.push(closedProbe(probe, pen, runs, probeOn));
    place(stage, probe, probeOn.left - 2, probeOn.right + 2, probeOn.head, probeOn.foot);
  }
  return {
    shapes: [group('string', shapes)],
    trueExtents: pump.symbol ? [{ key: 'pump', top: pump.trueTop, bottom: pump.trueBottom }] : [],
    clear: small.map(({ key }) => key),
  };
}

/** The pointer finds the pipe this far from its middle [px]. */
const PIPE_HIT = 5;

/** Those that stand clear of each other and of the pump, from the pump up; the others are merged into what is below. */
function smallParts(
  parts: readonly PlacedPart[],
  { joints, clear: before }: SectionLooks,
  pump: PumpStick,
  { pen }: Stage,
): PlacedPart[] {
  const small = parts
    .filter((part) => SMALL.has(part.kind) && part.key !== 'coupling/top' && (part.kind !== 'coupling' || joints))
    .sort((a, b) => b.bottom - a.bottom);
  const clear: PlacedPart[] = [];
  let lastMiddle = pump.top;
  let lastHalf = 0;
  for (const part of small) {
    const { middle, tall } = onPaper(part, pen);
    const half = tall / 2;
    // What stood clear last may come a little closer before it is merged.
    const least = (lastHalf + half) * slack(before === null ? undefined : before.includes(part.key));
    if (lastMiddle - middle < least) continue;
    if (part.bottom >= pen.top && part.top <= pen.bottom) clear.push(part);
    lastMiddle = middle;
    lastHalf = half;
  }
  return clear;
}

function closedSmall(part: PlacedPart, runs: Runs, { solution, pen }: Stage): Shape {
  const depth = (part.top + part.bottom) / 2;
  const x = runs.pipe(depth);
  switch (part.kind) {
    case 'checkValve':
      return closedCheckValve(part, pen, x, solution.facts.string.arrow);
    case 'splice':
      return closedSplice(part, pen, runs.cable(depth));
    case 'coupling':
      return closedCoupling(part, pen, x, runs.pipeHalf);
    default:
      return closedArms(part, pen, x);
  }
}

/** Across the hole, and no lower than a symbol. */
function placeSmall(part: PlacedPart, stage: Stage): void {
  const { solution, pen } = stage;
  const { middle, tall } = onPaper(part, pen);
  const half = Math.max(SYMBOL, boreRadiusAt(solution.bore, part.bottom) * pen.across * 0.9);
  place(stage, part, pen.x(0) - half, pen.x(0) + half, middle - tall / 2, middle + tall / 2);
}
