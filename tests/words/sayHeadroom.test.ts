import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headroomOf } from '../../src/model/headroom/headroom.ts';
import type { HeadroomOf } from '../../src/model/headroom/told.ts';
import type { Plan } from '../../src/model/plan/schema.ts';
import { solve } from '../../src/model/solve.ts';
import { show } from '../../src/model/units.ts';
import { headroom } from '../../src/words/en/headroom.ts';
import { en } from '../../src/words/en/index.ts';
import { sayHeadroom } from '../../src/words/sayHeadroom.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { planOf, rockWell, sample } from '../plans/build.ts';
import { SOUND } from '../wells/sound.ts';

function said(plan: Plan, of?: HeadroomOf): string[] {
  const solution = solve(plan);
  return headroomOf(plan, solution)
    .lines.filter((line) => of === undefined || line.of === of)
    .flatMap((line) =>
      sayHeadroom(line, { short: en.short, headroom }, show(solution.facts.units)).steps.map(({ text }) => text),
    );
}

describe('each way is said in feet or metres, by what happens there', () => {
  const us = said(planOf(sample('tamarack-ridge')));
  test.each([
    /^The water at rest falls more than [\d.]+ ft further: .+\.$/,
    /^The well gives less than [\d.]+ gpm: .+\.$/,
    /^The house wants more than [\d.]+ gpm at once: .+\.$/,
    /^The switch is turned up past \d+ psi: .+\.$/,
    /^The pump hangs deeper than [\d.]+ ft: the pump is too near the bottom\.$/,
    /^The pump hangs higher than [\d.]+ ft: too little water covers the intake\.$/,
    /^The frost goes deeper than \d+ in: the pitless adapter is in the frost zone\.$/,
  ])('%s', (sentence) => {
    expect(
      us.some((text) => sentence.test(text)),
      us.join('\n'),
    ).toBe(true);
  });

  test('and for a metric reader in metric units alone', () => {
    const metric = said(planOf(sample('heron-flats'))).join('\n');
    expect(metric).toMatch(/falls more than [\d.]+ m further/);
    expect(metric).toMatch(/less than \d+ L\/min/);
    expect(metric).not.toMatch(/\d (?:ft|in|gpm|psi|gal)\b/);
  });
});

test('a warning that only grows into a danger is not told twice', () => {
  expect(said(planOf(sample('tamarack-ridge')), 'pumpSetting')[1]).toMatch(/: the same, and worse\.$/);
});

test('what nobody said is told as such', () => {
  const plan = rockWell({ water: { staticLevel: 'unknown' } });
  expect(said(plan, 'staticLevel')).toEqual(['Not known: nobody said where the water stands at rest.']);
  expect(said(plan, 'yield')).toEqual(['Not known: nobody said what the well gives.']);
});

test('where nothing was found up to the end, just that is said, and no promise', () => {
  const sound = (name: string) => planOf(SOUND.find((each) => each.name === name)!.plan);
  expect(said(sound('Elk Saddle'), 'yield')).toEqual(['Nothing more found wrong down to a yield of 0.1 gpm.']);
  expect(said(sound('Waipuna Terrace'), 'demand')[1]).toBe('No danger found up to 114 L/min at once.');
});

test('what is noted now and is a warning there is not told as news', () => {
  const birch = said(planOf(SOUND.find(({ name }) => name === 'Birch Hollow')!.plan), 'pumpSetting');
  expect(birch).toContainEqual(
    expect.stringMatching(
      /^The pump hangs higher than [\d.]+ ft: then it matters that the pumping level is not known\.$/,
    ),
  );
});

test('no sentence has more than twenty words, whatever the well', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      for (const text of said(plan)) {
        expect(text.split(/\s+/).length, text).toBeLessThanOrEqual(20);
        expect(text, text).toMatch(/^[A-Z].*[.?]$/);
        expect(text).not.toMatch(/undefined|NaN|null|PR-\d/);
      }
    }),
    { seed: 47, numRuns: 100 },
  );
});
