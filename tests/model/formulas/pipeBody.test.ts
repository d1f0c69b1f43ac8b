import { expect, test } from 'vitest';
import {
  boreArea,
  pipeMassPerLength,
  SPECIFIC_GRAVITY,
  submergedMassPerLength,
  wallArea,
} from '../../../src/model/formulas/pipeBody.ts';
import { feet, inches, toPoundsMass } from '../../../src/model/units.ts';

const pipe = (outside: number, wall: number) => ({
  outsideDiameter: inches(outside),
  insideDiameter: inches(outside - 2 * wall),
});
const poundsPerFoot = (massPerLength: number) => toPoundsMass(massPerLength) * feet(1);

// ASME B36.10M, schedule 40, plain end: weights printed to the thousandth of a pound per foot.
test.each([
  [1.315, 0.133, 1.679],
  [1.66, 0.14, 2.273],
  [1.9, 0.145, 2.718],
])('steel pipe of %d in with a wall of %d in weighs %d lb/ft', (outside, wall, printed) => {
  const computed = poundsPerFoot(pipeMassPerLength(pipe(outside, wall), SPECIFIC_GRAVITY.steel));
  expect(Math.abs(computed - printed)).toBeLessThan(0.002);
});

// Published weights of PVC pipe, schedule 80; real walls exceed the minimum by up to 4 %.
test.each([
  [1.315, 0.179, 0.402],
  [1.66, 0.191, 0.554],
  [1.9, 0.2, 0.673],
])(
  'PVC pipe of %d in with a wall of %d in weighs up to 4 %% less than the %d lb/ft printed',
  (outside, wall, printed) => {
    const ratio = poundsPerFoot(pipeMassPerLength(pipe(outside, wall), SPECIFIC_GRAVITY.PVC)) / printed;
    expect(ratio).toBeGreaterThan(0.955);
    expect(ratio).toBeLessThan(1);
  },
);

test('wall and bore make up the outside area', () => {
  const body = pipe(1.66, 0.14);
  expect(wallArea(body) + boreArea(body)).toBeCloseTo((Math.PI / 4) * body.outsideDiameter ** 2, 15);
});

test('polyethylene floats, PVC sinks', () => {
  expect(submergedMassPerLength(pipe(1.66, 0.184), SPECIFIC_GRAVITY.PE)).toBeLessThan(0);
  expect(submergedMassPerLength(pipe(1.66, 0.191), SPECIFIC_GRAVITY.PVC)).toBeGreaterThan(0);
});

test('a pipe without wall or bore is refused', () => {
  expect(() => wallArea(pipe(1, 0))).toThrow(RangeError);
  expect(() => boreArea({ insideDiameter: 0 })).toThrow(RangeError);
});
