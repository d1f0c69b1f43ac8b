/** The water in the bore: how much of it the pump can take, and how it falls where the well cannot keep up. */
import type { Facts } from '../facts.ts';
import type { PumpBand } from '../formulas/genericBand.ts';
import { levelFall, type LevelFall, type PumpedAtLevel } from '../formulas/levelFall.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import { usableStorage } from '../formulas/wellStorage.ts';
import { STANDARD_GRAVITY } from '../formulas/water.ts';
import type { CubicMetres, CubicMetresPerSecond, Metres } from '../si.ts';
import type { BoreStretch, PumpInWell } from '../solution.ts';
import { lowestLevel } from './lowestLevel.ts';
import { mostYield, provenYield } from './provenYield.ts';
import { pipesHead, pointAtLevel, tankPressure, type System } from './pumpInWell.ts';

/** What the figures of the bore's water are worked out from. */
export interface BoreAtWork {
  readonly facts: Facts;
  readonly bore: readonly BoreStretch[];
  readonly system: System;
  readonly band: PumpBand | null;
}

/** Whether the plan says how wide the bore is all the way between two depths. */
export function boreKnown(bore: readonly BoreStretch[], from: Metres, to: Metres): boolean {
  return bore.every(({ known, top, bottom }) => known || bottom <= from || top >= to);
}

export interface DeepestTaken {
  readonly depth: Metres;
  readonly by: 'intake' | 'low-level cut-off' | 'lift';
}

/**
 * How deep the water can be taken from: to the intake or a cut-off, or, where that is higher, to the depth from which
 * the weaker end of the pump still reaches cut-in with no flow. Where pump or rise is unknown, so is that depth, and the
 * intake or cut-off alone is counted.
 */
export function deepestTaken({ facts, system, band }: Omit<BoreAtWork, 'bore'>): DeepestTaken {
  const lowest = lowestLevel(facts);
  const { rise } = facts.house;
  if (band === null || rise === null) return lowest;
  const lifts =
    band.least.shutOffHead - rise - tankPressure(facts, 'cutIn') / (system.water.density * STANDARD_GRAVITY);
  return lifts < lowest.depth ? { depth: lifts, by: 'lift' } : lowest;
}

/** Water that the pump can lift into the tank, from a level at rest down [m³]; null where the bore there is unknown. */
export function usableWater(work: BoreAtWork, staticLevel: Metres): CubicMetres | null {
  const { facts, bore } = work;
  const { depth } = deepestTaken(work);
  if (!boreKnown(bore, staticLevel, depth)) return null;
  const stored = usableStorage({
    bore,
    staticLevel,
    intakeDepth: depth,
    dropPipeOutsideDiameter: facts.dropPipe.outsideDiameter,
  });
  // A hole narrower than the pipe stores nothing; that nothing fits is for the rules to say.
  return Math.max(stored, 0);
}

/** What flows in, whatever is known of the well. */
export interface Inflow {
  readonly at: (drawdown: Metres) => CubicMetresPerSecond;
  /** From this drawdown on it grows no more; null: it has no such turn. */
  readonly turnsAt: Metres | null;
}

/**
 * What flows in with the water drawn down so far: by the drawdown of a test or aquifer, and no more than `mostYield`;
 * where only a yield is known, that yield at any drawdown. Null where neither is known.
 */
export function inflowOf(facts: Facts): Inflow | null {
  const relation = wellRelation(facts.water.pumping, facts.water.staticLevel);
  if (relation !== null) {
    const most = mostYield(facts);
    return most === null
      ? { at: relation.inflowAt, turnsAt: null }
      : { at: (drawdown) => Math.min(relation.inflowAt(drawdown), most), turnsAt: relation.drawdownAt(most) };
  }
  const given = provenYield(facts);
  return given === null ? null : { at: () => given, turnsAt: null };
}

/** Why nobody knows when the water is gone. */
export type NobodyKnows =
  /** No water stands over the lowest level even at rest. */
  | 'noWater'
  /** The pump lifts none of it into the tank. */
  | 'liftsNothing'
  /** What the pump gives is unknown: its power, or the pipes that it pumps through. */
  | 'pumpFlow'
  | 'inflow'
  /** The well cannot keep up, and how much water its bore holds is unknown. */
  | 'bore';

