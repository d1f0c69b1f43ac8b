import { expect, test } from 'vitest';
import { highestStaticLevel, isFlowing } from '../../../src/model/rules/highestStatic.ts';
import type { Changes } from './fixture.ts';
import { changed, solvedPlan } from './fixture.ts';

const flows = (changes: Changes) => isFlowing(solvedPlan(changed(changes)));

test('a well flows from where its water stands at the ground, and not an inch under it', () => {
  expect(flows({ 'water.staticLevel': '0 ft' })).toBe(true);
  expect(flows({ 'water.staticLevel': '-4 ft' })).toBe(true);
  expect(flows({ 'water.staticLevel': '1 in' })).toBe(false);
});

test('a well flows that does so in the wet season alone', () => {
  expect(flows({ 'water.staticLevel': '5 ft', 'water.staticHighest': '-1 ft' })).toBe(true);
  expect(flows({ 'water.staticLevel': '5 ft', 'water.staticHighest': '1 ft' })).toBe(false);
});

test('of a well whose level nobody knows the wet season’s counts, if anybody told it', () => {
  const unknown = { 'water.staticLevel': 'unknown' };
  expect(highestStaticLevel(solvedPlan(changed(unknown)))).toBeNull();
  expect([flows(unknown), flows({ ...unknown, 'water.staticHighest': '-1 ft' })]).toEqual([false, true]);
});
