/** Brings the pump or the adapter to an end of where the rules let it be. */
import type { Facts } from '../facts.ts';
import { valueAt } from '../plan/editPlan.ts';
import { readFacts } from '../plan/readFacts.ts';
import type { Plan } from '../plan/schema.ts';
import { RULES } from '../rules/list.ts';
import { probeAbove } from '../rules/cutOff.ts';
import { mayMove, statusAt, writtenInside } from '../rules/fix.ts';
import { lowestPumpingLevel, drawdownMissing } from '../rules/pumpDepth.ts';
import { rangesOf } from '../rules/ranges.ts';
import type { MissingFact } from '../rules/missing.ts';
import type { Numbers } from '../rules/rule.ts';
import type { BandSetting, EndName, Solved } from '../solution.ts';
import { solveFacts } from '../solve.ts';
import { withChange } from './draft.ts';
import type { Draft } from './draft.ts';
import type { Stands, WhyLeft, WhyPlaced } from './told.ts';

/**
 * `firm`: limits that something else answers (thicker wire, a hoist, a shroud) do not hold the part back; `every`: they do.
 */
export type Heeding = 'firm' | 'every';

/** Nothing to settle where the part may not move, where facts are missing, and where no depth meets the rules. */
export function settle(draft: Draft, setting: BandSetting, heeding: Heeding): Draft {
  const solved = solvedOf(draft.plan);
  if (whyLeft(solved, setting) !== null) return draft;
  const range = rangesOf(solved, RULES)[setting];
  const ends = heeding === 'firm' ? range?.firm : range?.ends;
  if (range === null || ends === null || ends === undefined) return draft;
  const deep = setting === 'pump.setting' && hangsDeep(solved);
  const text = writtenInside({ solved, facts: solved.facts }, setting, deep ? 'to' : 'from', ends);
  const end = deep ? range.to.name : range.from.name;
  const settled =
    text === valueAt(draft.plan, setting)
      ? draft
      : withChange(draft, setting, text, end.rule, whyThere(setting, end, deep));
  return deep ? withProbeLowered(settled) : settled;
}

/** A probe left high up would keep the pump from the water that it hangs so deep for; unless that water is all it has. */
function withProbeLowered(draft: Draft): Draft {
  const solved = solvedOf(draft.plan);
  const { setting, lowLevelCutOff } = solved.facts.pump;
  const probe = probeAbove(solved, setting);
  if (typeof lowLevelCutOff !== 'number' || probe === null || !mayMove(solved.facts, probe.path)) return draft;
  if (probe.to === valueAt(draft.plan, probe.path)) return draft;
  const lowered = withChange(draft, probe.path, probe.to, 'PR-08', { variant: 'probeOverIntake', numbers: {} });
  return rangesOf(solvedOf(lowered.plan), RULES)['pump.setting'].firm === null ? draft : lowered;
}

/** Why a setting stays as it is; null where it can be chosen. */
export function whyLeft(solved: Solved, setting: BandSetting): WhyLeft | null {
  const { facts } = solved;
  if (setting === 'top.depth' && facts.top.kind !== 'pitless') return null;
  if (!mayMove(facts, setting)) return { variant: 'stands', numbers: { status: whatStands(facts, setting) } };
  if (setting === 'top.depth') return solved.values.frostDepth === null ? nobodySaid('frostDepth') : null;
  if (solved.levels.static === null) return nobodySaid('staticLevel');
  // The deep end rests on the bottom or the screen; only the shallow end needs the drawdown.
  if (hangsDeep(solved) || lowestPumpingLevel(solved) !== null) return null;
  return nobodySaid(drawdownMissing(solved));
}

export function nobodySaid(fact: MissingFact, numbers: Numbers = {}): WhyLeft {
  return { variant: 'nobodySaid', numbers: { fact, numbers } };
}

/** Of a path that may not move. */
export function whatStands(facts: Facts, path: string): Stands {
  return statusAt(facts, path) === 'reported' ? 'reported' : 'installed';
}

/** A well that gives less than the house asks stores water for it: the deeper the pump, the more. */
export function hangsDeep({ facts }: Solved): boolean {
  const { well, house } = facts;
  return well.yield !== null && house.demand !== null && house.demand > well.yield;
}

export function solvedOf(plan: Plan): Solved {
  return solveFacts(plan, readFacts(plan));
}

function whyThere(setting: BandSetting, end: EndName, deep: boolean): WhyPlaced {
  const variant = deep ? 'deepest' : setting === 'top.depth' ? 'leastToDig' : 'leastToLift';
  return { variant, numbers: { end } };
}
