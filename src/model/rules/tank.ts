/** Tank, switch and relief against what the pump can reach. */
import { valueAt } from '../plan/editPlan.ts';
import type { Pascals } from '../si.ts';
import type { Solved } from '../solution.ts';
import { psi, writeQuantity } from '../units.ts';
import { change, unitAt, words } from './fix.ts';
import { meets } from './grace.ts';
import type { MissingFact } from './missing.ts';
import { floorTo } from './rounding.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';

/** Shut-off pressure at the tank over the cut-out pressure, to be sure that the switch opens. */
export const CUT_OUT_SPARE: Pascals = psi(10);
const LEAST_CUT_IN: Pascals = psi(20);
/** A switch is set no finer. */
const KILOPASCAL: Pascals = 1000;

function shutOffMissing({ facts, values }: Solved): MissingFact {
  if (values.shutOffPressureAtPump === null) return 'powerOrCurve';
  return facts.water.staticLevel === null ? 'staticLevel' : 'rise';
}

export const tankHolds = defineRule({
  number: 'PR-44',
  part: 'tank',
  judge({ solved, facts, values }) {
    const { house } = facts;
    if (house.kind === 'open tank') return doesNotApply;
    const reach = values.shutOffPressureAtTank;
    if (reach === null) return missing(shutOffMissing(solved));
    const rating = house.tankRating;
    const margin = rating - reach;
    if (meets(margin, 'pressure')) return holds('strongEnough', { reach, rating, margin });
    if (house.reliefValve === true) return holds('relieved', {});
    if (house.reliefValve === null) return missing('reliefValve');
    return breaks(
      'noRelief',
      'danger',
      { reach, rating, margin },
      { measured: reach, limit: rating, margin, quantity: 'pressure', depth: null },
    );
  },
  fixes: ({ facts }) => [change(facts, [{ path: 'house.reliefValve', to: true }], 'addReliefValve', {})],
});

export const pumpReachesCutOut = defineRule({
  number: 'PR-46',
  part: 'switch',
  judge({ solved, facts, values }) {
    const { house } = facts;
    if (house.kind === 'open tank') return doesNotApply;
    const reach = values.shutOffPressureAtTank;
    if (reach === null) return missing(shutOffMissing(solved));
    const { cutOut } = house;
    const spare = reach - cutOut;
    const margin = spare - CUT_OUT_SPARE;
    const numbers = { reach, cutOut, spare };
    if (meets(margin, 'pressure')) return holds('reaches', numbers);
    const at = { measured: spare, limit: CUT_OUT_SPARE, margin, quantity: 'pressure', depth: null } as const;
    return meets(spare, 'pressure')
      ? breaks('barelyReaches', 'warning', numbers, at)
      : breaks('neverReaches', 'danger', numbers, at);
  },
  fixes: ({ solved }) => [lowerSwitch(solved)],
});

/** Both settings of the switch down by the same steps of 5 psi, while the house keeps 20 psi. */
function lowerSwitch({ facts, plan, values }: Solved) {
  const { cutIn, cutOut } = facts.house;
  const reach = values.shutOffPressureAtTank ?? 0;
  const steps = Math.ceil((cutOut + CUT_OUT_SPARE - reach - 1) / psi(5));
  const down = steps * psi(5);
  const typedPrecharge = valueAt(plan, 'house.precharge') !== undefined;
  if (!Number.isFinite(steps) || typedPrecharge || cutIn - down < LEAST_CUT_IN - 1)
    return words('strongerPumpOrLowerCutOut', {});
  const unit = unitAt(plan, 'house.cutOut', facts.units === 'us' ? 'psi' : 'kPa', 'pressure');
  const step = unit === 'psi' ? psi(1) : KILOPASCAL;
  const write = (pressure: Pascals) => writeQuantity(floorTo(pressure, step, 1), 'pressure', unit, step);
  const written = { cutIn: write(cutIn - down), cutOut: write(cutOut - down) };
  return change(
    facts,
    [
      { path: 'house.cutOut', to: written.cutOut },
      { path: 'house.cutIn', to: written.cutIn },
    ],
    'setSwitch',
    written,
  );
}

export const tankRules = [tankHolds, pumpReachesCutOut] as const;
