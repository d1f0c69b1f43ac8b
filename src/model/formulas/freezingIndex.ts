/**
 * How cold a winter is: degree-days of frost in the air. Indexes here are kelvin-days below 0 °C; the °F-days that tables
 * print are 1.8 times as many.
 */
import type { Celsius } from '../si.ts';

const DAYS_PER_YEAR = 365.25;

/** Kelvin-days of so many °F-days. */
export const fahrenheitDays = (count: number): number => (count * 5) / 9;

/**
 * Seasonal freezing index: the fall of the running sum of (T − 0 °C) from its highest point to its lowest point after
 * that. Thaw days inside the season count against it, so it is less than the plain sum of the freezing days.
 *
 * @param dailyMeans  one winter, from autumn to spring [°C]
 * @returns           kelvin-days, never negative
 * Source             American Meteorological Society, Glossary of Meteorology, "freezing index"
 */
export function seasonalFreezingIndex(dailyMeans: readonly Celsius[]): number {
  let sum = 0;
  let highest = 0;
  let deepest = 0;
  for (const mean of dailyMeans) {
    sum += mean;
    highest = Math.max(highest, sum);
    deepest = Math.max(deepest, highest - sum);
  }
  return deepest;
}

/**
 * Simple freezing index from monthly means: days times degrees of the months below freezing.
 *
 * @param monthlyMeans  twelve, from January [°C]
 * @returns             kelvin-days; a little less than from a smooth curve through the same means
 * Throws               RangeError unless there are twelve
 * Source               Boyd's approximate index, as in the usual glossaries of frost action
 */
export function monthlyFreezingIndex(monthlyMeans: readonly Celsius[]): number {
  if (monthlyMeans.length !== 12) {
    throw new RangeError(`monthlyFreezingIndex: ${monthlyMeans.length} months, must be twelve, from January`);
  }
  let index = 0;
  monthlyMeans.forEach((mean, month) => {
    if (mean < 0) index += -mean * (MONTH_DAYS[month] ?? 0);
  });
  return index;
}

const MONTH_DAYS = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** A year whose temperature swings as a cosine about its mean. */
export interface SineYear {
  readonly meanAnnual: Celsius;
  /** Half of July less January [K]. */
  readonly amplitude: number;
}

/**
 * Length of the freezing season of a sine-wave year.
 *
 *     d = 365.25 θ/π,   θ = acos(T_m / A)
 *
 * @returns  days: 0 where it never freezes, 365.25 where it never thaws
 * Throws    RangeError unless the amplitude is positive
 * Source    closed form of T(t) = T_m − A cos(2πt/365.25)
 */
export function sineSeason({ meanAnnual, amplitude }: SineYear): number {
  return (DAYS_PER_YEAR * freezingAngle(meanAnnual, amplitude)) / Math.PI;
}

/**
 * Freezing index of a sine-wave year.
 *
 *     F = (365.25/π) (A sin θ − T_m θ),   θ = acos(T_m / A)
 *
 * @returns  kelvin-days
 * Range     within −7 % to +2.5 % of a smooth curve through monthly normals (22 stations around Minnesota); its season is
 *           7 to 11 days longer
 * Throws    RangeError unless the amplitude is positive
 * Source    closed form of T(t) = T_m − A cos(2πt/365.25)
 */
export function sineFreezingIndex({ meanAnnual, amplitude }: SineYear): number {
  const angle = freezingAngle(meanAnnual, amplitude);
  return (DAYS_PER_YEAR / Math.PI) * (amplitude * Math.sin(angle) - meanAnnual * angle);
}

/** θ: half of the freezing season as an angle; 0 where it never freezes, π where it never thaws. */
function freezingAngle(meanAnnual: Celsius, amplitude: number): number {
  if (!(amplitude > 0 && amplitude < Infinity) || !Number.isFinite(meanAnnual)) {
    throw new RangeError(
      `freezing season: amplitude ${amplitude} K, mean ${meanAnnual} degC; the amplitude must be positive`,
    );
  }
  const ratio = meanAnnual / amplitude;
  if (ratio >= 1) return 0;
  return ratio <= -1 ? Math.PI : Math.acos(ratio);
}

/**
 * Amplitude of the sine-wave year that has a freezing index, for a place where only that and the mean are known.
 *
 * @param index       F [K·day], positive
 * @param meanAnnual  T_m above freezing [°C]
 * @returns           kelvin; the season follows from `sineSeason`
 * Throws             RangeError unless both are positive
 * Source             `sineFreezingIndex` solved by bisection; it rises with the amplitude
 */
export function sineAmplitude({ index, meanAnnual }: { readonly index: number; readonly meanAnnual: Celsius }): number {
  if (!(index > 0 && index < Infinity && meanAnnual > 0 && meanAnnual < Infinity)) {
    throw new RangeError(`sineAmplitude: index ${index} K day, mean ${meanAnnual} degC; both must be positive`);
  }
  let low = meanAnnual;
  let high = 2 * meanAnnual + 1;
  while (sineFreezingIndex({ meanAnnual, amplitude: high }) < index) high *= 2;
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (sineFreezingIndex({ meanAnnual, amplitude: middle }) < index) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
