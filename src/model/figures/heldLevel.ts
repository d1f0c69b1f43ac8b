/** Whether a pumping level is one that a pump can hold. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import { levelsOf } from './levels.ts';

/**
 * A pumping level as the pump holds it, or null: below the intake it draws air, so that neither that level nor the head
 * from it is ever worked at.
 */
export function heldLevel(level: Metres | null, { pump, well }: Pick<Facts, 'pump' | 'well'>): Metres | null {
  return level === null || level > Math.min(pump.setting, well.bottom) ? null : level;
}

/** Whether the pump holds the pumping level at the demand, as far as anybody knows. */
export function isHeld({ facts }: { readonly facts: Facts }): boolean {
  const { falls } = levelsOf(facts);
  return falls === null || heldLevel(falls, facts) !== null;
}

/** The same of the dry season's. */
export function isHeldDry({ facts }: { readonly facts: Facts }): boolean {
  const { staticLevel, staticLowest } = facts.water;
  const { falls } = levelsOf(facts);
  if (falls === null || staticLevel === null || staticLowest === null) return true;
  return heldLevel(falls - staticLevel + staticLowest, facts) !== null;
}
