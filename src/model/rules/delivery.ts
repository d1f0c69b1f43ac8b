/** Whether the pump does the job: the flow that the house wants at the pressure at which its switch calls, within the pump's range. */
import type { Facts } from '../facts.ts';
import { lowestLevel, neverDraws } from '../figures/lowestLevel.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { levelAtFlow, pumpAtLevel, pumpFromLevel, unendedFromLevel } from '../figures/curves.ts';
import { provenYield } from '../figures/provenYield.ts';
import { wantedOfPump, type WantedOfPump } from '../figures/wantedOfPump.ts';
import { END_SHARE } from '../formulas/genericBand.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import type { CubicMetresPerSecond, Metres, Ratio } from '../si.ts';
import { atBothEnds } from './bothEnds.ts';
import { meets } from './grace.ts';
import { openPumpingLevel } from './openFacts.ts';
import { AS_TESTED, ASKED_AT_CUT_IN, DROP_PIPE, PUMP } from './restsOn.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Given } from './rule.ts';
import { lackingOnWay } from './wayToTank.ts';

/** Under this share of what the house wants people notice, and under the second they go without. Common practice, no source. */
export const LEAST_SHARE: Ratio = 0.8;
export const HALF: Ratio = 0.5;
/** Past this share of its rated flow a pump lifts off its thrust bearing. Common practice, no source. */
export const RUN_OUT_SHARE: Ratio = 1.6;

const AT_CUT_IN = { end: 'least', tank: 'cutIn' } as const;
const MOST_AT_CUT_IN = { end: 'most', tank: 'cutIn' } as const;

export const pumpGivesEnough = defineRule({
  number: 'PR-54',
  part: 'pump',
  restsOn: [...DROP_PIPE, ...ASKED_AT_CUT_IN, 'pump.setting', ...AS_TESTED],
  asks: { share: LEAST_SHARE },
  judge(given) {
    const { solved, facts, values } = given;
    const want = wantedOfPump(solved);
    if (want === null) return missing('demand');
    const wanted = want.flow;
    if (values.shutOffPressureAtPump === null) return missing('powerOrCurve');
    const rest = lowestStatic(facts);
    if (rest === null) return missing('staticLevel');
    // A pump that hangs above the water, or that its cut-off never lets start, is told as such.
    if (neverDraws(facts)) return doesNotApply;
    const lacks = lackingOnWay(facts);
    if (lacks.length > 0)
      return missing(
        'wayToTank',
        { lacks },
        lacks.map((part) => `house.${part}`),
      );
    const open = openPumpingLevel(solved);
    if (open !== null) {
      return atBothEnds(
        open,
        (level) => judgedOn(given, pumpAtLevel(facts, AT_CUT_IN, level)?.flow ?? 0, want, level),
        (turn) => ({ variant: 'dependsOnLevel' as const, numbers: { wanted, turn, ...intoTank(facts, want) } }),
        () => levelAtFlow(facts, AT_CUT_IN, LEAST_SHARE * wanted),
      );
    }
    const { atCutIn, outrunsYield } = solved.curves;
    const fromRest = () => judgedOn(given, pumpAtLevel(facts, AT_CUT_IN, rest)?.flow ?? 0, want, rest);
    const point =
      rest === facts.water.staticLevel && atCutIn !== null ? atCutIn : pumpFromLevel(facts, AT_CUT_IN, rest);
    if (point === null) {
      const gives = provenYield(facts);
      if (gives === null || outrunsYield !== true) return missing('pumpingLevel');
      const atRest = fromRest();
      // Nobody knows how far the water falls, but that the pump gives no more in the end than flows in.
      return atRest.kind !== 'holds' || meets(gives - LEAST_SHARE * wanted, 'flow')
        ? atRest
        : holds('givesEnoughAtFirst', { ...atRest.numbers, later: gives, drawn: null }, atRest.margin);
    }
    // Where the well gives less than is wanted, the pump is held against what the well gives: the rest is for storage.
    const asked = Math.min(wanted, wellGivesAt(given, rest));
    const lasting = () => judgedOn(given, point.flow, want, point.waterLevel, asked);
    if (point.outpumped || asked < wanted) {
      const atRest = fromRest();
      // Where the water comes to stand the pump may give less still; a well that it empties is for its store.
      if (atRest.kind !== 'holds') return point.outpumped ? atRest : worseOf(atRest, lasting());
      if (meets(point.flow - LEAST_SHARE * wanted, 'flow')) return atRest;
      if (point.outpumped || meets(point.flow - LEAST_SHARE * asked, 'flow'))
        return holds(
          'givesEnoughAtFirst',
          { ...atRest.numbers, later: point.flow, drawn: point.waterLevel },
          atRest.margin,
        );
    }
    return lasting();
  },
});

