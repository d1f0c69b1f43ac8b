/** A generic pump is a band between a weaker and a stronger curve, not a line. */
import type { CubicMetresPerSecond, Ratio, Watts } from '../si.ts';
import { serviceFactor } from '../tables/motors.ts';
import type { PumpCurve } from './headCurve.ts';
import { genericCurve, genericDesignHead } from './pumpCurve.ts';

/** What a pump may be: both ends alike where the maker's points are known. */
export interface PumpBand {
  /** What it gives at the least: whether water arrives is judged on this. */
  readonly least: PumpCurve;
  /** What it gives at the most: what its pressure may break, and whether it out-pumps the well, is judged on this. */
  readonly most: PumpCurve;
}

/** Shares of the load at the service factor between which pumps of one name lie. */
export const LEAST_SHARE: Ratio = 0.9;
export const MOST_SHARE: Ratio = 1.2;
/** No more than this share of the rated flow is promised. */
export const END_SHARE: Ratio = 1.4;

/** Factors on the rated power at both ends of the band. */
export interface BandFactors {
  readonly least: Ratio;
  readonly most: Ratio;
}

/**
 * Factors on the rated power: the service factor by 0.9 and by 1.2.
 *
 * @param power      rated shaft power [W]
 * @param frequency  of the supply [Hz]; null, which is unknown, puts the weaker end at 50 Hz and the stronger at 60 Hz
 *
 * Throws   RangeError when the power is not positive
 * Source   `serviceFactor`; the shares: common practice, no source
 */
export function bandFactors(power: Watts, frequency: 50 | 60 | null): BandFactors {
  return {
    least: LEAST_SHARE * serviceFactor(power, frequency ?? 50),
    most: MOST_SHARE * serviceFactor(power, frequency ?? 60),
  };
}

/**
 * Weaker and stronger end of what a well pump of a rated power and flow may be.
 *
 *     least: Hd from 0.9 f P, ended at 1.4 Qd;   most: Hd from 1.2 f P;   f service factor
 *
 * A pump end is built to load its motor up to the service factor, so the rated power alone would put it too low.
 *
 * @param power       P, rated shaft power [W]
 * @param designFlow  Qd, the flow in the pump's name [m³/s]
 * @param density     of the water [kg/m³]
 * @param frequency   of the supply [Hz]; null: unknown, see `bandFactors`
 *
 * Range    4 in pumps of 5 to 25 gpm, up to 5 hp; a stand-in until the maker's points are known
 * Throws   RangeError when an input is not positive
 * Source   `genericDesignHead` and `genericCurve`; the band and its end: common practice, from memory
 */
export function genericBand(input: {
  readonly power: Watts;
  readonly designFlow: CubicMetresPerSecond;
  readonly density: number;
  readonly frequency: 50 | 60 | null;
}): PumpBand {
  const { power, designFlow, density, frequency } = input;
  const factors = bandFactors(power, frequency);
  const atFactor = (factor: Ratio) =>
    genericCurve({
      designFlow,
      designHead: genericDesignHead({ power: factor * power, flow: designFlow, density }),
    });
  return { least: { ...atFactor(factors.least), endFlow: END_SHARE * designFlow }, most: atFactor(factors.most) };
}

/** The same curve on to the flow at which its head is gone. */
export function unended({ shutOffHead, runOutFlow, headAt }: PumpCurve): PumpCurve {
  return { shutOffHead, runOutFlow, headAt };
}
