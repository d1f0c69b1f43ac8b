/** Modified Bessel functions of the second kind, orders 0 and 1, as flow to a well needs them. */
import { requirePositive } from './require.ts';

export interface BesselK {
  /** K0(x) exp(x) [-] */
  readonly order0: number;
  /** x K1(x) exp(x) [-]: 1 at x = 0 */
  readonly order1TimesX: number;
}

/**
 * K0(x) and x K1(x), both times exp(x), so that they stand for arguments at which the functions themselves are too
 * small for a double.
 *
 *     K(x) = integral from 0 of exp(-x cosh t) cosh(order t) dt
 *
 * @param x  argument [-]
 *
 * Range    every x > 0
 * Error    relative, under 1e-13
 * Throws   RangeError when x is not a positive finite number
 * Source   Abramowitz & Stegun (1964), Handbook of Mathematical Functions, eq. 9.6.12, 9.6.13, 9.6.15 and 9.6.24
 */
export function besselK(x: number): BesselK {
  requirePositive('besselK', 'x', x);
  return x <= 2 ? series(x) : integral(x);
}

/** Eq. 9.6.12 and 9.6.13 for I0, I1 and K0; K1 from their Wronskian, eq. 9.6.15, which loses no digits here. */
function series(x: number): BesselK {
  const quarter = (x * x) / 4;
  let [i0, i1, harmonic, tail, term] = [1, 1, 0, 0, 1];
  for (let k = 1; k <= 16; k++) {
    term *= quarter / (k * k);
    harmonic += 1 / k;
    i0 += term;
    i1 += term / (k + 1);
    tail += term * harmonic;
  }
  const k0 = tail - (Math.log(x / 2) + EULER_GAMMA) * i0;
  const scale = Math.exp(x);
  return { order0: k0 * scale, order1TimesX: ((1 - ((x * x) / 2) * i1 * k0) / i0) * scale };
}

/** Trapezoid rule on eq. 9.6.24, which converges here faster than any power of the step. */
function integral(x: number): BesselK {
  // A bell of width 1/sqrt(x) for large arguments, which a fixed step would miss.
  const step = Math.min(0.1, 0.5 / Math.sqrt(x));
  let [order0, order1] = [0.5, 0.5];
  for (let t = step; ; t += step) {
    const cosh = Math.cosh(t);
    const term = Math.exp(-x * (cosh - 1));
    order0 += term;
    order1 += term * cosh;
    if (term < 1e-17) return { order0: order0 * step, order1TimesX: order1 * step * x };
  }
}

const EULER_GAMMA = 0.5772156649015329;
