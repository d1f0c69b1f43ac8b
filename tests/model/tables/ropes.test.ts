import { expect, test } from 'vitest';
import { ropeMassPerLength, ropeStrength, ROPES, thinnestRope } from '../../../src/model/tables/ropes.ts';
import { feet, inches, poundsForce, toPoundsForce, toPoundsMass } from '../../../src/model/units.ts';

// Published safe loads of polypropylene rope are a twelfth of the breaking strength, to the pound.
test.each([
  ['1/4', 0.25, 94],
  ['3/8', 0.375, 203],
  ['1/2', 0.5, 315],
  ['3/4', 0.75, 638],
])('%s in polypropylene has the safe load that is printed for it', (_name, diameter, printed) => {
  const strength = toPoundsForce(ropeStrength({ material: 'polypropylene', diameter: inches(diameter) })!);
  expect(Math.abs(strength / 12 - printed)).toBeLessThanOrEqual(0.51);
});

test('a thicker rope is stronger, and polyester stronger than polypropylene', () => {
  for (const rows of Object.values(ROPES)) {
    for (let place = 1; place < rows.length; place++) {
      expect(rows[place]!.breakingPounds).toBeGreaterThan(rows[place - 1]!.breakingPounds);
    }
  }
  const strength = (material: string) => ropeStrength({ material, diameter: inches(0.375) })!;
  expect(strength('polyester')).toBeGreaterThan(strength('polypropylene'));
});

test('a metric rope counts as the size it stands for, one between two sizes as the thinner', () => {
  const pounds = (diameter: number) => toPoundsForce(ropeStrength({ material: 'Polypropylene', diameter })!);
  expect(pounds(0.006)).toBeCloseTo(1125, 6);
  expect(pounds(inches(0.34))).toBeCloseTo(1710, 6);
});

test('what the table does not cover is null', () => {
  expect(ropeStrength({ material: 'hemp', diameter: 0.01 })).toBeNull();
  expect(ropeStrength({ material: 'polypropylene', diameter: 0.001 })).toBeNull();
  expect(thinnestRope('polypropylene', poundsForce(9000))).toBeNull();
  expect(ropeMassPerLength({ material: 'polyester', diameter: 0.01 })).toBeNull();
  expect(() => ropeStrength({ material: 'polypropylene', diameter: 0 })).toThrow(RangeError);
});

test('a hundred feet of 1/4 in polypropylene weigh 1.2 lb', () => {
  const mass = ropeMassPerLength({ material: 'polypropylene', diameter: inches(0.25) })!;
  expect(toPoundsMass(mass) * feet(100)).toBeCloseTo(1.2, 9);
});
