import { expect, test } from 'vitest';
import { studentT95 } from '../../../src/model/aquifer/studentT.ts';

// Abramowitz & Stegun (1964), Table 26.10, column 0.95 (two-sided), three decimals.
test.each([
  [1, 12.706],
  [2, 4.303],
  [3, 3.182],
  [5, 2.571],
  [10, 2.228],
  [30, 2.042],
  [120, 1.98],
])('with %d degrees of freedom 95 %% lie within %d standard errors', (degrees, tabled) => {
  expect(Math.abs(studentT95(degrees) / tabled - 1)).toBeLessThan(degrees < 5 ? 5e-3 : 1e-3);
});
