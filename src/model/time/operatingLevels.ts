import { drawdownAt } from '../formulas/drawdown.ts';
import type { Metres, Ratio, SquareMetresPerSecond } from '../si.ts';
import type { Solved } from '../solution.ts';
import { groundOf } from './ground.ts';

export interface OperatingLevels {
  /** Where the water stands when the pump meets the tank at cut-in: its largest flow, its deepest level. */
  readonly pumpingLevelAtCutIn: Metres | null;
  readonly pumpingLevelAtCutOut: Metres | null;
  /** From an aquifer's figures, or estimated from the test. */
  readonly transmissivity: SquareMetresPerSecond | null;
  readonly storativity: Ratio | null;
}

/**
 * Pumping levels at the operating points, which were found with the drawdown moving with the flow, so each level
 * belongs to its own flow.
 */
export function operatingLevels(solved: Solved): OperatingLevels {
  const { curves, facts } = solved;
  const { staticLevel, pumping } = facts.water;
  const levelAt = (flow: number | undefined): Metres | null => {
    if (staticLevel === null || pumping === null || flow === undefined) return null;
    const drawdown = drawdownAt(pumping, flow, staticLevel);
    return drawdown === null ? null : staticLevel + drawdown;
  };
  const flow = curves.atCutIn?.flow || facts.house.demand;
  const ground = staticLevel === null || !flow ? null : groundOf(solved, { flow, staticLevel, storativity: undefined });
  const known = ground !== null && !('reason' in ground) ? ground : null;
  return {
    pumpingLevelAtCutIn: levelAt(curves.atCutIn?.flow),
    pumpingLevelAtCutOut: levelAt(curves.atCutOut?.flow),
    transmissivity: known?.transmissivity ?? null,
    storativity: known?.storativity ?? null,
  };
}
