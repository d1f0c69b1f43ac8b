/** Brings the pump or the adapter to an end of where the rules let it be. */
import { valueAt } from '../plan/editPlan.ts';
import { readFacts } from '../plan/readFacts.ts';
import type { Plan } from '../plan/schema.ts';
import { RULES } from '../rules/list.ts';
import { probeAbove } from '../rules/cutOff.ts';
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
  const { rule } = deep ? range.to : range.from;
  const settled =
    text === valueAt(draft.plan, setting)
      ? draft
      : withChange(draft, setting, text, rule, whyThere(setting, range, deep, solved));
  return deep ? withProbeLowered(settled) : settled;
}

/** A probe left high up would keep the pump from the water that it hangs so deep for; unless that water is all it has. */
function withProbeLowered(draft: Draft): Draft {
  const solved = solvedOf(draft.plan);
  const { setting, lowLevelCutOff } = solved.facts.pump;
  const probe = probeAbove(solved, setting);
  if (typeof lowLevelCutOff !== 'number' || probe === null || !mayMove(solved.facts, probe.path)) return draft;
  if (probe.to === valueAt(draft.plan, probe.path)) return draft;
  const why =
    'With the pump so deep, the cut-off hangs just over its intake, and the stored water can be used (PR-08).';
  const lowered = withChange(draft, probe.path, probe.to, 'PR-08', why);
  return rangesOf(solvedOf(lowered.plan), RULES)['pump.setting'].firm === null ? draft : lowered;
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
  if (deep) return `The well gives less than the house asks, and the deepest place stores most: ${named}.`;
  return setting === 'top.depth'
    ? `As shallow as the rules allow, since less is to dig: ${named}.`
    : `The shallowest that every rule allows, since less is to lift: ${named}.`;
}
