import { expect, test } from 'vitest';
import {
  areaForDrop,
  CIRCULAR_MIL,
  coolRunFactor,
  copperResistance,
  groundingGauge,
  insulationResistanceFloor,
  resistanceRatio,
  STRANDING_FACTOR,
  thinnestConductor,
} from '../../../src/model/formulas/copper.ts';
import { awgArea, conductorResistance, voltageDrop } from '../../../src/model/formulas/wire.ts';
import { conductorOf, GAUGES } from '../../../src/model/tables/conductors.ts';

// NFPA 70 (NEC), Chapter 9, Table 8 against NBS Handbook 100 (1966): the table rounds to three figures.
test.each(GAUGES)('copper of the handbook, stranded, has the resistance that Table 8 prints for %d AWG', (gauge) => {
  const handbook = STRANDING_FACTOR * copperResistance({ area: awgArea(gauge), temperature: 75 });
  expect(Math.abs(handbook / conductorResistance(gauge) - 1)).toBeLessThan(0.006);
});

test('the circular-mil method asks for the area whose drop is the one allowed', () => {
  const run = { phase: 1 as const, current: 8, length: 90 };
  const drop = voltageDrop({ ...run, gauge: 12 });
  // K = 12.9 is rounded and holds for any size: within 1 % of one size's own figure.
  expect(areaForDrop({ ...run, drop }) / awgArea(12)).toBeCloseTo(1, 2);
});

test('an area that a conductor just has asks for no thicker one', () => {
  for (const gauge of GAUGES) {
    const area = conductorOf(gauge).areaCircularMils * CIRCULAR_MIL;
    expect(thinnestConductor(area)).toBe(gauge);
    expect(thinnestConductor(area * 1.0001)).not.toBe(gauge);
  }
});

test('cooler copper carries further, by its resistance at the 75 °C of the table', () => {
  // 1 + 0.00393 × 55 is 1.216; at 10 °C, 1 - 0.00393 × 10 is 0.9607.
  expect(coolRunFactor(75)).toBeCloseTo(1, 12);
  expect(coolRunFactor(20)).toBeCloseTo(1.216, 3);
  expect(coolRunFactor(10)).toBeCloseTo(1.21615 / 0.9607, 4);
});

test('no conductor is named where the table ends', () => {
  expect(thinnestConductor(awgArea(0))).toBeNull();
});

test('the ground wire stays as it is while the power wires do', () => {
  for (const gauge of GAUGES) expect(groundingGauge({ least: gauge, installed: gauge, ground: gauge })).toBe(gauge);
});

test('figures without a meaning are refused', () => {
  expect(() => copperResistance({ area: 0, temperature: 20 })).toThrow(RangeError);
  expect(() => resistanceRatio(-300)).toThrow(RangeError);
  expect(() => areaForDrop({ phase: 1, current: 8, length: 10, drop: 0 })).toThrow(RangeError);
  expect(() => insulationResistanceFloor(-1)).toThrow(RangeError);
});
