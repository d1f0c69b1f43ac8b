/** What is judged at the worst end of what nobody said: how bad it is there, and from where on. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import { valueAt, withValue } from '../../../src/model/plan/editPlan.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { atBothEnds } from '../../../src/model/rules/bothEnds.ts';
import { ruleOf } from '../../../src/model/rules/list.ts';
import { breaks, holds } from '../../../src/model/rules/rule.ts';
import { solve } from '../../../src/model/solve.ts';
import { feet, gpm, psi, show, toFeet } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayShort, sayTurns } from '../../../src/words/sayJudgement.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { changed, findingOf, judged, saidOf, verdictOf } from './fixture.ts';

const US = show('us');
const unguarded = { 'pump.lowLevelCutOff': undefined } as const;
/** No drawdown, and no yield that would say how the pump fares. */
const levelUnknown = {
  ...unguarded,
  'well.yield': undefined,
  'well.yieldFrom': undefined,
  'water.pumping': undefined,
} as const;
/** A pump of which the head at no flow is known, nearly flat. */
const reaching = (head: number, flow = 12) => ({
  'pump.curve': {
    kind: 'points',
    points: [
      ['0 gpm', `${head} ft`],
      [`${flow} gpm`, `${head - 0.01} ft`],
    ],
  },
});

describe('what breaks at both ends, and not alike', () => {
  // 40 ft to the water, 5 ft of rise, and 60 psi of 2.31 ft each are 183.6 ft: 190 ft leave 6.4 ft, under 3 psi.
  const barely = { ...levelUnknown, ...reaching(190) };

  test('is told as it is at the good one, with the level from which it is worse', () => {
    const finding = findingOf('PR-46', barely);
    expect([finding.severity, finding.variant]).toEqual(['warning', 'barelyReaches']);
    // 60 psi of water at 50 degF: 60 x 2.308 ft (62.41 lb/ft3). Below 190 - 5 - 138.5 ft it never gets there.
    expect(finding.worse).toMatchObject({ fact: 'pumpingLevel', field: 'water.pumping', severity: 'danger' });
    expect(toFeet(finding.worse!.at)).toBeCloseTo(190 - 5 - 60 * 2.3073, 0);
    expect(sayTurns(finding, en, US)).toEqual(['A danger once pumping draws the water below 46.6 ft.']);
  });

  test('is a danger at all levels below, and none above', () => {
    const { worse } = findingOf('PR-46', barely);
    for (const [off, wanted] of [
      [-1, 'warning'],
      [1, 'danger'],
    ] as const) {
      // The level at rest is what the pump finds at the best.
      const level = `${toFeet(worse!.at) + off} ft`;
      expect(verdictOf('PR-46', { ...barely, 'water.staticLevel': level }), level).toBe(wanted);
    }
  });

  test('a pump that gives less than is wanted tells from where on it gives under half', () => {
    const weak = findingOf('PR-54', { ...levelUnknown, 'house.demand': '18 gpm', 'pump.power': '3/4 hp' });
    expect([weak.severity, weak.variant]).toEqual(['warning', 'givesLess']);
    expect(weak.worse).toMatchObject({ fact: 'pumpingLevel', severity: 'danger' });
    expect(toFeet(weak.worse!.at)).toBeGreaterThan(40);
    expect(toFeet(weak.worse!.at)).toBeLessThan(140);
  });

  test('keeps what is to be done about it', () => {
    const plan = changed(barely);
    const solution = solve(plan);
    const at = solution.findings.findIndex(({ rule }) => rule === 'PR-46');
    const { button, words } = fixesOf(plan, solution)[at]!;
    expect(button ?? words).not.toBeNull();
    expect(solution.findings[at]!.turn).toBeNull();
  });

  test('is one finding where both ends are alike, and none of this where nothing is open', () => {
    expect(findingOf('PR-46', { ...levelUnknown, ...reaching(100) }).worse).toBeNull();
    for (const { worse, together } of judged({}).findings) expect([worse, together]).toEqual([null, []]);
  });

  test('from a note on it depends, and turns where it is no longer a note', () => {
    const open = { fact: 'yield', field: 'water.pumping', good: 8, bad: 4 } as const;
    const judge = (gives: number) =>
      gives >= 9
        ? holds('enough', {}, gives - 9)
        : breaks('less', gives >= 5 ? 'note' : 'warning', { gives }, { margin: gives - 9, depth: null });
    const outcome = atBothEnds(open, judge, () => ({ variant: 'turns' as const, numbers: {} }));
    expect(outcome).toMatchObject({ kind: 'depends', variant: 'less', worse: { fact: 'yield', severity: 'warning' } });
    if (outcome.kind === 'depends') {
      expect(outcome.turn).toBeCloseTo(5, 3);
      expect(outcome.worse?.at).toBe(outcome.turn);
    }
  });

  test('in words for every fact that may be open', () => {
    const said = (['pumpingLevel', 'yield', 'frostDepth', 'protrusion', 'cutOffDepth'] as const).map((fact) =>
      en.long.findings.worse({ fact, field: '', at: fact === 'yield' ? gpm(3) : feet(4), severity: 'danger' }, US),
    );
    expect(new Set(said).size).toBe(5);
    for (const words of said) {
      expect(words).toMatch(/^A danger (?:if|once) .*\.$/);
      expect(words.split(/\s+/).length).toBeLessThanOrEqual(20);
    }
  });
});

