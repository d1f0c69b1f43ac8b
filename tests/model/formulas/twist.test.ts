import { expect, test } from 'vitest';
import { motorTorque, pipeTwist } from '../../../src/model/formulas/twist.ts';

const pipe = { torque: 2, length: 90, modulus: 7.6e8, poisson: 0.45, outsideDiameter: 0.045, insideDiameter: 0.035 };

test('a longer pipe twists in proportion, a solid bar least', () => {
  expect(pipeTwist({ ...pipe, length: 180 })).toBeCloseTo(2 * pipeTwist(pipe), 9);
  expect(pipeTwist({ ...pipe, insideDiameter: 0 })).toBeLessThan(pipeTwist(pipe));
});

test('torque is power over angular speed', () => {
  // One turn a second is 60 a minute: 2π rad/s.
  expect(motorTorque({ power: 2 * Math.PI, turnsPerMinute: 60 })).toBeCloseTo(1, 12);
});

test('figures without a meaning are refused', () => {
  expect(() => motorTorque({ power: 0 })).toThrow(RangeError);
  expect(() => pipeTwist({ ...pipe, insideDiameter: 0.045 })).toThrow(RangeError);
});
