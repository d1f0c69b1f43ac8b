/** What is taken for a choice that nobody made, and what is never taken for granted. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreOf } from '../../../src/model/bore.ts';
import { withDepth, withValue } from '../../../src/model/plan/editPlan.ts';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { solve } from '../../../src/model/solve.ts';
import { feet, inches, psi } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';

/** A hole and nothing else: what a person knows who has only the driller's word for its depth. */
const BARE = {
  format: 'wellcut-plan/1',
  well: { depth: '240 ft', casing: {}, intake: { kind: 'open hole' } },
  water: { staticLevel: 'unknown' },
} as const;

function planWith(changes: Readonly<Record<string, unknown>> = {}): Plan {
  const plan = Object.entries(changes).reduce(
    (made, [path, value]) => withValue(made, path, value),
    BARE as unknown as Plan,
  );
  const reading = readPlan(plan);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function assumedOf(changes: Readonly<Record<string, unknown>> = {}): Record<string, string> {
  return Object.fromEntries(readFacts(planWith(changes)).assumed.map(({ path, value }) => [path, value]));
}

describe('of a bare hole', () => {
  test('every choice of the build is assumed, and says so', () => {
    expect(assumedOf()).toMatchObject({
      'house.demand': '8 gpm',
      'top.kind': 'pitless',
      'top.depth': '48 in',
      'pump.setting': '218 ft',
      'pump.curve.kind': 'generic',
      'pump.curve.flow': '10 gpm',
      'dropPipe.material': 'PE',
      'dropPipe.size': '1 in',
      'dropPipe.rating': '200 psi',
      'wire.size': '12 AWG',
    });
  });

  test('a metric plan is told metric choices, all of them', () => {
    const { assumed } = readFacts(planWith({ units: 'metric', 'well.depth': '73 m' }));
    expect(Object.fromEntries(assumed.map(({ path, value }) => [path, value]))).toMatchObject({
      'house.demand': '30 L/min',
      'top.depth': '120 cm',
      'pump.setting': '66.5 m',
      'pump.curve.flow': '40 L/min',
      'site.waterTemperature': '10 degC',
      'house.cutIn': '2.8 bar',
      'house.precharge': '2.65 bar',
    });
    // Pipe, its thread and its rating stay what is stamped on them.
    const stamped = ['dropPipe.size', 'dropPipe.rating', 'pump.outlet', 'wire.size'];
    const customary = assumed.filter(
      ({ path, value }) => !stamped.includes(path) && /\b(ft|in|gpm|psi|degF|gal)\b/.test(value),
    );
    expect(customary).toEqual([]);
  });

  test('no fact of the well is assumed: each is unknown', () => {
    const { assumed, unknown } = readFacts(planWith());
    for (const path of ['well.casing.material', 'well.casing.size', 'well.casing.bottom', 'well.intake.diameter'])
      expect(unknown).toContain(path);
    expect(assumed.map(({ path }) => path).filter((path) => /^(well|water)\./.test(path))).toEqual([
      'well.depthsFrom',
      'well.casing.height',
    ]);
  });

  test('nothing of the bore is known', () => {
    expect(boreOf(readFacts(planWith()).facts).filter(({ known }) => known)).toEqual([]);
  });

  test('a demand that is said to be unknown stays unknown', () => {
    const { facts, assumed, unknown } = readFacts(planWith({ 'house.demand': 'unknown' }));
    expect(facts.house.demand).toBeNull();
    expect(unknown).toContain('house.demand');
    expect(assumed.map(({ path }) => path)).not.toContain('house.demand');
  });

  test('people in the house tell no peak: the flow wanted is still assumed', () => {
    expect(assumedOf({ 'house.people': 4 })).toMatchObject({ 'house.demand': '8 gpm' });
  });
});

describe('where the pipe leaves', () => {
  // Cover below frost 6 in (IRC P2603.5, from memory); rounded up to half a foot.
  test.each([
    ['42 in', '48 in'],
    ['43 in', '54 in'],
    ['1 in', '12 in'],
  ])('frost to %s: an adapter at %s', (frost, depth) => {
    expect(assumedOf({ 'site.frostDepth': frost })).toMatchObject({ 'top.kind': 'pitless', 'top.depth': depth });
  });

  test('in metric it is rounded up to 10 cm', () => {
    expect(assumedOf({ units: 'metric', 'site.frostDepth': '90 cm' })['top.depth']).toBe('110 cm');
  });

  test('frost that is said to be none: a seal on top', () => {
    const { facts } = readFacts(planWith({ 'site.frostDepth': '0 in' }));
    expect(facts.top.kind).toBe('seal');
  });

  test('a local margin moves the adapter that nobody set', () => {
    expect(assumedOf({ 'site.frostDepth': '42 in', 'site.frostMargin': '12 in' })['top.depth']).toBe('54 in');
  });

  test('an adapter stays above a pump that hangs shallow', () => {
    const { facts } = readFacts(planWith({ 'pump.setting': '4 ft' }));
    expect(facts.top.kind === 'pitless' ? facts.top.depth : 0).toBeLessThan(feet(4) - facts.pump.intakeToDischarge);
  });

  test('a depth written where nothing stood makes it an adapter, in inches', () => {
    expect(withDepth(planWith(), 'top.depth', inches(60)).top).toEqual({ kind: 'pitless', depth: '60 in' });
    expect(withValue(planWith(), 'pump.curve.flow', '7 gpm').pump).toEqual({
      curve: { kind: 'generic', flow: '7 gpm' },
    });
  });
});

describe('a pump that nobody set', () => {
  const screened = {
    'well.intake': { kind: 'screen', screens: [{ top: '100 ft', bottom: '120 ft' }] },
    'well.depth': '125 ft',
  };

  test('hangs 20 ft off the bottom of open rock', () => {
    const { facts } = readFacts(planWith());
    const gap = facts.well.bottom - facts.pump.setting - facts.pump.intakeToMotorBottom;
    expect(gap).toBeGreaterThanOrEqual(feet(20));
    expect(gap).toBeLessThan(feet(21));
  });

  test('hangs with its motor 10 ft above the screen', () => {
    expect(assumedOf({ ...screened, 'water.staticLevel': '30 ft' })['pump.setting']).toBe('88 ft');
  });

  test('comes nearer to the screen where the water would not cover it', () => {
    expect(assumedOf({ ...screened, 'water.staticLevel': '85 ft' })['pump.setting']).toBe('98 ft');
  });

  test('hangs under the level of the test where there is room', () => {
    const pumping = { kind: 'test', flow: '5 gpm', drawdown: '60 ft' };
    const setting = assumedOf({ ...screened, 'water.staticLevel': '20 ft', 'water.pumping': pumping })['pump.setting'];
    expect(setting).toBe('98 ft');
  });

  test('is told from the casing top where the plan counts from there', () => {
    const plan = planWith({ 'well.depthsFrom': 'casing top', 'well.casing.height': '24 in' });
    expect(readFacts(plan).assumed).toContainEqual({ path: 'pump.setting', value: '218 ft' });
    expect(readFacts(plan).facts.pump.setting).toBeCloseTo(feet(216), 9);
  });

  test('always leaves a pipe to hang on, in any well', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const { facts } = readFacts(withValue(plan, 'pump.setting', undefined));
        const outlet = facts.top.kind === 'pitless' ? facts.top.depth : -facts.well.casingHeight;
        return facts.pump.setting - facts.pump.intakeToDischarge > outlet;
      }),
      { seed: 71, numRuns: 1000 },
    );
  });
});

