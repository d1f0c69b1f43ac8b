/** Where a pump's curve meets the head that well and pipe ask for. */
import type { CubicMetresPerSecond, Metres } from '../si.ts';
import type { PumpCurve } from './headCurve.ts';

export interface OperatingPoint {
  readonly flow: CubicMetresPerSecond;
  readonly head: Metres;
}

/** The two heads agree to this before the search ends [m]. */
export const HEAD_AGREEMENT = 1e-9;

/**
 * Operating point of a pump in its well.
 *
 * @param curve       the pump's curve, which falls with flow
 * @param systemHead  head [m] asked for at a flow [m³/s], which rises with flow
 * @returns  flow and head. Without a crossing: no flow at the shut-off head when the system asks for more than that,
 *           and the run-out flow at no head when it asks for none even there. A curve that is ended sooner stays at
 *           its last flow and the head there, however little the system asks for
 *
 * Error    heads agree to 1e-9 m, or flow is known to 1e-14 of the run-out flow
 * Source   regula falsi with the step of Anderson & Björck (1973), BIT 13, 253; eight evaluations or so
 */
export function operatingPoint(curve: PumpCurve, systemHead: (flow: CubicMetresPerSecond) => Metres): OperatingPoint {
  const surplus = (flow: CubicMetresPerSecond): Metres => curve.headAt(flow) - systemHead(flow);
  let low = 0;
  let high = curve.endFlow ?? curve.runOutFlow;
  let surplusLow = curve.shutOffHead - systemHead(0);
  if (!(surplusLow > 0)) return { flow: 0, head: curve.shutOffHead };
  const headHigh = curve.endFlow === undefined ? 0 : curve.headAt(high);
  let surplusHigh = headHigh - systemHead(high);
  if (surplusHigh >= 0) return { flow: high, head: headHigh };

  let flow = high;
  let movedLast = 0;
  for (let step = 0; step < MOST_STEPS; step++) {
    flow = low + ((high - low) * surplusLow) / (surplusLow - surplusHigh);
    const here = surplus(flow);
    if (Math.abs(here) <= HEAD_AGREEMENT || high - low <= 1e-14 * curve.runOutFlow) break;
    const moves = here > 0 ? -1 : 1;
    // An end that stays twice running counts for less, or the search would creep along the other side.
    const share = moves === movedLast ? 1 - here / (here > 0 ? surplusLow : surplusHigh) : 1;
    const kept = share > 0 ? share : 0.5;
    if (here > 0) {
      low = flow;
      surplusLow = here;
      surplusHigh *= kept;
    } else {
      high = flow;
      surplusHigh = here;
      surplusLow *= kept;
    }
    movedLast = moves;
  }
  return { flow, head: curve.headAt(flow) };
}

const MOST_STEPS = 100;
