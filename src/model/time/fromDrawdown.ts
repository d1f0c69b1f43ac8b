import { boreResponse, type BoreInAquifer } from '../formulas/boreStorage.ts';
import type { Seconds, SquareMetresPerSecond } from '../si.ts';

/**
 * Transmissivity that gives a measured drawdown in a pumped well, its own water counted.
 *
 *     solve  boreResponse(T, t) = s/Q   for T
 *
 * @param bore    all but the transmissivity
 * @param wanted  s/Q [s/m²] and the time t [s] when it was measured
 * @returns  T [m²/s]; null when no transmissivity gives it: even a tight ground lets the level fall only as fast as the
 *           pump empties the bore, s/Q = t/(pi rc²), and an open one leaves the entry loss
 *
 * Range    as `boreResponse`; T between 1e-12 and 1e3
 * Throws   RangeError when an input is not positive
 * Source   the way of Theis, Brown & Meyer (1963), US Geological Survey Water-Supply Paper 1536-I, with the solution of
 *          Papadopulos & Cooper (1967)
 */
export function transmissivityFromDrawdown(
  bore: Omit<BoreInAquifer, 'transmissivity'>,
  wanted: { readonly perFlow: number; readonly time: Seconds },
): SquareMetresPerSecond | null {
  const surplus = (logT: number) =>
    boreResponse({ ...bore, transmissivity: Math.exp(logT) }, wanted.time) / wanted.perFlow - 1;
  let [low, high] = [LEAST, MOST];
  if (!(surplus(low) > 0 && surplus(high) < 0)) return null;
  // Response falls with T all the way, so halving cannot miss; seventy halvings end at the last bit of a double.
  for (let step = 0; step < 70; step++) {
    const middle = (low + high) / 2;
    if (surplus(middle) > 0) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}

const LEAST = Math.log(1e-12);
const MOST = Math.log(1e3);
