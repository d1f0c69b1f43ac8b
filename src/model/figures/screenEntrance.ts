/** How fast the water enters a screen. */
import { screenEntranceVelocity } from '../formulas/flowPast.ts';
import type { CubicMetresPerSecond, Metres, MetresPerSecond, Ratio } from '../si.ts';
import type { Solved } from '../solution.ts';
import { largestFlow } from './lowestPumping.ts';

/** Ground and scale block the rest of the openings. Usual for design; US Army TM 5-813-1, ch. 5. */
const NOT_BLOCKED: Ratio = 0.5;

export interface ScreenEntrance {
  /** What is drawn year in, year out: the demand, or what the pump gives at cut-in where that is more. */
  readonly flow: CubicMetresPerSecond | null;
  /** Of the screen. */
  readonly diameter: Metres | null;
  /** All screens together. */
  readonly length: Metres;
  /** Open share of the surface, half of it counted, over all screens. */
  readonly openShare: Ratio | null;
  /** Null where one of them is unknown. */
  readonly velocity: MetresPerSecond | null;
}

/** @returns  null in a well without a screen, or where nobody said where it stands */
export function screenEntrance({ facts, values }: Pick<Solved, 'facts' | 'values'>): ScreenEntrance | null {
  const { screens, diameter } = facts.well.intake;
  if (screens.length === 0) return null;
  const flow = largestFlow(facts, values.operatingFlowAtCutIn);
  const length = screens.reduce((sum, { top, bottom }) => sum + bottom - top, 0);
  const open = screens.reduce<Metres | null>(
    (sum, { top, bottom, openArea }) => (sum === null || openArea === null ? null : sum + (bottom - top) * openArea),
    0,
  );
  const openShare = open === null || !(open > 0) || !(length > 0) ? null : (NOT_BLOCKED * open) / length;
  const known = flow !== null && diameter !== null && openShare !== null;
  return {
    flow,
    diameter,
    length,
    openShare,
    velocity: known ? screenEntranceVelocity({ flow, diameter, length, openArea: openShare }) : null,
  };
}
