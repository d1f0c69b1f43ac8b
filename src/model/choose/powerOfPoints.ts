/** What a maker's points ask of the motor under them. */
import type { Facts } from '../facts.ts';
import { siteWater } from '../figures/siteWater.ts';
import { pointsCurve, type PumpPoint } from '../formulas/pointsCurve.ts';
import { STANDARD_GRAVITY } from '../formulas/water.ts';
import type { Ratio, Watts } from '../si.ts';
import { serviceFactor } from '../tables/motors.ts';
import { mostPowerFlow } from './mostPowerFlow.ts';

/** No well pump of such sizes makes more of its motor's power than this. Common practice, from memory. */
const BEST_EFFICIENCY: Ratio = 0.75;

/**
 * Power that a pump of these points takes from its motor where it gives the most water power, at the best.
 *
 * @returns  [W]
 */
export function leastShaftPower(points: readonly PumpPoint[], { site }: Pick<Facts, 'site'>): Watts {
  const flow = mostPowerFlow(points);
  const head = pointsCurve(points).headAt(flow);
  return (flow * head * siteWater(site).density * STANDARD_GRAVITY) / BEST_EFFICIENCY;
}

/** The most that a motor of this rating gives without harm [W]; of one whose frequency nobody said, at 60 Hz. */
export function mostShaftPower(power: Watts, { pump }: Pick<Facts, 'pump'>): Watts {
  return power * serviceFactor(power, pump.frequency ?? 60);
}
