/** What the depths rest on and nobody can vouch for: it is told with them, though no depth mends it. */
import { wellRelation } from '../formulas/wellRelation.ts';
import { isAssumed } from '../rules/assumed.ts';
import type { Sentence } from '../rules/rule.ts';
import { LEAST_TEST, timePumped } from '../rules/yieldTest.ts';
import { meets } from '../rules/grace.ts';
import type { CubicMetresPerSecond, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';

export type Caveat =
  /** The water was still falling, for all that anybody knows. */
  | Sentence<'shortTest', { readonly measured: Seconds }>
  | Sentence<'testOfUnknownLength', object>
  | Sentence<'levelAtAssumedFlow', { readonly flow: CubicMetresPerSecond }>;

/** Of a well whose drawdown is told by a test or a level; an aquifer was worked out elsewhere. */
export function caveatsOf(solved: Solved): Caveat[] {
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
