/** What is offered against a broken rule of `rules/tank.ts`. */
import { lowestLevel } from '../../figures/lowestLevel.ts';
import { valueAt } from '../../plan/editPlan.ts';
import type { Pascals } from '../../si.ts';
import type { Solved } from '../../solution.ts';
import { psi, writeQuantity } from '../../units.ts';
import { change, unitAt, words } from '../../rules/fix.ts';
import { floorTo } from '../../rules/rounding.ts';
import { reachAt, CUT_OUT_SPARE } from '../../rules/tank.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const tankFixes = {
  'PR-44': ({ facts }) => [change(facts, [{ path: 'house.reliefValve', to: true }], 'addReliefValve', {})],

  'PR-46': (given, { variant }) =>
    variant === 'hangsBelowItsLift' || variant === 'probeBelowItsLift'
      ? [words('pumpForThisLift', {})]
      : [lowerSwitch(given.solved), words('strongerPump', {})],
} satisfies RuleFixes;

const LEAST_CUT_IN: Pascals = psi(30);

/** The tank's air is set so far under cut-in, tank empty. Common practice, no source. */
const AIR_UNDER_CUT_IN: Pascals = psi(2);

/** A switch is set no finer. */
const KILOPASCAL: Pascals = 1000;

/** Both settings of the switch down by the same steps of 5 psi, while the house keeps 30 psi, and the tank's air with them. */
function lowerSwitch(solved: Solved) {
  const { facts, plan, lowest } = solved;
  const { cutIn, cutOut } = facts.house;
  const reach = reachAt(solved, lowest?.depth ?? lowestLevel(facts).depth) ?? 0;
  const steps = Math.ceil((cutOut + CUT_OUT_SPARE - reach - 1) / psi(5));
  const down = steps * psi(5);
  if (!Number.isFinite(steps) || steps < 1 || cutIn - down < LEAST_CUT_IN - 1)
    return words('strongerPumpOrLowerCutOut', {});
  const unit = unitAt(plan, 'house.cutOut', facts.units === 'us' ? 'psi' : 'bar', 'pressure');
  const step = unit === 'psi' ? psi(1) : KILOPASCAL;
  const write = (pressure: Pascals) => writeQuantity(floorTo(pressure, step, 1), 'pressure', unit, step);
  const air = Math.max(cutIn - down - AIR_UNDER_CUT_IN, 0);
  const airTyped = valueAt(plan, 'house.precharge') !== undefined;
  return change(
    facts,
    [
      { path: 'house.cutOut', to: write(cutOut - down) },
      { path: 'house.cutIn', to: write(cutIn - down) },
      ...(airTyped ? [{ path: 'house.precharge', to: write(air) }] : []),
    ],
    'setSwitch',
    { cutIn: cutIn - down, cutOut: cutOut - down, air },
  );
}
