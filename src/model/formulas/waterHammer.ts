/** Pressure waves in pipe when the flow stops at once. */
import type { Metres, MetresPerSecond, Pascals, Ratio, Seconds } from '../si.ts';
import { feet, psi } from '../units.ts';
import { requireNotNegative, requirePositive } from './require.ts';

/** Bulk modulus of water [Pa]: 300,000 psi, as the handbooks round it (AWWA M23, M55; from memory). */
const WATER_MODULUS: Pascals = psi(300_000);
/** Wave speed in water without a pipe [m/s]: 4660 ft/s, as the handbooks round it; the exact root of K/rho is 1.3 % more. */
const FREE_WAVE_SPEED: MetresPerSecond = feet(4660);

/**
 * Speed of a pressure wave in a pipe.
 *
 *     a = 4660 ft/s / √(1 + (K/E) d/t),   d/t = DR - 2
 *
 * @param modulus      E of the wall [Pa]
 * @param boreToWall   d/t: inside diameter by wall [-]
 * @returns  a [m/s]
 *
 * Range    full pipe without air
 * Throws   RangeError when an input is not positive
 * Source   AWWA Manual M55 (2006), PE Pipe, ch. 4, equation from memory
 */
export function waveSpeed(modulus: Pascals, boreToWall: Ratio): MetresPerSecond {
  requirePositive('waveSpeed', 'modulus', modulus);
  requirePositive('waveSpeed', 'bore by wall', boreToWall);
  return FREE_WAVE_SPEED / Math.sqrt(1 + (WATER_MODULUS / modulus) * boreToWall);
}

/**
 * Rise of pressure when the flow stops at once.
 *
 *     dp = rho a dv
 *
 * @param density         rho [kg/m³]
 * @param speed           a, of the wave [m/s]
 * @param velocityChange  dv [m/s]
 * @returns  dp [Pa]
 *
 * Range    a stop shorter than 2 L/a: see `suddenWithin`
 * Throws   RangeError when the velocity is negative or another input is not positive
 * Source   Joukowsky (1898)
 */
export function surgePressure(input: {
  readonly density: number;
  readonly speed: MetresPerSecond;
  readonly velocityChange: MetresPerSecond;
}): Pascals {
  requirePositive('surgePressure', 'density', input.density);
  requirePositive('surgePressure', 'wave speed', input.speed);
  requireNotNegative('surgePressure', 'velocity change', input.velocityChange);
  return input.density * input.speed * input.velocityChange;
}

/** A closure shorter than 2 L/a [s] counts as sudden: L length of pipe [m], a wave speed [m/s]. */
export function suddenWithin(length: Metres, speed: MetresPerSecond): Seconds {
  requireNotNegative('suddenWithin', 'length', length);
  requirePositive('suddenWithin', 'wave speed', speed);
  return (2 * length) / speed;
}
