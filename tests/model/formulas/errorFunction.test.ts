import { expect, test } from 'vitest';
import { erf, erfc } from '../../../src/model/formulas/errorFunction.ts';

// Abramowitz & Stegun (1964), Table 7.1: ten decimals, so half a unit of the tenth.
test.each([
  [0.5, 0.5204998778],
  [1, 0.8427007929],
  [1.5, 0.9661051465],
  [2, 0.995322265],
])('erf(%d) is %d, as tabled by Abramowitz & Stegun', (x, tabled) => {
  expect(Math.abs(erf(x) - tabled)).toBeLessThanOrEqual(0.5e-10);
});

test('both forms agree at the join at x = 2, and add up to 1', () => {
  expect(Math.abs(erfc(2 + 1e-12) / erfc(2) - 1)).toBeLessThan(1e-10);
  for (const x of [0, 0.3, 1, 2, 3, 5]) expect(erf(x) + erfc(x)).toBeCloseTo(1, 14);
});

test('erfc falls off as exp(-x²)/(x √π)', () => {
  for (const x of [4, 6, 10]) {
    const leading = Math.exp(-x * x) / (x * Math.sqrt(Math.PI));
    // Abramowitz & Stegun, eq. 7.1.23: the next term of the series is 1/(2x²).
    expect(Math.abs(erfc(x) / leading - 1)).toBeLessThan(1 / (2 * x * x));
  }
});

test('a negative x is refused', () => {
  expect(() => erf(-1)).toThrow(RangeError);
  expect(() => erfc(Number.NaN)).toThrow(RangeError);
});
