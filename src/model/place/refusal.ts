/** Wells in which nothing is placed, and facts without which nothing can be. */
import { lowestStatic } from '../figures/lowestPumping.ts';
import { meets } from '../rules/grace.ts';
import { isFlowing } from '../rules/highestStatic.ts';
import { intakeUnsaid, isOpenRock } from '../rules/openRock.ts';
import type { MissingFact } from '../rules/missing.ts';
import type { Numbers } from '../rules/rule.ts';
import type { Solved } from '../solution.ts';
import type { WhyLeft } from './told.ts';

/**
 * A flowing well wants a licensed contractor before anything is hung in it; a dry one has nothing to pump; and with the
 * level at rest unknown no depth is right.
 */
export function refusal(solved: Solved): WhyLeft | null {
  const { facts } = solved;
  if (isFlowing(solved)) return { variant: 'flowing', numbers: {} };
  const rest = lowestStatic(facts);
  if (rest === null) return nobodySaid('staticLevel');
  const { bottom } = facts.well;
  return meets(rest - bottom, 'length') ? { variant: 'dry', numbers: { rest, bottom } } : null;
}

/** A screen that nobody said the depth of, or of which nobody said that there is none, may be anywhere, and the pump in it. */
export function missingForPump({ facts }: Solved): WhyLeft | null {
  if (intakeUnsaid(facts)) return nobodySaid('intakeKind');
  const { kind, screens } = facts.well.intake;
  return kind === 'screen' && screens.length === 0 && !isOpenRock(facts) ? nobodySaid('screenEnds') : null;
}

export function nobodySaid(fact: MissingFact, numbers: Numbers = {}): WhyLeft {
  return { variant: 'nobodySaid', numbers: { fact, numbers } };
}
