/** What the depths rest on and nobody can vouch for: it is told with them, though no depth mends it. */
import { levelAtNoFlow } from '../figures/curves.ts';
import { lowestLevel, lowestStatic } from '../figures/lowestLevel.ts';
import { provenYield } from '../figures/provenYield.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import { isAssumed } from '../rules/assumed.ts';
import { CLEAR_OF_BOTTOM } from '../rules/pumpDepth.ts';
import type { Sentence } from '../rules/rule.ts';
import { LEAST_TEST, timePumped } from '../rules/yieldTest.ts';
import { meets } from '../rules/grace.ts';
import type { CubicMetresPerSecond, Metres, Ratio, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { settingForMotorBottom } from '../string/pumpDepths.ts';

export type Caveat =
  /** Water stands far below what this pump can use: no depth mends a pump that is too weak. */
  | Sentence<'pumpTooWeak', { readonly stands: Metres; readonly uses: Metres }>
  /** The water was still falling, for all that anybody knows. */
  | Sentence<'shortTest', { readonly measured: Seconds }>
  | Sentence<'testOfUnknownLength', object>
  | Sentence<'levelAtAssumedFlow', { readonly flow: CubicMetresPerSecond }>;

/** The pump before all else, since no depth makes it stronger. */
export function caveatsOf(solved: Solved): Caveat[] {
  return [...tooWeak(solved), ...ofTheTest(solved)];
}

/** Less than this share of the water that stands in a well drawn down on purpose is little. Common practice, no source. */
const LITTLE_USED: Ratio = 0.5;

/** Of a well that gives less than the house wants, whose pump hangs no deeper since it lifts from no deeper. */
function tooWeak({ facts, lowest }: Solved): Caveat[] {
  const rest = lowestStatic(facts);
  const gives = provenYield(facts);
  const { demand } = facts.house;
  if (rest === null || gives === null || demand === null || demand <= gives) return [];
  const { setting } = facts.pump;
  const reachable = settingForMotorBottom(facts.well.bottom - CLEAR_OF_BOTTOM, facts.pump);
  const lifts = levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' }) ?? Infinity;
  const ends = Math.min(lowest?.depth ?? Infinity, lowestLevel(facts).depth, lifts);
  const [stands, uses] = [reachable - rest, ends - rest];
  // A pump that could go deeper and still lift is not weak, whatever it hangs by.
  if (lifts > setting + CLEAR_OF_BOTTOM || !(stands > 0) || uses >= LITTLE_USED * stands) return [];
  return [{ variant: 'pumpTooWeak', numbers: { stands: facts.well.bottom - rest, uses: Math.max(uses, 0) } }];
}

/** Of a well whose drawdown is told by a test or a level; an aquifer was worked out elsewhere. */
function ofTheTest(solved: Solved): Caveat[] {
  const { pumping, staticLevel } = solved.facts.water;
  if (pumping === null || wellRelation(pumping, staticLevel) === null) return [];
  switch (pumping.kind) {
    case 'test':
    case 'steps': {
      const measured = timePumped(pumping);
      if (measured === null) return [{ variant: 'testOfUnknownLength', numbers: {} }];
      return meets(measured - LEAST_TEST, 'time') ? [] : [{ variant: 'shortTest', numbers: { measured } }];
    }
    case 'level':
      return pumping.flow !== null && isAssumed(solved, 'water.pumping.flow')
        ? [{ variant: 'levelAtAssumedFlow', numbers: { flow: pumping.flow } }]
        : [];
    default:
      return [];
  }
}
