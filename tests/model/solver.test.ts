/** A solver that remembers the plan before gives what solving anew gives: a law of its own, no source. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { handlesOf, moveHandle, solve, withValue, type Plan } from '../../src/model/index.ts';
import { judge } from '../../src/model/rules/index.ts';
import { createSolver } from '../../src/model/solve.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { planOf, sample, SAMPLES } from '../plans/build.ts';

/** One part of a plan taken from another, so that what stayed meets what changed. */
function mixed(one: Plan, other: Plan, pick: number): Plan {
  const parts = ['site', 'water', 'house', 'top', 'wire', 'rope'] as const;
  const part = parts[pick % parts.length] ?? 'site';
  return withValue(one, part, other[part]);
}

describe('a solver with a memory', () => {
  test('solves any plans after each other as if each were the first', () => {
    fc.assert(
      fc.property(fc.array(anyPlan, { minLength: 2, maxLength: 4 }), fc.nat(5), (plans, pick) => {
        const remembering = createSolver();
        const [first, second] = plans as [Plan, Plan];
        for (const plan of [...plans, mixed(first, second, pick), first])
          expect(remembering.solve(plan)).toEqual(solve(plan));
      }),
      { seed: 7, numRuns: 120 },
    );
  });

  test.each(SAMPLES)('%s: every handle moved, and depths counted from the casing top after all', (name) => {
    const remembering = createSolver();
    const plan = planOf(sample(name));
    const solution = remembering.solve(plan);
    for (const { id, min, max } of handlesOf(solution)) {
      const moved = moveHandle(plan, solution, id, (min + max) / 2).plan;
      expect(remembering.solve(moved)).toEqual(solve(moved));
      const fromTop = withValue(moved, 'well.depthsFrom', 'casing top');
      expect(remembering.solve(fromTop)).toEqual(solve(fromTop));
    }
  });

  test('places as it solves, and what it placed can be judged later', () => {
    fc.assert(
      fc.property(fc.array(anyPlan, { minLength: 1, maxLength: 3 }), (plans) => {
        const remembering = createSolver();
        for (const plan of plans) {
          const placed = remembering.place(plan);
          expect({ ...placed, ...judge(placed) }).toEqual(solve(plan));
        }
      }),
      { seed: 8, numRuns: 60 },
    );
  });

  test('takes over what did not change', () => {
    const remembering = createSolver();
    const plan = planOf(sample(SAMPLES[0] ?? ''));
    const before = remembering.solve(plan);
    const after = remembering.solve(moveHandle(plan, before, 'pumpSetting', before.facts.pump.setting - 1).plan);
    expect(after.facts.well).toBe(before.facts.well);
    expect(after.bore).toBe(before.bore);
    expect(after.facts.pump).not.toBe(before.facts.pump);
  });
});
