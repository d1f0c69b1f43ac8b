/** The flow that leaves the well, step by step: the pump's own until the water reaches it, then what the well gives. */
import type { FlowStep } from '../formulas/recovery.ts';
import type { CubicMetresPerSecond, Metres, Seconds } from '../si.ts';

export interface PumpingHistory {
  /** In order of time; the last is a step to 0 where the pump stops. */
  readonly steps: readonly FlowStep[];
  /** When the level has fallen to the lowest the pump can draw; null while it stands above. */
  readonly breaksSuction: Seconds | null;
  /** When the pump is switched off; null when never. */
  readonly stops: Seconds | null;
}

/** Drawdown per unit of flow, a time after pumping began [s/m²]: grows with time. */
export type Response = (time: Seconds) => number;

/**
 * Steps of flow for a pump that runs from time 0.
 *
 * Once the drawdown has grown to the most that the pump can draw, the flow is cut back step by step so that it stays
 * there: that is what the well gives from then on, whether the pump takes it with air or by starts and stops.
 *
 * @param flow      of the pump [m³/s]
 * @param most      largest drawdown, down to intake or cut-off [m]
 * @param pumpFor   until it is switched off [s]; null: it runs on
 * @param until     end of what is told [s]
 */
export function pumpingHistory(input: {
  readonly response: Response;
  readonly flow: CubicMetresPerSecond;
  readonly most: Metres;
  readonly pumpFor: Seconds | null;
  readonly until: Seconds;
}): PumpingHistory {
  const { response, flow, most, pumpFor, until } = input;
  const end = pumpFor === null ? until : Math.min(pumpFor, until);
  const steps: FlowStep[] = [{ from: 0, flow }];
  const breaksSuction = flow * response(end) > most ? timeOfDrawdown(response, most / flow, end) : null;
  if (breaksSuction !== null) hold(response, steps, most, breaksSuction, end);
  const stops = pumpFor !== null && pumpFor < until ? pumpFor : null;
  if (stops !== null) steps.push({ from: stops, flow: 0 });
  return { steps, breaksSuction, stops };
}

/** Drawdown after the steps begun before a time. */
export function drawdownAfter(response: Response, steps: readonly FlowStep[], time: Seconds): Metres {
  let drawdown = 0;
  let flow = 0;
  for (const step of steps) {
    if (step.from >= time) break;
    drawdown += (step.flow - flow) * response(time - step.from);
    flow = step.flow;
  }
  return drawdown;
}

/** Flow out of the well at a time. */
export function flowAfter(steps: readonly FlowStep[], time: Seconds): CubicMetresPerSecond {
  let flow = 0;
  for (const step of steps) if (step.from <= time) flow = step.flow;
  return flow;
}

/** When a response that grows reaches a value, to a billionth of the time; it is past it at `end`. */
function timeOfDrawdown(response: Response, value: number, end: Seconds): Seconds {
  let low = Math.log(Math.min(1e-3, end / 2));
  let high = Math.log(end);
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2;
    if (response(Math.exp(middle)) < value) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}

/** Steps of the flow that is held back: they grow with time, as the flow changes ever more slowly. */
const HELD_STEPS = 32;

function hold(response: Response, steps: FlowStep[], most: Metres, from: Seconds, end: Seconds): void {
  const span = end - from;
  if (!(span > 0)) return;
  const first = Math.min(span / HELD_STEPS, Math.max(from / 10, 1));
  const growth = (i: number) => (i === 0 ? 0 : first * (span / first) ** ((i - 1) / (HELD_STEPS - 1)));
  for (let i = 0; i < HELD_STEPS; i++) {
    const begins = from + growth(i);
    const ends = from + growth(i + 1);
    const before = steps[steps.length - 1]?.flow ?? 0;
    const change = (most - drawdownAfter(response, steps, ends)) / response(ends - begins);
    steps.push({ from: begins, flow: Math.max(before + change, 0) });
  }
}
