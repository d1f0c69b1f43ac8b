/** Whether the well gives what the house wants, and what its store does for it where it does not. */
import { dayNeed } from '../figures/dayNeed.ts';
import { levelAtFlow, pumpAtLevel } from '../figures/curves.ts';
import { lowestLevel } from '../figures/lowestLevel.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { provenYield } from '../figures/provenYield.ts';
import { usableStorage } from '../formulas/wellStorage.ts';
import type { CubicMetres, CubicMetresPerSecond, Seconds } from '../si.ts';
import { atBothEnds } from './bothEnds.ts';
import { addCutOff, drawsTo, isGuarded } from './cutOff.ts';
import { LEAST_SHARE } from './delivery.ts';
import { words } from './fix.ts';
import { meets } from './grace.ts';
import { openYield } from './openFacts.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import type { Given } from './rule.ts';

const DAY: Seconds = 86_400;
const WEAKER = { end: 'least', tank: 'cutIn' } as const;

export const wellGivesEnough = defineRule({
  number: 'PR-55',
  part: 'pumpingLevel',
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
  fixes({ solved }, { variant }) {
    if (variant === 'carriedUnguarded') return [addCutOff(solved)];
    if (variant === 'carried') return [words('fillsAgain', {})];
    return isGuarded(solved) || !drawsTo(solved, lowestLevel(solved.facts).depth)
      ? [words('storage', {})]
      : [words('storageAndCutOff', {})];
  },
});

interface Store {
  readonly wanted: CubicMetresPerSecond;
  /** Of a yield that is only said roughly, the part that is sure. */
  readonly sure: CubicMetresPerSecond | null;
  readonly need: CubicMetres;
  readonly peak: Seconds;
  readonly stored: CubicMetres | null;
}

/** What is the same whatever the well gives: found once, since a rough yield is tried at many values. */
function storeOf(given: Given, wanted: CubicMetresPerSecond): Store {
  const sure = openYield(given.solved)?.bad ?? null;
  const isEnough = meets((sure ?? provenYield(given.facts) ?? 0) - wanted, 'flow');
  if (isEnough) return { wanted, sure, need: 0, peak: 0, stored: null };
  return { wanted, sure, ...dayNeed(given.solved), stored: storedForPeak(given, wanted) };
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
  const { need, peak, stored } = store;
  const asked = (wanted - yielded) * peak;
  const at = { measured: yielded, limit: wanted, margin, quantity: 'flow', depth: solved.levels.static } as const;
  const short = { ...numbers, stored, asked, peak, need };
  // The day comes first: a full bore feeds the house once, and hanging the pump deeper adds no inflow.
  if (yielded * DAY < need) return breaks('dayNotMet', 'danger', short, at);
  const kept = (stored ?? 0) + (values.tankDrawdown ?? 0);
  const carried = stored !== null && kept >= asked;
  // What holds of all that came may not of the part that is sure, and then it says so.
  const surely = sure * DAY >= need && kept >= (wanted - sure) * peak;
  if (carried && isGuarded(solved)) return breaks('carried', 'note', { ...numbers, stored: kept, peak, surely }, at);
  if (carried) return breaks('carriedUnguarded', 'warning', { ...numbers, stored: kept, peak, surely }, at);
  // A bore of unknown width or level has a store of which nobody can tell whether it lasts, nor what of it a pump gets up.
  if (stored === null) return breaks('peakUnsure', 'note', { ...numbers, peak }, at);
  return breaks('peakNotCarried', 'warning', short, at);
}

/**
 * Water in the bore that still comes at a usable flow: no deeper than the pump gives most of what is wanted. Null in an
 * unknown bore, and while nobody can tell what the pump lifts.
 */
function storedForPeak({ solved, facts, values }: Given, wanted: CubicMetresPerSecond): CubicMetres | null {
  const rest = lowestStatic(facts);
  if (rest === null || values.usableStorage === null || pumpAtLevel(facts, WEAKER, rest) === null) return null;
  const reached = levelAtFlow(facts, WEAKER, LEAST_SHARE * wanted);
  const end = Math.min(lowestLevel(facts).depth, reached ?? -Infinity);
  return usableStorage({
    bore: solved.bore,
    staticLevel: rest,
    intakeDepth: Math.max(end, rest),
    dropPipeOutsideDiameter: facts.dropPipe.outsideDiameter,
  });
}

export const shortageRules = [wellGivesEnough] as const;
