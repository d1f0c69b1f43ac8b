import type { PumpFacts } from '../facts.ts';
import type { Metres } from '../si.ts';

/** Outside diameter of the flow sleeve, which has to pass the well; 0 without one. */
export function sleeveOutside({
  shroudDiameter,
  shroudWall,
}: Pick<PumpFacts, 'shroudDiameter' | 'shroudWall'>): Metres {
  return shroudDiameter === null ? 0 : shroudDiameter + 2 * shroudWall;
}