/** How a well stands up to a pump that runs on. */
export type Standing =
  | { readonly kind: 'falls'; readonly fall: LevelFall }
  | { readonly kind: 'keepsUp' }
  | { readonly kind: 'unknown'; readonly why: NobodyKnows };

/** At a flow that does not change, or where the pump works from that level at rest, as far as that is known. */
export type Pumping = { readonly flow: CubicMetresPerSecond } | { readonly point: PumpInWell | null };

/**
 * The one account of a well that cannot keep up: how the water falls from a level at rest to the lowest that the pump can
 * draw it to. The figure of the time, the level against time and the day's water all rest on it, so that none of them
 * names a time where another has none.
 *
 * The pump gives what it gives at cut-in, on the stronger end of its band, less and less as the water falls; where well
 * or pipes leave that unknown, what a flow-limiting valve holds. The well keeps up where at the lowest level as much
 * flows in as is pumped: by its drawdown after the tested hours, which prove no more than that.
 */
export function standingOf(work: BoreAtWork, staticLevel: Metres, pumping: Pumping): Standing {
  const { facts, bore } = work;
  const lowest = lowestLevel(facts).depth;
  if (!(lowest > staticLevel + APART)) return nobodyKnows('noWater');
  // A point with the water above the lowest level is a well that keeps up: nothing to follow.
  if ('point' in pumping && pumping.point?.outpumped === false)
    return pumping.point.flow > 0 || settlesLow(facts, staticLevel, pumping.point)
      ? KEEPS_UP
      : nobodyKnows('liftsNothing');
  const pump = 'flow' in pumping ? steady(pumping.flow) : pumpOf(work);
  if (pump === null) return nobodyKnows('pumpFlow');
  const inflow = inflowOf(facts);
  if (inflow === null) return nobodyKnows('inflow');
  const atRest = pump.at(staticLevel);
  if (!(atRest > 0)) return nobodyKnows('liftsNothing');
  // The point of a pump that takes more than the well gives is the one at the lowest level.
  const atLowest = 'point' in pumping && pumping.point !== null ? pumping.point.flow : pump.at(lowest);
  // The flow falls and the inflow grows all the way down, so a well that keeps up at the lowest level keeps up.
  if (!(atLowest > inflow.at(lowest - staticLevel))) return KEEPS_UP;
  if (!boreKnown(bore, staticLevel, lowest)) return nobodyKnows('bore');
  const fall = fallTo(work, { pump, inflow, from: staticLevel, to: lowest, atRest, atLowest });
  return fall === null ? KEEPS_UP : { kind: 'falls', fall };
}

/** Whether a well that keeps up does so only once the pump gives less: it yields less than its drawdown says. */
export function settlesLow(facts: Facts, staticLevel: Metres, { flow, waterLevel, outpumped }: PumpInWell): boolean {
  const relation = wellRelation(facts.water.pumping, facts.water.staticLevel);
  return !outpumped && relation !== null && waterLevel > staticLevel + relation.drawdownAt(flow) + APART;
}

/** So near to where the water settles, as a share of the way, counts as there: it never comes quite there. */
const SETTLED = 1 - 1e-4;

/** The water on its way to where such a pump takes just what the well gives; null where the bore is unknown. */
export function settlingFall(work: BoreAtWork, staticLevel: Metres, { waterLevel }: PumpInWell): LevelFall | null {
  const [pump, inflow] = [pumpOf(work), inflowOf(work.facts)];
  if (pump === null || inflow === null || !boreKnown(work.bore, staticLevel, waterLevel)) return null;
  const to = staticLevel + SETTLED * (waterLevel - staticLevel);
  if (!(to > staticLevel + APART)) return null;
  return fallTo(work, { pump, inflow, from: staticLevel, to, atRest: pump.at(staticLevel), atLowest: pump.at(to) });
}

interface Way extends Pick<Descent, 'from' | 'to' | 'atRest' | 'atLowest'> {
  readonly pump: PumpAtDepth;
  readonly inflow: Inflow;
}

function fallTo({ facts, bore }: BoreAtWork, { pump, inflow, ...way }: Way): LevelFall | null {
  const pumped = pumpedDown(pump, {
    ...way,
    joints: bore.map(({ bottom }) => bottom),
    inflowTurns: inflow.turnsAt === null ? null : way.from + inflow.turnsAt,
  });
  return levelFall({ bore, pipeDiameter: facts.dropPipe.outsideDiameter, pumped, inflowAt: inflow.at });
}

