import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { ruleOf } from '../../../src/model/rules/list.ts';
import { HARMLESS } from '../../../src/model/rules/restsOn.ts';
import { solve } from '../../../src/model/solve.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell } from '../../plans/build.ts';
import { BAD } from '../../wells/bad.ts';
import { SOUND } from '../../wells/sound.ts';
import { OTHER_CHOICES } from './otherChoices.ts';
import { changed, judged, soundPlan } from './fixture.ts';

const first = (path: string) => path.replace(/^well\.casings\.0\./, 'well.casing.');

/** Harmless facts are named where a verdict holds and would not far from what was assumed, which is tried by itself. */
const onlyFar = (path: string): boolean => ['site.waterTemperature', 'pump.intakeToMotorBottom'].includes(path);

/** A verdict may move with it without naming it. */
const mayMove = (path: string): boolean => HARMLESS.includes(first(path)) || onlyFar(path);

/** "PR-46 moves with house.cutOut" for every verdict that an assumed choice moves without being named. */
function unnamed(plan: Plan): string[] {
  const before = solve(plan);
  return before.assumed.flatMap(({ path }) =>
    (mayMove(path) ? [] : (OTHER_CHOICES[first(path)] ?? [])).flatMap((to) => {
      const read = readPlan(JSON.parse(JSON.stringify(withValue(plan, path, to))));
      if (!read.ok) return [];
      const after = solve(read.plan);
      // One assumed value may follow from another: an adapter from the margin under the frost.
      const was = new Map(before.assumed.map((each) => [each.path, each.value]));
      const moved = after.assumed.filter((each) => was.get(each.path) !== each.value).map((each) => first(each.path));
      return Object.keys(after.verdicts)
        .filter((rule) => after.verdicts[rule] !== before.verdicts[rule])
        .filter((rule) => ![first(path), ...moved].some((each) => ruleOf(rule).restsOn.includes(each)))
        .map((rule) => `${rule} moves with ${path}`);
    }),
  );
}

/**
 * Harmless facts that the program puts in: what is broken does not rest on them, and what nobody told does not either. A
 * verdict that holds and would not, elsewhere in their range, says so.
 */
const FACTS = ['site.waterTemperature', 'site.altitude', 'pump.intakeToMotorBottom', 'pump.frequency'];
const WORSE: readonly string[] = ['depends', 'warning', 'danger'];

function unsaidOfFacts(plan: Plan): string[] {
  const before = solve(plan);
  return before.assumed
    .filter(({ path }) => FACTS.includes(path))
    .flatMap(({ path }) =>
      (OTHER_CHOICES[path] ?? []).flatMap((to) => {
        const after = solve(withValue(plan, path, to));
        const { verdicts } = after;
        // One assumed value may follow from another: a pump's depth from how long it is.
        const was = new Map(before.assumed.map((each) => [each.path, each.value]));
        const moved = after.assumed.filter((each) => was.get(each.path) !== each.value).map((each) => each.path);
        return (
          before.holding
            .filter(({ rule, assumed }) => WORSE.includes(verdicts[rule]!) && !assumed.includes(path))
            .filter(({ assumed }) => !assumed.some((each) => moved.includes(each)))
            // The band of the pump is drawn by PR-01 and PR-03, which say so.
            .filter(({ rule }) => !(rule === 'PR-05' && path === 'pump.intakeToMotorBottom'))
            .map(({ rule }) => `${rule} holds, and with ${path} ${String(to)} is a ${verdicts[rule]}`)
        );
      }),
    );
}

describe('what holds says on which fact it rests that the program put in', () => {
  test('in sound and bad wells', () => {
    const plans = [...SOUND, ...BAD].map(({ plan }) => readPlan(plan)).flatMap((read) => (read.ok ? [read.plan] : []));
    expect([...new Set(plans.flatMap(unsaidOfFacts))]).toEqual([]);
  });

  test('in 300 plans made at random', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        expect(unsaidOfFacts(plan)).toEqual([]);
      }),
      { seed: 43, numRuns: 300 },
    );
  });

  test('threads that carry the pump in cold water alone rest on how cold it is', () => {
    const plan = (site: object) =>
      planOf({
        ...JSON.parse(JSON.stringify(rockWell())),
        site: { frostDepth: '36 in', ...site },
        pump: { setting: '140 ft', power: '1.1 kW', curve: { kind: 'generic', flow: '40 L/min' } },
        dropPipe: { material: 'PVC', size: '1-1/4 in' },
      });
    const held = solve(plan({})).holding.find(({ rule }) => rule === 'PR-18');
    expect(held?.assumed).toContain('site.waterTemperature');
    expect(solve(plan({ waterTemperature: '30 degC' })).verdicts['PR-18']).toBe('danger');
    // Where it would hold in warm water too, nothing is said of it.
    const metal = solve(rockWell({ dropPipe: { material: 'galvanized steel', size: '1-1/4 in' } }));
    for (const { rule, assumed } of metal.holding)
      if (rule === 'PR-18') expect(assumed).not.toContain('site.waterTemperature');
  });
});

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
