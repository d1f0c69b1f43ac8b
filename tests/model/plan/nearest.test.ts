import { expect, test } from 'vitest';
import { nearestName } from '../../../src/model/plan/nearest.ts';

const NAMES = ['depth', 'casing', 'casings', 'grout', 'intake', 'inflows'];

test.each([
  ['casng', 'casing'],
  ['Casings', 'casings'],
  ['detph', 'depth'],
  ['groot', 'grout'],
  ['inflow', 'inflows'],
])('%s was meant as %s', (typed, meant) => {
  expect(nearestName(typed, NAMES)).toBe(meant);
});

test('a name that is like none of them stays without an answer', () => {
  expect(nearestName('colour', NAMES)).toBeNull();
});
