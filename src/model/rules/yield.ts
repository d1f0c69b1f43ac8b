/** What the well gives against what the pump takes, and what guards the pump where it takes more. */
import { levelAtFlow, pumpAtLevel } from '../figures/curves.ts';
import { lowestLevel, neverDraws } from '../figures/lowestLevel.ts';
import { BEYOND_THE_TEST, lowestStatic } from '../figures/lowestPumping.ts';
import { provenYield, testedFlow } from '../figures/provenYield.ts';
import type { CubicMetresPerSecond, Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { atBothEnds } from './bothEnds.ts';
import { atLowestLevel, type SetBy } from './atLowestLevel.ts';
import { CUT_OFF_ABOVE_INTAKE, drawsTo, hasCutOff, isGuarded, probeAboveIntake } from './cutOff.ts';
import { exceeds, meets } from './grace.ts';
import { openCutOffDepth, openPumpingLevel, openYield } from './openFacts.ts';
import { AS_TESTED, ASKED_AT_CUT_IN } from './restsOn.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Given } from './rule.ts';

/** With less water than this over the intake dry-run protection is worth its price. */
export const SUBMERGENCE_WITHOUT_CUT_OFF = feet(20);
/** A test is believed past its flow while this much water stays over the intake. Common practice, no source. */
export const LEFT_OVER_INTAKE = feet(10);

/** What the strongest pump of that rating takes at cut-in; a flow-limiting valve holds it to its own flow. */
export function largestPumpFlow({ values }: Pick<Solved, 'values'>): CubicMetresPerSecond | null {
  return values.operatingFlowAtCutInMost;
}

/** Into an open tank there is no cut-in. */
const NO_PRESSURE: { readonly open?: true } = { open: true };

const MOST_AT_CUT_IN = { end: 'most', tank: 'cutIn' } as const;

export const pumpWithinYield = defineRule({
  number: 'PR-07',
  part: 'pump',
  restsOn: ['pump.setting', ...ASKED_AT_CUT_IN, ...AS_TESTED],
  onlyHelps: ['pump.frequency'],
  asks: { times: BEYOND_THE_TEST, left: LEFT_OVER_INTAKE },
  judge(given) {
    const { solved, facts } = given;
    const gives = provenYield(facts);
    if (gives === null) return missing('yield');
    // A pump that hangs above the water, or that its probe never lets start, takes nothing.
    if (neverDraws(facts)) return doesNotApply;
    const level = openPumpingLevel(solved);
    // With the level unknown the pump takes most where the water stands highest.
    const flow =
      largestPumpFlow(solved) ??
      (level === null ? null : (pumpAtLevel(facts, MOST_AT_CUT_IN, level.good)?.flow ?? null));
    if (flow === null) return missing('flowAtCutIn');
    const blown = openYield(solved);
    if (blown !== null) {
      return atBothEnds(
        blown,
        (yielded) => judgedOn(given, flow, yielded),
        (turn) => ({
          variant: 'dependsOnYield' as const,
          numbers: { flow, turn, gave: gives, sure: blown.bad, how: facts.well.yieldFrom },
        }),
      );
    }
    if (level === null) return judgedOn(given, flow, gives);
    return atBothEnds(
      { ...level, good: level.bad, bad: level.good },
      (depth) => judgedOn(given, pumpAtLevel(facts, MOST_AT_CUT_IN, depth)?.flow ?? 0, gives),
      (turn) => ({ variant: 'dependsOnLevel' as const, numbers: { gives, turn } }),
      () => levelAtFlow(facts, MOST_AT_CUT_IN, gives),
    );
  },
});

/** @param yielded  what the well gives, by all that is said of it, or the half that is sure */
function judgedOn({ solved, facts }: Given, flow: CubicMetresPerSecond, yielded: CubicMetresPerSecond) {
  const margin = yielded - flow;
  const gives = provenYield(facts) ?? yielded;
  const sure = openYield(solved)?.bad ?? gives;
  const numbers = { flow, gives, sure, margin, ...(facts.house.kind === 'open tank' && NO_PRESSURE) };
  if (meets(margin, 'flow')) return holds('givesEnough', numbers, margin);
  const tested = testedFlow(facts.water.pumping);
  const { lowest } = solved;
  const left = lowest === null ? null : facts.pump.setting - lowest.depth;
  if (tested !== null && left !== null && meets(BEYOND_THE_TEST * tested - flow, 'flow')) {
    if (meets(left - LEFT_OVER_INTAKE, 'length')) return holds('withinTest', { flow, tested, left }, margin);
  }
  // A pump that lifts no water from so deep empties no well; what becomes of it is told as such.
  if (!drawsTo(solved, lowestLevel(facts).depth)) return doesNotApply;
  const stopped = isGuarded(solved);
  // A valve of which nobody said the flow may hold the pump to what the well gives; it stops none.
  const guarded = stopped || facts.pump.flowLimiter === true;
  const { demand } = facts.house;
  // That the house wants more than the well gives is told by a rule of its own.
  if (stopped && demand !== null && !meets(yielded - demand, 'flow')) return holds('guarded', numbers, margin);
  return breaks(
    'takesTooMuch',
    guarded ? 'note' : 'warning',
    { ...numbers, how: facts.well.yieldFrom, drawn: drawnFrom(solved) },
    {
      measured: flow,
      limit: yielded,
      margin,
      quantity: 'flow',
      depth: facts.pump.setting,
    },
  );
}

/** A flow belongs to a level: in a well that cannot keep up the pump's flow at cut-in falls from that at rest. */
function drawnFrom(solved: Solved) {
  const { facts, curves } = solved;
  const rest = lowestStatic(facts);
  const { atCutInMost } = curves;
  if (rest === null || atCutInMost?.outpumped !== true) return null;
  const atRest = pumpAtLevel(facts, MOST_AT_CUT_IN, rest)?.flow ?? atCutInMost.flow;
  return { rest, atRest, level: atCutInMost.waterLevel };
}

export const lowLevelCutOff = defineRule({
  number: 'PR-08',
  part: 'pump',
  restsOn: [...ASKED_AT_CUT_IN, 'pump.setting', ...AS_TESTED],
  onlyHelps: ['pump.frequency'],
  asks: { advisedBelow: SUBMERGENCE_WITHOUT_CUT_OFF, above: CUT_OFF_ABOVE_INTAKE },
  judge(given) {
    const { solved, facts } = given;
    const intake = facts.pump.setting;
    // Of a pump above the water, or that its probe never lets start, another rule tells.
    if (neverDraws(facts)) return doesNotApply;
    const probe = probeAboveIntake(facts);
    if (probe !== null && !meets(probe - CUT_OFF_ABOVE_INTAKE, 'length')) {
      const usual = CUT_OFF_ABOVE_INTAKE;
      const margin = probe - usual;
      const at = { measured: probe, limit: usual, margin, quantity: 'length', depth: intake - probe } as const;
      // At the intake or under it a probe guards nothing.
      return breaks('probeTooLow', exceeds(probe, 'length') ? 'note' : 'warning', { probe, usual, margin }, at);
    }
    const { lowest } = solved;
    // Nothing guards a pump that never draws the water so deep, and nothing has to.
    if (lowest?.by === 'lift' || (lowest === null && hasCutOff(solved) && !isGuarded(solved))) return doesNotApply;
    if (probe !== null) return holds('fitted', {});
    if (hasCutOff(solved)) {
      if (lowest !== null && meets(intake - lowest.depth - LEFT_OVER_INTAKE, 'length')) return holds('fitted', {});
      return atBothEnds(
        openCutOffDepth(solved),
        (depth) => {
          const above = intake - depth;
          const usual = CUT_OFF_ABOVE_INTAKE;
          const margin = above - usual;
          const at = { measured: above, limit: usual, margin, quantity: 'length', depth } as const;
          return meets(margin, 'length')
            ? holds('fitted', {}, margin)
            : breaks('probeTooLow', 'note', { probe: above, usual, margin }, at);
        },
        (turn) => ({ variant: 'dependsOnCutOff' as const, numbers: { turn } }),
      );
    }
    return atLowestLevel(
      given,
      (level, by) => unguarded(given, level, by),
      (turn) => ({ variant: 'dependsOnLevel' as const, numbers: { turn } }),
    );
  },
});

/** Nothing stops the pump: how much water that leaves over its intake, or how much more it takes than flows in. */
function unguarded({ solved, facts }: Given, level: Metres, by: SetBy) {
  const intake = facts.pump.setting;
  const submergence = intake - level;
  const advisedBelow = SUBMERGENCE_WITHOUT_CUT_OFF;
  const margin = submergence - advisedBelow;
  if (!meets(margin, 'length')) {
    const at = { measured: submergence, limit: advisedBelow, margin, quantity: 'length', depth: intake } as const;
    return by === 'intake' || submergence <= 0
      ? breaks('fallsToIntake', 'note', {}, at)
      : breaks('littleWater', 'note', { submergence }, at);
  }
  const flow = largestPumpFlow(solved);
  const gives = provenYield(facts);
  if (by !== 'open' && flow !== null && gives !== null) {
    const judged = judgedOn({ solved, facts } as Given, flow, gives);
    const at = { measured: flow, limit: gives, margin: gives - flow, quantity: 'flow', depth: intake } as const;
    const sure = openYield(solved)?.bad ?? gives;
    if (judged.kind === 'breaks') return breaks('takesTooMuch', 'note', { flow, gives, sure }, at);
  }
  return holds('enoughWater', { submergence, advisedBelow }, margin);
}

export const pumpingLevelKnown = defineRule({
  number: 'PR-53',
  part: 'pumpingLevel',
  restsOn: [
    'house.cutOut',
    ...ASKED_AT_CUT_IN,
    'pump.setting',
    'string.checkValves',
    'top.depth',
    ...AS_TESTED,
    'site.altitude',
  ],
  holdsOn: { measured: ['water.pumping.flow'], fromAquifer: [] },
  judge({ solved, facts }) {
    const { pumping, staticLevel } = facts.water;
    const { lowest } = solved;
    if (staticLevel === null) return missing('staticLevel');
    if (openPumpingLevel(solved) === null) {
      if (pumping?.kind === 'aquifer') return holds('fromAquifer', {});
      if (pumping !== null && pumping.kind !== 'yield only') return holds('measured', {});
      return lowest?.by === 'cutOff' ? holds('drawnToCutOff', { depth: lowest.depth }) : doesNotApply;
    }
    const depth = staticLevel;
    const gives = facts.well.yield;
    const yieldAlone = openYield(solved) !== null || pumping?.kind === 'yield only';
    if (yieldAlone && gives !== null) return breaks('yieldAlone', 'note', { gives }, { depth });
    return breaks('notTested', 'note', {}, { depth });
  },
});

export const yieldRules = [pumpWithinYield, pumpingLevelKnown, lowLevelCutOff] as const;
