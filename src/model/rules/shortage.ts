/** Whether the well gives what the house wants, and what its store does for it where it does not. */
import { dayNeed } from '../figures/dayNeed.ts';
import { levelAtFlow, pumpAtLevel } from '../figures/curves.ts';
import { lowestLevel } from '../figures/lowestLevel.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { provenYield } from '../figures/provenYield.ts';
import { carriesPeak, wantedOfPump } from '../figures/wantedOfPump.ts';
import type { Facts } from '../facts.ts';
import { inflowOf } from '../figures/waterFall.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import { usableStorage } from '../formulas/wellStorage.ts';
import type { CubicMetres, CubicMetresPerSecond, Metres, Ratio, Seconds } from '../si.ts';
import { atBothEnds } from './bothEnds.ts';
import { isGuarded } from './cutOff.ts';
import { LEAST_SHARE } from './delivery.ts';
import { meets } from './grace.ts';
import { openYield } from './openFacts.ts';
import { ASKED_AT_CUT_IN } from './restsOn.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import type { Given } from './rule.ts';

const DAY: Seconds = 86_400;
const WEAKER = { end: 'least', tank: 'cutIn' } as const;

export const wellGivesEnough = defineRule({
  number: 'PR-55',
  part: 'pumpingLevel',
  restsOn: ['water.pumping.flow', ...ASKED_AT_CUT_IN, 'house.cutOut', 'house.precharge', 'pump.setting'],
  judge(given) {
    const { solved, facts } = given;
    const wanted = facts.house.demand;
    if (wanted === null) return missing('demand');
    const gives = provenYield(facts);
    if (gives === null) return missing('yield');
    const open = openYield(solved);
    const store = storeOf(given, wanted);
    if (open === null) return judgedOn(given, store, gives);
    return atBothEnds(
      open,
      (yielded) => judgedOn(given, store, yielded),
      (turn) => ({
        variant: 'dependsOnYield' as const,
        numbers: { wanted, turn, gave: gives, sure: open.bad, how: facts.well.yieldFrom },
      }),
    );
  },
});

interface Store {
  readonly wanted: CubicMetresPerSecond;
  /** Of a yield that is only said roughly, the part that is sure. */
  readonly sure: CubicMetresPerSecond | null;
  readonly need: CubicMetres;
  readonly peak: Seconds;
  /** Of what the well gives at the most, what flows in on the average while its store is drawn: less, by a test. */
  readonly inflow: Ratio;
  /** In the bore. */
  readonly stored: CubicMetres | null;
  /** In an open tank; 0 where there is none. */
  readonly tank: CubicMetres;
  /** There is an open tank, and nobody said how much it holds. */
  readonly uncounted: boolean;
}

/** What is the same whatever the well gives: found once, since a rough yield is tried at many values. */
function storeOf(given: Given, wanted: CubicMetresPerSecond): Store {
  const sure = openYield(given.solved)?.bad ?? null;
  const isEnough = meets((sure ?? provenYield(given.facts) ?? 0) - wanted, 'flow');
  const { kind, tank } = given.facts.house;
  const open = kind === 'open tank';
  const inTank = { tank: open ? (tank ?? 0) : 0, uncounted: open && tank === null };
  if (isEnough) return { wanted, sure, need: 0, peak: 0, inflow: 1, stored: null, ...inTank };
  const asked = wantedOfPump(given.solved)?.flow ?? wanted;
  const end = endOfStore(given, asked);
  const stored = end === null ? null : storedTo(given, end);
  const inflow = stored === null || end === null ? 1 : inflowWhileDrawn(given.facts, end);
  return { wanted, sure, ...dayNeed(given.solved), inflow, stored, ...inTank };
}

/** Of the water of a peak so much is not missed: the taps run a little slower at its end. Common practice, no source. */
const UNMISSED: Ratio = 0.05;

/** Water of the peak that nothing gives: from when the store is drawn no more comes than the well gives at the most. */
function lacking({ wanted, peak, inflow }: Store, yielded: CubicMetresPerSecond, kept: CubicMetres): CubicMetres {
  const drawn = wanted - inflow * yielded;
  const lasts = drawn > 0 ? kept / drawn : Infinity;
  return Math.max(wanted - yielded, 0) * Math.max(peak - lasts, 0);
}

