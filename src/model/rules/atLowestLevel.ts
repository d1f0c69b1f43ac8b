/** Judges a rule with the water as low as it gets while pumping. */
import type { Metres } from '../si.ts';
import type { LowestPumping } from '../solution.ts';
import { atBothEnds } from './bothEnds.ts';
import { openPumpingLevel } from './openFacts.ts';
import { missing } from './rule.ts';
import type { Given, Missing, Depends, Outcome, Sentence } from './rule.ts';

/** What sets the level: `open` where nobody knows it, and the rule is judged at an end of what it can be. */
export type SetBy = LowestPumping['by'] | 'open';

/**
 * The rule at the lowest pumping level; where that is unknown, at both ends of what it can be.
 *
 * @param judgeAt  the rule with the water at a depth [m]; outcomes carry their margin
 * @param say      the sentence for the depth at which the verdict turns [m]
 * @param turnAt   that depth, where margins do not tell it
 */
export function atLowestLevel<Out extends Outcome, Said extends Sentence>(
  { solved }: Given,
  judgeAt: (level: Metres, by: SetBy) => Out,
  say: (turn: Metres) => Said,
  turnAt?: () => Metres | null,
): Out | Missing | Depends<Said['variant'], Said['numbers']> {
  if (solved.lowest !== null) return judgeAt(solved.lowest.depth, solved.lowest.by);
  const open = openPumpingLevel(solved);
  if (open === null) return missing('staticLevel');
  return atBothEnds(open, (level) => judgeAt(level, 'open'), say, turnAt);
}
