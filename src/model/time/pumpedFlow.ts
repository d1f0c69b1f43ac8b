import type { CubicMetresPerSecond, Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { pumpFrom } from './standing.ts';

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

/** A flow that does not change; null when it is unknown or nothing flows. */
export function givenFlow({ facts }: Solved, choice: Exclude<FlowChoice, 'operating'>): PumpedFlow | null {
  if (typeof choice === 'number')
    return choice > 0 && choice < Infinity ? { flow: choice, words: 'the flow given' } : null;
  const { demand } = facts.house;
  return demand !== null && demand > 0 ? { flow: demand, words: 'the demand' } : null;
}

/** The pump's own where the well keeps up with it; null when it is unknown or none. */
export function ownFlow(solved: Solved, staticLevel: Metres): PumpedFlow | null {
  const { flowLimiter } = solved.facts.pump;
  const limit = typeof flowLimiter === 'number' && flowLimiter > 0 ? flowLimiter : null;
  const point = pumpFrom(solved, staticLevel);
  if (point === null) return limit === null ? null : { flow: limit, words: 'the flow limiter’s flow' };
  if (!(point.flow > 0)) return null;
  return { flow: point.flow, words: point.flow === limit ? 'the flow limiter’s flow' : 'the flow at cut-in' };
}
