/** What is offered against a broken rule of `rules/inflow.ts`. */
import { provenYield } from '../../figures/provenYield.ts';
import { wantedOfPump } from '../../figures/wantedOfPump.ts';
import type { Solved } from '../../solution.ts';
import { isGuarded } from '../../rules/cutOff.ts';
import { words } from '../../rules/fix.ts';
import { meets } from '../../rules/grace.ts';
import { openYield } from '../../rules/openFacts.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const inflowFixes = {
  'PR-04': ({ solved }, { variant }) => {
    if (variant === 'inflowAtRest' || variant === 'screenAtRest') return [words('notByPumping', {})];
    return [livesOnStore(solved) ? words('fromStore', {}) : words('pumpLess', {})];
  },
} satisfies RuleFixes;

/** The well gives less than is asked of the pump, and its water is drawn down on purpose as far as a guard lets it. */
function livesOnStore(solved: Solved): boolean {
  const gives = openYield(solved)?.bad ?? provenYield(solved.facts);
  const wanted = wantedOfPump(solved)?.flow ?? null;
  return gives !== null && wanted !== null && !meets(gives - wanted, 'flow') && isGuarded(solved);
}
