/** How a starting motor turns the pipe it hangs on. */
import type { Metres, Pascals, Ratio, Watts } from '../si.ts';
import type { PipeBody } from './pipeBody.ts';

/** Torque at start over that at full load. Sources disagree (1.5 to 4.5); assumed. */
export const STARTING_TORQUE_FACTOR: Ratio = 2.5;
/** Of a two-pole motor at 60 Hz under load, turns per minute. */
export const TWO_POLE_SPEED = 3450;

/**
 * Full-load torque of a motor.
 *
 *     M = P/ω,   printed as 5252 hp/rpm lb ft
 *
 * @param turnsPerMinute  speed of the shaft
 * @returns               newton metres
 * Throws                 RangeError unless both are positive
 */
export function motorTorque({
  power,
  turnsPerMinute = TWO_POLE_SPEED,
}: {
  readonly power: Watts;
  readonly turnsPerMinute?: number;
}): number {
  if (!(power > 0 && turnsPerMinute > 0)) {
    throw new RangeError(`motorTorque: power ${power} W, speed ${turnsPerMinute} 1/min; both must be positive`);
  }
  return power / ((2 * Math.PI * turnsPerMinute) / 60);
}

/**
 * Angle by which a pipe hanging free turns under a torque at its end.
 *
 *     θ = M L/(G J),   J = π/32 (D⁴ − d⁴),   G = E/(2 (1 + ν))
 *
 * @param torque   M [N m]
 * @param length   L
 * @param modulus  E for a short load [Pa]; 110,000 psi for polyethylene
 * @param poisson  ν [-]; 0.45 for polyethylene
 * @returns        radians
 * Range           slow torque, no contact with the casing; arrestors keep it from happening
 * Throws          RangeError unless the figures are positive and the pipe has a wall
 * Source          textbook torsion of a tube, from memory
 */
export function pipeTwist({
  torque,
  length,
  modulus,
  poisson,
  outsideDiameter,
  insideDiameter,
}: PipeBody & {
  readonly torque: number;
  readonly length: Metres;
  readonly modulus: Pascals;
  readonly poisson: Ratio;
}): number {
  if (!(
    torque >= 0 &&
    length >= 0 &&
    modulus > 0 &&
    poisson >= 0 &&
    poisson <= 0.5 &&
    insideDiameter >= 0 &&
    outsideDiameter > insideDiameter
  )) {
    throw new RangeError(
      `pipeTwist: torque ${torque} N m, length ${length} m, modulus ${modulus} Pa, Poisson ${poisson}, ` +
        `pipe ${outsideDiameter} over ${insideDiameter} m; check the signs and the wall`,
    );
  }
  const shearModulus = modulus / (2 * (1 + poisson));
  const polarMoment = (Math.PI / 32) * (outsideDiameter ** 4 - insideDiameter ** 4);
  return (torque * length) / (shearModulus * polarMoment);
}
