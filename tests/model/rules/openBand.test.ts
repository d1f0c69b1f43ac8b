/** Where the pump may hang while nobody knows how far the water falls: its upper end. */
import { expect, test } from 'vitest';
import { feet } from '../../../src/model/units.ts';
import { judged } from './fixture.ts';

const untested = { 'water.pumping': undefined, 'pump.lowLevelCutOff': undefined };
const bandOf = (changes: Readonly<Record<string, unknown>>) =>
  judged({ ...untested, ...changes }).bands.find(({ setting }) => setting === 'pump.setting')!;

// 10 ft over the intake: common practice, no source. Water at rest at 40 ft, and it falls by some feet or by many.
test('is 10 ft under the water at rest: no less water than that may stand over the intake', () => {
  const band = bandOf({});
  expect(band).toMatchObject({ kind: 'unknown', fromEnd: { variant: 'pumpingLevelUnknown' } });
  expect(band.from).toBeCloseTo(feet(50), 9);
});

test('is 10 ft under the lowest water of the year', () => {
  expect(bandOf({ 'water.staticLowest': '52 ft' }).from).toBeCloseTo(feet(62), 9);
});

test('stays at the water where the well has no such room', () => {
  const band = bandOf({ 'water.staticLevel': '192 ft', 'pump.setting': '195 ft' });
  expect(band.fromEnd.variant).toBe('pumpingLevelUnknown');
  if (band.from !== null) expect(band.from).toBeGreaterThanOrEqual(feet(192) - 1e-9);
});
