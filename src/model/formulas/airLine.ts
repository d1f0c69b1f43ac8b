/** Water levels from pressure gauges. */
import type { Metres, Pascals } from '../si.ts';
import { requireNotNegative } from './require.ts';
import { pressureAsHead } from './water.ts';

/**
 * Depth to water by an air line.
 *
 *     d = L - p/(rho g)
 *
 * @param lineLength  L, from the measuring point down to its open end [m]
 * @param pressure    p, steady gauge reading once air bubbles out [Pa]
 * @param density     rho of the water [kg/m³]
 * @returns  d below the measuring point [m]
 *
 * Error    the gauge's; 1 psi is 2.3 ft
 * Throws   RangeError when the pressure is negative, or holds more water than the line is long
 * Source   MIL-HDBK-1164 (1997), app. A
 */
export function airLineDepth(lineLength: Metres, pressure: Pascals, density: number): Metres {
  requireNotNegative('airLineDepth', 'pressure', pressure);
  const covered = pressureAsHead(pressure, density);
  if (!(covered <= lineLength))
    throw new RangeError(`airLineDepth: the gauge shows ${covered} m of water over a line of ${lineLength} m`);
  return lineLength - covered;
}

/**
 * Static level of a flowing well, from its pressure when shut in.
 *
 *     h = p/(rho g) above the gauge
 *
 * Throws   RangeError when the pressure is negative
 * Source   hydrostatics
 */
export function shutInHead(pressure: Pascals, density: number): Metres {
  requireNotNegative('shutInHead', 'pressure', pressure);
  return pressureAsHead(pressure, density);
}
