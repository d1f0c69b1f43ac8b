/** One word for one meaning, a question ends as one, and no word of the file stands before a reader. */
import { describe, expect, test } from 'vitest';
import { sayReport } from '../../src/cli/checkCommand.ts';
import { draw } from '../../src/draw/index.ts';
import { readPlan, solve, withValue, type Plan, type Solution } from '../../src/model/index.ts';
import { casingDepthFixes } from '../../src/model/fixes/rules/casingDepth.ts';
import type { Breaks, Given } from '../../src/model/rules/rule.ts';
import { orderOfWork } from '../../src/model/work/orderOfWork.ts';
import type { Kind } from '../../src/model/work/step.ts';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { changeInFindings } from '../../src/words/sayFindings.ts';
import { sayFinding, sayFix } from '../../src/words/sayJudgement.ts';
import { work } from '../../src/words/en/work.ts';
import { sayStep, sayStop } from '../../src/words/sayWork.ts';
import { flat, SHEET } from '../draw/pictures.ts';
import { rockWell } from '../plans/build.ts';
import { sample, SAMPLES } from '../model/plan/sample.ts';
import { BAD } from '../wells/bad.ts';
import { SOUND } from '../wells/sound.ts';
import { pageNow } from './judgingNow.ts';

function solved(plan: unknown): Solution {
  const read = readPlan(plan);
  if (!read.ok) throw new Error('the plan should read');
  return solve(read.plan);
}

function drawn(solution: Solution): string[] {
  const scene = draw(solution, { ...SHEET, caption: true });
  return [
    scene.title,
    scene.describe(),
    ...flat(scene.shapes).flatMap(({ shape: { text = '', attrs } }) => [text, String(attrs['aria-label'] ?? '')]),
  ];
}

function workOn(solution: Solution, kind: Kind): string[] {
  const done = orderOfWork(solution, kind);
  if (done.kind === 'stop') return [...sayStop(done, work)];
  return done.steps.flatMap((each) =>
    Object.values<string | readonly string[]>({ ...sayStep(each, work, show('us')) }).flat(),
  );
}

const PLANS: readonly (readonly [string, unknown])[] = [
  ...SAMPLES.map((name) => [name, sample(name)] as const),
  ...[...SOUND, ...BAD].map(({ name, plan }) => [name, plan] as const),
];

describe('what nobody knows is "not known"', () => {
  test.each(PLANS)('in %s', (_, plan) => {
    const said = sayReport(solved(plan)).split('\n');
    expect(said.filter((line) => /\bunknown\b/i.test(line))).toEqual([]);
  });

  test.each(PLANS.slice(0, 12))('on the drawing of %s', (_, plan) => {
    const bare = withValue(withValue(plan as Plan, 'water', { staticLevel: 'unknown' }), 'site', undefined);
    for (const one of [plan, bare]) expect(drawn(solved(one)).filter((text) => /\bunknown\b/i.test(text))).toEqual([]);
  });

  test.each(PLANS.slice(0, 12))('in the order of the work on %s', (_, plan) => {
    const bare = withValue(withValue(plan as Plan, 'water', { staticLevel: 'unknown' }), 'house', {});
    for (const kind of ['new', 'replace'] as const)
      expect(workOn(solved(bare), kind).filter((text) => /\bunknown\b/i.test(text))).toEqual([]);
  });

  test('on the page that says how it is judged', () => {
    const { sections } = pageNow('us');
    const said = sections.flatMap(({ title, paragraphs, items }) => [
      title,
      ...paragraphs,
      ...items.flatMap(({ name, text }) => [name, text]),
    ]);
    expect(said.filter((text) => /\bunknown\b/i.test(text))).toEqual([]);
  });
});

describe('a question ends as a question', () => {
  const deep = solved(rockWell({ top: { kind: 'pitless', depth: '20 ft' } }));

  test('where the drawing is read out', () => {
    expect(deep.findings.some(({ rule }) => rule === 'PR-64')).toBe(true);
    expect(drawn(deep).join(' ')).toMatch(/really that deep\? \d/);
    expect(drawn(deep).filter((text) => /\?[.,]/.test(text))).toEqual([]);
  });

  test('where a change is told', () => {
    expect(changeInFindings([], deep.findings, en, show('us'))).toContain('Is the adapter really that deep? ');
    expect(changeInFindings([], deep.findings, en, show('us'))).not.toMatch(/\?\./);
  });
});

test('a level that is too deep only in a dry season is told as that of a dry season', () => {
  const dry = solved({
    ...rockWell({ water: { staticLevel: '60 ft', dryFall: '90 ft', pumping: { kind: 'yield only' } } }),
  });
  const above = dry.findings.find(({ variant }) => variant === 'aboveWater' || variant === 'inflowAtRest')!;
  expect(sayFinding(above, en, show('us')).message).toMatch(/^In a dry season, even at rest, the water stands/);
});

test('a casing that ends too near the water at rest is not mended by pumping less', () => {
  const said = { kind: 'breaks', variant: 'nearRest' } as unknown as Breaks;
  const fixes = casingDepthFixes['PR-36']({} as Given, said);
  expect(fixes.map((fix) => sayFix('PR-36', fix, en, show('us')))).not.toContain(
    'Pump less: the casing itself cannot be changed.',
  );
});

test('a casing of none of the listed materials is called by its size', () => {
  const plan = withValue(rockWell(), 'well.casing.material', 'other');
  expect([...drawn(solved(plan)), sayReport(solved(plan))].filter((text) => /\b(?:in|mm) other\b/.test(text))).toEqual(
    [],
  );
});

test('of a motor named in kilowatts the frequency is asked for, where the answer turns on the pump', () => {
  const of = (pump: object) =>
    sayReport(
      solved({
        ...rockWell(),
        house: { ...rockWell().house, demand: '20 gpm' },
        pump: { setting: '180 ft', curve: { kind: 'generic', flow: '10 gpm' }, ...pump },
      }),
    );
  expect(of({ power: '0.75 kW' })).toContain('Say the frequency of the supply (pump.frequency)');
  expect(of({ power: '0.75 kW' })).toMatch(/Not known: .*Frequency of the supply/);
  expect(of({ power: '0.75 kW', frequency: '50 Hz' })).not.toContain('Say the frequency');
  expect(of({ power: '1 hp' })).not.toContain('Say the frequency');
});
