/** How deep the water falls at the worst that the plan knows of: what a pump must stay under. */
import type { Facts } from '../facts.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import type { Metres } from '../si.ts';
import type { Curves, LowestPumping } from '../solution.ts';
import { lowestLevel } from './lowestLevel.ts';

/** The deeper of today's level at rest and the dry season's; null where nobody said today's. */
export function lowestStatic({ water }: Pick<Facts, 'water'>): Metres | null {
  const { staticLevel, staticLowest } = water;
  if (staticLevel === null) return null;
  return staticLowest === null ? staticLevel : Math.max(staticLevel, staticLowest);
}

/**
 * The lowest level at rest, and from there the drawdown at the larger of the demand and the pump's flow at cut-in on the
 * stronger end of its band; or the intake, or a cut-off above it, where one of them ends the fall.
 *
 * @returns  null where the level at rest is unknown, or the fall from it: no drawdown is known, and the yield does not
 *           say that the pump empties the bore
 */
export function lowestPumping(facts: Facts, { atCutInMost }: Pick<Curves, 'atCutInMost'>): LowestPumping | null {
  const rest = lowestStatic(facts);
  if (rest === null) return null;
  const floor = lowestLevel(facts);
  const end = floor.by === 'intake' ? 'intake' : 'cutOff';
  const dry = rest > (facts.water.staticLevel ?? rest);
  if (rest >= floor.depth) return { depth: rest, by: dry ? 'dryLevel' : 'level' };
  const relation = wellRelation(facts.water.pumping, facts.water.staticLevel);
  if (atCutInMost?.outpumped === true) return { depth: floor.depth, by: end };
  const flow = largestFlow(facts, atCutInMost?.flow ?? null);
  if (relation === null || flow === null) return null;
  // Where the well gives less than its drawdown says, the pump's own level lies deeper.
  const depth = Math.max(rest + relation.drawdownAt(flow), atCutInMost?.waterLevel ?? rest);
  return depth >= floor.depth ? { depth: floor.depth, by: end } : { depth, by: dry ? 'dryLevel' : 'level' };
}

/** What is drawn at the most: the demand, or what the pump gives beyond it. */
export function largestFlow({ house }: Facts, atCutInMost: number | null): number | null {
  return house.demand === null ? atCutInMost : Math.max(house.demand, atCutInMost ?? 0);
}
