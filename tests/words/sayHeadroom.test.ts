import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headroomOf, headroomToFind } from '../../src/model/headroom/headroom.ts';
import type { HeadroomOf } from '../../src/model/headroom/told.ts';
import type { Plan } from '../../src/model/plan/schema.ts';
import type { Solution } from '../../src/model/solution.ts';
import { solve } from '../../src/model/solve.ts';
import { show } from '../../src/model/units.ts';
import { headroom } from '../../src/words/en/headroom.ts';
import { en } from '../../src/words/en/index.ts';
import { sayHeadroom } from '../../src/words/sayHeadroom.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { waysTo } from '../model/headroom/moved.ts';
import { SAMPLES, planOf, rockWell, sample } from '../plans/build.ts';
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
  expect(said(sound('Elk Saddle'), 'yield')).toEqual([
    'The well gives less than 0.2 gpm: the well gives too little for a day.',
  ]);
  expect(said(sound('Waipuna Terrace'), 'demand')[1]).toBe('No danger found up to 114 L/min at once.');
});

const KNOWN = [...SOUND.map(({ plan }) => planOf(plan)), ...SAMPLES.map((name) => planOf(sample(name)))];

/** What nobody should be told is no danger: the pump in its water, and its water in the tank. */
const WATER = ['PR-01', 'PR-02', 'PR-03', 'PR-04', 'PR-46', 'PR-54'];

function isDanger({ verdicts, findings }: Solution, rule: string): boolean {
  const told = findings.find(({ together }) => together.some((each) => each.rule === rule));
  return verdicts[rule] === 'danger' || (verdicts[rule] === 'depends' && told?.severity === 'danger');
}

/** Up to where no danger is said to be found, none is, be it new or old. */
function expectNoDanger(plan: Plan): number {
  const solution = solve(plan);
  let checked = 0;
  for (const line of headroomOf(plan, solution).lines) {
    const { of, direction, now, end } = line;
    const { steps } = sayHeadroom(line, { short: en.short, headroom }, show(solution.facts.units));
    if (now === null || end === null || !steps.some(({ text }) => /no danger found/i.test(text))) continue;
    for (const share of [0, 0.4, 0.9, 0.9999]) {
      const value = now + share * (end - now);
      for (const way of waysTo(plan, solution, of, value)) {
        const there = solve(way);
        expect(
          WATER.filter((rule) => isDanger(there, rule)),
          `${of} ${direction} at ${value}: ${JSON.stringify(plan)}`,
        ).toEqual([]);
      }
    }
    checked++;
  }
  return checked;
}

describe('no danger is said to be found only where there is none, new or old', () => {
  test('in every sound well and every sample', () => {
    expect(KNOWN.reduce((sum, plan) => sum + expectNoDanger(plan), 0)).toBeGreaterThan(3);
  });

  test('in 100 plans made at random', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        expectNoDanger(plan);
      }),
      { seed: 53, numRuns: 100 },
    );
  });

  test('where the pump runs dry already, it is told so with where it comes to hang over its water', () => {
    const plan = rockWell({
      well: {
        depth: '325 ft',
        casing: { material: 'steel', size: '6 in', bottom: '40 ft', height: '12 in' },
        intake: { kind: 'open hole', diameter: '6 in' },
        yield: '2 gpm',
      },
      water: { staticLevel: '45 ft', pumping: { kind: 'yield only' } },
      pump: { setting: '258 ft', power: '1-1/2 hp', curve: { kind: 'generic', flow: '10 gpm' } },
    });
    expect(said(plan, 'pumpSetting')).toContain('Already a danger now; above 45 ft the pump hangs over the water.');
    expect(said(plan).join('\n')).not.toMatch(/no danger found/i);
    expectNoDanger(plan);
  });
});

test('a yield told is true for who types it: at it nothing more is wrong, just under it something is', () => {
  let checked = 0;
  for (const plan of KNOWN) {
    const solution = solve(plan);
    if (solution.facts.well.yield === null) continue;
    const line = headroomToFind(plan, solution, solution.facts.units).finds[1]!();
    expect(line.of).toBe('yield');
    const { steps } = sayHeadroom(line, { short: en.short, headroom }, show(solution.facts.units));
    const bad = (made: Solution, severity: string | null) =>
      Object.keys(made.verdicts).filter(
        (rule) =>
          isDanger(made, rule) ||
          (severity === 'warning' &&
            made.findings.some(
              (found) => found.severity === 'warning' && [found, ...found.together].some((each) => each.rule === rule),
            )),
      );
    for (const { severity, text } of steps) {
      const [, flow, unit] = /gives less than ([\d.]+) (\S+):/.exec(text) ?? [];
      if (flow === undefined) continue;
      const typed = (share: number) =>
        solve({ ...plan, well: { ...plan.well!, yield: `${Number(flow) * share} ${unit}` } });
      const now = bad(solution, severity);
      const news = (share: number) => bad(typed(share), severity).filter((rule) => !now.includes(rule));
      expect(news(1.0005), `${text} ${JSON.stringify(plan)}`).toEqual([]);
      const step = (severity === 'danger' ? line.danger : line.warning)!;
      // The turn lies within what a reader can tell apart.
      expect(news(1 - (1.1 * (step.last - step.at)) / step.last), text).not.toEqual([]);
      checked++;
    }
  }
  expect(checked).toBeGreaterThan(8);
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
