/** Whether the pump does the job: the flow that the house wants at the pressure at which its switch calls, within the pump's range. */
import { lowestLevel } from '../figures/lowestLevel.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { levelAtFlow, pumpAtLevel, pumpFromLevel, unendedFromLevel } from '../figures/curves.ts';
import { END_SHARE } from '../formulas/genericBand.ts';
import type { CubicMetresPerSecond, Metres, Ratio } from '../si.ts';
import { atBothEnds } from './bothEnds.ts';
import { words } from './fix.ts';
import { meets } from './grace.ts';
import { openPumpingLevel } from './openFacts.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Given } from './rule.ts';

/** Under this share of what the house wants people notice, and under the second they go without. Common practice, no source. */
export const LEAST_SHARE: Ratio = 0.8;
export const HALF: Ratio = 0.5;
/** Past this share of its rated flow a pump lifts off its thrust bearing. Common practice, no source. */
export const RUN_OUT_SHARE: Ratio = 1.6;

const AT_CUT_IN = { end: 'least', tank: 'cutIn' } as const;

export const pumpGivesEnough = defineRule({
  number: 'PR-54',
  part: 'pump',
  asks: { share: LEAST_SHARE },
  judge(given) {
    const { solved, facts, values } = given;
    const wanted = facts.house.demand;
    if (wanted === null || !(wanted > 0)) return missing('demand');
    if (values.shutOffPressureAtPump === null) return missing('powerOrCurve');
    const rest = lowestStatic(facts);
    if (rest === null) return missing('staticLevel');
    // A pump that hangs above the water, or that its cut-off never lets start, is told as such.
    if (rest >= lowestLevel(facts).depth) return doesNotApply;
    const { line, distance, rise } = facts.house;
    if (line === null || distance === null || rise === null) return missing('wayToTank');
    const open = openPumpingLevel(solved);
    if (open !== null) {
      return atBothEnds(
        open,
        (level) => judgedOn(given, pumpAtLevel(facts, AT_CUT_IN, level)?.flow ?? 0, wanted, level),
        (turn) => ({ variant: 'dependsOnLevel' as const, numbers: { wanted, turn, cutIn: facts.house.cutIn } }),
        () => levelAtFlow(facts, AT_CUT_IN, LEAST_SHARE * wanted),
      );
    }
    const { atCutIn } = solved.curves;
    const point =
      rest === facts.water.staticLevel && atCutIn !== null ? atCutIn : pumpFromLevel(facts, AT_CUT_IN, rest);
    if (point === null) return missing('pumpingLevel');
    // A well that cannot keep up gives from its store first: how long that lasts is a matter of its own.
    if (!point.outpumped) return judgedOn(given, point.flow, wanted, point.waterLevel);
    const first = judgedOn(given, pumpAtLevel(facts, AT_CUT_IN, rest)?.flow ?? 0, wanted, rest);
    return first.kind === 'holds' && !meets(point.flow - LEAST_SHARE * wanted, 'flow')
      ? holds('givesEnoughAtFirst', { ...first.numbers, later: point.flow, drawn: point.waterLevel }, first.margin)
      : first;
  },
  fixes({ facts }, { variant, limit }) {
    const { flowLimiter } = facts.pump;
    if (typeof flowLimiter === 'number' && limit !== null && flowLimiter < limit) return [words('largerLimiter', {})];
    return [variant === 'givesNone' ? words('strongerPump', {}) : words('strongerOrLess', {})];
  },
});

/** @param level  where the water stands meanwhile */
function judgedOn({ facts }: Given, flow: CubicMetresPerSecond, wanted: CubicMetresPerSecond, level: Metres) {
  const share = flow / wanted;
  const { cutIn } = facts.house;
  const numbers = { flow, wanted, share, level, cutIn };
  const least = LEAST_SHARE * wanted;
  const margin = flow - least;
  const at = { measured: flow, limit: least, margin, quantity: 'flow', depth: facts.pump.setting } as const;
  if (meets(margin, 'flow')) return holds('givesEnough', numbers, margin);
  if (!(flow > 0)) return breaks('givesNone', 'danger', numbers, at);
  return share < HALF ? breaks('givesLittle', 'danger', numbers, at) : breaks('givesLess', 'warning', numbers, at);
}

export const withinRange = defineRule({
  number: 'PR-58',
  part: 'pump',
  asks: { times: RUN_OUT_SHARE },
  judge({ solved, facts, values }) {
    const { curve, flowLimiter } = facts.pump;
    if (facts.house.control === 'variable speed' || (flowLimiter !== null && flowLimiter !== false))
      return doesNotApply;
    if (values.shutOffPressureAtPump === null) return missing('powerOrCurve');
    const { staticLevel } = facts.water;
    if (staticLevel === null) return missing('staticLevel');
    const { atCutIn } = solved.curves;
    // Short of its end the curve is the same with and without one.
    const ended = curve.kind === 'points' || atCutIn === null || atCutIn.flow >= END_SHARE * curve.flow * (1 - 1e-9);
    const point = ended ? unendedFromLevel(facts, staticLevel) : atCutIn;
    if (point === null) return missing('flowAtCutIn');
    const { flow } = point;
    const most =
      curve.kind === 'generic'
        ? RUN_OUT_SHARE * curve.flow
        : curve.points.reduce((last, each) => Math.max(last, each.flow), 0);
    const numbers = { flow, most, own: curve.kind === 'points' };
    const margin = most - flow;
    if (meets(margin, 'flow')) return holds('inRange', numbers);
    const at = { measured: flow, limit: most, margin, quantity: 'flow', depth: facts.pump.setting } as const;
    return breaks('pastRange', 'note', numbers, at);
  },
  fixes: () => [words('holdItBack', {})],
});

export const deliveryRules = [pumpGivesEnough, withinRange] as const;
