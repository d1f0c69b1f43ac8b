import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, type PlacedPart, type Solution } from '../../../src/model/index.ts';
import { inches, toInches } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell } from '../../plans/build.ts';
import { anyString } from './anyString.ts';

const toCut = ({ values }: Solution): number => values.dropPipeToCut ?? NaN;
const hanging = ({ values }: Solution): number => values.dropPipeCutLength ?? NaN;

// Generic lengths of fittings: common practice, no source. A PE pipe ends 2 in below what it is joined to, a valve is
// 4 in long, the pump's nipple shows 2 in. ASTM D1785: 1-1/4 in pipe is 1.660 in wide outside.
describe('worked by hand from the lengths of the fittings', () => {
  const pitless = {
    house: { demand: '7 gpm', distance: '120 ft', rise: '10 ft', line: { material: 'PVC', size: '1-1/4 in' } },
  };
  test('PE under an adapter at 5 ft with the pump’s discharge at 138 ft 6 in', () => {
    const solution = solve(rockWell(pitless));
    expect(toInches(hanging(solution))).toBeCloseTo(138.5 * 12 - 60, 6);
    // Half the outlet, half the spool (2 in) and the fitting above; nipple, valve and fitting below.
    expect(toInches(toCut(solution))).toBeCloseTo(138.5 * 12 - 60 - (0.83 + 2 + 2) - (2 + 4 + 2), 6);
  });
  test('a valve in the pipe takes its 4 in and 2 in of fitting at either side', () => {
    const plan = { ...pitless, string: { checkValves: ['0 ft', '60 ft'] } };
    expect(toInches(toCut(solve(rockWell(pitless))) - toCut(solve(rockWell(plan))))).toBeCloseTo(8, 6);
  });
  test('PE under a seal 12 in above ground: the nipple ends 4 in under the rim', () => {
    const solution = solve(rockWell({ top: { kind: 'seal' } }));
    expect(toInches(hanging(solution))).toBeCloseTo(138.5 * 12 + 12, 6);
    expect(toInches(toCut(solution))).toBeCloseTo(138.5 * 12 + 12 - (4 + 2) - (2 + 4 + 2), 6);
  });
  test('threaded pipe meets valve and adapter without a fitting, and a valve in it takes 4 in', () => {
    const dropPipe = { material: 'galvanized steel', size: '1-1/4 in' };
    const one = solve(rockWell({ ...pitless, dropPipe }));
    expect(toInches(toCut(one))).toBeCloseTo(138.5 * 12 - 60 - (0.83 + 2) - (2 + 4), 6);
    const two = solve(rockWell({ ...pitless, dropPipe, string: { checkValves: ['0 ft', '60 ft'] } }));
    expect(toInches(toCut(one) - toCut(two))).toBeCloseTo(4, 6);
  });
});

/** Pipe that is drawn between valves: from its ends, which sit 2 in over each barb, less what stands between two ends. */
function drawnPipe({ parts }: Solution): number {
  const pipe = parts.find(({ key }) => key === 'dropPipe');
  if (pipe === undefined) throw new Error('no drop pipe');
  const gaps = parts
    .filter(({ kind, bottom }) => kind === 'checkValve' && bottom < pipe.bottom + 1e-9)
    .map((valve) => {
      const fitting = (side: string): PlacedPart | undefined =>
        parts.find(({ key }) => key === `insertFitting/${valve.key}/${side}`);
      const above = fitting('above');
      const below = fitting('below');
      return {
        top: above === undefined ? valve.top : above.top + inches(2),
        bottom: below === undefined ? valve.bottom : below.bottom - inches(2),
      };
    })
    .sort((a, b) => a.top - b.top);
  let sum = 0;
  let from = pipe.top;
  for (const { top, bottom } of [...gaps, { top: pipe.bottom, bottom: pipe.bottom }]) {
    sum += Math.max(Math.min(top, pipe.bottom) - from, 0);
    from = Math.max(from, bottom);
  }
  return sum;
}

describe('laws', () => {
  const holds = (solution: Solution): void => {
    expect(toCut(solution)).toBeCloseTo(drawnPipe(solution), 9);
    // Threaded pipe stands 3 in over the rim, in the collar on the seal.
    const { facts } = solution;
    const over = facts.top.kind === 'seal' && facts.dropPipe.material !== 'PE' ? inches(3) : 0;
    expect(toCut(solution)).toBeLessThanOrEqual(Math.max(hanging(solution), 0) + over + 1e-9);
    expect(toCut(solution)).toBeGreaterThanOrEqual(0);
  };
  test('what is cut is what is drawn between the joints, and no more than hangs: any string', () => {
    fc.assert(
      fc.property(anyString, (plan) => holds(solve(plan))),
      { numRuns: 300, seed: 5 },
    );
  });
  test('the same of any plan', () => {
    fc.assert(
      fc.property(anyPlan, (json) => holds(solve(planOf(json)))),
      { numRuns: 200, seed: 6 },
    );
  });
});
