import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hangLoad, pullLoad, WATER_WEIGHT } from '../../../src/model/formulas/hangLoad.ts';
import { cableDisplacedArea, cableMassPerLength } from '../../../src/model/formulas/cable.ts';
import { toPoundsForce, feet } from '../../../src/model/units.ts';
import { polyethyleneString as string } from './string.ts';

const seed = 20260302;
const share = fc.double({ min: 0, max: 1, noNaN: true });

test('the load is what Archimedes gives for the full pipe as one body', () => {
  // Weight of pipe, water inside and cable, less the water that the outside of the pipe and the cable displace.
  fc.assert(
    fc.property(share, (fraction) => {
      const level = 0.99 * fraction * string.length;
      const outside = string.pipeWallArea + string.pipeBoreArea;
      const weight =
        9.80665 * (string.pipeMassPerLength + string.cableMassPerLength) * string.length +
        WATER_WEIGHT * string.pipeBoreArea * string.length;
      const displaced = WATER_WEIGHT * (outside + string.cableArea) * (string.length - level);
      const pump = 9.80665 * string.pumpMass * (1 - string.pumpBuoyancy);
      expect(hangLoad({ ...string, waterDepth: level })).toBeCloseTo(weight - displaced + pump, 6);
    }),
    { seed },
  );
});

test('higher water makes the string lighter', () => {
  fc.assert(
    fc.property(share, share, (a, b) => {
      fc.pre(b - a > 1e-6);
      const load = (fraction: number) => hangLoad({ ...string, waterDepth: fraction * string.length });
      expect(load(a)).toBeLessThan(load(b));
    }),
    { seed },
  );
});

test('a deeper string is heavier, whatever cable goes with it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 31, max: 300, noNaN: true }),
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.constantFrom(14, 12, 10, 8, 6, 4, 2),
      (length, more, gauge) => {
        const cable = { cableMassPerLength: cableMassPerLength(gauge, 2), cableArea: cableDisplacedArea(gauge, 2) };
        const load = (metres: number) => hangLoad({ ...string, ...cable, length: metres });
        expect(load(length + more)).toBeGreaterThan(load(length));
      },
    ),
    { seed },
  );
});

test('water above the suspension counts as water at it', () => {
  expect(hangLoad({ ...string, waterDepth: -5 })).toBe(hangLoad({ ...string, waterDepth: 0 }));
});

test('a dry string bears its pump without help', () => {
  const dry = hangLoad({ ...string, waterDepth: string.length });
  expect(dry).toBe(hangLoad({ ...string, waterDepth: 2 * string.length, pumpBuoyancy: 0 }));
});

test('a leaking check valve takes off the column above the level outside', () => {
  const held = hangLoad(string);
  const column = WATER_WEIGHT * string.pipeBoreArea * string.waterDepth;
  expect(hangLoad({ ...string, columnHeld: false })).toBeCloseTo(held - column, 9);
});

test('the load hardly falls until the pump leaves the water', () => {
  const load = (remaining: number) => toPoundsForce(pullLoad(string, feet(remaining)));
  expect(load(300) - load(150)).toBeLessThan(12);
  expect(load(100) - load(50)).toBeGreaterThan(55);
});

test('figures without a meaning are refused', () => {
  expect(() => hangLoad({ ...string, length: -1 })).toThrow(RangeError);
  expect(() => hangLoad({ ...string, waterDepth: Number.NaN })).toThrow(RangeError);
  expect(() => hangLoad({ ...string, pumpBuoyancy: 1.2 })).toThrow(RangeError);
});
