/** Tank, switch and relief against what the pump can reach. */
import { levelAtNoFlow } from '../figures/curves.ts';
import { lowestLevel } from '../figures/lowestLevel.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { STANDARD_GRAVITY, waterDensity } from '../formulas/water.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { Metres, Pascals } from '../si.ts';
import type { Solved } from '../solution.ts';
import { psi, writeQuantity } from '../units.ts';
import { isAssumed } from './assumed.ts';
import { atLowestLevel } from './atLowestLevel.ts';
import { hasCutOff, probeAboveIntake } from './cutOff.ts';
import { change, unitAt, words } from './fix.ts';
import { meets } from './grace.ts';
import type { MissingFact } from './missing.ts';
import { floorTo } from './rounding.ts';
import { breaks, defineRule, doesNotApply, holds, limit, missing } from './rule.ts';

/** Shut-off pressure at the tank over the cut-out pressure, to be sure that the switch opens. */
export const CUT_OUT_SPARE: Pascals = psi(10);
const LEAST_CUT_IN: Pascals = psi(30);
/** The tank's air is set so far under cut-in, tank empty. Common practice, no source. */
const AIR_UNDER_CUT_IN: Pascals = psi(2);
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
    const at = { measured: reach, limit: rating, margin, quantity: 'pressure', depth: null } as const;
    if (house.reliefValve === false) return breaks('noRelief', 'danger', { reach, rating, margin }, at);
    // Whose rating and whose relief nobody said may be in order.
    return isAssumed(solved, 'house.tankRating')
      ? missing('reliefValve')
      : breaks('reliefUnknown', 'warning', { reach, rating, margin }, at);
  },
  fixes: ({ facts }) => [change(facts, [{ path: 'house.reliefValve', to: true }], 'addReliefValve', {})],
});

export const pumpReachesCutOut = defineRule({
  number: 'PR-46',
  part: 'switch',
  asks: { spare: CUT_OUT_SPARE },
  judge(given) {
    const { solved, facts } = given;
    const { house } = facts;
    if (house.kind === 'open tank') return doesNotApply;
    // A pump that hangs above the water, or that its cut-off never lets start, is told as such.
    if ((lowestStatic(facts) ?? -Infinity) >= lowestLevel(facts).depth) return doesNotApply;
    if (reachAt(solved, 0) === null) return missing(shutOffMissing(solved));
    const { cutOut } = house;
    return atLowestLevel(
      given,
      (level) => {
        const reach = reachAt(solved, level) ?? 0;
        const spare = reach - cutOut;
        const margin = spare - CUT_OUT_SPARE;
        const numbers = { reach, cutOut, spare, level };
        if (meets(margin, 'pressure')) return holds('reaches', numbers, margin);
        if (servesWhileHigh(solved) && meets(reach - house.cutIn, 'pressure')) {
          const turn = levelAtNoFlow(facts, { end: 'least', tank: 'cutOut' }) ?? level;
          return holds('reachesWhileHigh', { cutOut, turn, level }, margin);
        }
        const at = { measured: spare, limit: CUT_OUT_SPARE, margin, quantity: 'pressure', depth: null } as const;
        if (meets(spare, 'pressure')) return breaks('barelyReaches', 'warning', numbers, at);
        const late = solved.lowest !== null && opensAsWaterComesBack(solved);
        return late ? breaks('reachesLate', 'warning', numbers, at) : breaks('neverReaches', 'danger', numbers, at);
      },
      (turn) => ({ variant: 'dependsOnLevel' as const, numbers: { turn, cutOut, spare: CUT_OUT_SPARE } }),
    );
  },
  // Where the water may fall to the pump, it hangs no deeper than it lifts from with the water at its lowest.
  limits(solved) {
    const { facts, curves, lowest } = solved;
    if (facts.house.kind === 'open tank') return [];
    if (lowest !== null && curves.atCutInMost?.outpumped !== true) return [];
    const guarded = servesWhileHigh(solved);
    const lifts = levelAtNoFlow(facts, { end: 'least', tank: guarded ? 'cutIn' : 'cutOut' });
    if (lifts === null) return [];
    const spare = guarded ? 0 : CUT_OUT_SPARE / (waterDensity(facts.site.waterTemperature) * STANDARD_GRAVITY);
    return [limit('pump.setting', { to: lifts - spare + Math.max(probeAboveIntake(facts) ?? 0, 0) }, 'pumpLifts', {})];
  },
  fixes: (given) => [lowerSwitch(given.solved), words('strongerPump', {})],
});

/**
 * A well that even the weaker pump draws down, or may: with the water high the switch opens, and with it low the dry-run
 * protection stops the pump before it runs on in vain.
 */
function servesWhileHigh(solved: Solved): boolean {
  const rest = lowestStatic(solved.facts);
  if (rest === null || !hasCutOff(solved) || solved.lowest === null) return false;
  // Where no drawdown is known the stronger pump empties the well, and of the weaker one nobody can say.
  const { by } = solved.lowest;
  const outpumped = solved.curves.atCutIn?.outpumped ?? (by === 'cutOff' || by === 'intake');
  if (!outpumped) return false;
  const reach = reachAt(solved, rest);
  return reach !== null && meets(reach - solved.facts.house.cutOut - CUT_OUT_SPARE, 'pressure');
}

/**
 * Whether the switch opens after all, once the taps are shut. Drawn so low that it no longer reaches cut-out the pump gives
 * next to nothing, so that the water comes back, in any well, and from above some level the switch opens. Till then the
 * motor runs in water that hardly moves: that is worth a warning however soon the water comes back, since a little wear
 * makes never of late. A danger is only the pump that does not stop: it reaches cut-out neither with room from the water
 * at rest, nor at all from where the house leaves it.
 *
 * None of these levels is set by the pump's own strength, so that a stronger one, which reaches more from the same water,
 * is not judged a danger where a weaker is not.
 */
function opensAsWaterComesBack(solved: Solved): boolean {
  const { facts } = solved;
  const { cutOut, demand } = facts.house;
  const rest = lowestStatic(facts);
  if (rest === null) return false;
  const relation = wellRelation(facts.water.pumping, facts.water.staticLevel);
  const fall = relation === null || demand === null ? 0 : relation.drawdownAt(demand);
  const usual = Math.min(rest + fall, lowestLevel(facts).depth);
  const [atRest, atUsual] = [reachAt(solved, rest) ?? 0, reachAt(solved, usual) ?? 0];
  return meets(atRest - cutOut - CUT_OUT_SPARE, 'pressure') || meets(atUsual - cutOut, 'pressure');
}

/** Pressure at the tank at no flow with the water at a depth, on the weaker end of the pump's band; null while unknown. */
export function reachAt({ facts, values }: Pick<Solved, 'facts' | 'values'>, level: Metres): Pascals | null {
  const atRest = values.shutOffPressureAtTankLeast;
  const { staticLevel } = facts.water;
  if (atRest === null || staticLevel === null) return null;
  return atRest - (level - staticLevel) * waterDensity(facts.site.waterTemperature) * STANDARD_GRAVITY;
}

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

export const tankRules = [tankHolds, pumpReachesCutOut] as const;
