import { STANDARD_GRAVITY } from '../formulas/water.ts';
import type { Newtons } from '../si.ts';
import type { Solved } from '../solution.ts';
import type { Limit } from './rule.ts';

/** How deep the pump may hang so that the full string, without any water round it, stays within a load. */
export function hangLimit({ facts, values }: Solved, most: Newtons, label: Limit['label']): readonly Limit[] {
  const { hangLoadDry, dropPipeCutLength } = values;
  if (hangLoadDry === null || dropPipeCutLength === null || facts.pump.mass === null || dropPipeCutLength <= 0)
    return [];
  // The dry load is the pump's weight and so much for every metre of string.
  const perMetre = (hangLoadDry - facts.pump.mass * STANDARD_GRAVITY) / dropPipeCutLength;
  if (!(perMetre > 0)) return [];
  return [{ setting: 'pump.setting', to: facts.pump.setting + (most - hangLoadDry) / perMetre, label, givesWay: true }];
}
