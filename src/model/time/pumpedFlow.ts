import type { CubicMetresPerSecond } from '../si.ts';
import type { Solved } from '../solution.ts';

/**
 * Which flow is meant: `operating` is what the pump gives at cut-in, its largest in use, on the stronger end of a generic
 * pump's band, since that end out-pumps a well; `demand` what the house asks; or a figure.
 */
export type FlowChoice = 'operating' | 'demand' | CubicMetresPerSecond;

export interface PumpedFlow {
  readonly flow: CubicMetresPerSecond;
  /** "the flow at cut-in" */
  readonly words: string;
}

/**
 * The flow drawn from the well; null when it is unknown or nothing flows. Where the well cannot keep up with the pump it
 * is the flow with the water at rest, from which it falls.
 */
export function pumpedFlow(solved: Solved, choice: FlowChoice = 'operating'): PumpedFlow | null {
  if (typeof choice === 'number')
    return choice > 0 && choice < Infinity ? { flow: choice, words: 'the flow given' } : null;
  const own = choice === 'operating' ? ownFlow(solved) : null;
  if (own !== null) return own;
  const { demand } = solved.facts.house;
  return demand !== null && demand > 0 ? { flow: demand, words: 'the demand' } : null;
}

function ownFlow({ facts, curves }: Solved): PumpedFlow | null {
  const { flowLimiter } = facts.pump;
  const limit = typeof flowLimiter === 'number' && flowLimiter > 0 ? flowLimiter : null;
  const atCutIn = curves.atCutInMost;
  if (atCutIn === null) return limit === null ? null : { flow: limit, words: 'the flow limiter’s flow' };
  if (!(atCutIn.flow > 0)) return null;
  return { flow: atCutIn.flow, words: atCutIn.flow === limit ? 'the flow limiter’s flow' : 'the flow at cut-in' };
}
