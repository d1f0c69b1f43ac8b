import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  ampacity,
  awgArea,
  awgDiameter,
  chooseGauge,
  conductorResistance,
  dropWithPowerFactor,
  GAUGES,
  longestRun,
  requiredAmpacity,
  voltageDrop,
} from '../../../src/model/formulas/wire.ts';
import { CONDUCTORS } from '../../../src/model/tables/conductors.ts';
import { feet, inches, toInches } from '../../../src/model/units.ts';
import type { WireSize } from '../../../src/model/tables/wireSizes.ts';

const phase = fc.constantFrom<1 | 3>(1, 3);
const current = fc.double({ min: 0.5, max: 60, noNaN: true });
const length = fc.double({ min: 1, max: 600, noNaN: true });
const gauge = fc.constantFrom(...GAUGES);
const seed = 20260301;

// NFPA 70 (NEC), Chapter 9, Table 8: areas are printed to the nearest 10 circular mils.
test.each(CONDUCTORS)('the gauge rule gives the area that Table 8 prints for $gauge AWG', (row) => {
  const circularMils = (1000 * toInches(awgDiameter(row.gauge))) ** 2;
  expect(Math.abs(circularMils - row.areaCircularMils)).toBeLessThanOrEqual(0.001 * row.areaCircularMils);
});

test('six gauges up the diameter doubles, nearly, as the rule of ASTM B258 has it', () => {
  expect(awgDiameter(8) / awgDiameter(14)).toBeCloseTo(92 ** (6 / 39), 12);
  expect(awgDiameter(36)).toBeCloseTo(inches(0.005), 15);
  expect(awgArea(36)).toBeCloseTo((Math.PI / 4) * inches(0.005) ** 2, 18);
});

test('a longer wire loses more', () => {
  fc.assert(
    fc.property(phase, current, length, length, gauge, (phases, amperes, a, b, size) => {
      fc.pre(a < b);
      const drop = (metres: number) => voltageDrop({ phase: phases, current: amperes, length: metres, gauge: size });
      expect(drop(a)).toBeLessThan(drop(b));
    }),
    { seed },
  );
});

test('a thicker wire loses less and carries more', () => {
  fc.assert(
    fc.property(phase, current, length, (phases, amperes, metres) => {
      const drops = GAUGES.map((size) => voltageDrop({ phase: phases, current: amperes, length: metres, gauge: size }));
      for (let place = 1; place < drops.length; place++) expect(drops[place]).toBeLessThan(drops[place - 1]!);
    }),
    { seed },
  );
  for (const column of [60, 75] as const) {
    const carried = GAUGES.map((size) => ampacity(size, column));
    expect(carried).toEqual([...carried].sort((a, b) => a - b));
  }
});

test('three phases lose less than one by the square root of 3 over 2', () => {
  const run = { current: 9.6, length: 120, gauge: 10 };
  expect(voltageDrop({ ...run, phase: 3 }) / voltageDrop({ ...run, phase: 1 })).toBeCloseTo(Math.sqrt(3) / 2, 12);
});

test('the longest run loses just the share', () => {
  fc.assert(
    fc.property(phase, current, gauge, fc.constantFrom(115, 230), (phases, amperes, size, voltage) => {
      const longest = longestRun({ phase: phases, voltage, current: amperes, gauge: size, share: 0.05 });
      const drop = voltageDrop({ phase: phases, current: amperes, length: longest, gauge: size });
      expect(drop / voltage).toBeCloseTo(0.05, 10);
    }),
    { seed },
  );
});

test('the gauge chosen holds both limits and the next thinner one breaks one', () => {
  fc.assert(
    fc.property(phase, current, length, (phases, amperes, metres) => {
      const run = { phase: phases, current: amperes, length: metres };
      const fits = (size: WireSize) =>
        ampacity(size, 60) >= requiredAmpacity(amperes) && voltageDrop({ ...run, gauge: size }) <= 0.05 * 230;
      const chosen = chooseGauge({ ...run, voltage: 230 });
      const place = chosen === null ? GAUGES.length : GAUGES.findIndex((gauge) => gauge === chosen);
      if (chosen !== null) expect(fits(chosen)).toBe(true);
      for (const thinner of GAUGES.slice(0, place)) expect(fits(thinner)).toBe(false);
    }),
    { seed },
  );
});

test('no gauge is offered where 2 AWG is too thin', () => {
  expect(chooseGauge({ phase: 1, voltage: 115, current: 56, length: feet(2000) })).toBeNull();
});

test('the plain drop is the higher one up to a power factor of 0.95 for 14 to 6 AWG', () => {
  for (const size of [14, 12, 10, 8, 6]) {
    for (const powerFactor of [0.5, 0.7, 0.8, 0.9, 0.95]) {
      const run = { phase: 1 as const, current: 8, length: 100, gauge: size };
      expect(dropWithPowerFactor({ ...run, powerFactor })).toBeLessThan(voltageDrop(run));
    }
  }
});

test('figures without a meaning are refused', () => {
  expect(() => conductorResistance(13)).toThrow(RangeError);
  expect(() => voltageDrop({ phase: 1, current: -1, length: 10, gauge: 12 })).toThrow(RangeError);
  expect(() => voltageDrop({ phase: 1, current: 8, length: Number.NaN, gauge: 12 })).toThrow(RangeError);
  expect(() => longestRun({ phase: 1, voltage: 230, current: 0, gauge: 12 })).toThrow(RangeError);
  expect(() => dropWithPowerFactor({ phase: 1, current: 8, length: 1, gauge: 12, powerFactor: 1.1 })).toThrow(
    RangeError,
  );
  expect(() => awgDiameter(Number.NaN)).toThrow(RangeError);
});
