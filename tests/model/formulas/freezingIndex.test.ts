import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  monthlyFreezingIndex,
  seasonalFreezingIndex,
  sineAmplitude,
  sineFreezingIndex,
  sineSeason,
} from '../../../src/model/formulas/freezingIndex.ts';

const meanAnnual = fc.double({ min: 0.5, max: 14, noNaN: true });

test('the closed form is the integral of the cold below the wave', () => {
  const year = { meanAnnual: 7, amplitude: 16 };
  const steps = 40_000;
  let index = 0;
  for (let step = 0; step < steps; step++) {
    const temperature = year.meanAnnual - year.amplitude * Math.cos((2 * Math.PI * (step + 0.5)) / steps);
    index += (Math.max(0, -temperature) * 365.25) / steps;
  }
  expect(Math.abs(sineFreezingIndex(year) - index)).toBeLessThan(0.01);
});

test('the amplitude found for an index gives that index back', () => {
  fc.assert(
    fc.property(meanAnnual, fc.double({ min: 1, max: 3000, noNaN: true }), (mean, index) => {
      const amplitude = sineAmplitude({ index, meanAnnual: mean });
      expect(Math.abs(sineFreezingIndex({ meanAnnual: mean, amplitude }) / index - 1)).toBeLessThan(1e-6);
    }),
    { seed: 20260305 },
  );
});

test('a place that never freezes has no season, one that never thaws the whole year', () => {
  expect(sineSeason({ meanAnnual: 12, amplitude: 10 })).toBe(0);
  expect(sineFreezingIndex({ meanAnnual: 12, amplitude: 10 })).toBe(0);
  expect(sineSeason({ meanAnnual: -12, amplitude: 10 })).toBe(365.25);
  expect(sineFreezingIndex({ meanAnnual: -12, amplitude: 10 })).toBeCloseTo(12 * 365.25, 9);
});

test('the seasonal index is never above the plain sum of the freezing days', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: -30, max: 25, noNaN: true }), { maxLength: 200 }), (days) => {
      const plain = days.reduce((sum, mean) => sum + Math.max(0, -mean), 0);
      expect(seasonalFreezingIndex(days)).toBeLessThanOrEqual(plain + 1e-9);
      expect(seasonalFreezingIndex(days)).toBeGreaterThanOrEqual(0);
    }),
    { seed: 20260306 },
  );
});

test('figures without a meaning are refused', () => {
  expect(() => monthlyFreezingIndex([1, 2, 3])).toThrow(RangeError);
  expect(() => sineSeason({ meanAnnual: 5, amplitude: 0 })).toThrow(RangeError);
  expect(() => sineAmplitude({ index: 0, meanAnnual: 5 })).toThrow(RangeError);
  expect(() => sineAmplitude({ index: 100, meanAnnual: -1 })).toThrow(RangeError);
});
