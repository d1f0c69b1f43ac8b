/** The widest thing that has to pass the casing. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import { sleeveOutside } from '../string/sleeveOutside.ts';

/** Diameter of pump over its cable guard, or of the sleeve round its motor. */
export function widestOf({ pump }: Pick<Facts, 'pump'>): Metres {
  return Math.max(pump.diameter, pump.motorDiameter, pump.shroudDiameter === null ? 0 : sleeveOutside(pump));
}
