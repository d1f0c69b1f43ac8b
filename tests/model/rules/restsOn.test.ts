import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { HARMLESS, RESTS_ON } from '../../../src/model/rules/restsOn.ts';
import { solve } from '../../../src/model/solve.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { BAD } from '../../wells/bad.ts';
import { SOUND } from '../../wells/sound.ts';
import { OTHER_CHOICES } from './otherChoices.ts';
import { changed, judged, soundPlan } from './fixture.ts';

const first = (path: string) => path.replace(/^well\.casings\.0\./, 'well.casing.');

/** "PR-46 moves with house.cutOut" for every verdict that an assumed choice moves without being named. */
function unnamed(plan: Plan): string[] {
  const before = solve(plan);
  return before.assumed.flatMap(({ path }) =>
    (OTHER_CHOICES[first(path)] ?? []).flatMap((to) => {
      const read = readPlan(JSON.parse(JSON.stringify(withValue(plan, path, to))));
      if (!read.ok) return [];
      const after = solve(read.plan);
      // One assumed value may follow from another: an adapter from the margin under the frost.
      const was = new Map(before.assumed.map((each) => [each.path, each.value]));
      const moved = after.assumed.filter((each) => was.get(each.path) !== each.value).map((each) => first(each.path));
      return Object.keys(after.verdicts)
        .filter((rule) => after.verdicts[rule] !== before.verdicts[rule])
        .filter((rule) => ![first(path), ...moved].some((each) => (RESTS_ON[rule] ?? []).includes(each)))
        .filter(() => !HARMLESS.includes(first(path)))
        .map((rule) => `${rule} moves with ${path}`);
    }),
  );
}

describe('no verdict moves with a choice that nobody made and that it does not name', () => {
  test('in sound and bad wells', () => {
    const plans = [...SOUND, ...BAD].map(({ plan }) => readPlan(plan)).flatMap((read) => (read.ok ? [read.plan] : []));
    expect([...new Set(plans.flatMap(unnamed))]).toEqual([]);
  });

  test('in 300 plans made at random', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        expect(unnamed(plan)).toEqual([]);
      }),
      { seed: 41, numRuns: 300 },
    );
  });
});

test('what holds on an assumed choice says which', () => {
  const { holding } = judged({});
  const cutOut = holding.find(({ rule }) => rule === 'PR-46');
  expect(cutOut?.assumed).toContain('house.cutOut');
  const said = judged({ 'house.cutIn': '40 psi', 'house.cutOut': '60 psi', 'pump.frequency': '60 Hz' });
  expect(said.holding.find(({ rule }) => rule === 'PR-46')?.assumed).toEqual([]);
});

test('a rule that would hold one assumed value against another says nothing', () => {
  // 12 in of casing assumed, 12 in required assumed.
  expect(judged({ 'well.casing.height': undefined }).verdicts['PR-23']).toBe('not judged');
  expect(judged({ 'well.casing.height': '12 in' }).verdicts['PR-23']).toBe('ok');
  expect(judged({ 'well.casing.height': undefined, 'site.casingHeightRequired': '18 in' }).verdicts['PR-23']).toBe(
    'danger',
  );
});

test('no assumed value is a fact of the well', () => {
  const facts =
    /^(?:well\.(?!casing\.(?:height|schedule)$|casings\.\d+\.(?:height|schedule)$|depthsFrom$)|water\.(?!pumping\.(?:flow|radius|after)$))/;
  fc.assert(
    fc.property(anyPlan, (plan) => {
      for (const { path } of solve(plan).assumed) expect(path).not.toMatch(facts);
    }),
    { seed: 42, numRuns: 300 },
  );
  expect(solve(changed({ 'well.casing.bottom': 'unknown' }, soundPlan)).assumed.map(({ path }) => path)).not.toContain(
    'well.casing.bottom',
  );
});
