/** Brings the pump or the adapter to an end of where the rules let it be. */
import { valueAt } from '../plan/editPlan.ts';
import { readFacts } from '../plan/readFacts.ts';
import type { Plan } from '../plan/schema.ts';
import { RULES } from '../rules/list.ts';
import { mayMove, statusAt, writtenInside } from '../rules/mend.ts';
import { lowestPumpingLevel, drawdownMissing } from '../rules/pumpDepth.ts';
import { rangesOf } from '../rules/ranges.ts';
import type { Range } from '../rules/rule.ts';
import type { BandSetting, Solved } from '../solution.ts';
import { solveFacts } from '../solve.ts';
import { show } from '../units.ts';
import { withChange } from './draft.ts';
import type { Draft } from './draft.ts';

/**
 * `firm`: limits that something else mends (thicker wire, a hoist, a shroud) do not hold the part back; `every`: they do.
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
  if (text === valueAt(draft.plan, setting)) return draft;
  const { rule } = deep ? range.to : range.from;
  return withChange(draft, setting, text, rule, whyThere(setting, range, deep, solved));
}

/** Why a setting stays as it is; null where it can be chosen. */
export function whyLeft(solved: Solved, setting: BandSetting): string | null {
  const { facts } = solved;
  if (setting === 'top.depth' && facts.top.kind !== 'pitless') return null;
  if (!mayMove(facts, setting)) return whatStands(statusAt(facts, setting));
  if (setting === 'top.depth') return solved.values.frostDepth === null ? 'Nobody said the frost depth.' : null;
  if (solved.levels.static === null) return 'Nobody said the static water level.';
  // The deep end rests on the bottom or the screen; only the shallow end needs the drawdown.
  if (hangsDeep(solved) || lowestPumpingLevel(solved) !== null) return null;
  return `Nobody said ${drawdownMissing(solved)}.`;
}

export function whatStands(status: ReturnType<typeof statusAt>): string {
  return status === 'reported' ? 'It stands as the driller reported it.' : 'It stands installed.';
}

/** A well that gives less than the house asks stores water for it: the deeper the pump, the more. */
export function hangsDeep({ facts }: Solved): boolean {
  const { well, house } = facts;
  return well.yield !== null && house.demand !== null && house.demand > well.yield;
}

export function solvedOf(plan: Plan): Solved {
  return solveFacts(plan, readFacts(plan));
}

function whyThere(setting: BandSetting, range: Range, deep: boolean, { facts }: Solved): string {
  const end = deep ? range.to : range.from;
  const named = `${end.label(show(facts.units))}${end.rule === '' ? '' : ` (${end.rule})`}`;
  if (deep) return `The well gives less than the house asks: the deepest that the rules allow stores most: ${named}.`;
  return setting === 'top.depth'
    ? `The shallowest that every rule allows, as less is to dig: ${named}.`
    : `The shallowest that every rule allows, as less is to lift: ${named}.`;
}
