/** A pressure tank with an air cushion. Pressures are gauge pressures. */
import type { CubicMetres, CubicMetresPerSecond, Pascals, Ratio, Seconds } from '../si.ts';
import { requirePositive } from './require.ts';

interface TankPressures {
  readonly precharge: Pascals;
  readonly cutIn: Pascals;
  readonly cutOut: Pascals;
  /** At the altitude. */
  readonly atmosphere: Pascals;
}

/**
 * Share of a tank's volume that it gives between cut-out and cut-in.
 *
 *     (pc + pa)/(pi + pa) - (pc + pa)/(po + pa)
 *
 * pc precharge, pi cut-in, po cut-out, pa atmosphere. The air cannot fill more than the tank: below the precharge the
 * tank is empty, and a precharge above cut-in gives less water and a gap without any.
 *
 * @returns  [-]
 *
 * Range    slow filling, so that the air keeps its temperature
 * Throws   RangeError unless 0 <= cut-in < cut-out and the atmosphere is positive
 * Source   Boyle's law
 */
export function drawdownFactor({ precharge, cutIn, cutOut, atmosphere }: TankPressures): Ratio {
  requirePositive('drawdownFactor', 'atmosphere', atmosphere);
  requirePositive('drawdownFactor', 'precharge above vacuum', precharge + atmosphere);
  if (!(cutIn >= 0 && cutOut > cutIn && cutOut < Infinity)) {
    throw new RangeError(`drawdownFactor: cut-in is ${cutIn} and cut-out ${cutOut}, cut-out must be the higher`);
  }
  return airShare(cutIn, { precharge, atmosphere }) - airShare(cutOut, { precharge, atmosphere });
}

/**
 * Share of a tank's volume that its air fills at a pressure; the rest is water.
 *
 *     (pc + pa)/(p + pa), and all of it up to the precharge
 *
 * @returns  [-]
 *
 * Range    slow filling, so that the air keeps its temperature
 * Throws   RangeError unless precharge and pressure are above vacuum
 * Source   Boyle's law
 */
export function airShare(
  pressure: Pascals,
  { precharge, atmosphere }: Pick<TankPressures, 'precharge' | 'atmosphere'>,
): Ratio {
  requirePositive('airShare', 'precharge above vacuum', precharge + atmosphere);
  requirePositive('airShare', 'pressure above vacuum', pressure + atmosphere);
  return pressure <= precharge ? 1 : (precharge + atmosphere) / (pressure + atmosphere);
}

/** Water a tank of a total volume [m³] gives between cut-out and cut-in [m³]: volume times `drawdownFactor`. */
export function tankDrawdown(input: TankPressures & { readonly volume: CubicMetres }): CubicMetres {
  requirePositive('tankDrawdown', 'volume', input.volume);
  return input.volume * drawdownFactor(input);
}

/**
 * Smallest tank with which the pump runs long enough at each start.
 *
 *     V = Q t / factor
 *
 * @param flow     Q of the pump [m³/s]
 * @param runTime  t, least time of running [s]: one minute, two above about 1 hp (common practice, no source)
 * @returns  V, total volume [m³]
 *
 * Throws   RangeError as `drawdownFactor`, or when flow or time is not positive, or the tank gives nothing at all
 */
export function smallestTank(
  input: TankPressures & { readonly flow: CubicMetresPerSecond; readonly runTime: Seconds },
): CubicMetres {
  requirePositive('smallestTank', 'flow', input.flow);
  requirePositive('smallestTank', 'running time', input.runTime);
  const factor = drawdownFactor(input);
  requirePositive('smallestTank', 'drawdown factor', factor);
  return (input.flow * input.runTime) / factor;
}

/**
 * How often the pump starts under a steady demand.
 *
 *     n = D (Q - D) / (Q Vd)
 *
 * @param demand        D, at most Q [m³/s]
 * @param flow          Q of the pump [m³/s]
 * @param tankDrawdown  Vd [m³]
 * @returns  n [1/s]
 *
 * Throws   RangeError when flow or drawdown is not positive or the demand is outside 0 to Q
 * Source   time to empty plus time to fill
 */
export function startsPerSecond(input: {
  readonly demand: CubicMetresPerSecond;
  readonly flow: CubicMetresPerSecond;
  readonly tankDrawdown: CubicMetres;
}): number {
  const { demand, flow, tankDrawdown: drawdown } = input;
  requirePositive('startsPerSecond', 'flow', flow);
  requirePositive('startsPerSecond', 'tank drawdown', drawdown);
  if (!(demand >= 0 && demand <= flow))
    throw new RangeError(`startsPerSecond: demand is ${demand}, must be between 0 and ${flow}`);
  return (demand * (flow - demand)) / (flow * drawdown);
}

/** Most starts [1/s] at any steady demand: half the pump's flow is the worst, Q/(4 Vd). */
export function mostStartsPerSecond(flow: CubicMetresPerSecond, drawdown: CubicMetres): number {
  return startsPerSecond({ demand: flow / 2, flow, tankDrawdown: drawdown });
}