/** Into how many parts the fall is cut: an inflow bends once at the most. */
const PARTS = 24;

/**
 * A well that was tested gives little while its water still stands high: of its yield what flows in on the average from
 * the level at rest down to a depth, of a bore that is as wide all the way. 1 where nobody knows how it grows.
 */
function inflowWhileDrawn(facts: Facts, end: Metres): Ratio {
  const { pumping, staticLevel } = facts.water;
  const inflow = wellRelation(pumping, staticLevel) === null ? null : inflowOf(facts);
  const gives = provenYield(facts);
  const drawn = end - (lowestStatic(facts) ?? end);
  if (inflow === null || gives === null || !(gives > 0) || !(drawn > 0)) return 1;
  const flows = Array.from({ length: PARTS }, (_, i) => Math.min(inflow.at(((i + 0.5) / PARTS) * drawn), gives));
  return flows.reduce((sum, each) => sum + each, 0) / PARTS / gives;
}

/** @param yielded  what the well gives, by all that is said of it, or the part that is sure: both are told, whichever is judged */
function judgedOn(given: Given, store: Store, yielded: CubicMetresPerSecond) {
  const { solved, values, facts } = given;
  const { wanted } = store;
  const margin = yielded - wanted;
  const gives = provenYield(facts) ?? yielded;
  const sure = store.sure ?? gives;
  const numbers = { wanted, gives, sure, aDay: gives * DAY, sureADay: sure * DAY };
  if (meets(margin, 'flow')) return holds('givesEnough', numbers, margin);
  const { need, peak, inflow, stored, tank, uncounted } = store;
  const asked = (wanted - yielded) * peak;
  const at = { measured: yielded, limit: wanted, margin, quantity: 'flow', depth: solved.levels.static } as const;
  const kept = (stored ?? 0) + tank + (values.tankDrawdown ?? 0);
  const all = stored === null && tank === 0 ? null : kept;
  const short = { ...numbers, stored: all, asked, peak, need, uncounted };
  // The day comes first: a full bore feeds the house once, and hanging the pump deeper adds no inflow.
  if (yielded * DAY < need) return breaks('dayNotMet', 'danger', short, at);
  // What holds of all that came may not of the part that is sure, and then it says so.
  const daySure = sure * DAY >= need;
  // A pump that outruns the well is told by a rule of its own, guarded or not.
  if (tank > 0 && carriesPeak(solved, yielded))
    return breaks('tankCarries', 'note', { ...numbers, tank, peak, need, daySure }, at);
  const carries = (flow: CubicMetresPerSecond) =>
    lacking(store, flow, kept) <= (inflow < 1 ? UNMISSED * wanted * peak : 0);
  const carried = stored !== null && carries(yielded);
  const peakSure = carries(sure);
  const byStore = { ...numbers, stored: kept, peak, need, daySure, peakSure, surely: daySure && peakSure, uncounted };
  if (carried && isGuarded(solved)) return breaks('carried', 'note', byStore, at);
  if (carried) return breaks('carriedUnguarded', 'warning', byStore, at);
  // A bore of unknown width or level has a store of which nobody can tell whether it lasts, nor what of it a pump gets up.
  if (stored === null) return breaks('peakUnsure', 'note', { ...numbers, peak, uncounted }, at);
  return breaks('peakNotCarried', 'warning', short, at);
}

/**
 * How far down water still comes at a usable flow: no deeper than the pump gives most of what is asked of it. Null in an
 * unknown bore, and while nobody can tell what the pump lifts.
 */
function endOfStore({ facts, values }: Given, asked: CubicMetresPerSecond): Metres | null {
  const rest = lowestStatic(facts);
  if (rest === null || values.usableStorage === null || pumpAtLevel(facts, WEAKER, rest) === null) return null;
  const reached = levelAtFlow(facts, WEAKER, LEAST_SHARE * asked);
  return Math.max(Math.min(lowestLevel(facts).depth, reached ?? -Infinity), rest);
}

function storedTo({ solved, facts }: Given, end: Metres): CubicMetres {
  return usableStorage({
    bore: solved.bore,
    staticLevel: lowestStatic(facts) ?? end,
    intakeDepth: end,
    dropPipeOutsideDiameter: facts.dropPipe.outsideDiameter,
  });
}

export const shortageRules = [wellGivesEnough] as const;
