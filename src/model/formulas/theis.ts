/** Drawdown in the ground around a well: Theis and what follows from it. */
import type { CubicMetresPerSecond, Metres, Ratio, Seconds, SquareMetresPerSecond } from '../si.ts';
import { requireNotNegative, requirePositive } from './require.ts';

/**
 * Well function W(u) of the Theis solution, which is the exponential integral E1(u).
 *
 *     W(u) = integral from u to infinity of exp(-t)/t dt,   u = r² S / (4 T t)
 *
 * @param u  r² S / (4 T t) [-]: r radius [m], S storativity [-], T transmissivity [m²/s], t time [s]
 * @returns  W(u) [-]
 *
 * Range    every u > 0
 * Error    relative, against 40 digits for 1e-12 < u < 100: under 8e-16 up to u = 1, under 6e-15 above
 * Throws   RangeError when u is not a positive finite number
 * Source   Abramowitz & Stegun (1964), Handbook of Mathematical Functions, eq. 5.1.11 and 5.1.22
 */
export function wellFunction(u: number): number {
  if (!(u > 0 && u < Infinity)) {
    throw new RangeError(`wellFunction: u is ${u}, must be positive; check radius, storativity, transmissivity, time`);
  }
  return u <= 1 ? series(u) : continuedFraction(u);
}

/** Eq. 5.1.11. Twenty terms, because at u = 1 the next one is below the last bit of a double. */
function series(u: number): number {
  let term = 1;
  let sum = -EULER_GAMMA - Math.log(u);
  for (let n = 1; n <= 20; n++) {
    term *= -u / n;
    sum -= term / n;
  }
  return sum;
}

/** Eq. 5.1.22 in its even part, from the inside out. Eighty levels, because u just above 1 needs them. */
function continuedFraction(u: number): number {
  let tail = 0;
  for (let n = 80; n >= 1; n--) tail = (n * n) / (u + 2 * n + 1 - tail);
  return Math.exp(-u) / (u + 1 - tail);
}

const EULER_GAMMA = 0.5772156649015329;

export interface TheisInput {
  readonly flow: CubicMetresPerSecond;
  readonly transmissivity: SquareMetresPerSecond;
  readonly storativity: Ratio;
  /** Distance from the well's axis. */
  readonly radius: Metres;
  /** Since pumping began. */
  readonly time: Seconds;
}

/**
 * Drawdown by Theis.
 *
 *     s = Q/(4 pi T) W(u),   u = r² S / (4 T t)
 *
 * @param flow            Q, constant [m³/s]
 * @param transmissivity  T [m²/s]
 * @param storativity     S [-]
 * @param radius          r [m]: at the pumped well, half the hole
 * @param time            t since pumping began [s]
 * @returns  s [m]
 *
 * Range    confined, wide and even aquifer, well through all of it, no leakage; well loss and the water standing in the
 *          bore are not in it
 * Throws   RangeError when the flow is negative or another input is not positive
 * Source   Theis (1935), Trans. Am. Geophys. Union 16, 519
 */
export function theisDrawdown(input: TheisInput): Metres {
  requireNotNegative('theisDrawdown', 'flow', input.flow);
  return (input.flow / (4 * Math.PI * input.transmissivity)) * wellFunction(theisArgument(input));
}

/** u = r² S / (4 T t) [-]. */
export function theisArgument({ transmissivity, storativity, radius, time }: Omit<TheisInput, 'flow'>): number {
  requirePositive('theisArgument', 'transmissivity', transmissivity);
  requirePositive('theisArgument', 'time', time);
  return (radius * radius * storativity) / (4 * transmissivity * time);
}

/**
 * Drawdown by the straight-line form of Theis.
 *
 *     s = Q/(4 pi T) ln( 2.25 T t / (r² S) )
 *
 * @returns  s [m]; below zero where the form no longer holds
 *
 * Range    u under 0.01
 * Error    1 % at u = 0.03, 5 % at 0.1
 * Throws   RangeError when the flow is negative or another input is not positive
 * Source   Cooper & Jacob (1946), Trans. Am. Geophys. Union 27, 526
 */
export function cooperJacobDrawdown(input: TheisInput): Metres {
  requireNotNegative('cooperJacobDrawdown', 'flow', input.flow);
  const u = theisArgument(input);
  requirePositive('cooperJacobDrawdown', 'u', u);
  return (input.flow / (4 * Math.PI * input.transmissivity)) * (-EULER_GAMMA - Math.log(u));
}

/**
 * Distance at which the straight-line form puts no drawdown.
 *
 *     r0 = sqrt(2.25 T t / S)
 *
 * @returns  r0 [m]; it grows with time and does not depend on the flow
 *
 * Throws   RangeError when an input is not positive
 * Source   Cooper & Jacob (1946)
 */
export function radiusOfZeroDrawdown(input: Pick<TheisInput, 'transmissivity' | 'time' | 'storativity'>): Metres {
  requirePositive('radiusOfZeroDrawdown', 'transmissivity', input.transmissivity);
  requirePositive('radiusOfZeroDrawdown', 'time', input.time);
  requirePositive('radiusOfZeroDrawdown', 'storativity', input.storativity);
  return Math.sqrt((2.25 * input.transmissivity * input.time) / input.storativity);
}

/**
 * Drawdown that a confined aquifer would have where a water table falls and thins the aquifer.
 *
 *     s' = s - s²/(2 b)
 *
 * @param drawdown   s, as measured [m]
 * @param thickness  b, saturated, before pumping [m]
 * @returns  s' [m]
 *
 * Throws   RangeError when s is outside 0 to b
 * Source   Jacob (1944), US Geological Survey, from memory
 */
export function confinedEquivalent(drawdown: Metres, thickness: Metres): Metres {
  if (!(drawdown >= 0 && drawdown <= thickness)) {
    throw new RangeError(
      `confinedEquivalent: drawdown is ${drawdown}, must be between 0 and the thickness ${thickness}`,
    );
  }
  return drawdown - (drawdown * drawdown) / (2 * thickness);
}

/**
 * The way back: drawdown of the water table for a confined one.
 *
 *     s = b - sqrt(b² - 2 b s')
 *
 * Throws   RangeError when s' is outside 0 to b/2: the aquifer would run dry
 * Source   as `confinedEquivalent`
 */
export function unconfinedDrawdown(equivalent: Metres, thickness: Metres): Metres {
  if (!(equivalent >= 0 && equivalent <= thickness / 2)) {
    throw new RangeError(
      `unconfinedDrawdown: drawdown is ${equivalent}, must be between 0 and half the thickness ${thickness}`,
    );
  }
  return thickness - Math.sqrt(thickness * thickness - 2 * thickness * equivalent);
}
