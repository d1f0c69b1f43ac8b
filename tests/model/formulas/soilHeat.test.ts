import { expect, test } from 'vitest';
import { kerstenFrozen, kerstenUnfrozen, latentHeat, meanHeatCapacity } from '../../../src/model/formulas/soilHeat.ts';

const BTU = 1.730735; // W/(m K) of 1 Btu/(h ft °F)
const poundsPerCubicFoot = (count: number) => count * 16.01846;

test('the silt of the chart conducts as Kersten’s chart reads: 0.72 unfrozen, 0.80 frozen', () => {
  // Chart readings to about 0.01 Btu/(h ft °F), for 100 lb/ft³ and 15 % of water.
  const silt = { grain: 'fine', dryDensity: poundsPerCubicFoot(100), water: 0.15 } as const;
  expect(Math.abs(kerstenUnfrozen(silt) / BTU - 0.72)).toBeLessThan(0.01);
  expect(Math.abs(kerstenFrozen(silt) / BTU - 0.8)).toBeLessThan(0.01);
});

test('frozen soil of usual moisture conducts better than unfrozen, dry coarse soil worse', () => {
  const sand = { grain: 'coarse', dryDensity: poundsPerCubicFoot(115) } as const;
  expect(kerstenFrozen({ ...sand, water: 0.15 })).toBeGreaterThan(kerstenUnfrozen({ ...sand, water: 0.15 }));
  expect(kerstenFrozen({ ...sand, water: 0.03 })).toBeLessThan(kerstenUnfrozen({ ...sand, water: 0.03 }));
});

test('water alone gives off 144 Btu/lb and holds 1 Btu/(lb °F) thawed, half of it frozen', () => {
  expect(latentHeat(1, 1)).toBeCloseTo(144 * 2326, 6);
  const ofWater = meanHeatCapacity(1000, 1) - meanHeatCapacity(1000, 0);
  expect(ofWater / 1000).toBeCloseTo(0.75 * 4186.8, 6);
});

test('figures without a meaning are refused', () => {
  expect(() => latentHeat(0, 0.1)).toThrow(RangeError);
  expect(() => meanHeatCapacity(1600, -0.1)).toThrow(RangeError);
  expect(() => kerstenUnfrozen({ grain: 'fine', dryDensity: 1600, water: 0.01 })).toThrow(RangeError);
});
