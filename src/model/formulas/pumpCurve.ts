/** Head of a pump against its flow. */
import type { CubicMetresPerSecond, Metres, Ratio, Watts } from '../si.ts';
import { gpm } from '../units.ts';
import type { PumpCurve } from './headCurve.ts';
import { requirePositive } from './require.ts';
import { STANDARD_GRAVITY } from './water.ts';

export type { PumpCurve } from './headCurve.ts';
export { operatingPoint } from './operatingPoint.ts';
export { pointsCurve, pumpPointsFault } from './pointsCurve.ts';

/** Flow [m³/s] and efficiency of the pump end. */
const EFFICIENCIES: readonly (readonly [CubicMetresPerSecond, Ratio])[] = [
  [gpm(5), 0.4],
  [gpm(10), 0.5],
  [gpm(20), 0.6],
];

/**
 * Efficiency of a small multi-stage well pump designed for a flow.
 *
 * 0.40 at 5 gpm, 0.50 at 10, 0.60 from 20 on, linear between; 0.40 below 5 gpm.
 *
 * @param flow  design flow [m³/s]
 * @returns  water power by shaft power [-]
 *
 * Range    4 in pumps, 5 to 25 gpm
 * Error    good pumps of that size lie within about 0.05
 * Throws   RangeError when the flow is not positive
 * Source   engineering range, from memory; no publication found
 */
export function efficiencyAt(flow: CubicMetresPerSecond): Ratio {
  requirePositive('efficiencyAt', 'flow', flow);
  let [below, low] = [0, 0.4];
  for (const [above, high] of EFFICIENCIES) {
    if (flow < above) return low + ((flow - below) / (above - below)) * (high - low);
    [below, low] = [above, high];
  }
  return low;
}

/**
 * Head that a typical well pump of a power gives at its design flow.
 *
 *     Hd = eta P / (rho g Qd)
 *
 * @param power    P, rated shaft power [W]
 * @param flow     Qd, design flow [m³/s]
 * @param density  rho of the water [kg/m³]
 * @returns  Hd [m]
 *
 * Range    as `efficiencyAt`, which gives eta
 * Throws   RangeError when an input is not positive
 * Source   water power = rho g Q H
 */
export function genericDesignHead(input: {
  readonly power: Watts;
  readonly flow: CubicMetresPerSecond;
  readonly density: number;
}): Metres {
  requirePositive('genericDesignHead', 'power', input.power);
  requirePositive('genericDesignHead', 'density', input.density);
  return (efficiencyAt(input.flow) * input.power) / (input.density * STANDARD_GRAVITY * input.flow);
}

/**
 * Curve through one design point.
 *
 *     H = 4/3 Hd - 1/3 Hd (Q/Qd)²
 *
 * @param designFlow  Qd [m³/s]
 * @param designHead  Hd [m]
 * @returns  the curve: 4/3 Hd at no flow, 2 Qd at no head
 *
 * Range    a stand-in until the maker's points are known; real well pumps have 1.2 to 1.5 Hd at no flow
 * Throws   RangeError when an input is not positive
 * Source   EPANET 2.2 User Manual, ch. 3, single-point pump curve
 */
export function genericCurve(input: {
  readonly designFlow: CubicMetresPerSecond;
  readonly designHead: Metres;
}): PumpCurve {
  const { designFlow, designHead } = input;
  requirePositive('genericCurve', 'design flow', designFlow);
  requirePositive('genericCurve', 'design head', designHead);
  return {
    shutOffHead: (4 / 3) * designHead,
    runOutFlow: 2 * designFlow,
    headAt: (flow) => (designHead / 3) * (4 - (flow / designFlow) ** 2),
  };
}