type Judged = ReturnType<typeof judgedOn>;

function worseOf(first: Judged, later: Judged): Judged {
  return later.kind === 'breaks' && later.severity === 'danger' ? later : first;
}

/** What flows in at the most with the water drawn down to the intake or a cut-off, by all that is said of the well. */
function wellGivesAt({ facts }: Given, rest: Metres): CubicMetresPerSecond {
  const relation = wellRelation(facts.water.pumping, facts.water.staticLevel);
  const inflow = relation === null ? Infinity : relation.inflowAt(lowestLevel(facts).depth - rest);
  return Math.min(provenYield(facts) ?? Infinity, inflow);
}

/** Against what the pump gives it, and whether that only fills an open tank; one has no pressure. */
function intoTank({ house }: Facts, { fillsTank }: WantedOfPump) {
  return { cutIn: house.kind === 'open tank' ? null : house.cutIn, fillsTank };
}

/**
 * @param level  where the water stands meanwhile
 * @param asked  what the pump has to do with: what is wanted, or less where the well gives no more
 */
function judgedOn(
  { facts, solved }: Given,
  flow: CubicMetresPerSecond,
  want: WantedOfPump,
  level: Metres,
  asked: CubicMetresPerSecond = want.flow,
) {
  const wanted = want.flow;
  const share = flow / wanted;
  const into = intoTank(facts, want);
  const least = LEAST_SHARE * asked;
  const margin = flow - least;
  const at = { measured: flow, limit: least, margin, quantity: 'flow', depth: facts.pump.setting } as const;
  if (meets(margin, 'flow')) return holds('givesEnough', { flow, wanted, share, level, ...into }, margin);
  // What the stronger end of the band gives from the same water, where that would do.
  const most = solved.curves.generic ? (pumpAtLevel(facts, MOST_AT_CUT_IN, level)?.flow ?? 0) : 0;
  const numbers = { flow, wanted, share, level, ...into, strong: meets(most - least, 'flow') ? most : null };
  if (!(flow > 0)) return breaks('givesNone', 'danger', numbers, at);
  return flow / asked < HALF
    ? breaks('givesLittle', 'danger', numbers, at)
    : breaks('givesLess', 'warning', numbers, at);
}

export const withinRange = defineRule({
  number: 'PR-58',
  part: 'pump',
  restsOn: ['pump.setting', 'house.cutIn', ...PUMP, ...AS_TESTED],
  onlyHelps: ['pump.frequency'],
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
    // A pump that gives nothing, or is never let start, works at no place of its range.
    if (!(flow > 0)) return doesNotApply;
    const most =
      curve.kind === 'generic'
        ? RUN_OUT_SHARE * curve.flow
        : curve.points.reduce((last, each) => Math.max(last, each.flow), 0);
    const numbers = { flow, most, own: curve.kind === 'points', open: facts.house.kind === 'open tank' };
    const margin = most - flow;
    if (meets(margin, 'flow')) return holds('inRange', numbers);
    const at = { measured: flow, limit: most, margin, quantity: 'flow', depth: facts.pump.setting } as const;
    return breaks('pastRange', 'note', numbers, at);
  },
});

export const deliveryRules = [pumpGivesEnough, withinRange] as const;
