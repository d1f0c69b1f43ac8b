import { lowestLevel } from '../figures/lowestLevel.ts';
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';

/** Where the water stands once a pump that takes more than flows in has drawn it down: at the intake, or at a probe over it. */
export function drawnTo({ facts, curves }: Pick<Solved, 'facts' | 'curves'>): Metres {
  return Math.min(curves.atCutInMost?.waterLevel ?? facts.well.bottom, lowestLevel(facts).depth);
}
