/** The low-level cut-off: whether one guards the pump, and where its probe hangs. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import type { Change, Solved } from '../solution.ts';
import { feet, inches, readQuantity, writeQuantity } from '../units.ts';
import { exceeds, meets } from './grace.ts';
import { change, unitAt, words } from './fix.ts';
import { floorTo } from './rounding.ts';

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

/** A probe at a distance above an intake, typed as the field was, else in the plan's units. It counts from the ground. */
export function probeAbove(
  { facts, plan }: Pick<Solved, 'facts' | 'plan'>,
  intake: Metres,
  above: Metres = CUT_OFF_ABOVE_INTAKE,
): Change | null {
  const depth = intake - above;
  if (!meets(depth, 'length')) return null;
  const unit = unitAt(plan, 'pump.lowLevelCutOff', facts.units === 'us' ? 'ft' : 'm');
  const step = unit === 'ft' ? feet(0.5) : unit === 'm' ? 0.1 : unit === 'cm' || unit === 'mm' ? 0.01 : inches(1);
  return { path: 'pump.lowLevelCutOff', to: writeQuantity(floorTo(depth, step), 'length', unit, step) };
}

/** The depth that a change writes for the probe: what a button says is what it sets. */
export function probeWritten({ to }: Change, instead: Metres): Metres {
  const read = typeof to === 'string' ? readQuantity(to, 'length') : null;
  return read?.ok === true ? read.si : instead;
}

/**
 * Dry-run protection with a probe just above the intake, or by current where there is no room for one. None at a depth to
 * which the pump draws no water: there it never acts.
 */
export function addCutOff(solved: Solved) {
  const { facts } = solved;
  if (!drawsTo(solved, facts.pump.setting - CUT_OFF_ABOVE_INTAKE)) return words('pumpForThisLift', {});
  const probe = probeAbove(solved, facts.pump.setting);
  return probe === null
    ? change(facts, [{ path: 'pump.lowLevelCutOff', to: true }], 'protectByCurrent', {})
    : change(facts, [probe], 'protectByProbe', {
        depth: probeWritten(probe, facts.pump.setting - CUT_OFF_ABOVE_INTAKE),
      });
}
