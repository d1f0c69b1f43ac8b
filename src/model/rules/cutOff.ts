/** The low-level cut-off: whether one guards the pump, and where its probe hangs. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import type { Change, Solved } from '../solution.ts';
import { feet, inches, writeQuantity } from '../units.ts';
import { exceeds, meets } from './grace.ts';
import { unitAt } from './fix.ts';
import { floorTo } from './rounding.ts';

/** A low-level cut-off stops the pump this far above its intake: 1 to 2 ft or more. Common practice, no source. */
export const CUT_OFF_ABOVE_INTAKE = feet(2);

/** Whether something stops the pump before it runs dry: a probe below the intake does not. */
export function hasCutOff({ facts }: Solved): boolean {
  const { lowLevelCutOff, setting } = facts.pump;
  return typeof lowLevelCutOff === 'number' ? exceeds(setting - lowLevelCutOff, 'length') : lowLevelCutOff === true;
}

/** How far a probe hangs above the intake; null where no depth of it is planned. */
export function probeAboveIntake({ pump }: Facts): Metres | null {
  return typeof pump.lowLevelCutOff === 'number' ? pump.setting - pump.lowLevelCutOff : null;
}

/** A cut-off that holds the water up where the well gives less than the pump takes: for a pump that hangs below it. */
export function cutOffLevel({ facts }: Solved, pumpingLevel: Metres): Metres | null {
  const { lowLevelCutOff } = facts.pump;
  return typeof lowLevelCutOff === 'number' && exceeds(pumpingLevel - lowLevelCutOff, 'length') ? lowLevelCutOff : null;
}

/** A probe at its distance above an intake, typed as the field was, else in the plan's units. It counts from the ground. */
export function probeAbove({ facts, plan }: Solved, intake: Metres): Change | null {
  const depth = intake - CUT_OFF_ABOVE_INTAKE;
  if (!meets(depth, 'length')) return null;
  const unit = unitAt(plan, 'pump.lowLevelCutOff', facts.units === 'us' ? 'ft' : 'm');
  const step = unit === 'ft' ? feet(0.5) : unit === 'm' ? 0.1 : unit === 'cm' || unit === 'mm' ? 0.01 : inches(1);
  return { path: 'pump.lowLevelCutOff', to: writeQuantity(floorTo(depth, step), 'length', unit, step) };
}