/** The fall itself; null where the well keeps up or nobody knows. */
export function waterFall(work: BoreAtWork, staticLevel: Metres, pumping: Pumping): LevelFall | null {
  const standing = standingOf(work, staticLevel, pumping);
  return standing.kind === 'falls' ? standing.fall : null;
}

const KEEPS_UP: Standing = { kind: 'keepsUp' };
const nobodyKnows = (why: NobodyKnows): Standing => ({ kind: 'unknown', why });

/** What a pump gives with the water at a depth, and the other way about. */
interface PumpAtDepth {
  readonly at: (depth: Metres) => CubicMetresPerSecond;
  /** No search is needed for this one; null for a flow that does not change. */
  readonly depthOf: ((flow: CubicMetresPerSecond) => Metres) | null;
}

const steady = (flow: CubicMetresPerSecond): PumpAtDepth => ({ at: () => flow, depthOf: null });

function pumpOf({ facts, system, band }: BoreAtWork): PumpAtDepth | null {
  const pipes = pipesHead(facts, system, tankPressure(facts, 'cutIn'));
  const { flowLimiter } = facts.pump;
  if (band === null || pipes === null)
    return typeof flowLimiter === 'number' && flowLimiter > 0 ? steady(flowLimiter) : null;
  const { most } = band;
  return { at: (depth) => pointAtLevel(most, pipes, depth).flow, depthOf: (flow) => most.headAt(flow) - pipes(flow) };
}

interface Descent {
  readonly from: Metres;
  readonly to: Metres;
  readonly atRest: CubicMetresPerSecond;
  readonly atLowest: CubicMetresPerSecond;
  /** Where the bore changes. */
  readonly joints: readonly Metres[];
  /** Where the inflow grows no more. */
  readonly inflowTurns: Metres | null;
}

/** Of the whole way down. */
const PIECES = 20;
/** Nearer than this two depths are one [m]. */
const APART: Metres = 1e-6;

/**
 * The pump's flow on the way down: at every depth where flow, inflow or bore turn, and between them at flows evenly
 * apart, for which no search is needed.
 */
function pumpedDown(pump: PumpAtDepth, descent: Descent): PumpedAtLevel[] {
  const { from, to, atRest, atLowest, joints, inflowTurns } = descent;
  // Down to here a valve holds the flow, or the end of the curve.
  const heldTo = pump.depthOf === null || atLowest === atRest ? to : pump.depthOf(atRest);
  const flowAt = (depth: Metres) => (depth <= heldTo ? atRest : depth >= to ? atLowest : pump.at(depth));
  const bends = [heldTo, ...(inflowTurns === null ? [] : [inflowTurns])];
  const inside = [...bends, ...joints].filter((depth) => depth > from + APART && depth < to - APART);
  const pumped: PumpedAtLevel[] = [{ level: from, flow: atRest }];
  let [top, flowAbove] = [from, atRest];
  for (const level of [...inside.sort((one, other) => one - other), to]) {
    if (level - top < APART) continue;
    const flow = flowAt(level);
    pumped.push(...between({ top, level, flowAbove, flow, all: atRest - atLowest }, pump));
    pumped.push({ level, flow, bend: bends.some((bend) => Math.abs(bend - level) < APART) });
    [top, flowAbove] = [level, flow];
  }
  return pumped;
}

interface SmoothStretch {
  readonly top: Metres;
  readonly level: Metres;
  readonly flowAbove: CubicMetresPerSecond;
  readonly flow: CubicMetresPerSecond;
  /** By how much the flow falls on the whole way. */
  readonly all: CubicMetresPerSecond;
}

function between({ top, level, flowAbove, flow, all }: SmoothStretch, { depthOf }: PumpAtDepth): PumpedAtLevel[] {
  const falls = flowAbove - flow;
  const pieces = falls > 0 ? Math.max(Math.round((PIECES * falls) / all), 4) : PIECES;
  const points: PumpedAtLevel[] = [];
  let before = top;
  for (let i = 1; i < pieces; i++) {
    const share = i / pieces;
    const here = flowAbove - falls * share;
    // Where only the inflow changes it may do so as the root of the drawdown: finest at the top.
    const depth = falls > 0 && depthOf !== null ? depthOf(here) : top + (level - top) * share * share;
    if (depth - before < APART || level - depth < APART) continue;
    points.push({ level: depth, flow: here });
    before = depth;
  }
  return points;
}
