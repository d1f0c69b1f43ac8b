import type { Seconds } from '../si.ts';

const PER_STRETCH = 48;

/**
 * Times evenly spaced by logarithm: from the first to the stop, and from the first after the stop to the last day; or
 * in one stretch when nothing stops.
 */
export function sampleTimes(first: Seconds, stops: Seconds | null, last: Seconds): readonly Seconds[] {
  if (stops === null || stops >= last) return evenly(first, last, 2 * PER_STRETCH);
  const pumping = stops > first ? evenly(first, stops, PER_STRETCH) : [stops];
  const left = last - stops;
  return left > first ? [...pumping, ...evenly(first, left, PER_STRETCH).map((since) => stops + since)] : pumping;
}

/** Both ends exact. */
function evenly(from: Seconds, to: Seconds, count: number): Seconds[] {
  return Array.from({ length: count + 1 }, (_, i) =>
    i === 0 ? from : i === count ? to : from * (to / from) ** (i / count),
  );
}
