/** How the model's time runs on the page. */
import type { Seconds } from '../../model/si.ts';
import { FIRST, LAST } from './timeScale.ts';

/** A minute to thirty days in so many milliseconds. */
const WHOLE_SPAN = 12_000;

/** A time that went to its place on the range and back is a last digit less. */
const ALMOST = 1 - 1e-9;

/**
 * The time so many milliseconds on. It runs evenly by logarithm, because a level falls fast at first and ever more
 * slowly; and from the moment the pump stops it does so afresh, because the level comes back in the same way.
 *
 * @param stops  when the pump stops [s]; null: it runs on
 * @returns      at most thirty days after the start
 */
export function timeLater(time: Seconds, stops: Seconds | null, milliseconds: number): Seconds {
  const growth = (LAST / FIRST) ** (milliseconds / WHOLE_SPAN);
  if (stops === null || time < stops * ALMOST) {
    const later = Math.max(time, FIRST) * growth;
    return Math.min(later, stops ?? LAST, LAST);
  }
  return Math.min(stops + Math.max(time - stops, FIRST) * growth, LAST);
}
