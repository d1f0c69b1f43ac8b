import type { Facts, PumpingFacts } from '../facts.ts';
import type { CubicMetresPerSecond, Ratio } from '../si.ts';

/**
 * Flow that the well has been seen to give: the reported yield, else the flow of the test, else the largest flow of a
 * step test [m³/s]; null where nobody pumped it.
 */
export function provenYield({ well, water }: Facts): CubicMetresPerSecond | null {
  const { pumping } = water;
  if (well.yield !== null) return well.yield;
  return testedFlow(pumping);
}

/**
 * The most that the well is held to give however far its water falls, where its drawdown is known [m³/s]; null: no more
 * is said than the drawdown says.
 *
 * A reported yield under the tested flow is that most. One at the tested flow or over it is mostly the rate at which the
 * driller pumped, which the well stood: what lies beyond it is for the drawdown to tell, and for a rule to doubt.
 */
export function mostYield({ well, water }: Facts): CubicMetresPerSecond | null {
  if (well.yield === null) return null;
  const tested = testedFlow(water.pumping);
  return tested === null || well.yield < tested * (1 - SAME_FLOW) ? well.yield : null;
}

/** Two flows that differ by less than this share are one, written in two units. */
const SAME_FLOW: Ratio = 0.01;

/**
 * Flow at which a level was measured while pumping; the largest of a step test; null where nobody pumped and measured, or
 * said the flow of it.
 */
export function testedFlow(pumping: PumpingFacts | null): CubicMetresPerSecond | null {
  switch (pumping?.kind) {
    case 'test':
      return pumping.flow;
    case 'level':
      return pumping.flowAssumed === true ? null : pumping.flow;
    case 'steps':
      return pumping.steps.reduce((most, { flow }) => Math.max(most, flow), 0) || null;
    default:
      return null;
  }
}
