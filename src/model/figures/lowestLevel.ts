import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';

export interface LowestLevel {
  readonly depth: Metres;
  /** What stops the water there from falling further. */
  readonly by: 'intake' | 'low-level cut-off';
}

/**
 * How deep the pump can draw the water: to its intake, or to a cut-off that hangs above it. Never below the bottom, to
 * which a pump hung too deep can draw at most.
 */
export function lowestLevel({ pump, well }: Facts): LowestLevel {
  const { setting, lowLevelCutOff } = pump;
  const intake = Math.min(setting, well.bottom);
  return typeof lowLevelCutOff === 'number' && lowLevelCutOff < intake
    ? { depth: lowLevelCutOff, by: 'low-level cut-off' }
    : { depth: intake, by: 'intake' };
}
