/** The flow that stands for a pump's rating where only its points are known. */
import { pointsCurve, type PumpPoint } from '../formulas/pointsCurve.ts';
import type { CubicMetresPerSecond } from '../si.ts';

const STEPS = 60;

/**
 * Flow at which a pump gives the most water power, flow times head, between no flow and its last point.
 *
 * @param points  of the maker's curve: flow [m³/s] and head [m]
 * @returns  [m³/s]; to a sixtieth of the last flow
 *
 * Range    close to the flow of best efficiency, near which pumps are named; a stand-in where nobody says the rating
 * Throws   RangeError as `pointsCurve`
 * Source   common practice, no source
 */
export function mostPowerFlow(points: readonly PumpPoint[]): CubicMetresPerSecond {
  const { headAt } = pointsCurve(points);
  const last = points.reduce((most, { flow }) => Math.max(most, flow), 0);
  let best = { flow: last, power: 0 };
  for (let step = 1; step <= STEPS; step++) {
    const flow = (last * step) / STEPS;
    const power = flow * headAt(flow);
    if (power > best.power) best = { flow, power };
  }
  return best.flow;
}
