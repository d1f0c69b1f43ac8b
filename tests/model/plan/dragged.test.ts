import fc from 'fast-check';
import { expect, test } from 'vitest';
import { handlesOf } from '../../../src/model/handles.ts';
import { moveHandle } from '../../../src/model/move.ts';
import { readPlan, sayProblem } from '../../../src/model/plan/readPlan.ts';
import { solve } from '../../../src/model/solve.ts';
import { SAMPLES, sample } from './sample.ts';

test('whatever is dragged wherever it lets itself be, the plan that comes of it can be opened again', () => {
  const drags = fc.array(fc.tuple(fc.nat(), fc.double({ min: 0, max: 1, noNaN: true })), {
    minLength: 1,
    maxLength: 6,
  });
  fc.assert(
    fc.property(fc.constantFrom(...SAMPLES), drags, (name, moves) => {
      let plan = sample(name);
      for (const [pick, share] of moves) {
        const solution = solve(plan);
        const free = handlesOf(solution).filter(({ locked }) => locked === null);
        const handle = free[pick % free.length];
        if (!handle) continue;
        plan = moveHandle(plan, solution, handle.id, handle.min + share * (handle.max - handle.min)).plan;
        const reading = readPlan(plan);
        expect([handle.id, reading.ok ? [] : reading.problems.map(sayProblem)]).toEqual([handle.id, []]);
      }
    }),
    { seed: 51, numRuns: 200 },
  );
});
