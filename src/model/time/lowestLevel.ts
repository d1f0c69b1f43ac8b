import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';

export interface LowestLevel {
  readonly depth: Metres;
  /** What stops the water there from falling further. */
  readonly by: 'intake' | 'low-level cut-off';
}

/** How deep the pump can draw the water: to its intake, or to a cut-off that hangs above it. */
export function lowestLevel({ pump }: Facts): LowestLevel {
  const { setting, lowLevelCutOff } = pump;
  return typeof lowLevelCutOff === 'number' && lowLevelCutOff < setting
    ? { depth: lowLevelCutOff, by: 'low-level cut-off' }
    : { depth: setting, by: 'intake' };
}
