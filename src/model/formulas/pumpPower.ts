/** Power of a pump, and what speed and stages do to it. */
import type { CubicMetresPerSecond, Metres, Ratio, Watts } from '../si.ts';
import { requireNotNegative, requirePositive } from './require.ts';
import { STANDARD_GRAVITY } from './water.ts';

/** Power that the water gains, rho g Q H [W]: density rho [kg/m³], flow Q [m³/s], head H [m]. */
export function waterPower(input: {
  readonly flow: CubicMetresPerSecond;
  readonly head: Metres;
  readonly density: number;
}): Watts {
  requireNotNegative('waterPower', 'flow', input.flow);
  requireNotNegative('waterPower', 'head', input.head);
  requirePositive('waterPower', 'density', input.density);
  return input.density * STANDARD_GRAVITY * input.flow * input.head;
}

/** Power at the shaft [W]: water power by the efficiency of the pump end [-]. */
export function shaftPower(power: Watts, pumpEfficiency: Ratio): Watts {
  if (!(pumpEfficiency > 0 && pumpEfficiency <= 1)) {
    throw new RangeError(`shaftPower: efficiency is ${pumpEfficiency}, must be above 0 and at most 1`);
  }
  return power / pumpEfficiency;
}

export interface Duty {
  readonly flow: CubicMetresPerSecond;
  readonly head: Metres;
  readonly power: Watts;
}

/**
 * A point of a pump's curve at another speed.
 *
 *     Q ~ N,   H ~ N²,   P ~ N³
 *
 * @param speedRatio  N new by N old [-]
 *
 * Range    moves points of the curve; the operating point has to be found again
 * Throws   RangeError when the ratio is not positive
 * Source   EPANET 2.2 User Manual, ch. 3, for flow and head; power from memory
 */
export function atSpeed({ flow, head, power }: Duty, speedRatio: Ratio): Duty {
  requirePositive('atSpeed', 'speed ratio', speedRatio);
  return { flow: flow * speedRatio, head: head * speedRatio ** 2, power: power * speedRatio ** 3 };
}

/** Stages that reach a head [m], each giving its share [m] at the same flow: the next whole number. */
export function stagesFor(totalHead: Metres, headPerStage: Metres): number {
  requireNotNegative('stagesFor', 'total head', totalHead);
  requirePositive('stagesFor', 'head per stage', headPerStage);
  return Math.ceil(totalHead / headPerStage);
}
