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

/** The deeper of today's level at rest and the dry season's; null where nobody said today's. */
export function lowestStatic({ water }: Pick<Facts, 'water'>): Metres | null {
  const { staticLevel, staticLowest } = water;
  if (staticLevel === null) return null;
  return staticLowest === null ? staticLevel : Math.max(staticLevel, staticLowest);
}

/** The pump hangs above the lowest water at rest, or its probe does, which then never lets it start. */
export function neverDraws(facts: Facts): boolean {
  const rest = lowestStatic(facts);
  return rest !== null && rest >= lowestLevel(facts).depth;
}
