/** The low-level cut-off as a change of the plan: where its probe goes, and how that is typed. */
import type { Metres } from '../si.ts';
import type { Change, Solved } from '../solution.ts';
import { feet, inches, readQuantity, writeQuantity } from '../units.ts';
import { CUT_OFF_ABOVE_INTAKE, drawsTo } from './cutOff.ts';
import { change, unitAt, words } from './fix.ts';
import { meets } from './grace.ts';
import { floorTo } from './rounding.ts';

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
