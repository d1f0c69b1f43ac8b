import { expect, test } from 'vitest';
import { lockedRotorCurrent, motorCurrent, pumpMass, RATED_POWERS } from '../../../src/model/tables/motors.ts';
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
