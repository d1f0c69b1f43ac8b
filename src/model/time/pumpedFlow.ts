import type { CubicMetresPerSecond } from '../si.ts';
import type { Solved } from '../solution.ts';

/**
 * Which flow is meant: `operating` is what the pump gives at cut-in, its largest in use; `demand` what the house asks;
 * or a figure.
 */
export type FlowChoice = 'operating' | 'demand' | CubicMetresPerSecond;

export interface PumpedFlow {
  readonly flow: CubicMetresPerSecond;
  /** "the flow at cut-in" */
  readonly words: string;
}

/** The flow drawn from the well; null when it is unknown or nothing flows. A limiter of known flow caps the pump's own. */
export function pumpedFlow({ facts, curves }: Solved, choice: FlowChoice = 'operating'): PumpedFlow | null {
  if (typeof choice === 'number')
    return choice > 0 && choice < Infinity ? { flow: choice, words: 'the flow given' } : null;
  const { demand } = facts.house;
  const atCutIn = curves.atCutIn?.flow ?? 0;
  if (choice === 'operating' && atCutIn > 0) {
    const limit = facts.pump.flowLimiter;
    return typeof limit === 'number' && limit > 0 && limit < atCutIn
      ? { flow: limit, words: 'the flow limiter’s flow' }
      : { flow: atCutIn, words: 'the flow at cut-in' };
  }
  return demand !== null && demand > 0 ? { flow: demand, words: 'the demand' } : null;
}
