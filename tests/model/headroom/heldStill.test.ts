/** What was assumed and follows from what is moved stays where it is. */
import { expect, test } from 'vitest';
import { headroomOf } from '../../../src/model/headroom/headroom.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { solve } from '../../../src/model/solve.ts';
import { toFeet, toInches } from '../../../src/model/units.ts';
import { blownRock, slimCasing } from '../choose/hardWells.ts';

const lineOf = (plan: Plan, of: string) => {
  const line = headroomOf(plan, solve(plan)).lines.find((each) => each.of === of);
  if (line === undefined) throw new Error(of);
  return line;
};

test('an adapter that was assumed at 48 in does not go down with the frost', () => {
  const { warning, danger, assumed } = lineOf(blownRock, 'frostDepth');
  // Six inches of margin are wanted over it.
  expect([warning?.last, danger?.last].map((depth) => Math.round(toInches(depth ?? 0)))).toEqual([42, 48]);
  expect(assumed).toContain('top.depth');
});

test('a pump that was assumed at 48 ft does not go down with the water', () => {
  const { warning, danger, assumed } = lineOf(slimCasing, 'staticLevel');
  // 27.6 ft while pumping: 20.4 ft stand over it, and ten and five have to stay.
  expect(toFeet((warning?.last ?? 0) - 21 * 0.3048)).toBeCloseTo(10, 0);
  expect(toFeet((danger?.last ?? 0) - 21 * 0.3048)).toBeCloseTo(15, 0);
  expect([warning?.rule, danger?.rule]).toEqual(['PR-02', 'PR-02']);
  expect(assumed).toContain('pump.setting');
});
