import { expect, test } from 'vitest';
import { allowablePull, axialStress, jointForce, wallTension } from '../../../src/model/formulas/pipeTension.ts';

test('pressure pulls on the wall by its force on the bore', () => {
  expect(wallTension({ load: 700, pressure: 0, boreArea: 1e-3 })).toBe(700);
  expect(wallTension({ load: 700, pressure: 4e5, boreArea: 1e-3 })).toBeCloseTo(1100, 9);
});

test('the joint at the pump is pulled harder by deeper water and by more pressure', () => {
  const joint = { weightBelow: 140, pressureTop: 3e5, waterDepth: 30, boreArea: 1e-3 };
  expect(jointForce({ ...joint, waterDepth: 40 })).toBeGreaterThan(jointForce(joint));
  expect(jointForce({ ...joint, pressureTop: 4e5 })).toBeCloseTo(jointForce(joint) + 100, 9);
});

test('the allowable pull is the design stress over the wall area', () => {
  // π D² (1/DR − 1/DR²) is π (D − t) t, the area of the wall.
  const [outsideDiameter, dimensionRatio] = [0.042, 9];
  const wall = outsideDiameter / dimensionRatio;
  const pull = allowablePull({ outsideDiameter, dimensionRatio, yieldStrength: 1, designFactor: 1, timeFactor: 1 });
  expect(pull).toBeCloseTo(Math.PI * (outsideDiameter - wall) * wall, 15);
});

test('figures without a meaning are refused', () => {
  expect(() => wallTension({ load: 1, pressure: -1, boreArea: 1 })).toThrow(RangeError);
  expect(() => axialStress({ tension: 1, wallArea: 0 })).toThrow(RangeError);
  expect(() => jointForce({ weightBelow: -1, pressureTop: 0, waterDepth: 0, boreArea: 1 })).toThrow(RangeError);
  expect(() => allowablePull({ outsideDiameter: 1, dimensionRatio: 2, yieldStrength: 1, timeFactor: 1 })).toThrow(
    RangeError,
  );
});
