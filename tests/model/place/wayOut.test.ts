/** The way out of a clash is one: no protection that stops the pump above the water at rest, where it would never start. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lowestStatic } from '../../../src/model/figures/lowestPumping.ts';
import { clashesOf } from '../../../src/model/place/clashes.ts';
import { probeAboveIntake } from '../../../src/model/rules/cutOff.ts';
import { rangesOf } from '../../../src/model/rules/ranges.ts';
import { RULES } from '../../../src/model/rules/list.ts';
import { solve, show } from '../../../src/model/index.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayClash } from '../../../src/words/sayPlacement.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { plain } from './tradeWells.ts';

/** The stronger pump takes more than the well gives; how high the tank stands decides what it lifts from. */
const outpumped = (rise: string) =>
  plain({
    'well.yield': '3 gpm',
    'water.pumping': { kind: 'test', flow: '3 gpm', drawdown: '60 ft', after: '6 h' },
    'house.demand': '6 gpm',
    'house.rise': rise,
    'pump.lowLevelCutOff': undefined,
  });

test('a pump that lifts from nowhere under the water at rest only helps by being stronger', () => {
  const told = ['0 ft', '60 ft', '120 ft', '180 ft', '240 ft', '300 ft', '400 ft'].flatMap((rise) => {
    const solution = solve(outpumped(rise));
    return clashesOf(solution)
      .filter(({ to }) => to.rule === 'PR-46')
      .map((clash) => sayClash(clash, en, show('us')).wayOut);
  });
  expect(told.some((words) => /^A pump that lifts from [\d.]+ \w+ deeper\.$/.test(words))).toBe(true);
});

test('in any plan a protection is named only where it can stop the pump under the water at rest', () => {
  fc.assert(
    fc.property(anyPlan, fc.integer({ min: 0, max: 120 }), (plan, rise) => {
      const solution = solve({ ...plan, house: { ...plan.house, rise: `${rise} m` } });
      for (const clash of clashesOf(solution)) {
        if (clash.wayOut !== 'strongerPump') continue;
        const range = rangesOf(solution, RULES)['pump.setting'];
        const stopsAt = range.to.depth - Math.max(probeAboveIntake(solution.facts) ?? 0, 0);
        expect(stopsAt).toBeGreaterThan(lowestStatic(solution.facts) ?? 0);
      }
    }),
    { seed: 33, numRuns: 400 },
  );
});
