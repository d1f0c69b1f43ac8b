/** UFC 3-130-06 (TM 5-852-6), section 3: frost goes as deep as the root of the freezing index; the rest is calculus. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stefanDepth } from '../../../src/model/formulas/berggren.ts';
import { fahrenheitDays, seasonalFreezingIndex } from '../../../src/model/formulas/freezingIndex.ts';
import {
  freezingIndexShare,
  frostDepthShare,
  frostShareAt,
  thawShareAt,
} from '../../../src/model/formulas/frostSeason.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });

test('nothing is frozen at the start of the freezing season, and the whole depth at its end', () => {
  expect(frostShareAt(0)).toBe(0);
  expect(frostShareAt(1)).toBe(1);
});

test('a quarter of the freezing index has frozen half of the depth, half of it 71 %', () => {
  expect(frostDepthShare(0.25)).toBe(0.5);
  expect(frostDepthShare(0.5)).toBeCloseTo(Math.SQRT1_2, 12);
});

// Half of a half sine's cold is over half-way; a quarter of it after a third of the season: (1 - cos 60°)/2 = 1/4.
test('the index is half gathered at the middle of the season and a quarter gathered after a third', () => {
  expect(freezingIndexShare(0.5)).toBeCloseTo(0.5, 12);
  expect(freezingIndexShare(1 / 3)).toBeCloseTo(0.25, 12);
  expect(frostShareAt(1 / 3)).toBeCloseTo(0.5, 12);
});

// Inputs of the manual's worked example (from memory): 2,500 °F-days, k 0.76 Btu/(ft h °F), L 2,160 Btu/ft³. It prints
// 5.8 ft with a λ of 0.896; without λ that is 6.50 ft, computed.
test('Stefan’s depth grows by the same shares', () => {
  const ground = { conductivity: 1.3154, latentHeat: 80_479_224 };
  const depth = (index: number) => stefanDepth({ surfaceIndex: fahrenheitDays(index), ...ground });
  expect(depth(2500) / 0.3048).toBeCloseTo(6.5, 1);
  for (const part of [0.1, 0.25, 0.6, 1])
    expect(depth(2500 * part) / depth(2500)).toBeCloseTo(frostDepthShare(part), 12);
});

// American Meteorological Society, Glossary of Meteorology: the index is the fall of the running sum of daily means.
test('the share of the index is that of the daily means of a half-sine winter, to a day', () => {
  const days = 150;
  const means = Array.from({ length: days }, (_, day) => -12 * Math.sin((Math.PI * (day + 0.5)) / days));
  const whole = seasonalFreezingIndex(means);
  for (const day of [30, 75, 110, days]) {
    const gathered = seasonalFreezingIndex(means.slice(0, day)) / whole;
    expect(Math.abs(gathered - freezingIndexShare(day / days))).toBeLessThan(1e-3);
  }
});

test('frost only ever goes deeper until the freezing season ends', () => {
  fc.assert(
    fc.property(share, share, (one, other) => {
      const [early, late] = one < other ? [one, other] : [other, one];
      expect(frostShareAt(early)).toBeLessThanOrEqual(frostShareAt(late));
    }),
    { seed: 20261125 },
  );
});

// The same section: one equation for frost and thaw. A third of the half sine has a quarter of the index, as above.
test('what the winter froze thaws by the same law, to half of it after a third of the thaw, and is gone at its end', () => {
  expect(thawShareAt(0)).toBe(0);
  expect(thawShareAt(1 / 3)).toBeCloseTo(0.5, 12);
  expect(thawShareAt(1)).toBe(1);
  expect(() => thawShareAt(1.01)).toThrow(/season is 1.01/);
});

test('a time outside the season is a mistake', () => {
  expect(() => frostShareAt(1.01)).toThrow(/season is 1.01, must lie between 0 and 1/);
  expect(() => frostDepthShare(-0.1)).toThrow(/index share is -0.1/);
});
