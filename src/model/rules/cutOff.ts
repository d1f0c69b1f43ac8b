/** The low-level cut-off: whether one guards the pump, and where its probe hangs. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { exceeds, meets } from './grace.ts';

/** A low-level cut-off stops the pump this far above its intake: 1 to 2 ft or more. Common practice, no source. */
export const CUT_OFF_ABOVE_INTAKE = feet(2);

/** Whether something stops the pump before it runs dry: a probe below the intake does not. */
export function hasCutOff({ facts }: Solved): boolean {
  const { lowLevelCutOff, setting } = facts.pump;
  return typeof lowLevelCutOff === 'number' ? exceeds(setting - lowLevelCutOff, 'length') : lowLevelCutOff === true;
}

/** Depth of a probe that hangs above the intake; null where none is planned there. */
export function probeOf({ facts }: Pick<Solved, 'facts'>): Metres | null {
  const { lowLevelCutOff, setting } = facts.pump;
  return typeof lowLevelCutOff === 'number' && exceeds(setting - lowLevelCutOff, 'length') ? lowLevelCutOff : null;
}

/** Whether the stronger end of the pump draws the water so deep at all; not doubted where nobody knows. */
export function drawsTo({ curves }: Pick<Solved, 'curves'>, depth: Metres): boolean {
  return curves.liftsFromMost === null || meets(curves.liftsFromMost - depth, 'length');
}

/** Whether what stops the pump can ever act: no water falls to a probe that hangs deeper than the pump lifts from. */
export function isGuarded(solved: Solved): boolean {
  if (!hasCutOff(solved)) return false;
  const { facts } = solved;
  return drawsTo(solved, probeOf(solved) ?? Math.min(facts.pump.setting, facts.well.bottom));
}

/** How far a probe hangs above the intake; null where no depth of it is planned. */
export function probeAboveIntake({ pump }: Facts): Metres | null {
  return typeof pump.lowLevelCutOff === 'number' ? pump.setting - pump.lowLevelCutOff : null;
}
