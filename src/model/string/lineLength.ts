/** How long the line to the house is to be cut: up the slope, and out of the trench to the floor where the riser begins. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import { lineDepth } from './topDepths.ts';

/**
 * @returns  null while nobody knows how far the house is. Where the rise is unknown the ground is taken as level: what it
 *           adds is less than the way up from the trench
 */
export function lineLength({ house, top }: Pick<Facts, 'house' | 'top'>): Metres | null {
  if (house.distance === null) return null;
  return Math.hypot(house.distance, house.rise ?? 0) + Math.max(lineDepth({ top }), 0);
}
