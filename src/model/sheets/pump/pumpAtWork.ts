/** What the sheets read of the pump beyond the solution: its curve, its best flow, how it works elsewhere. */
import type { Context } from '../../explain/context.ts';
import { pumpCurveOf, systemHead } from '../../figures/curves.ts';
import { operatingPoint } from '../../formulas/operatingPoint.ts';
import { efficiencyAt } from '../../formulas/pumpCurve.ts';
import type { PumpCurve } from '../../formulas/pumpCurve.ts';
import type { CubicMetresPerSecond, Pascals, Ratio } from '../../si.ts';
import type { CurvePoint } from '../../solution.ts';

export const curveOf = ({ facts, system }: Context): PumpCurve | null => pumpCurveOf(facts, system.water.density);

/** Flow of best efficiency: the rated flow of a generic pump; a list of points does not tell it. */
export function bestFlow({ facts }: Context): CubicMetresPerSecond | null {
  return facts.pump.curve.kind === 'generic' ? facts.pump.curve.flow : null;
}

/**
 * Efficiency of the generic pump, its motor left out, away from its rated flow.
 *
 *     η = η_r (2 q − q²),   q = Q/Q_r
 *
 * @returns  [-]; 0 at no flow and at the end of the curve
 *
 * Range    the generic curve. With it the power at the shaft is P_r (2 + q)/3: two thirds at no flow, all at the rated flow
 * Source   parabola through no flow, the rated flow and the end of the curve: common in handbooks, no publication
 */
export function genericEfficiency(flow: CubicMetresPerSecond, ratedFlow: CubicMetresPerSecond): Ratio {
  const q = flow / ratedFlow;
  return efficiencyAt(ratedFlow) * q * (2 - q);
}

/** The same pump turning at another speed: Q ~ N, H ~ N². EPANET 2.2 User Manual, ch. 3. */
export function curveAtSpeed(curve: PumpCurve, ratio: Ratio): PumpCurve {
  return {
    shutOffHead: curve.shutOffHead * ratio ** 2,
    runOutFlow: curve.runOutFlow * ratio,
    headAt: (flow) => ratio ** 2 * curve.headAt(flow / ratio),
  };
}

/** Where a curve meets well and pipes at a pressure in the tank; null while something of them is unknown. */
export function dutyOf(context: Context, curve: PumpCurve | null, tankPressure: Pascals): CurvePoint | null {
  const asked = systemHead(context.facts, context.system, tankPressure);
  return curve === null || asked === null ? null : operatingPoint(curve, asked);
}

/** Mean of the flows at cut-in and cut-out: what fills the tank. */
export function fillingFlow({ values }: Context): CubicMetresPerSecond | null {
  const { operatingFlowAtCutIn: high, operatingFlowAtCutOut: low } = values;
  return high === null || low === null ? null : (high + low) / 2;
}
