import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, type Plan } from '../../src/model/index.ts';
import { candidatesFor } from '../../src/model/fixes/candidatesFor.ts';
import { givenBy } from '../../src/model/rules/index.ts';
import { lackingIn } from '../../src/model/rules/lacking.ts';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { sayFinding, sayFix, sayHolding, sayLacking, sayMeasure, sayTurning } from '../../src/words/sayJudgement.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { rockWell } from '../plans/build.ts';

const [US, METRIC] = [show('us'), show('metric')];

test('one finding and its fix are said in the units of whoever reads; what a button writes stays as the plan has it', () => {
  const solution = solve(rockWell({ top: { kind: 'pitless', depth: '2 ft' } }));
  const frost = solution.findings.find(({ rule }) => rule === 'PR-19')!;
  expect(sayFinding(frost, en, US).amount).toMatch(/ in /);
  expect(sayFinding(frost, en, METRIC).amount).toMatch(/ cm /);
  const fix = candidatesFor(frost, givenBy(solution))[0]!;
  expect(fix.changes).toEqual([{ path: 'top.depth', to: '3.5 ft' }]);
  expect(sayFix('PR-19', fix, en, US)).toMatch(/^Lower to [\d.]+ (?:ft|in)$/);
  expect(sayFix('PR-19', fix, en, METRIC)).toMatch(/^Lower to [\d.]+ (?:m|cm)$/);
});

describe('what could not be checked', () => {
  const lacking = (changes: Partial<Plan>) => lackingIn(solve(rockWell(changes)));

  test('is one entry for a level that several rules wait for', () => {
    const open = lacking({ water: { staticLevel: 'unknown' } }).filter(({ field }) => field === 'water.staticLevel');
    expect(open).toHaveLength(1);
    expect(open[0]!.rules.length).toBeGreaterThan(1);
    const { missing, unchecked } = sayLacking(open[0]!, en, show('us'));
    expect(missing).toBe('the static water level');
    expect(unchecked.split('; ')).toHaveLength(open[0]!.rules.length);
  });

  test('leads to the field that is still open, not to one that was said', () => {
    expect(lacking({ house: { ...rockWell().house, rise: 'unknown' } }).map(({ field }) => field)).toContain(
      'house.rise',
    );
  });

  test('tells how hard the pump presses on a tank whose rating and relief nobody said', () => {
    const open = lacking({
      house: { ...rockWell().house, reliefValve: undefined },
      pump: { setting: '140 ft', power: '2 hp', curve: { kind: 'generic', flow: '10 gpm' } },
    } as Partial<Plan>);
    const relief = open.find(({ rules }) => rules.includes('PR-44'))!;
    expect(sayLacking(relief, en, US).missing).toMatch(
      /^whether a relief valve stands at the tank: the pump can reach [1-9]\d\d psi there, and 100 psi is only assumed/,
    );
    expect(sayLacking(relief, en, METRIC).missing).toMatch(/can reach [\d.]+ bar there, and 6\.89 bar is/);
  });

  test('of any plan is one entry a field, each rule in one of them', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const solution = solve(plan);
        const open = lackingIn(solution);
        expect(new Set(open.map(({ field }) => field)).size).toBe(open.length);
        expect(open.flatMap(({ rules }) => rules).sort()).toEqual(solution.notJudged.map(({ rule }) => rule).sort());
      }),
      { seed: 44, numRuns: 300 },
    );
  });
});

test('what a finding turns on is said for each rule that turns on it, and what to measure, in any plan', () => {
  let met = 0;
  fc.assert(
    fc.property(anyPlan, (plan) => {
      for (const { turn, together } of solve(plan).findings) {
        if (turn === null) continue;
        met += 1;
        expect(sayMeasure(turn, en), turn.field).toMatch(/^(?:Measure|Ask|Say)/);
        for (const each of together) expect(sayTurning(each, en, METRIC)).toMatch(/\.$/);
      }
    }),
    { seed: 45, numRuns: 500 },
  );
  expect(met).toBeGreaterThan(20);
});

test('what holds is told once under one title, in any plan', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const titles = solve(plan).holding.map((held) => sayHolding(held, en, US).title);
      expect(titles.filter((title, i) => titles.indexOf(title) !== i)).toEqual([]);
    }),
    { numRuns: 300 },
  );
});
