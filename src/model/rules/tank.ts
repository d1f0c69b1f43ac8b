/** Tank, switch and relief against what the pump can reach. */
import { valueAt } from '../plan/editPlan.ts';
import type { Pascals } from '../si.ts';
import type { Solved } from '../solution.ts';
import { psi, writeQuantity } from '../units.ts';
import type { Show } from '../units.ts';
import { meets } from './grace.ts';
import { change, unitAt, words } from './mend.ts';
import { floorTo } from './rounding.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Mend } from './rule.ts';
import { PRESSURE_CAUTION } from './say.ts';

/** Shut-off pressure at the tank over the cut-out pressure, to be sure that the switch opens. */
export const CUT_OUT_SPARE: Pascals = psi(10);
const LEAST_CUT_IN: Pascals = psi(20);
/** A switch is set no finer. */
const KILOPASCAL: Pascals = 1000;

function shutOffMissing({ facts, values }: Solved): string {
  if (values.shutOffPressureAtPump === null) return 'the pump’s power or curve';
  return facts.water.staticLevel === null ? 'the static water level' : 'the rise from the well to the tank';
}

/** A pump too weak to lift water to the tank reaches nothing there. */
function reached(pressure: Pascals, show: Show): string {
  return pressure > 0 ? show.pressure(pressure) : 'no pressure';
}

export const tankHolds = defineRule({
  number: 'PR-44',
  part: 'tank',
  broken: 'The pump can burst the tank',
  holds: 'The tank holds what the pump can reach',
  source: 'common practice, no source; the rating is the one printed on the tank',
  why: 'If the switch sticks, only a relief valve keeps the pump from bursting the tank.',
  caution: PRESSURE_CAUTION,
  judge({ solved, facts, values, show }) {
    const { house } = facts;
    if (house.kind === 'open tank') return doesNotApply;
    const measured = values.shutOffPressureAtTank;
    if (measured === null) return missing(shutOffMissing(solved));
    const margin = house.tankRating - measured;
    const message = `At no flow the pump reaches ${reached(measured, show)} at a tank rated ${show.pressure(house.tankRating)}.`;
    if (meets(margin, 'pressure')) return holds(`${show.pressure(margin)} to spare`, message);
    if (house.reliefValve === true)
      return holds('relief valve fitted', 'The relief valve must pass the whole flow of the pump; check its size.');
    if (house.reliefValve === null) return missing('whether a relief valve stands at the tank');
    return breaks({
      severity: 'danger',
      measured,
      limit: house.tankRating,
      margin,
      quantity: 'pressure',
      depth: null,
      amount: `${show.pressure(-margin)} over`,
      message: `${message.slice(0, -1)}, and no relief valve is planned.`,
      mend: change(facts, [{ path: 'house.reliefValve', to: true }], 'Add a relief valve'),
    });
  },
});

export const pumpReachesCutOut = defineRule({
  number: 'PR-46',
  part: 'switch',
  broken: 'The pump never reaches cut-out',
  holds: 'The pump reaches the cut-out pressure',
  source: 'common practice, no source',
  why: 'A pump that cannot reach the switch’s cut-out runs on and on until it fails.',
  judge({ solved, facts, values, show }) {
    const { house } = facts;
    if (house.kind === 'open tank') return doesNotApply;
    const reach = values.shutOffPressureAtTank;
    if (reach === null) return missing(shutOffMissing(solved));
    const measured = reach - house.cutOut;
    const margin = measured - CUT_OUT_SPARE;
    const message = `At no flow the pump reaches ${reached(reach, show)} at the tank; cut-out is ${show.pressure(house.cutOut)}.`;
    if (meets(margin, 'pressure')) return holds(`${show.pressure(measured)} to spare`, message);
    const never = !meets(measured, 'pressure');
    return breaks({
      severity: never ? 'danger' : 'warning',
      measured,
      limit: CUT_OUT_SPARE,
      margin,
      quantity: 'pressure',
      depth: null,
      ...(never ? {} : { title: 'The pump barely reaches cut-out' }),
      amount: never ? `${show.pressure(-measured)} short` : `only ${show.pressure(measured)} to spare`,
      message: never
        ? message
        : `At no flow the pump reaches ${show.pressure(reach)} at the tank, barely over the cut-out of ${show.pressure(house.cutOut)}.`,
      mend: lowerSwitch(solved, reach),
    });
  },
});

/** Both settings of the switch down by the same steps of 5 psi, while the house keeps 20 psi. */
function lowerSwitch({ facts, plan }: Solved, reach: Pascals): Mend {
  const { cutIn, cutOut } = facts.house;
  const steps = Math.ceil((cutOut + CUT_OUT_SPARE - reach - 1) / psi(5));
  const down = steps * psi(5);
  const typedPrecharge = valueAt(plan, 'house.precharge') !== undefined;
  if (!Number.isFinite(steps) || typedPrecharge || cutIn - down < LEAST_CUT_IN - 1)
    return words('Choose a stronger pump, or a lower cut-out pressure with its cut-in.');
  const unit = unitAt(plan, 'house.cutOut', facts.units === 'us' ? 'psi' : 'kPa', 'pressure');
  const step = unit === 'psi' ? psi(1) : KILOPASCAL;
  const write = (pressure: Pascals) => writeQuantity(floorTo(pressure, step, 1), 'pressure', unit, step);
  return change(
    facts,
    [
      { path: 'house.cutOut', to: write(cutOut - down) },
      { path: 'house.cutIn', to: write(cutIn - down) },
    ],
    `Set the switch to ${write(cutIn - down)} / ${write(cutOut - down)}`,
  );
}

export const tankRules = [tankHolds, pumpReachesCutOut];
