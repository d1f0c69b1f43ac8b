import type { Assumed, Facts } from '../facts.ts';
import { siteFrostEstimate } from '../formulas/frost.ts';
import type { Metres } from '../si.ts';
import { inches, writeQuantity } from '../units.ts';

/**
 * The depth that frost is held to reach. What the user enters wins, since the local code decides; an estimate stands
 * in only where nothing was entered, and is then listed as assumed.
 */
export function frostDepthOf(facts: Facts): { readonly depth: Metres | null; readonly assumed: Assumed | null } {
  const { site, units } = facts;
  if (site.frostDepth !== null) return { depth: site.frostDepth, assumed: null };
  const estimate = site.freezing === null ? null : siteFrostEstimate(site.freezing);
  if (estimate === null || 'reason' in estimate) return { depth: null, assumed: null };
  const text =
    units === 'us'
      ? writeQuantity(estimate.depth, 'length', 'in', inches(1))
      : writeQuantity(estimate.depth, 'length', 'cm', 0.01);
  return { depth: estimate.depth, assumed: { path: 'site.frostDepth', value: `${text} (estimate)` } };
}
