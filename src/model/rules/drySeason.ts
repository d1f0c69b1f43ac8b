import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';

/** Whether a level at rest is that of the dry season, lower than today's. */
export function isDrySeason(rest: Metres, { water }: Pick<Facts, 'water'>): boolean {
  return rest > (water.staticLevel ?? rest);
}
