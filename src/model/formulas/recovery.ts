/** Drawdown under a flow that changes by steps, and its recovery: Theis solutions added up. */
import type { CubicMetresPerSecond, Metres, Seconds } from '../si.ts';
import { theisDrawdown, wellFunction, theisArgument, type TheisInput } from './theis.ts';

type Aquifer = Pick<TheisInput, 'transmissivity' | 'storativity' | 'radius'>;

export interface FlowStep {
  readonly from: Seconds;
  readonly flow: CubicMetresPerSecond;
}

/**
 * Drawdown while the flow goes by steps.
 *
 *     s(t) = sum of (Qi - Qi-1)/(4 pi T) W( r² S / (4 T (t - ti)) )   over the steps begun before t
 *
 * @param steps  Qi [m³/s] from ti [s] on, in order of time; a stop is a step to 0
 * @param time   t [s]
 * @returns  s [m]; well loss is not in it
 *
 * Range    as `theisDrawdown`
 * Throws   RangeError when the steps are not in order or the aquifer has no meaning
 * Source   superposition: Kruseman & de Ridder (1994), Analysis and Evaluation of Pumping Test Data, ch. 12
 */
export function steppedDrawdown(aquifer: Aquifer, steps: readonly FlowStep[], time: Seconds): Metres {
  let drawdown = 0;
  let before: FlowStep = { from: -Infinity, flow: 0 };
  for (const step of steps) {
    if (!(step.from > before.from))
      throw new RangeError(`steppedDrawdown: step from ${step.from} s does not follow ${before.from} s`);
    if (step.from >= time) break;
    const u = theisArgument({ ...aquifer, time: time - step.from });
    drawdown += ((step.flow - before.flow) / (4 * Math.PI * aquifer.transmissivity)) * wellFunction(u);
    before = step;
  }
  return drawdown;
}

/**
 * Drawdown left after the pump stopped.
 *
 *     s' = Q/(4 pi T) (W(u) - W(u')),   u from the start, u' from the stop
 *
 * @param pumped     how long the pump ran [s]
 * @param sinceStop  t' [s]
 * @returns  s' [m]
 *
 * Range    as `theisDrawdown`
 * Throws   RangeError when a time is not positive
 * Source   Theis (1935); Todd (1980), Groundwater Hydrology, eq. 4.47
 */
export function residualDrawdown(
  input: Aquifer & {
    readonly flow: CubicMetresPerSecond;
    readonly pumped: Seconds;
    readonly sinceStop: Seconds;
  },
): Metres {
  const { pumped, sinceStop } = input;
  return theisDrawdown({ ...input, time: pumped + sinceStop }) - theisDrawdown({ ...input, time: sinceStop });
}