const POWERS = ['1/2 hp', '3/4 hp', '1 hp', '1-1/2 hp', '2 hp', '3 hp', '5 hp'];
const HOW_BAD = { ok: 0, 'not judged': 0, note: 1, depends: 2, warning: 2, danger: 3 } as const;

describe('a stronger pump', () => {
  // 200 ft of hole, water at 40 ft, giving 10 gpm: the weak one leaves open how far the water falls, the strong one empties it.
  const blown = {
    ...unguarded,
    'well.yield': '10 gpm',
    'well.yieldFrom': 'pump',
    'water.pumping': undefined,
    'pump.setting': '188 ft',
    'house.demand': '3 gpm',
  } as const;

  test('that empties the well was a danger where the weaker one depended', () => {
    const verdicts = POWERS.map((power) => verdictOf('PR-46', { ...blown, 'pump.power': power })!);
    expect(verdicts).toContain('depends');
    const bad = verdicts.map((verdict) => HOW_BAD[verdict]);
    expect(bad).toEqual(bad.toSorted((one, other) => other - one));
  });

  test('is never a danger for its switch where a weaker one is not, in any plan', () => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom('1 gpm', '3 gpm', '6 gpm', undefined), (plan, gives) => {
        const verdicts = POWERS.map((power) => {
          const made = withValue(withValue(plan, 'pump.power', power), 'well.yield', gives);
          const open = gives === undefined ? made : withValue(made, 'water.pumping', undefined);
          return solve(open).verdicts['PR-46']!;
        });
        const firstFine = verdicts.findIndex((verdict) => verdict !== 'danger' && verdict !== 'not judged');
        if (firstFine >= 0) expect(verdicts.slice(firstFine), verdicts.join()).not.toContain('danger');
      }),
      { seed: 46, numRuns: 150 },
    );
  });
});

