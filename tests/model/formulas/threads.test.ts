import { expect, test } from 'vitest';
import { engagedLength, handTightTurns } from '../../../src/model/formulas/threads.ts';
import { toInches } from '../../../src/model/units.ts';

// ASME B1.20.1: hand-tight engagement in turns, two decimals.
test.each([
  ['1/2 in', 4.48],
  ['3/4 in', 4.75],
  ['1 in', 4.6],
  ['1-1/4 in', 4.83],
  ['1-1/2 in', 4.83],
  ['2 in', 5.01],
])('%s is tight by hand after %d turns', (size, turns) => {
  expect(Math.abs(handTightTurns(size) - turns)).toBeLessThanOrEqual(0.005);
});

test('three turns of the wrench come near the effective thread of 3/4 in', () => {
  // L1 0.339 + 3/14; L2 is 0.5457.
  expect(toInches(engagedLength('3/4 in'))).toBeCloseTo(0.5533, 4);
  expect(toInches(engagedLength('3/4 in', 0))).toBeCloseTo(0.339, 12);
});

test('an unknown size and turns backwards are refused', () => {
  expect(() => handTightTurns('5 in')).toThrow(RangeError);
  expect(() => engagedLength('1 in', -1)).toThrow(RangeError);
});
