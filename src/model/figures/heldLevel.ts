/** Whether the pumping level at the demand is one that a pump can hold. */
import type { Solution } from '../solution.ts';

/** With the level below the intake the pump draws air: neither that level nor the head from it is ever worked at. */
export function isHeld({ levels, facts }: Pick<Solution, 'levels' | 'facts'>): boolean {
  return levels.pumping === null || levels.pumping <= facts.pump.setting;
}
