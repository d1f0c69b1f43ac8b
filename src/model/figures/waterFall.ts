/** The water in the bore: how much of it the pump can take, and how it falls where the well cannot keep up. */
import type { Facts } from '../facts.ts';
import type { PumpBand } from '../formulas/genericBand.ts';
import { levelFall, type LevelFall, type PumpedAtLevel } from '../formulas/levelFall.ts';
import type { PumpCurve } from '../formulas/pumpCurve.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import { usableStorage } from '../formulas/wellStorage.ts';
import { STANDARD_GRAVITY } from '../formulas/water.ts';
import type { CubicMetres, CubicMetresPerSecond, Metres } from '../si.ts';
import type { BoreStretch } from '../solution.ts';
import { lowestLevel } from './lowestLevel.ts';
import { mostYield, provenYield } from './provenYield.ts';
import { pipesHead, pointAtLevel, tankPressure, type HeadOf, type System } from './pumpInWell.ts';

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

/**
 * What flows in with the water drawn down so far, whatever is known: by the drawdown of a test or aquifer, and no more
 * than `mostYield`; where only a yield is known, that yield at any drawdown. Null where neither is known.
 */
export function inflowOf(facts: Facts): ((drawdown: Metres) => CubicMetresPerSecond) | null {
  const relation = wellRelation(facts.water.pumping, facts.water.staticLevel);
  if (relation !== null) {
    const most = mostYield(facts) ?? Infinity;
    return (drawdown) => Math.min(relation.inflowAt(drawdown), most);
  }
  const given = provenYield(facts);
  return given === null ? null : () => given;
}

/**
 * Fall of the water from a level at rest to the lowest that the pump can draw it to. The one account of a well that
 * cannot keep up: the figure of the time, the level against time and the day's water all rest on it.
 *
 * @param flow  a flow that does not change; null: what the pump gives at cut-in, on the stronger end of its band, less
 *              and less as the water falls. Where well or pipes leave that unknown, what a flow-limiting valve holds
 * @returns  null where the well keeps up, or bore, inflow or flow is unknown, or no water stands over the lowest level
 */
export function waterFall(
  work: BoreAtWork,
  staticLevel: Metres,
  flow: CubicMetresPerSecond | null = null,
): LevelFall | null {
  const { facts, bore } = work;
  const lowest = lowestLevel(facts).depth;
  const inflowAt = inflowOf(facts);
  if (!(lowest > staticLevel) || inflowAt === null || !boreKnown(bore, staticLevel, lowest)) return null;
  const pumped = flow === null ? pumpedDownTo(work, staticLevel, lowest, inflowAt) : steady(flow, staticLevel, lowest);
  const pipeDiameter = facts.dropPipe.outsideDiameter;
  return pumped === null ? null : levelFall({ bore, pipeDiameter, pumped, inflowAt });
}

const steady = (flow: CubicMetresPerSecond, from: Metres, to: Metres): PumpedAtLevel[] => [
  { level: from, flow },
  { level: to, flow },
];

function pumpedDownTo(
  { facts, system, band }: BoreAtWork,
  from: Metres,
  to: Metres,
  inflowAt: (drawdown: Metres) => CubicMetresPerSecond,
): readonly PumpedAtLevel[] | null {
  const pipes = pipesHead(facts, system, tankPressure(facts, 'cutIn'));
  const { flowLimiter } = facts.pump;
  if (band === null || pipes === null) return typeof flowLimiter === 'number' ? steady(flowLimiter, from, to) : null;
  const atLowest = pointAtLevel(band.most, pipes, to).flow;
  // The flow falls and the inflow grows all the way down, so a well that keeps up at the lowest level keeps up.
  return atLowest > inflowAt(to - from) ? fallingFlows(band.most, pipes, { from, to, atLowest }) : null;
}

const FLOWS = 20;

/** Flows evenly apart, each with the depth at which the pump gives it, which no search is needed for. */
function fallingFlows(
  curve: PumpCurve,
  pipes: HeadOf,
  { from, to, atLowest }: { from: Metres; to: Metres; atLowest: CubicMetresPerSecond },
): PumpedAtLevel[] {
  const atRest = pointAtLevel(curve, pipes, from).flow;
  const pumped: PumpedAtLevel[] = [{ level: from, flow: atRest }];
  for (let i = 0; i < FLOWS; i++) {
    const flow = atRest + ((atLowest - atRest) * i) / FLOWS;
    const level = curve.headAt(flow) - pipes(flow);
    const before = pumped[pumped.length - 1]?.level ?? from;
    if (level > before && level < to) pumped.push({ level, flow });
  }
  pumped.push({ level: to, flow: atLowest });
  return pumped;
}
