import { STANDARD_GRAVITY } from '../formulas/water.ts';
import type { Newtons } from '../si.ts';
import type { Solved } from '../solution.ts';
import { limit } from './rule.ts';
import type { Limit, Numbers } from './rule.ts';

/**
 * How deep the pump may hang so that the full string, without any water round it, stays within a load.
 *
 * @param variant  names the end on the drawing, with its numbers
 */
export function hangLimit<const Variant extends string, const Said extends Numbers>(
  { facts, values }: Solved,
  most: Newtons,
  variant: Variant,
  numbers: Said,
): readonly Limit<Variant, Said>[] {
  const { hangLoadDry, dropPipeCutLength } = values;
  if (hangLoadDry === null || dropPipeCutLength === null || facts.pump.mass === null || dropPipeCutLength <= 0)
    return [];
  // The dry load is the pump's weight and so much for every metre of string.
  const perMetre = (hangLoadDry - facts.pump.mass * STANDARD_GRAVITY) / dropPipeCutLength;
  if (!(perMetre > 0)) return [];
  const to = facts.pump.setting + (most - hangLoadDry) / perMetre;
  return [limit('pump.setting', { to, givesWay: true }, variant, numbers)];
}
