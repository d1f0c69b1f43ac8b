/** What comes with a pump that is no reason against it, and that whoever hangs it has to know. */
import { testedFlow } from '../figures/provenYield.ts';
import { isGuarded } from '../rules/cutOff.ts';
import { meets } from '../rules/grace.ts';
import type { Sentence } from '../rules/rule.ts';
import { largestPumpFlow } from '../rules/yield.ts';
import type { CubicMetresPerSecond, Pascals, Ratio } from '../si.ts';
import type { Solution } from '../solution.ts';

/** Nearly every pump takes a little more than a test was run at. Common practice, no source. */
const FAR_PAST_TEST: Ratio = 1.2;

export type Told =
  /** It can put more on the tank than that bears, and nobody said that a relief valve is there. */
  | Sentence<'needsRelief', { reach: Pascals; rating: Pascals }>
  /** It may take far more than the well was pumped at, and nothing stops it. */
  | Sentence<'beyondTest', { flow: CubicMetresPerSecond; tested: CubicMetresPerSecond }>;

export function toldOf(solution: Solution): readonly Told[] {
  const { facts, values } = solution;
  const { kind, reliefValve, tankRating } = facts.house;
  const told: Told[] = [];
  const reach = values.shutOffPressureAtTank;
  if (kind !== 'open tank' && reliefValve !== true && reach !== null && !meets(tankRating - reach, 'pressure'))
    told.push({ variant: 'needsRelief', numbers: { reach, rating: tankRating } });
  const flow = largestPumpFlow(solution);
  const tested = testedFlow(facts.water.pumping);
  if (flow !== null && tested !== null && !meets(FAR_PAST_TEST * tested - flow, 'flow') && !isGuarded(solution))
    told.push({ variant: 'beyondTest', numbers: { flow, tested } });
  return told;
}
