/** Places of the range and the times they stand for: a minute to thirty days, evenly by logarithm. */
import type { Seconds } from '../../model/si.ts';

export const FIRST: Seconds = 60;
export const LAST: Seconds = 30 * 86400;
/** The range's last place; its first is 0. */
export const PLACES = 240;
/** Where one who may not be shown motion is taken step by step. */
export const STEPS: readonly Seconds[] = [60, 600, 3600, 4 * 3600, 86400, 7 * 86400, LAST];

export function timeAtPlace(place: number): Seconds {
  return FIRST * (LAST / FIRST) ** (Math.min(Math.max(place, 0), PLACES) / PLACES);
}

export function placeOfTime(time: Seconds): number {
  return (PLACES * Math.log(time / FIRST)) / Math.log(LAST / FIRST);
}

/** The nearest time that can be said in two figures: 4 h and not 3 h 57 min. */
export function neatTime(time: Seconds): Seconds {
  const { size } = unitFor(time);
  return Math.min(Math.max(Number((time / size).toPrecision(2)) * size, FIRST), LAST);
}

/** "12 min", "4 h", "1.5 d" */
export function sayTime(time: Seconds): string {
  const { size, name } = unitFor(time);
  return `${Number((time / size).toPrecision(2))} ${name}`;
}

/** The next stop after a time; after the last, the first again. */
export function nextStep(time: Seconds): Seconds {
  return STEPS.find((step) => step > time * 1.001) ?? FIRST;
}

function unitFor(time: Seconds): { readonly size: Seconds; readonly name: string } {
  if (time < 59.5 * 60) return { size: 60, name: 'min' };
  return time < 47.5 * 3600 ? { size: 3600, name: 'h' } : { size: 86400, name: 'days' };
}
