/** What is said rests on what somebody said: the unknown is listed, the measured is no condition, one reading is no season. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { valueAt } from '../../../src/model/plan/editPlan.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { setDepths } from '../../../src/model/place/setDepths.ts';
import { solve } from '../../../src/model/solve.ts';
import { show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayHolding } from '../../../src/words/sayJudgement.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { changed, judged, soundPlan } from './fixture.ts';

const solved = (changes: Readonly<Record<string, unknown>>) => solve(changed(changes, soundPlan));

describe('a fact that a rule reads and nobody said is listed as unknown', () => {
  test.each(['water.sand', 'water.gas', 'well.inPit'])('%s', (path) => {
    expect(solved({ [path]: undefined }).unknown).toContain(path);
    expect(solved({ [path]: false }).unknown).not.toContain(path);
  });

  test('of every check that could not be made, in 300 plans, something that would decide it is listed', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const { notJudged, unknown, assumed } = solve(plan);
        const open = [...unknown, ...assumed.map(({ path }) => path)].map(first);
        const silent = notJudged.filter(
          ({ fields }) =>
            fields.some((field) => isOpen(valueAt(plan, field))) &&
            !fields.some((field) => open.some((path) => within(path, first(field)))),
        );
        expect(silent.map(({ rule, fact }) => `${rule} ${fact}`)).toEqual([]);
      }),
      { seed: 52, numRuns: 300 },
    );
  });
});

const isOpen = (value: unknown): boolean => value === undefined || value === 'unknown';
const first = (path: string): string => path.replace(/^well\.casings\.\d+\./, 'well.casing.');
const within = (path: string, field: string): boolean => path === field || path.startsWith(`${field}.`);

describe('how the water comes in, unsaid', () => {
  const unsaid = { 'well.intake.kind': undefined, 'well.inflows': undefined };

  test('is one fact that is missing, of a hole that may be open or screened', () => {
    const { notJudged, verdicts } = judged(unsaid);
    const waiting = notJudged.filter(({ fact }) => fact === 'intakeKind').map(({ rule }) => rule);
    // Above a screen, seated in rock or below the water: each turns on it.
    expect(waiting).toEqual(expect.arrayContaining(['PR-03', 'PR-36', 'PR-37']));
    for (const rule of waiting) expect(verdicts[rule]).toBe('not judged');
    expect(judged({}).notJudged.map(({ fact }) => fact)).not.toContain('intakeKind');
  });

  test('no width is reckoned with below the casing, though one was typed', () => {
    const { bore, values } = solved({ ...unsaid, 'pump.shroudDiameter': undefined });
    expect(bore.at(-1)).toMatchObject({ kind: 'openHole', known: false });
    expect(values.wellVolume).toBeNull();
    expect(values.velocityPastMotor).toBeNull();
  });

  test('no pump is placed: a screen may be where it would go', () => {
    const placing = setDepths(changed({ ...unsaid, 'pump.setting': undefined }, soundPlan));
    expect(placing.left).toContainEqual(
      expect.objectContaining({ why: { variant: 'nobodySaid', numbers: { fact: 'intakeKind', numbers: {} } } }),
    );
  });

  test('depths of a screen say that there is one', () => {
    const plan = changed({ ...unsaid, 'well.intake.screens': [{ top: '150 ft', bottom: '170 ft' }] }, soundPlan);
    expect(readPlan(JSON.parse(JSON.stringify(plan))).ok).toBe(true);
    const { facts, unknown } = solve(plan);
    expect(facts.well.intake).toMatchObject({ kind: 'screen', screens: [{}] });
    expect(unknown).not.toContain('well.intake.kind');
  });
});

describe('a measured level', () => {
  const held = (changes: Readonly<Record<string, unknown>>, rule: string) =>
    solved(changes).holding.find((each) => each.rule === rule);

  test('is known whatever the pump does with it: no condition', () => {
    const changes = { 'pump.curve': undefined, 'house.cutIn': undefined, 'house.cutOut': undefined };
    expect(solved(changes).assumed.map(({ path }) => path)).toContain('pump.curve.flow');
    expect(held(changes, 'PR-53')).toMatchObject({ variant: 'measured', assumed: [] });
  });

  test('rests on the flow where nobody said at which it was read', () => {
    const changes = { 'water.pumping.flow': 'unknown' };
    expect(held(changes, 'PR-53')).toMatchObject({ assumed: ['water.pumping.flow'] });
  });

  test('read once says nothing of a wet season', () => {
    const once = held({ 'water.staticHighest': undefined }, 'PR-38')!;
    expect(once.variant).toBe('readBelowGround');
    const said = sayHolding(once, en, show('us'));
    expect(`${said.title} ${said.message}`).not.toMatch(/stays|highest/);
    expect(said.message).toMatch(/wet season nobody said/);
    const highest = held({ 'water.staticHighest': '12 ft' }, 'PR-38')!;
    expect(sayHolding(highest, en, show('us')).message).toBe('At its highest the water stands 12 ft below the ground.');
  });
});

describe('where nobody can tell what the pump takes, the house’s demand alone proves no water over the intake', () => {
  const asked = (changes: Readonly<Record<string, unknown>>) =>
    solved(changes).holding.find(({ rule }) => rule === 'PR-02');

  test('a pump of unknown power', () => {
    expect(asked({ 'pump.power': undefined })?.unsaid).toEqual(['pump.power']);
    expect(asked({})?.unsaid).toEqual([]);
  });

  test('an unknown way to the tank', () => {
    expect(asked({ 'house.rise': undefined, 'house.distance': undefined })?.unsaid).toEqual([
      'house.distance',
      'house.rise',
    ]);
  });

  test('a probe that ends the fall in time leaves nothing to ask', () => {
    const probe = asked({ 'pump.power': undefined, 'pump.lowLevelCutOff': '120 ft' });
    expect(probe).toBeDefined();
    expect(probe?.unsaid).toEqual([]);
  });

  test('nor does a test far exceeded by the pump', () => {
    // 4 gpm were pumped, of which 1.5 times are believed (common practice, no source); a 1 hp pump takes more.
    const tested = { 'water.pumping.flow': '4 gpm', 'water.pumping.level': '50 ft', 'well.yield': undefined };
    const held = asked({ ...tested, 'house.demand': '4 gpm', 'pump.lowLevelCutOff': undefined });
    expect(held).toMatchObject({ taken: 'beyondTest', unsaid: ['water.pumping'] });
    expect(asked({ ...tested, 'house.demand': '4 gpm', 'well.yield': '30 gpm' })?.taken ?? null).toBeNull();
  });
});
