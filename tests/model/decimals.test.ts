import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decimals } from '../../src/model/units.ts';

// Against ECMA-402, Intl.NumberFormat, which rounds the exact binary value: halves, which the two may take either way,
// are left out.
const PLACES = [0, 1, 2] as const;
const INTL = PLACES.map(
  (places) =>
    new Intl.NumberFormat('en-US', { maximumFractionDigits: places, useGrouping: false, signDisplay: 'negative' }),
);

test('numbers are written as Intl.NumberFormat writes them', () => {
  const numbers = fc.oneof(
    fc.double({ min: -1e12, max: 1e12, noNaN: true }),
    fc.double({ min: -2000, max: 2000, noNaN: true }),
    fc.integer({ min: -300_000, max: 300_000 }).map((n) => n / 100),
  );
  fc.assert(
    fc.property(numbers, fc.constantFrom(...PLACES), (value, places) => {
      const steps = value * 10 ** places;
      fc.pre(Math.abs(Math.abs(steps % 1) - 0.5) > 1e-3);
      expect(decimals(value, places)).toBe(INTL[places]?.format(value));
    }),
    { seed: 7, numRuns: 20_000 },
  );
});

test('nothing is written as a negative nought, and no nought stands at the end', () => {
  expect(decimals(-0.004, 2)).toBe('0');
  expect(decimals(-0, 0)).toBe('0');
  expect(decimals(-0.05, 2)).toBe('-0.05');
  expect(decimals(12.3, 2)).toBe('12.3');
  expect(decimals(12.999, 2)).toBe('13');
});
