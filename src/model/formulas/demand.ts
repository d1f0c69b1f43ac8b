/** Flow that a house asks for at its peak. */
import type { CubicMetresPerSecond } from '../si.ts';
import { FIXTURE_UNITS, FLUSH_TANK_DEMAND, type Fixture } from '../tables/fixtureUnits.ts';
import { gpm } from '../units.ts';
import { requireNotNegative } from './require.ts';

/** Sum of fixture units [wsfu] of a house's fixtures, each with its count. */
export function fixtureUnits(fixtures: Readonly<Partial<Record<Fixture, number>>>): number {
  let sum = 0;
  for (const fixture of Object.keys(FIXTURE_UNITS) as Fixture[]) {
    const count = fixtures[fixture] ?? 0;
    requireNotNegative('fixtureUnits', fixture, count);
    sum += count * FIXTURE_UNITS[fixture];
  }
  return sum;
}

/**
 * Peak flow for a sum of fixture units, from the demand table by straight lines.
 *
 * @param units  [wsfu]
 * @returns  flow [m³/s]; 0 for no units, a share of the first row below one unit; null above 60 units, the table's end
 *
 * Range    1 to 60 units, flush tanks
 * Error    codes disagree: 14 units are 17 gpm here and 10.5 gpm by the National Standard Plumbing Code
 * Throws   RangeError when the sum is negative
 * Source   International Plumbing Code (2018), Table E103.3(3)
 */
export function peakDemand(units: number): CubicMetresPerSecond | null {
  requireNotNegative('peakDemand', 'fixture units', units);
  let [below, low] = [0, 0];
  for (const [above, high] of FLUSH_TANK_DEMAND) {
    if (units <= above) return gpm(low + ((units - below) / (above - below)) * (high - low));
    [below, low] = [above, high];
  }
  return null;
}
