/** Velocity of the water past a motor and through a screen. */
import type { CubicMetresPerSecond, Metres, MetresPerSecond, Ratio } from '../si.ts';
import { requireNotNegative, requirePositive } from './require.ts';

/**
 * Velocity in the ring between a motor and what surrounds it.
 *
 *     v = 4 Q / (pi (D² - d²))
 *
 * @param flow             Q [m³/s], all of it from below the motor
 * @param insideDiameter   D of casing, hole or shroud [m]
 * @param motorDiameter    d [m]
 * @returns  v [m/s]
 *
 * Throws   RangeError when the flow is negative or the motor does not fit
 * Source   continuity
 */
export function velocityPastMotor(input: {
  readonly flow: CubicMetresPerSecond;
  readonly insideDiameter: Metres;
  readonly motorDiameter: Metres;
}): MetresPerSecond {
  requireNotNegative('velocityPastMotor', 'flow', input.flow);
  return input.flow / ringArea('velocityPastMotor', input.insideDiameter, input.motorDiameter);
}

/** The way back: flow [m³/s] that sweeps the motor at a velocity v [m/s]. */
export function flowForMotorVelocity(input: {
  readonly velocity: MetresPerSecond;
  readonly insideDiameter: Metres;
  readonly motorDiameter: Metres;
}): CubicMetresPerSecond {
  requireNotNegative('flowForMotorVelocity', 'velocity', input.velocity);
  return input.velocity * ringArea('flowForMotorVelocity', input.insideDiameter, input.motorDiameter);
}

/** Widest shroud [m] in which a flow [m³/s] sweeps a motor of diameter d [m] at a velocity v [m/s]: √(d² + 4 Q/(pi v)). */
export function widestShroud(flow: CubicMetresPerSecond, motorDiameter: Metres, velocity: MetresPerSecond): Metres {
  requireNotNegative('widestShroud', 'flow', flow);
  requirePositive('widestShroud', 'motor diameter', motorDiameter);
  requirePositive('widestShroud', 'velocity', velocity);
  return Math.sqrt(motorDiameter * motorDiameter + (4 * flow) / (Math.PI * velocity));
}

/**
 * Velocity of the water as it enters a screen.
 *
 *     v = Q / (pi D L a)
 *
 * @param flow      Q [m³/s]
 * @param diameter  D, outside, of the screen [m]
 * @param length    L of the screen in water [m]
 * @param openArea  a, open share of its surface [-]; half of it where blocking is counted in
 * @returns  v [m/s]: 0.1 ft/s is the usual most
 *
 * Throws   RangeError when the flow is negative, a dimension not positive or the share not between 0 and 1
 * Source   continuity; the limit: Montana Administrative Rules 36.21.652
 */
export function screenEntranceVelocity(input: {
  readonly flow: CubicMetresPerSecond;
  readonly diameter: Metres;
  readonly length: Metres;
  readonly openArea: Ratio;
}): MetresPerSecond {
  const { flow, diameter, length, openArea } = input;
  requireNotNegative('screenEntranceVelocity', 'flow', flow);
  requirePositive('screenEntranceVelocity', 'diameter', diameter);
  requirePositive('screenEntranceVelocity', 'length', length);
  if (!(openArea > 0 && openArea <= 1))
    throw new RangeError(`screenEntranceVelocity: open area is ${openArea}, must be above 0 and at most 1`);
  return flow / (Math.PI * diameter * length * openArea);
}

function ringArea(where: string, insideDiameter: Metres, motorDiameter: Metres): number {
  requireNotNegative(where, 'motor diameter', motorDiameter);
  if (!(insideDiameter > motorDiameter && insideDiameter < Infinity)) {
    throw new RangeError(`${where}: a motor of ${motorDiameter} m does not fit in ${insideDiameter} m`);
  }
  return (Math.PI * (insideDiameter * insideDiameter - motorDiameter * motorDiameter)) / 4;
}
