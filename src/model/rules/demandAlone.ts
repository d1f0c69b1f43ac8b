/** What holds only as long as the pump draws no more than the house wants, where nobody can tell what the pump takes. */
import { lowestLevel } from '../figures/lowestLevel.ts';
import type { Solved } from '../solution.ts';
import { DECIDED_BY } from './missing.ts';
import type { Given, Rule } from './rule.ts';

/** Rules that hold the lowest pumping level against something that must stay under water. */
const HELD_AGAINST_LEVEL: ReadonlySet<string> = new Set(['PR-02', 'PR-04']);

/**
 * Facts that would tell what the pump takes, of a rule that holds with what the house wants and would not with the water
 * drawn as far down as a pump can. Paths of the plan; none where the level is known, or deep enough in any case.
 */
export function unsaidFlow(rule: Rule, given: Given): readonly string[] {
  const { solved } = given;
  if (solved.lowest?.atDemandAlone !== true || !HELD_AGAINST_LEVEL.has(rule.number)) return NOTHING;
  const { depth, by } = lowestLevel(given.facts);
  const drawnDown: Solved = {
    ...solved,
    lowest: { depth, by: by === 'intake' ? 'intake' : 'cutOff', atDemandAlone: false },
  };
  const there = rule.judge({ ...given, solved: drawnDown });
  if (there.kind === 'holds' || there.kind === 'doesNotApply') return NOTHING;
  return DECIDED_BY.flowAtCutIn.filter((path) => solved.unknown.includes(path));
}

const NOTHING: readonly string[] = [];
