/** Both ends of what the plan's pump gives. */
import type { Facts } from '../facts.ts';
import { genericBand, type PumpBand } from '../formulas/genericBand.ts';
import { pointsCurve, type PumpCurve } from '../formulas/pumpCurve.ts';
import type { CubicMetresPerSecond } from '../si.ts';

export type BandEnd = keyof PumpBand;

/**
 * The band of the plan's pump; both ends are one curve where its points are known, and null where nobody knows the
 * power of a generic one. A flow-limiting valve of known flow ends both.
 */
export function pumpBandOf({ pump }: Facts, density: number): PumpBand | null {
  const known = KNOWN.get(pump);
  if (known?.density === density) return known.band;
  const band = findBand(pump, density);
  KNOWN.set(pump, { density, band });
  return band;
}

/** Asked for by every figure and rule of a plan: found once for each pump, whose facts never change. */
const KNOWN = new WeakMap<Facts['pump'], { readonly density: number; readonly band: PumpBand | null }>();

function findBand(pump: Facts['pump'], density: number): PumpBand | null {
  const { curve, flowLimiter, frequency, power } = pump;
  const limit = typeof flowLimiter === 'number' && flowLimiter > 0 ? flowLimiter : null;
  if (curve.kind === 'points') {
    const only = endedAt(pointsCurve(curve.points), limit);
    return { least: only, most: only };
  }
  if (power === null) return null;
  const { least, most } = genericBand({ power, designFlow: curve.flow, density, frequency });
  return { least: endedAt(least, limit), most: endedAt(most, limit) };
}

function endedAt(curve: PumpCurve, limit: CubicMetresPerSecond | null): PumpCurve {
  return limit === null || limit >= (curve.endFlow ?? curve.runOutFlow) ? curve : { ...curve, endFlow: limit };
}
