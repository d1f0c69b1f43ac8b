/** The yearly wave of temperature in the ground, without ice: a second, cautious view of the frost. */
import type { Celsius, Metres, Seconds } from '../si.ts';

const YEAR: Seconds = 365.25 * 86_400;

/** Diffusivity of moist soil, m²/s; soils lie between 0.3e-6 and 1.0e-6. From memory. */
export const USUAL_DIFFUSIVITY = 0.5e-6;

/**
 * Depth over which the swing of a temperature wave falls to 1/e.
 *
 *     D = √(a P/π)
 *
 * @param diffusivity  a [m²/s]
 * @param period       P; a year unless said
 * @returns            metres; the coldest time lags by P/(2π) for each D of depth, 58 days in a year
 * Throws              RangeError unless both are positive
 * Source              Oklahoma State University, Rain or Shine, section 13.4, eq. 13-5
 */
export function dampingDepth({
  diffusivity,
  period = YEAR,
}: {
  readonly diffusivity: number;
  readonly period?: Seconds;
}): Metres {
  if (!(diffusivity > 0 && period > 0)) {
    throw new RangeError(`dampingDepth: diffusivity ${diffusivity} m2/s, period ${period} s; both must be positive`);
  }
  return Math.sqrt((diffusivity * period) / Math.PI);
}

/**
 * Swing of temperature at a depth.
 *
 *     A = A₀ exp(−z/D)
 *
 * @returns  kelvin
 * Source    Oklahoma State University, Rain or Shine, section 13.4
 */
export function amplitudeAt({
  surfaceAmplitude,
  depth,
  dampingDepth: damping,
}: {
  readonly surfaceAmplitude: number;
  readonly depth: Metres;
  readonly dampingDepth: Metres;
}): number {
  if (!(surfaceAmplitude >= 0 && depth >= 0 && damping > 0)) {
    throw new RangeError(
      `amplitudeAt: amplitude ${surfaceAmplitude} K, depth ${depth} m, damping depth ${damping} m; ` +
        'the last must be positive, the others must not be negative',
    );
  }
  return surfaceAmplitude * Math.exp(-depth / damping);
}

/**
 * Temperature of the ground at a depth and time.
 *
 *     T(z,t) = T_m − A₀ exp(−z/D) cos(2π t/P − z/D),   t from the coldest day of the surface
 *
 * @param time  t, within a year [s]
 * @returns     degrees Celsius
 * Source       Oklahoma State University, Rain or Shine, section 13.4
 */
export function groundTemperature({
  meanGround,
  surfaceAmplitude,
  depth,
  time,
  dampingDepth: damping,
}: {
  readonly meanGround: Celsius;
  readonly surfaceAmplitude: number;
  readonly depth: Metres;
  readonly time: Seconds;
  readonly dampingDepth: Metres;
}): Celsius {
  const swing = amplitudeAt({ surfaceAmplitude, depth, dampingDepth: damping });
  return meanGround - swing * Math.cos((2 * Math.PI * time) / YEAR - depth / damping);
}

/**
 * Depth where the coldest moment of the year just reaches freezing. Moist ground freezes less deep, because its water
 * gives off heat.
 *
 *     z = D ln(A₀/T_m)
 *
 * @param meanGround  T_m, above freezing
 * @returns           metres; 0 where the surface never freezes
 * Throws             RangeError unless mean and damping depth are positive
 * Source             `groundTemperature` solved for its yearly minimum of 0 °C
 */
export function depthOfFreezing({
  meanGround,
  surfaceAmplitude,
  dampingDepth: damping,
}: {
  readonly meanGround: Celsius;
  readonly surfaceAmplitude: number;
  readonly dampingDepth: Metres;
}): Metres {
  if (!(meanGround > 0 && damping > 0 && surfaceAmplitude >= 0)) {
    throw new RangeError(
      `depthOfFreezing: mean ${meanGround} degC, damping depth ${damping} m, amplitude ${surfaceAmplitude} K; ` +
        'the first two must be positive',
    );
  }
  return surfaceAmplitude <= meanGround ? 0 : damping * Math.log(surfaceAmplitude / meanGround);
}
