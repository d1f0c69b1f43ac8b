import { expect, test } from 'vitest';
import { hangLoad } from '../../../src/model/formulas/hangLoad.ts';
import { apparentModulus, FIFTY_YEARS, pipeStretch, thermalChange } from '../../../src/model/formulas/stretch.ts';
import { psi, toPsi } from '../../../src/model/units.ts';
import { polyethyleneString as string } from './string.ts';

const HOUR = 3600;

// PPI Handbook of Polyethylene Pipe, chapter 3, Table B.1.1, thousands of psi at 73 degF.
test.each([
  ['PE4710', 0.5, 82],
  ['PE4710', 12, 63],
  ['PE4710', 438_000, 29],
  ['PE3608', 2, 71],
  ['PE3408', 100, 52],
  ['PE2708', 8760, 30],
])('%s has after %d hours the modulus of %d ksi that the handbook prints', (material, hours, ksi) => {
  expect(toPsi(apparentModulus(material, hours * HOUR))).toBeCloseTo(1000 * ksi, 5);
});

test('polyethylene softens with time, at every step of a sweep across and beyond the table', () => {
  const sweep = Array.from({ length: 80 }, (_, step) => apparentModulus('PE4710', 600 * 1.3 ** step));
  for (let step = 1; step < sweep.length; step++) expect(sweep[step]).toBeLessThan(sweep[step - 1]!);
});

test('PVC and steel do not creep here, and an unknown grade counts as the softer of the two usual ones', () => {
  expect(apparentModulus('PVC', HOUR)).toBe(apparentModulus('PVC', FIFTY_YEARS));
  expect(apparentModulus('PE', FIFTY_YEARS)).toBe(apparentModulus('PE3608', FIFTY_YEARS));
  expect(apparentModulus('PE', FIFTY_YEARS)).toBeLessThan(apparentModulus('PE4710', FIFTY_YEARS));
});

test.each([0, 10, 45, 91.44, 120])(
  'the stretch is the sum of the loads below, with the water %d m down',
  (waterDepth) => {
    const hanging = { ...string, waterDepth };
    const slices = 4000;
    let sum = 0;
    for (let slice = 0; slice < slices; slice++) {
      const down = ((slice + 0.5) / slices) * hanging.length;
      sum += hangLoad({ ...hanging, length: hanging.length - down, waterDepth: waterDepth - down });
    }
    const modulus = psi(29000);
    const summed = (sum * hanging.length) / slices / (modulus * hanging.pipeWallArea);
    // A stretch of metres, in slices of 23 mm.
    expect(Math.abs(pipeStretch({ ...hanging, modulus }) - summed)).toBeLessThan(1e-5);
  },
);

test('a pipe that cools gets shorter by what it grew', () => {
  const warmed = thermalChange({ material: 'PE', length: 90, change: 15 });
  expect(thermalChange({ material: 'PE', length: 90, change: -15 })).toBe(-warmed);
  expect(warmed).toBeGreaterThan(0);
});

test('figures without a meaning are refused', () => {
  expect(() => apparentModulus('glass', HOUR)).toThrow(RangeError);
  expect(() => apparentModulus('PE4710', 0)).toThrow(RangeError);
  expect(() => apparentModulus('PE4710', 1e30)).toThrow(RangeError);
  expect(() => pipeStretch({ ...string, modulus: 0 })).toThrow(RangeError);
  expect(() => thermalChange({ material: 'PE', length: -1, change: 1 })).toThrow(RangeError);
});

// PPI Handbook of Polyethylene Pipe, chapter 3, Table B.1.1: 82,000 psi after half an hour, 29,000 psi after fifty years.
test.each([
  ['PE4710', 0.5, 82_000],
  ['PE4710', 2, 74_000],
  ['PE 100', 12, 63_000],
  ['PE3608', 100, 52_000],
  ['PE 80', 8760, 38_000],
  ['PE', 438_000, 28_000],
  ['PE2406', 438_000, 22_000],
])('%s after %d hours has a modulus of %d psi', (material, hours, modulus) => {
  expect(toPsi(apparentModulus(material, hours * 3600))).toBeCloseTo(modulus, 6);
});

test('beyond the table the last slope goes on, before it the first', () => {
  const at = (hours: number) => toPsi(apparentModulus('PE4710', hours * 3600));
  // From 40,000 psi at 8,760 h to 29,000 psi at 438,000 h, a factor of 50: as much again at 50 times that.
  expect(at(438_000 * 50)).toBeCloseTo(29_000 - 11_000, 6);
  // From 82,000 psi at half an hour to 74,000 psi at two: 4,000 psi for each doubling.
  expect(at(0.25)).toBeCloseTo(86_000, 6);
});
