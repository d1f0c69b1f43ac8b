/** How the well stands up to what is pumped, by the account that gives the figure of the time too. */
import { pumpFromLevel, systemOf } from '../figures/curves.ts';
import { pumpBandOf, type BandEnd } from '../figures/pumpBand.ts';
import {
  settlesLow,
  settlingFall,
  standingOf,
  usableWater,
  waterFall,
  type BoreAtWork,
  type Standing,
} from '../figures/waterFall.ts';
import type { LevelFall } from '../formulas/levelFall.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import type { CubicMetres, CubicMetresPerSecond, Metres } from '../si.ts';
import type { PumpInWell, Solved } from '../solution.ts';
import { suspensionDepth } from '../string/topDepths.ts';

const STRONGEST = { end: 'most', tank: 'cutIn' } as const;

/** Where the pump works at cut-in from a level at rest, on the stronger end of its band; null where that is unknown. */
export function pumpFrom({ curves, facts }: Solved, staticLevel: Metres): PumpInWell | null {
  return staticLevel === facts.water.staticLevel ? curves.atCutInMost : pumpFromLevel(facts, STRONGEST, staticLevel);
}

/** How the well stands up to its own pump, exactly as the figure of the time is worked out. */
export function ownStanding(solved: Solved, staticLevel: Metres): Standing {
  return standingOf(workOf(solved), staticLevel, { point: pumpFrom(solved, staticLevel) });
}

/** The same on either end of a generic pump's band: the weaker one draws the water down later, or never so far. */
export function pumpedStanding(solved: Solved, staticLevel: Metres, end: BandEnd): Standing {
  if (end === 'most') return ownStanding(solved, staticLevel);
  const work = workOf(solved);
  const band = work.band === null ? null : { ...work.band, most: work.band.least };
  const point = pumpFromLevel(solved.facts, { end, tank: 'cutIn' }, staticLevel);
  return standingOf({ ...work, band }, staticLevel, { point });
}

/**
 * The water on its way down to where the pump takes just what the well gives, a yield under what its drawdown says.
 *
 * @returns  `elsewhere`: the water stands where its drawdown puts it. Null: it falls, and the bore is unknown
 */
export function ownSettling(solved: Solved, staticLevel: Metres): LevelFall | null | 'elsewhere' {
  const point = pumpFrom(solved, staticLevel);
  if (point === null || !settlesLow(solved.facts, staticLevel, point)) return 'elsewhere';
  return settlingFall(workOf(solved), staticLevel, point);
}

/** How it stands up to a flow that does not change. */
export function standingAt(solved: Solved, staticLevel: Metres, flow: CubicMetresPerSecond): Standing {
  return standingOf(workOf(solved), staticLevel, { flow });
}

/** The fall under a flow that does not change; null where the well keeps up or the fall is unknown. */
export function fallAt(solved: Solved, staticLevel: Metres, flow: CubicMetresPerSecond): LevelFall | null {
  return waterFall(workOf(solved), staticLevel, { flow });
}

/** Whether the plan says how far the water falls at a flow; a yield alone does not. */
export function drawdownKnown({ facts }: Solved): boolean {
  return wellRelation(facts.water.pumping, facts.water.staticLevel) !== null;
}

/** Water that the pump can lift into the tank from a level at rest down, as the figure counts it. */
export function storedWater(solved: Solved, staticLevel: Metres): CubicMetres | null {
  return usableWater(workOf(solved), staticLevel);
}

function workOf({ facts, bore }: Solved): BoreAtWork {
  const system = systemOf(facts, suspensionDepth(facts));
  return { facts, bore, system, band: pumpBandOf(facts, system.water.density) };
}
