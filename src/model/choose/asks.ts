/** What has to be known of a pump, or of what hangs it, before it can be called right: nobody said it. */
import { mostThatPasses } from '../rules/clearance.ts';
import { dropPipeNeed } from '../rules/pipeNeeds.ts';
import type { Sentence } from '../rules/rule.ts';
import { largestPumpFlow } from '../rules/yield.ts';
import type { CubicMetresPerSecond, Metres, Pascals } from '../si.ts';
import type { Solution } from '../solution.ts';

export type Ask =
  /** Wire, supply and control box follow from it. */
  | Sentence<'power', object>
  /** Of the drop pipe that hangs: what its rating has to bear. */
  | Sentence<'pipeRating', { need: Pascals }>
  /** `flow` is what it takes at the strongest that its name can stand for. */
  | Sentence<'wellYield', { flow: CubicMetresPerSecond }>
  /** `most` is the widest pump that passes. */
  | Sentence<'pumpWidth', { most: Metres }>;

const STRENGTH = 'PR-18';
const PASSES = 'PR-17';
const WITHIN_YIELD = 'PR-07';

/** @param solution  of the plan with the pump, its pipe and its wire in it */
export function asksOf(solution: Solution): readonly Ask[] {
  const lacks = (rule: string, fact: string) =>
    solution.notJudged.some((each) => each.rule === rule && each.fact === fact);
  const asks: Ask[] = [];
  if (solution.facts.pump.power === null) asks.push({ variant: 'power', numbers: {} });
  if (lacks(STRENGTH, 'ratingOfDropPipe'))
    asks.push({ variant: 'pipeRating', numbers: { need: dropPipeNeed(solution) } });
  const flow = largestPumpFlow(solution);
  // What was told of the aquifer says how far it falls.
  if (lacks(WITHIN_YIELD, 'yield') && flow !== null && solution.facts.water.pumping?.kind !== 'aquifer')
    asks.push({ variant: 'wellYield', numbers: { flow } });
  const most = lacks(PASSES, 'pumpDiameter') ? mostThatPasses(solution) : null;
  if (most !== null) asks.push({ variant: 'pumpWidth', numbers: { most } });
  return asks;
}
