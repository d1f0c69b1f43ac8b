/** How the pressure tank works with the pump: how long it lets it run, and how its air is set. */
import { tankDrawdown } from '../formulas/tank.ts';
import { atmosphericPressure } from '../formulas/water.ts';
import type { Facts } from '../facts.ts';
import type { CubicMetres, CubicMetresPerSecond, Pascals, Seconds } from '../si.ts';
import { gallons, horsepower, psi } from '../units.ts';
import { isAssumed } from './assumed.ts';
import { exceeds, meets } from './grace.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Given } from './rule.ts';

/** Least time of running at each start: a minute up to 1 hp, two above. Common practice, no source. */
export const LEAST_RUN: Seconds = 60;
export const LEAST_RUN_LARGE: Seconds = 120;
const LARGE_MOTOR = horsepower(1);
/** Metric names of the same motors are rounded: 0.75 kW is 1.006 hp. */
const NAME_ROUNDING = 1.02;
/** Nobody changes a tank for a tenth. */
const GRACE = 0.9;

/** Usual sizes, total volume. Common practice, no source. */
const TANKS_US: readonly CubicMetres[] = [20, 32, 44, 62, 86, 119].map(gallons);
const TANKS_METRIC: readonly CubicMetres[] = [0.06, 0.1, 0.15, 0.2, 0.3, 0.5];

/**
 * The flow that a pump is named for, or that a flow-limiting valve leaves of it; of a pump with its own points the mean
 * at cut-in and cut-out. Null where that is unknown.
 */
export function ratedFlow({ facts, values }: Pick<Given, 'facts' | 'values'>): CubicMetresPerSecond | null {
  const { curve, flowLimiter } = facts.pump;
  if (curve.kind === 'generic') return typeof flowLimiter === 'number' ? Math.min(curve.flow, flowLimiter) : curve.flow;
  const { operatingFlowAtCutIn: atCutIn, operatingFlowAtCutOut: atCutOut } = values;
  return atCutIn === null || atCutOut === null ? null : (atCutIn + atCutOut) / 2;
}

export function leastRun({ pump }: Pick<Facts, 'pump'>): Seconds {
  return pump.power !== null && pump.power > LARGE_MOTOR * NAME_ROUNDING ? LEAST_RUN_LARGE : LEAST_RUN;
}

export const runsLongEnough = defineRule({
  number: 'PR-56',
  part: 'tank',
  restsOn: ['house.cutIn', 'house.cutOut', 'house.precharge', 'pump.curve.flow', 'site.altitude'],
  onlyHelps: ['site.altitude'],
  asks: { least: LEAST_RUN, upTo: LARGE_MOTOR, leastLarge: LEAST_RUN_LARGE, short: 1 - GRACE },
  judge(given) {
    const { facts, values } = given;
    if (facts.house.kind === 'open tank' || facts.house.control === 'variable speed') return doesNotApply;
    const water = values.tankDrawdown;
    if (water === null) return missing('tank');
    const flow = ratedFlow(given);
    if (flow === null || !(flow > 0)) return missing('operatingPoint');
    const run = water / flow;
    const least = leastRun(facts);
    // A motor of unknown power may be a large one, which asks for more.
    const enoughForAny = meets(run - LEAST_RUN_LARGE * GRACE, 'time');
    if (facts.pump.power === null && !enoughForAny && meets(run - LEAST_RUN * GRACE, 'time')) return missing('power');
    const margin = run - least * GRACE;
    if (meets(margin, 'time'))
      return holds('runsLong', { run, least: facts.pump.power === null ? LEAST_RUN_LARGE : least, water, flow });
    return breaks(
      'shortCycles',
      'warning',
      { run, least, water, flow },
      { measured: run, limit: least * GRACE, margin, quantity: 'time', depth: null },
    );
  },
});

/** Usual sizes of tank where the plan's units are at home, the smallest first. */
export function usualTanks({ units }: Pick<Facts, 'units'>): readonly CubicMetres[] {
  return units === 'us' ? TANKS_US : TANKS_METRIC;
}

/** The smallest usual tank that gives so much water at each start. */
export function largerTank({ facts }: Pick<Given, 'facts'>, water: CubicMetres): CubicMetres | undefined {
  const { cutIn, cutOut, precharge } = facts.house;
  const atmosphere = atmosphericPressure(facts.site.altitude);
  return usualTanks(facts).find((volume) => tankDrawdown({ volume, precharge, cutIn, cutOut, atmosphere }) >= water);
}

/** Air under cut-in by no more than this. */
export const PRECHARGE_UNDER: Pascals = psi(10);
/** As far under cut-in as it is usually set. */
const USUAL_UNDER: Pascals = psi(2);
/** With a pump that follows the demand: share of the pressure that it holds. Common practice, no source. */
export const PRECHARGE_SHARE = 0.7;
const SHARE_SPREAD = 0.1;

/** Air to set in the empty tank. */
export function usualPrecharge({ house }: Pick<Facts, 'house'>): Pascals {
  const { cutIn, cutOut, control } = house;
  return control === 'variable speed' ? PRECHARGE_SHARE * cutOut : Math.max(cutIn - USUAL_UNDER, 0);
}

export const prechargeFits = defineRule({
  number: 'PR-57',
  part: 'tank',
  restsOn: ['house.cutIn', 'house.cutOut', 'house.precharge'],
  asks: { under: PRECHARGE_UNDER, share: PRECHARGE_SHARE },
  judge({ solved, facts }) {
    const { house } = facts;
    // What nobody set follows from the switch and cannot contradict it.
    if (house.kind === 'open tank' || isAssumed(solved, 'house.precharge')) return doesNotApply;
    const { precharge, cutIn, cutOut } = house;
    if (house.control === 'variable speed') {
      const usual = PRECHARGE_SHARE * cutOut;
      const margin = SHARE_SPREAD * cutOut - Math.abs(precharge - usual);
      if (meets(margin, 'pressure')) return holds('fitsSpeed', { precharge, usual });
      const at = { measured: precharge, limit: usual, margin, quantity: 'pressure', depth: null } as const;
      return breaks('besideSpeed', 'note', { precharge, usual, cutOut, high: precharge > usual }, at);
    }
    const at = {
      measured: precharge,
      limit: cutIn,
      margin: cutIn - precharge,
      quantity: 'pressure',
      depth: null,
    } as const;
    if (meets(precharge - cutOut, 'pressure'))
      return breaks('takesNothing', 'danger', { precharge, cutIn, cutOut, over: precharge - cutIn }, at);
    if (!meets(cutIn - precharge, 'pressure'))
      return breaks('overCutIn', 'warning', { precharge, cutIn, over: precharge - cutIn }, at);
    const under = cutIn - precharge;
    if (exceeds(under - PRECHARGE_UNDER, 'pressure')) {
      const limit = cutIn - PRECHARGE_UNDER;
      return breaks(
        'lowAir',
        'note',
        { precharge, cutIn, under },
        { measured: precharge, limit, margin: precharge - limit, quantity: 'pressure', depth: null },
      );
    }
    return holds('fits', { precharge, cutIn, under });
  },
});

export const tankCycleRules = [prechargeFits, runsLongEnough] as const;