describe('the drop pipe', () => {
  test('that was named without its rating has an unknown wall', () => {
    const { facts, unknown } = readFacts(planWith({ dropPipe: { material: 'PE', size: '1 in' } }));
    expect(facts.dropPipe.wallKnown).toBe(false);
    expect(unknown).toContain('dropPipe.rating');
  });

  test('with a rating that fits no class has an unknown wall too', () => {
    const { facts, unknown } = readFacts(planWith({ dropPipe: { material: 'PE', size: '1 in', rating: '60 psi' } }));
    expect(facts.dropPipe.wallKnown).toBe(false);
    expect(unknown).toContain('dropPipe.ratio');
  });

  test('whose size alone was chosen is of the usual material and rating', () => {
    const { facts } = readFacts(planWith({ 'dropPipe.size': '1-1/4 in' }));
    expect(facts.dropPipe).toMatchObject({
      material: 'PE',
      rating: psi(200),
      wallKnown: true,
      nominalSize: '1-1/4 in',
    });
  });
});

describe('worked out from what was typed, exactly, in both systems', () => {
  test.each([
    ['40 psi', '60 psi', '38 psi'],
    ['275 kPa', '415 kPa', '260 kPa'],
    ['2.8 bar', '4.1 bar', '2.65 bar'],
  ])('cut-in %s, cut-out %s: pre-charge %s', (cutIn, cutOut, precharge) => {
    expect(assumedOf({ house: { cutIn, cutOut } })['house.precharge']).toBe(precharge);
  });

  test('the radius of the well is half the hole, to the last digit', () => {
    const aquifer = { kind: 'aquifer', transmissivity: '50 m2/d', storativity: '0.0002' };
    const changes = { 'water.pumping': aquifer, 'well.intake.diameter': '6.065 in' };
    expect(assumedOf(changes)['water.pumping.radius']).toBe('3.0325 in');
    expect(assumedOf({ ...changes, units: 'metric' })['water.pumping.radius']).toBe('77.0255 mm');
  });
});

test('frost that was typed without a source is nobody’s: never the local code’s unasked', () => {
  expect(readFacts(planWith({ 'site.frostDepth': '42 in' })).facts.site.frostFrom).toBeNull();
});

test('what was measured is told apart from what was reported', () => {
  const plan = planWith({ status: { 'water.staticLevel': 'measured', 'well.depth': 'reported' } });
  expect(readFacts(plan).facts.status).toEqual({ 'water.staticLevel': 'measured', 'well.depth': 'reported' });
});

test('a bare hole solves, and its figures that rest on unknown facts are no numbers', () => {
  const { values } = solve(planWith());
  expect(values.pumpingWaterLevel).toBeNull();
  expect(values.submergence).toBeNull();
});

test('a depth that was worked out is told without the dust of its sums', () => {
  const odd: string[] = [];
  for (const units of ['us', 'metric'] as const)
    for (const depth of ['4 ft', '5 ft', '5.5 ft', '6 ft', '7 ft', '1.9 m', '74 in', '8 ft 2 in']) {
      const { assumed } = readFacts(planWith({ units, top: { kind: 'pitless', depth } }));
      odd.push(...assumed.map(({ value }) => value).filter((value) => /\d\.\d{5}/.test(value)));
    }
  expect(odd).toEqual([]);
});
