import { expect, test } from 'vitest';
import {
  amplitudeAt,
  dampingDepth,
  depthOfFreezing,
  groundTemperature,
} from '../../../src/model/formulas/frostWave.ts';

const YEAR = 365.25 * 86_400;
const damping = dampingDepth({ diffusivity: 0.5e-6 });
const wave = { meanGround: 7, surfaceAmplitude: 16, dampingDepth: damping };

test('one damping depth down the swing is 1/e of that at the surface', () => {
  expect(amplitudeAt({ surfaceAmplitude: 16, depth: damping, dampingDepth: damping })).toBeCloseTo(16 / Math.E, 12);
});

test('at the depth of freezing the coldest day of the year is just at freezing', () => {
  const depth = depthOfFreezing(wave);
  const days = Array.from({ length: 366 }, (_, day) => groundTemperature({ ...wave, depth, time: (day / 366) * YEAR }));
  // The coldest of 366 days is within half a day of the true minimum.
  expect(Math.abs(Math.min(...days))).toBeLessThan(1e-3);
});

test('the cold comes 58 days later for each damping depth', () => {
  const warmth = (day: number) => groundTemperature({ ...wave, depth: damping, time: day * 86_400 });
  const coldest = Array.from({ length: 365 }, (_, day) => day).reduce((a, b) => (warmth(b) < warmth(a) ? b : a));
  expect(coldest).toBe(58);
});

test('where the surface never freezes the depth is zero', () => {
  expect(depthOfFreezing({ ...wave, meanGround: 20 })).toBe(0);
});

test('figures without a meaning are refused', () => {
  expect(() => dampingDepth({ diffusivity: 0 })).toThrow(RangeError);
  expect(() => amplitudeAt({ surfaceAmplitude: 1, depth: -1, dampingDepth: 1 })).toThrow(RangeError);
  expect(() => depthOfFreezing({ ...wave, meanGround: -1 })).toThrow(RangeError);
});
