/** What comes with a pump that is no reason against it, and that whoever hangs it has to know. */
import { isGuarded } from '../rules/cutOff.ts';
import { meets } from '../rules/grace.ts';
import type { Sentence } from '../rules/rule.ts';
import { largestPumpFlow } from '../rules/yield.ts';
import type { CubicMetresPerSecond, Pascals, Ratio } from '../si.ts';
import type { Solution } from '../solution.ts';

/** Nearly every pump takes a little more at its strongest. Common practice, no source. */
const FAR_PAST: Ratio = 1.1;

export type Told =
  /** It can put more on the tank than that bears, and nobody said that a relief valve is there. */
  | Sentence<'needsRelief', { reach: Pascals; rating: Pascals }>
  /** It may take far more than the well is said to give, though its drawdown leaves water enough, and nothing stops it. */
  | Sentence<'beyondYield', { flow: CubicMetresPerSecond; gives: CubicMetresPerSecond }>;

export function toldOf(solution: Solution): readonly Told[] {
  const { facts, values } = solution;
  const { kind, reliefValve, tankRating } = facts.house;
  const told: Told[] = [];
  const reach = values.shutOffPressureAtTank;
  if (kind !== 'open tank' && reliefValve !== true && reach !== null && !meets(tankRating - reach, 'pressure'))
    told.push({ variant: 'needsRelief', numbers: { reach, rating: tankRating } });
  const flow = largestPumpFlow(solution);
  const gives = facts.well.yield;
  if (flow !== null && gives !== null && !meets(FAR_PAST * gives - flow, 'flow') && !isGuarded(solution))
    told.push({ variant: 'beyondYield', numbers: { flow, gives } });
  return told;
}
