/** How deep the water falls at the worst that the plan knows of: what a pump must stay under. */
import type { Facts } from '../facts.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import type { CubicMetresPerSecond, Metres, Ratio } from '../si.ts';
import type { LowestPumping } from '../solution.ts';
import { pumpFromLevel, type FallCurves } from './curves.ts';
import { lowestLevel, lowestStatic } from './lowestLevel.ts';
import { provenYield, testedFlow } from './provenYield.ts';

export { lowestStatic } from './lowestLevel.ts';

/**
 * The lowest level at rest, and from there the drawdown at the larger of the demand and the pump's flow at cut-in on the
 * stronger end of its band; or the intake, or a cut-off above it, where one of them ends the fall. Where the house wants
 * more than flows in, and even the stronger pump lifts no water from so deep, the fall ends where that pump gives none.
 *
 * @returns  null where the level at rest is unknown, or the fall from it: no drawdown is known, and the yield does not
 *           say that the pump empties the bore
 */
export function lowestPumping(facts: Facts, curves: FallCurves): LowestPumping | null {
  const rest = lowestStatic(facts);
  if (rest === null) return null;
  const floor = lowestLevel(facts);
  const end = floor.by === 'intake' ? 'intake' : 'cutOff';
  const dry = rest > (facts.water.staticLevel ?? rest);
  if (rest >= floor.depth) return { depth: rest, by: dry ? 'dryLevel' : 'level', taken: null };
  // From a deeper level at rest the pump gives less, and draws it down less.
  const atCutInMost = dry ? pumpFromLevel(facts, { end: 'most', tank: 'cutIn' }, rest) : curves.atCutInMost;
  const relation = wellRelation(facts.water.pumping, facts.water.staticLevel);
  if (atCutInMost?.outpumped === true) return { depth: floor.depth, by: end, taken: null };
  const flow = largestFlow(facts, atCutInMost?.flow ?? null);
  const lift = endOfLift(facts, curves, floor.depth);
  if (relation === null || flow === null) return lift === null ? null : { depth: lift, by: 'lift', taken: null };
  // Where the well gives less than its drawdown says, the pump's own level lies deeper.
  const depth = Math.max(rest + relation.drawdownAt(flow), atCutInMost?.waterLevel ?? rest);
  if (lift !== null && depth >= lift) return { depth: lift, by: 'lift', taken: null };
  if (depth >= floor.depth) return { depth: floor.depth, by: end, taken: null };
  return {
    depth,
    by: dry ? 'dryLevel' : 'level',
    taken: atCutInMost === null ? 'demandAlone' : isBeyondTest(facts, flow) ? 'beyondTest' : null,
  };
}

/** A test is believed up to so many times its flow. Common practice, no source. */
export const BEYOND_THE_TEST: Ratio = 1.5;

/** So much more than was ever pumped, or reported to flow in, that its drawdown is foretold and not known. */
function isBeyondTest(facts: Facts, flow: CubicMetresPerSecond): boolean {
  const tested = testedFlow(facts.water.pumping);
  return tested !== null && flow > Math.max(BEYOND_THE_TEST * tested, facts.well.yield ?? 0) * (1 + HAIR);
}

/** One flow written in two units. */
const HAIR: Ratio = 0.001;

/**
 * Above the intake and any probe: the deepest water from which even the stronger pump lifts, in a well of which the house
 * wants more than flows in. Null elsewhere.
 */
function endOfLift(facts: Facts, { liftsFromMost, outrunsYield }: FallCurves, floor: Metres): Metres | null {
  const { demand } = facts.house;
  const gives = provenYield(facts);
  if (liftsFromMost === null || outrunsYield !== true || demand === null || gives === null) return null;
  return demand > gives && liftsFromMost < floor ? liftsFromMost : null;
}

/** What is drawn at the most: the demand, or what the pump gives beyond it. */
export function largestFlow({ house, pump }: Facts, atCutInMost: number | null): number | null {
  const flow = house.demand === null ? atCutInMost : Math.max(house.demand, atCutInMost ?? 0);
  // What a valve holds back no tap draws.
  return flow !== null && typeof pump.flowLimiter === 'number' ? Math.min(flow, pump.flowLimiter) : flow;
}
