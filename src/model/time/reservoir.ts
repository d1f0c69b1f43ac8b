/** A bore that the ground fills in proportion to the drawdown: the run and rest of a pump that empties it. */
import { requirePositive } from '../formulas/require.ts';
import type { CubicMetresPerSecond, Metres, Seconds, SquareMetres, SquareMetresPerSecond } from '../si.ts';

export interface Reservoir {
  /** A, of the free water surface [m²]. */
  readonly area: SquareMetres;
  /** c, inflow per drawdown [m²/s]: the specific capacity. */
  readonly inflowPerDrawdown: SquareMetresPerSecond;
}

/**
 * Time in which a pump draws the level from one drawdown to a deeper one.
 *
 *     A ds/dt = Q - c s;   t = A/c ln( (Q/c - s1) / (Q/c - s2) )
 *
 * @param flow  Q of the pump [m³/s]
 * @returns  t [s]; null when the level never gets there: s2 is where the inflow equals the flow, or deeper
 *
 * Throws   RangeError when area or inflow is not positive
 * Source   balance of volumes; Hvorslev (1951), US Army Corps of Engineers, Waterways Experiment Station Bulletin 36, from
 *          memory
 */
export function timeToDraw(
  { area, inflowPerDrawdown: c }: Reservoir,
  flow: CubicMetresPerSecond,
  from: Metres,
  to: Metres,
): Seconds | null {
  requireReservoir('timeToDraw', area, c);
  const steady = flow / c;
  return steady > to ? (area / c) * Math.log((steady - from) / (steady - to)) : null;
}

/**
 * Time in which the level comes back from one drawdown to a lesser one while nothing is pumped.
 *
 *     t = A/c ln(s1/s2)
 *
 * Throws   RangeError when area, inflow or a drawdown is not positive
 * Source   as `timeToDraw`
 */
export function timeToFill({ area, inflowPerDrawdown: c }: Reservoir, from: Metres, to: Metres): Seconds {
  requireReservoir('timeToFill', area, c);
  requirePositive('timeToFill', 'drawdown', from);
  requirePositive('timeToFill', 'drawdown left', to);
  return (area / c) * Math.log(from / to);
}

/** Drawdown left after a rest: s1 exp(-c t/A) [m]. Throws as `timeToFill`. */
export function drawdownAfterRest({ area, inflowPerDrawdown: c }: Reservoir, from: Metres, rest: Seconds): Metres {
  requireReservoir('drawdownAfterRest', area, c);
  return from * Math.exp((-c * rest) / area);
}

function requireReservoir(where: string, area: SquareMetres, inflowPerDrawdown: SquareMetresPerSecond): void {
  requirePositive(where, 'area', area);
  requirePositive(where, 'inflow per drawdown', inflowPerDrawdown);
}
