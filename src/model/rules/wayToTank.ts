/** What of the way from the well to the tank nobody said: without all of it no pump has a working point. */
import type { Facts } from '../facts.ts';

export type PartOfWay = 'line' | 'distance' | 'rise';

export function lackingOnWay({ house }: Facts): readonly PartOfWay[] {
  return (['line', 'distance', 'rise'] as const).filter((part) => house[part] === null);
}