describe('a level of which nobody said the flow', () => {
  const noFlow = {
    ...unguarded,
    'water.pumping': { kind: 'level', level: '60 ft' },
    'house.demand': '10 gpm',
    'well.yield': '10 gpm',
  } as const;

  test('is no test that the pump may go beyond', () => {
    const strong = { operatingFlowAtCutInMost: gpm(14) };
    const said = { ...noFlow, 'water.pumping': { kind: 'level', level: '60 ft', flow: '10 gpm' } };
    // 1.5 times a tested 10 gpm are 15 gpm.
    expect(verdictOf('PR-07', said, strong)).toBe('ok');
    expect(verdictOf('PR-07', noFlow, strong)).toBe('warning');
  });

  test('was taken as measured at more than the well gives', () => {
    const flowOf = (changes: Parameters<typeof changed>[0]) =>
      solve(changed({ ...noFlow, ...changes })).assumed.find(({ path }) => path === 'water.pumping.flow')?.value;
    expect(flowOf({ 'well.yield': '4 gpm' })).toBe('4 gpm');
    expect(flowOf({ 'well.yield': '15 L/min' })).toBe('15 L/min');
    expect(flowOf({ 'well.yield': '40 gpm' })).toBe('10 gpm');
    expect(flowOf({ 'well.yield': undefined })).toBe('10 gpm');
    // 20 ft at 4 gpm are 50 ft at 10 gpm.
    const { levels } = solve(changed({ ...noFlow, 'well.yield': '4 gpm' }));
    expect(toFeet(levels.pumping!)).toBeCloseTo(90, 6);
  });

  test('says in every verdict that it moves that it was assumed', () => {
    fc.assert(
      fc.property(anyPlan, fc.integer({ min: 5, max: 400 }), (base, level) => {
        const noFlows = withValue(base, 'water.pumping', { kind: 'level', level: `${level} ft` });
        const read = readPlan(JSON.parse(JSON.stringify(noFlows)));
        if (!read.ok) return;
        const before = solve(read.plan);
        if (!before.assumed.some(({ path }) => path === 'water.pumping.flow')) return;
        for (const flow of ['1 gpm', '5 gpm', '30 gpm']) {
          const after = solve(withValue(read.plan, 'water.pumping.flow', flow));
          const moved = Object.keys(after.verdicts).filter((rule) => after.verdicts[rule] !== before.verdicts[rule]);
          for (const rule of moved) expect(ruleOf(rule).restsOn, rule).toContain('water.pumping.flow');
        }
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});

describe('a pump of which nobody said the width', () => {
  const unsaid = { 'pump.diameter': undefined, 'pump.shroudDiameter': undefined } as const;
  const inside = (bore: string, motor?: string) => ({
    ...unsaid,
    'well.casing.insideDiameter': bore,
    'well.intake.diameter': '6 in',
    'pump.motorDiameter': motor,
  });

  // A motor of 3.75 in wants 4 in, and 0.1 in at the least; a usual pump of 3.9 in wants 4.15 in.
  test.each([
    ['room for a usual pump', inside('4.2 in', '3.75 in'), 'ok'],
    ['room for the motor, not for a usual pump', inside('4.05 in', '3.75 in'), 'not judged'],
    ['the motor hardly passes', inside('3.9 in', '3.75 in'), 'warning'],
    ['the motor does not pass', inside('3.8 in', '3.75 in'), 'danger'],
    ['a usual motor does not pass', inside('3.5 in'), 'danger'],
  ] as const)('%s', (_, changes, verdict) => {
    expect(verdictOf('PR-17', changes)).toBe(verdict);
  });

  test('is told by its motor, not by a width that nobody said', () => {
    expect(saidOf('PR-17', inside('3.8 in', '3.75 in'))).toMatchObject({
      title: 'The motor alone is too wide for the casing',
      message: 'The casing is 3.8 in wide inside, the motor 3.75 in.',
    });
    expect(sayShort(findingOf('PR-17', inside('3.9 in', '3.75 in')), en.short, US).title).toBe(
      'The motor alone hardly passes the casing',
    );
    expect(findingOf('PR-17', inside('3.5 in')).assumed).toContain('pump.motorDiameter');
  });

  test('is asked for where it decides', () => {
    const { notJudged } = judged(inside('4.05 in', '3.75 in'));
    expect(notJudged.find(({ rule }) => rule === 'PR-17')?.fields).toEqual(['pump.diameter']);
  });
});

// Water at 40 ft that falls to 160 ft at 10 gpm. With 5 ft of rise and 60 psi, which are 138.5 ft, from rest 183.5 ft.
describe('the switch of a pump that draws its water far down', () => {
  const far = {
    ...unguarded,
    'water.pumping': { kind: 'test', flow: '10 gpm', drawdown: '100 ft', after: '6 h' },
    'well.yield': '10 gpm',
    'pump.setting': '188 ft',
    'house.demand': '5 gpm',
  } as const;
  const reachOf = (head: number) => ({ ...far, ...reaching(head) });
  const spare = psi(10) / psi(1);

  test.each([
    // From rest 26 ft more than 183.5 ft, over 10 psi: late, but not never.
    ['reaches it with room from rest', 210, 'warning', 'reachesLate'],
    ['reaches it nowhere', 180, 'danger', 'neverReaches'],
    // 6 ft more from rest, under 10 psi, and not from 90 ft, where the house leaves it.
    ['reaches it hardly from rest', 190, 'danger', 'neverReaches'],
  ] as const)('%s', (_, head, severity, variant) => {
    expect(spare).toBeCloseTo(10);
    const finding = findingOf('PR-46', reachOf(head));
    expect([finding.severity, finding.variant]).toEqual([severity, variant]);
  });
});

test('plans typed without a drawdown keep one entry for what they turn on', () => {
  const plan: Plan = changed(levelUnknown);
  expect(valueAt(plan, 'water.pumping')).toBeUndefined();
  expect(solve(plan).findings.filter(({ turn }) => turn?.field === 'water.pumping')).toHaveLength(1);
});
