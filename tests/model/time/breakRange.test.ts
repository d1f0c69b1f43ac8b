/** The earliest and the latest that the water can be gone, around the one figure of the time. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPlan, solve, withValue, type Plan, type Solution } from '../../../src/model/index.ts';
import { breakRange } from '../../../src/model/time/index.ts';
import { gpm } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, sample } from '../../plans/build.ts';
import { SEED } from '../laws.ts';

function slateHollow(changes: Readonly<Record<string, unknown>> = {}): Solution {
  const read = readPlan(sample('slate-hollow'));
  if (!read.ok) throw new Error('the sample does not read');
  return solve(Object.entries(changes).reduce<Plan>((plan, [path, value]) => withValue(plan, path, value), read.plan));
}

const OWN_POINTS = {
  'pump.curve': {
    kind: 'points',
    points: [
      ['0 gpm', '500 ft'],
      ['5 gpm', '400 ft'],
      ['9 gpm', '200 ft'],
    ],
  },
};

/** Between two ends, which must be there. */
function ends(solution: Solution): { soonest: number; latest: number } {
  const breaks = breakRange(solution)?.breaks;
  if (breaks?.latest == null) throw new Error('no range is told');
  return { soonest: breaks.soonest, latest: breaks.latest };
}

describe('the ends', () => {
  test('a generic pump over a yield blown with air: the figure lies within', () => {
    const solution = slateHollow();
    const { soonest, latest } = ends(solution);
    expect(soonest).toBeLessThan(solution.values.timeToBreakSuction!);
    expect(latest).toBeGreaterThan(solution.values.timeToBreakSuction!);
    expect(breakRange(solution)).toMatchObject({ byPump: true, byYield: true });
  });

  test('a pump of its own points over a yield that was pumped: one time, the figure', () => {
    const solution = slateHollow({ ...OWN_POINTS, 'well.yieldFrom': 'pump' });
    const { soonest, latest } = ends(solution);
    expect(soonest).toBe(solution.values.timeToBreakSuction);
    expect(latest).toBeCloseTo(soonest, 6);
    expect(breakRange(solution)).toMatchObject({ byPump: false, byYield: false });
  });

  // Conservation of volume: what is stored is the difference of what is pumped and what flows in, times the time.
  test('at a flow that a valve holds, the stored water over the flow less the part of the yield that is sure, and less all of it', () => {
    const valve = { ...OWN_POINTS, 'pump.flowLimiter': '3 gpm' };
    const solution = slateHollow(valve);
    const { soonest, latest } = ends(solution);
    expect(soonest * (gpm(3) - breakRange(solution)!.sure!)).toBeCloseTo(latest * (gpm(3) - gpm(1.5)), 6);
  });

  test('where all of the yield would keep up with the pump and the sure part does not, it never comes so far at the latest', () => {
    const breaks = breakRange(
      slateHollow({ ...OWN_POINTS, 'pump.flowLimiter': '3 gpm', 'well.yield': '5 gpm' }),
    )!.breaks;
    expect(breaks).toMatchObject({ latest: null });
    expect(breaks!.soonest).toBeGreaterThan(0);
  });

  test('so many times the yield fills the same store in so many times less', () => {
    const { back, sure } = breakRange(slateHollow())!;
    const { soonest, latest } = back(0.5)!;
    expect(latest! / soonest).toBeCloseTo(gpm(1.5) / sure!, 6);
  });
});

test('law: in any plan the figure lies between the ends', () => {
  let told = 0;
  fc.assert(
    fc.property(anyPlan, fc.boolean(), fc.integer({ min: 1, max: 60 }), (json, blown, tenths) => {
      let plan = withValue(planOf(json), 'well.yield', `${tenths / 10} gpm`);
      if (blown)
        plan = withValue(withValue(plan, 'water.pumping', { kind: 'yield only' }), 'well.yieldFrom', 'air lift');
      const solution = solve(plan);
      const time = solution.values.timeToBreakSuction;
      const range = breakRange(solution);
      if (time === null || range === null) return;
      told++;
      expect(range.breaks!.soonest).toBeLessThanOrEqual(time * (1 + 1e-9));
      expect(range.breaks!.latest ?? Infinity).toBeGreaterThanOrEqual(time * (1 - 1e-9));
    }),
    { ...SEED, numRuns: 3000 },
  );
  expect(told).toBeGreaterThan(50);
});
