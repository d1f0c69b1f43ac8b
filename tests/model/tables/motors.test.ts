import { expect, test } from 'vitest';
import {
  lockedRotorCurrent,
  motorCurrent,
  pumpMass,
  RATED_POWERS,
  ratingOf,
  runningCurrent,
  serviceFactor,
} from '../../../src/model/tables/motors.ts';
import { horsepower } from '../../../src/model/units.ts';

// NFPA 70 (NEC), Tables 430.248 and 430.250.
test.each([
  [0.5, 1, 115, 9.8],
  [0.5, 1, 230, 4.9],
  [1, 1, 230, 8],
  [1.5, 1, 208, 11],
  [3, 1, 230, 17],
  [5, 1, 230, 28],
  [1.5, 3, 230, 6],
  [3, 3, 460, 4.8],
  [5, 3, 208, 16.7],
] as const)('%d hp in %d phase at %d V draws %d A', (hp, phase, voltage, amperes) => {
  expect(motorCurrent({ power: horsepower(hp), phase, voltage })).toBe(amperes);
});

// NFPA 70 (NEC), 2008, Table 430.251(A) is six times full load; it prints whole amperes from 50 on at 208 V.
test('a single-phase motor draws six times its current with the rotor locked', () => {
  for (const power of RATED_POWERS) {
    for (const voltage of [115, 208, 230]) {
      const motor = { power, phase: 1, voltage } as const;
      expect(Math.abs(lockedRotorCurrent(motor)! - 6 * motorCurrent(motor)!)).toBeLessThanOrEqual(1.3);
    }
  }
});

test('a power between two ratings takes the larger, a metric name its own', () => {
  const at = (power: number) => motorCurrent({ power, phase: 1, voltage: 230 });
  expect(at(horsepower(0.6))).toBe(6.9);
  expect(at(750)).toBe(8); // 0.75 kW is the metric name of 1 hp
  expect(at(1500)).toBe(12); // 1.5 kW of 2 hp
  expect(at(horsepower(0.1))).toBe(4.9);
});

test('system voltages of the tables’ notes read in their column, others not', () => {
  const at = (voltage: number) => motorCurrent({ power: horsepower(1), phase: 1, voltage });
  expect(at(120)).toBe(16);
  expect(at(240)).toBe(8);
  expect(at(400)).toBeNull();
  expect(at(460)).toBeNull();
});

test('beyond 5 hp the tables here say nothing', () => {
  expect(motorCurrent({ power: horsepower(7.5), phase: 3, voltage: 230 })).toBeNull();
  expect(pumpMass(horsepower(7.5))).toBeNull();
  expect(() => pumpMass(0)).toThrow(RangeError);
});

test('a stronger pump is heavier', () => {
  const masses = RATED_POWERS.map((power) => pumpMass(power)!);
  for (let place = 1; place < masses.length; place++) expect(masses[place]).toBeGreaterThan(masses[place - 1]!);
});

// Nameplate values of 60 Hz submersible motors: common practice, from memory.
test.each([
  [0.5, 1.6],
  [0.75, 1.5],
  [1, 1.4],
  [1.5, 1.3],
  [2, 1.25],
  [3, 1.15],
  [5, 1.15],
  [7.5, 1.15],
])('a motor of %d hp carries %d times its rated load at 60 Hz, and no more than that load at 50', (hp, factor) => {
  expect(serviceFactor(horsepower(hp), 60)).toBe(factor);
  expect(serviceFactor(horsepower(hp), 50)).toBe(1);
});

// Amperes at the service factor, single phase at 230 V: common practice, from memory; 28 A of 5 hp is NFPA 70, 430.248.
test.each([
  [0.5, 6],
  [0.75, 8],
  [1, 10.4],
  [1.5, 11.5],
  [2, 13.2],
  [3, 17],
  [5, 28],
])('%d hp at 230 V is taken to draw %d A, and at 115 V no less than twice as much', (hp, amperes) => {
  const power = horsepower(hp);
  expect(runningCurrent({ power, phase: 1, voltage: 230 })).toBe(amperes);
  expect(runningCurrent({ power, phase: 1, voltage: 115 })).toBeGreaterThanOrEqual(2 * Math.min(amperes, 27.5));
});

test('at 208 V, in three phases and beyond the table the code table alone says what a motor draws', () => {
  const power = horsepower(1);
  expect(runningCurrent({ power, phase: 1, voltage: 208 })).toBe(8.8);
  expect(runningCurrent({ power, phase: 3, voltage: 230 })).toBe(4.2);
  expect(runningCurrent({ power, phase: 1, voltage: 400 })).toBeNull();
  expect(runningCurrent({ power: horsepower(7.5), phase: 1, voltage: 230 })).toBeNull();
});

test('a metric name stands for its horsepower rating: 2.2 kW for 3 hp', () => {
  expect(ratingOf(2200)).toBe(horsepower(3));
  expect(ratingOf(750)).toBe(horsepower(1));
  expect(ratingOf(horsepower(7.5))).toBeNull();
});
