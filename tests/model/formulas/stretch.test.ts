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
