import { expect, test } from 'vitest';
import {
  startingDropBound,
  startingTorqueShare,
  startingVoltageShare,
} from '../../../src/model/formulas/startingDip.ts';

const start = { phase: 1 as const, lockedRotorCurrent: 48, length: 90, gauge: 12, voltage: 230 };

test('the motor never sees less than the bound leaves nor more than the supply', () => {
  for (const length of [0, 10, 100, 300]) {
    const bound = startingDropBound({ ...start, length });
    for (const powerFactor of [0, 0.5, 0.7, 1]) {
      const share = startingVoltageShare({ bound, powerFactor });
      expect(share).toBeGreaterThanOrEqual(1 - bound);
      expect(share).toBeLessThanOrEqual(1);
    }
  }
});

test('a purely resistive motor divides the voltage as two resistors do', () => {
  expect(startingVoltageShare({ bound: 0.25, powerFactor: 1 })).toBeCloseTo(1 / 1.25, 12);
});

test('torque falls with the square of the voltage', () => {
  expect(startingTorqueShare(0.5)).toBe(0.25);
});

test('figures without a meaning are refused', () => {
  expect(() => startingDropBound({ ...start, voltage: 0 })).toThrow(RangeError);
  expect(() => startingVoltageShare({ bound: -1 })).toThrow(RangeError);
  expect(() => startingTorqueShare(-0.1)).toThrow(RangeError);
});
