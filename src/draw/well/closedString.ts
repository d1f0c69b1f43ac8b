/** The string from afar: parts closed, those closer together than a symbol merged into what is below them. */
import { boreRadiusAt } from '../../model/bore.ts';
import type { Metres } from '../../model/si.ts';
import type { PartKind, PlacedPart } from '../../model/solution.ts';
import type { SmallKind } from '../kinds.ts';
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
  const probeOn = probe === undefined ? null : closedProbeOn(probe, pen, runs, { pump, top: -facts.well.casingHeight });
  const small = smallParts(parts, looks, pump, stage);
  const shapes: Shape[] = [];
  if (rope !== undefined) shapes.push(closedRope(rope, pen, runs));
  if (cable !== undefined) shapes.push(closedCable(cable, pen, runs, pump));
  if (probe !== undefined && probeOn !== null) shapes.push(closedProbeWires(probe, pen, runs, probeOn));
  if (pipe !== undefined) {
    const ramp = pipeRamp(facts.dropPipe.material, pen.tones);
    shapes.push(closedPipe(pipe, pen, { runs, ramp, carrier: spoolOver(stage, pipe), pumpTop: pump.top }));
    place(stage, pipe, { left: pen.x(0) - PIPE_HIT, right: pen.x(0) + PIPE_HIT });
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
    shapes.push(SYMBOLS[part.kind](part, (part.top + part.bottom) / 2, runs, stage));
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
    place(stage, probe, { left: probeOn.left - 2, right: probeOn.right + 2, top: probeOn.head, bottom: probeOn.foot });
  }
  return {
    shapes: [group('string', shapes)],
    trueExtents: pump.symbol ? [{ key: 'pump', top: pump.trueTop, bottom: pump.trueBottom }] : [],
    clear: small.map(({ key }) => key),
  };
}

/** The pointer finds the pipe this far from its middle [px]. */
const PIPE_HIT = 5;

type SmallPart = PlacedPart & { readonly kind: SmallKind };

function isSmall(part: PlacedPart): part is SmallPart {
  return SMALL.has(part.kind);
}

/** Those that stand clear of each other and of the pump, from the pump up; the others are merged into what is below. */
function smallParts(
  parts: readonly PlacedPart[],
  { joints, clear: before }: SectionLooks,
  pump: PumpStick,
  { pen }: Stage,
): SmallPart[] {
  const small = parts
    .filter(isSmall)
    .filter((part) => part.key !== 'coupling/top' && (part.kind !== 'coupling' || joints))
    .sort((a, b) => b.bottom - a.bottom);
  const clear: SmallPart[] = [];
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

/** Those that have a symbol, each with its own. */
const SYMBOLS: Readonly<Record<SmallKind, (part: PlacedPart, at: Metres, runs: Runs, stage: Stage) => Shape>> = {
  checkValve: (part, at, runs, { solution, pen }) =>
    closedCheckValve(part, pen, runs.pipe(at), solution.facts.string.arrow),
  splice: (part, at, runs, { pen }) => closedSplice(part, pen, runs.cable(at)),
  coupling: (part, at, runs, { pen }) => closedCoupling(part, pen, runs.pipe(at), runs.pipeHalf),
  torqueArrestor: (part, at, runs, { pen }) => closedArms(part, pen, runs.pipe(at)),
  guard: (part, at, runs, { pen }) => closedArms(part, pen, runs.pipe(at)),
};

/** Across the hole, and no lower than a symbol. */
function placeSmall(part: PlacedPart, stage: Stage): void {
  const { solution, pen } = stage;
  const { middle, tall } = onPaper(part, pen);
  const half = Math.max(SYMBOL, boreRadiusAt(solution.bore, part.bottom) * pen.across * 0.9);
  place(stage, part, {
    left: pen.x(0) - half,
    right: pen.x(0) + half,
    top: middle - tall / 2,
    bottom: middle + tall / 2,
  });
}
