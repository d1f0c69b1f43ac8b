/** What holds only as long as something that nobody said is as it is taken to be: how far the pump draws the water down. */
import { lowestLevel } from '../figures/lowestLevel.ts';
import type { Holding, Solved, Taken } from '../solution.ts';
import { givenOtherwise } from './given.ts';
import { DECIDED_BY } from './missing.ts';
import type { Given, Rule } from './rule.ts';

/** Rules that hold the lowest pumping level against something. */
const HELD_AGAINST_LEVEL: ReadonlySet<string> = new Set(['PR-02', 'PR-04', 'PR-46']);

/**
 * Of a rule that holds at the level as it is taken to be, and would not with the water drawn as far down as a pump can:
 * what is taken to be so, and the facts that would tell. Nothing where the level is known, or high enough in any case.
 */
export function takenFor(rule: Rule, given: Given): Pick<Holding, 'unsaid' | 'taken'> {
  const { solved } = given;
  const taken = solved.lowest?.taken ?? null;
  if (taken === null || !HELD_AGAINST_LEVEL.has(rule.number)) return NOTHING;
  const { depth, by } = lowestLevel(given.facts);
  const drawnDown: Solved = { ...solved, lowest: { depth, by: by === 'intake' ? 'intake' : 'cutOff', taken: null } };
  const there = rule.judge(givenOtherwise(given, drawnDown));
  if (there.kind === 'holds' || there.kind === 'doesNotApply') return NOTHING;
  return { unsaid: factsFor(taken, solved), taken };
}

function factsFor(taken: Taken, { unknown }: Solved): readonly string[] {
  switch (taken) {
    case 'demandAlone':
      return DECIDED_BY.flowAtCutIn.filter((path) => unknown.includes(path));
    case 'beyondTest':
      return DECIDED_BY.pumpingTest;
  }
}

const NOTHING: Pick<Holding, 'unsaid' | 'taken'> = { unsaid: [], taken: null };
