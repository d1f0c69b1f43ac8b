import { suspensionDepth } from '../string/topWorks.ts';
import { systemOf } from '../figures/curves.ts';
import { pumpBandOf } from '../figures/pumpBand.ts';
import { usableWater, waterFall, type BoreAtWork } from '../figures/waterFall.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import type { LevelFall } from '../formulas/levelFall.ts';
import type { CubicMetres, Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { pumpedFlow, type FlowChoice } from './pumpedFlow.ts';

/**
 * The fall of the water in a well that cannot keep up, exactly as the figure of its time is worked out.
 *
 * @param choice  `operating`: the pump's own flow, falling with the water; else a flow that does not change
 * @returns  null where the well keeps up or the fall is unknown
 */
export function fallOf(solved: Solved, staticLevel: Metres, choice: FlowChoice = 'operating'): LevelFall | null {
  const work = workOf(solved);
  if (choice === 'operating' && knowsOwnFlow(solved)) {
    const keepsUp = solved.curves.atCutInMost?.outpumped === false && staticLevel === solved.levels.static;
    return keepsUp ? null : waterFall(work, staticLevel);
  }
  const pumped = pumpedFlow(solved, choice);
  return pumped === null ? null : waterFall(work, staticLevel, pumped.flow);
}

/** Whether the fall follows the pump's own flow; where that is unknown the demand stands in for it. */
export function knowsOwnFlow({ curves, facts }: Solved): boolean {
  const { line, distance, rise } = facts.house;
  const pipesKnown = line !== null && distance !== null && rise !== null;
  const pumpKnown = facts.pump.curve.kind === 'points' || facts.pump.power !== null;
  return curves.atCutInMost !== null || (pipesKnown && pumpKnown) || typeof facts.pump.flowLimiter === 'number';
}

/** Whether the plan says how far the water falls at a flow; a yield alone does not. */
export function drawdownKnown({ facts }: Solved): boolean {
  return wellRelation(facts.water.pumping, facts.water.staticLevel) !== null;
}

/** Water that the pump can lift into the tank from a level at rest down, as the figure counts it. */
export function storedWater(solved: Solved, staticLevel: Metres): CubicMetres | null {
  return usableWater(workOf(solved), staticLevel);
}

function workOf({ facts, bore }: Solved): BoreAtWork {
  const system = systemOf(facts, suspensionDepth(facts));
  return { facts, bore, system, band: pumpBandOf(facts, system.water.density) };
}
