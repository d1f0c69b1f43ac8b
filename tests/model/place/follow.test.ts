/** What follows a depth, and what a pump of which only the flow is known is hung by. */
import { expect, test } from 'vitest';
import { fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import { solve } from '../../../src/model/index.ts';
import { setDepths } from '../../../src/model/place/setDepths.ts';
import { toFeet } from '../../../src/model/units.ts';
import { plain } from './tradeWells.ts';

test('what stands in the house is not bought for a depth, though its finding offers it', () => {
  const plan = plain({ 'house.reliefValve': false, 'house.tankRating': '75 psi' });
  const offered = fixesOf(plan, solve(plan)).flatMap(({ button }) => (button?.changes ?? []).map(({ path }) => path));
  expect(offered).toContain('house.reliefValve');
  const placed = setDepths(plan);
  expect(placed.changes.map(({ path }) => path)).toContain('pump.setting');
  expect(placed.plan.house).toEqual(plan.house);
});

test('a pump of which only the flow is known is hung for that flow, not for the smaller one that the house wants', () => {
  // 30 ft at 7 gpm are 64.3 ft at 15 gpm under the water at 40 ft: 20 ft more are 124.3 ft, and not 90.
  const rated = plain({
    'pump.power': undefined,
    'pump.flowLimiter': undefined,
    'pump.curve': { kind: 'generic', flow: '15 gpm' },
  });
  const { facts } = solve(setDepths(rated).plan);
  expect(toFeet(facts.pump.setting)).toBeGreaterThanOrEqual(124.2);
  expect(toFeet(facts.pump.setting)).toBeLessThanOrEqual(145);
});
