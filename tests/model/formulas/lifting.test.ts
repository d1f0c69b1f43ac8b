import { expect, test } from 'vitest';
import {
  LIFT_ONE_PERSON,
  LIFT_TWO_PEOPLE,
  recommendedWeightLimit,
  recommendedWeightLimitCustomary,
  tackleLift,
  teamLimit,
} from '../../../src/model/formulas/lifting.ts';
import { inches, toPoundsMass } from '../../../src/model/units.ts';

const best = { reach: 0.25, height: 0.75, travel: 0.25, turn: 0, frequency: 1, grip: 1 };

test('with everything favourable one person lifts the load constant, 23 kg or 51 lb', () => {
  // NIOSH DHHS 94-110: 0.82 + 4.5/25 is 1.
  expect(recommendedWeightLimit(best)).toBeCloseTo(23, 10);
  const customary = { ...best, reach: inches(10), height: inches(30), travel: inches(10) };
  expect(toPoundsMass(recommendedWeightLimitCustomary(customary))).toBeCloseTo(51, 9);
});

test('reaching, bending, lifting far, turning and haste each lower the limit', () => {
  for (const worse of [
    { reach: 0.4 },
    { height: 0.3 },
    { travel: 0.6 },
    { turn: 45 },
    { frequency: 0.8 },
    { grip: 0.9 },
  ]) {
    expect(recommendedWeightLimit({ ...best, ...worse })).toBeLessThan(recommendedWeightLimit(best));
  }
});

test('both forms agree within 5 %', () => {
  const lift = { ...best, reach: 0.35, height: 0.5, travel: 0.8, frequency: 0.88 };
  expect(recommendedWeightLimitCustomary(lift) / recommendedWeightLimit(lift)).toBeGreaterThan(0.98);
  expect(recommendedWeightLimitCustomary(lift) / recommendedWeightLimit(lift)).toBeLessThan(1.05);
});

test('each further person adds less than the one before', () => {
  expect(teamLimit(1)).toBe(LIFT_ONE_PERSON);
  expect(teamLimit(2)).toBeCloseTo(LIFT_TWO_PEOPLE, 9);
  expect(teamLimit(3) - teamLimit(2)).toBeLessThan(teamLimit(2) - teamLimit(1));
});

test('figures without a meaning are refused', () => {
  expect(() => recommendedWeightLimit({ ...best, reach: 0.2 })).toThrow(RangeError);
  expect(() => recommendedWeightLimitCustomary({ ...best, turn: 140 })).toThrow(RangeError);
  expect(() => tackleLift({ parts: 0, pull: 1, efficiency: 1 })).toThrow(RangeError);
});

test('a tackle gives what its friction leaves', () => {
  expect(tackleLift({ parts: 3, pull: 100, efficiency: 0.8 })).toBeCloseTo(240, 9);
});
