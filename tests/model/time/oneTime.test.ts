/** One time until the water is gone: the figure, what is watched over time and the day's water name the same, or none. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, type Plan, type Solution } from '../../../src/model/index.ts';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { dailyCycle, levelAgainstTime, poorWell, type LevelCurve } from '../../../src/model/time/index.ts';
import { feet, gpm, toFeet } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';
import { BAD } from '../../wells/bad.ts';
import { SOUND } from '../../wells/sound.ts';
import { SEED } from '../laws.ts';

const HOUR = 3600;
const DAY = 24 * HOUR;

/** What is seen of it: a time, that the water stays above, or that nobody knows. */
type Seen = 'time' | 'stays' | 'unknown';

/** Fails where two accounts differ. The time is one number out of one function: no tolerance is needed. */
function agreeOn(solution: Solution): Seen {
  const figure = solution.values.timeToBreakSuction;
  const curve = levelAgainstTime(solution, { pumpFor: null });
  if ('reason' in curve) {
    expect(curve.reason).toMatch(/^[A-Z].+\.$/);
    expect(figure).toBeNull();
    return 'unknown';
  }
  expect(curve.breaksSuction).toBe(figure);
  const poor = poorWell(solution);
  if (!('reason' in poor)) expect(poor.breaksSuction).toBe(figure);
  const day = dailyCycle(solution);
  if (!('reason' in day)) expect(day.firstRun).toBe(figure);
  if (figure !== null) {
    expect(curve.levelAt(figure)).toBe(curve.lowest.depth);
    expect(curve.levelAt(0.99 * figure)).toBeLessThan(curve.lowest.depth + 1e-9);
    return 'time';
  }
  // As long as the figures' drawdown tells of, the water stands above the lowest level.
  if (curve.toldFor !== null) {
    expect(curve.fitReaches ?? Infinity).toBeGreaterThan(curve.toldFor.time * (1 - 1e-6));
    expect(curve.phaseAt(curve.toldFor.time * (1 - 1e-6))).toBe('pumping');
  }
  return 'stays';
}

/** Any plan, with a valve or a yield that makes its well a poor one more often than not. */
const anyWell: fc.Arbitrary<Plan> = fc
  .tuple(
    anyPlan,
    fc.option(fc.integer({ min: 2, max: 60 }), { nil: null }),
    fc.option(fc.integer({ min: 1, max: 40 }), { nil: null }),
    fc.boolean(),
  )
  .map(([json, limiter, given, known]) => {
    let plan = planOf(json);
    if (known) for (const [path, value] of KNOWN) if (!said(plan, path)) plan = withValue(plan, path, value);
    if (limiter !== null && plan.pump !== undefined) plan = withValue(plan, 'pump.flowLimiter', `${limiter / 5} gpm`);
    return given === null ? plan : withValue(plan, 'well.yield', `${given / 10} gpm`);
  });

const KNOWN = [
  ['house.distance', '100 ft'],
  ['house.rise', '10 ft'],
  ['house.line', { material: 'PE', size: '1 in', rating: '200 psi' }],
  ['pump.power', '1 hp'],
  ['well.intake.diameter', '6 in'],
] as const;

function said(plan: Plan, path: string): boolean {
  let at: unknown = plan;
  for (const key of path.split('.')) at = (at as Record<string, unknown> | undefined)?.[key];
  return at !== undefined;
}

test('law: over thousands of plans', () => {
  const seen: Record<Seen, number> = { time: 0, stays: 0, unknown: 0 };
  fc.assert(
    fc.property(anyWell, (plan) => {
      seen[agreeOn(solve(plan))]++;
    }),
    { ...SEED, numRuns: 3000 },
  );
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(300);
}, 300_000);

describe('every invented well', () => {
  const wells = [
    ...SAMPLES.map((name) => [name, sample(name)] as const),
    ...SOUND.map(({ name, plan }) => [name, plan] as const),
    ...BAD.map(({ name, fault, plan }) => [`${name}, ${fault}`, plan] as const),
  ];
  test.each(wells)('%s', (_name, json) => {
    const reading = readPlan(json);
    if (reading.ok) agreeOn(solve(reading.plan));
  });
});

test('law: from the dry season’s level it is the figure of a well whose water stands there', () => {
  let compared = 0;
  fc.assert(
    fc.property(anyWell, (plan) => {
      const wet = solve(plan);
      const { staticLevel, staticLowest, pumping } = wet.facts.water;
      // A pumping level that was measured is a drawdown from the day's own water at rest.
      if (staticLevel === null || staticLowest === null || pumping?.kind === 'level') return;
      const dried = withValue(withValue(plan, 'water.dryFall', undefined), 'water.staticLevel', `${staticLowest} m`);
      const dry = solve(withValue(dried, 'water.staticHighest', undefined));
      // A pump that nobody hung is assumed under the water of the day.
      if (dry.facts.pump.setting !== wet.facts.pump.setting) return;
      const curve = levelAgainstTime(wet, { pumpFor: null, start: 'dry season' });
      const figure = dry.values.timeToBreakSuction;
      const watched = 'reason' in curve ? null : curve.breaksSuction;
      expect(watched === null).toBe(figure === null);
      if (watched === null || figure === null) return;
      compared++;
      expect(Math.abs(watched / figure - 1)).toBeLessThan(1e-6);
    }),
    { ...SEED, numRuns: 1000 },
  );
  expect(compared).toBeGreaterThan(50);
}, 300_000);

const curveOf = (plan: Plan): LevelCurve => {
  const curve = levelAgainstTime(solve(plan), { pumpFor: null });
  if ('reason' in curve) throw new Error(curve.reason);
  return curve;
};
const reasonOf = (plan: Plan): string => {
  const solution = solve(plan);
  expect(solution.values.timeToBreakSuction).toBeNull();
  const answers = [levelAgainstTime(solution, { pumpFor: null }), poorWell(solution), dailyCycle(solution)];
  for (const answer of answers) expect('reason' in answer).toBe(true);
  return 'reason' in answers[0]! ? answers[0].reason : '';
};
const tested = (flow: string, drawdown: string, after = '4 h') => ({
  staticLevel: '40 ft',
  pumping: { kind: 'test', flow, drawdown, after },
});

describe('where nobody knows, the reason stands and no guess', () => {
  const tamarack = planOf(sample('tamarack-ridge'));
  test('of a bore whose width nobody said', () => {
    const poor = withValue(tamarack, 'water.pumping', { kind: 'test', flow: '2 gpm', drawdown: '80 ft', after: '4 h' });
    expect(solve(poor).values.timeToBreakSuction).not.toBeNull();
    expect(reasonOf(withValue(poor, 'well.intake.diameter', undefined))).toContain('width of the bore is not known');
  });
  test('of a pump that lifts nothing: the demand is not pumped in its stead', () => {
    const weak = rockWell({
      water: tested('2 gpm', '60 ft'),
      house: {
        demand: '7 gpm',
        distance: '120 ft',
        rise: '900 ft',
        line: { material: 'PE', size: '1 in', rating: '200 psi' },
      },
    });
    expect(reasonOf(weak)).toContain('lifts no water');
  });
  test('of a pump whose flow nobody knows, in a well that the demand alone would empty', () => {
    const unknown = rockWell({ water: tested('2 gpm', '60 ft'), house: { demand: '7 gpm', rise: '10 ft' } });
    const reason = reasonOf(unknown);
    expect(reason).toContain('When, nobody knows');
    expect(reason).toContain('Enter the line to the house and how far the house is.');
  });
  test('of a well that keeps up with the demand its level is told, and where the pump’s flow is unknown no time', () => {
    const unknown = rockWell({ house: { demand: '7 gpm', rise: '10 ft' } });
    const curve = curveOf(unknown);
    expect(curve.flowWords).toBe('the demand');
    expect(curve.breaksSuction).toBeNull();
  });
  test('of a bore of unknown width in a well that keeps up: nothing is claimed before the test’s own time', () => {
    const narrow = withValue(tamarack, 'well.intake.diameter', undefined);
    expect(curveOf(narrow).claimedFrom).toBe(4 * HOUR);
    expect(curveOf(tamarack).claimedFrom).toBe(60);
  });
});

describe('past the hours of its test', () => {
  // 9.6 gpm at the intake's depth would draw down all the 100 ft after two hours; the pump gives a little less.
  const short = rockWell({
    water: tested('10 gpm', '93 ft', '2 h'),
    pump: { setting: '140 ft', power: '1 hp', curve: { kind: 'generic', flow: '7 gpm' }, flowLimiter: '10 gpm' },
  });
  const curve = curveOf(short);
  test('a well keeps up by the figure, and the fit is told as no more than a fit', () => {
    expect(solve(short).values.timeToBreakSuction).toBeNull();
    expect(curve.breaksSuction).toBeNull();
    expect(curve.toldFor).toEqual({ time: 2 * HOUR, by: 'test' });
    expect(curve.fitReaches).toBeGreaterThan(2 * HOUR);
    expect(curve.fitReaches).toBeLessThan(30 * DAY);
    const poor = poorWell(solve(short));
    if ('reason' in poor) throw new Error(poor.reason);
    expect(poor.breaksSuction).toBeNull();
    expect(poor.comesBack(0.5)).toBeNull();
  });
  test('at those hours the level is the figure’s', () => {
    expect(Math.abs(curve.levelAt(2 * HOUR) - solve(short).curves.atCutInMost!.waterLevel)).toBeLessThan(1e-6);
  });
});

describe('a yield under what the drawdown says', () => {
  const held = rockWell({
    well: {
      depth: '900 ft',
      casing: { material: 'steel', size: '6 in', bottom: '200 ft' },
      intake: { kind: 'open hole', diameter: '6 in' },
      yield: '4 gpm',
      yieldFrom: 'pump',
    },
    water: tested('20 gpm', '10 ft'),
    pump: { setting: '800 ft', power: '3/4 hp', curve: { kind: 'generic', flow: '10 gpm' } },
  });
  test('lets the water fall to where the pump takes just that: watched, it goes to the figure’s level', () => {
    const curve = curveOf(held);
    const settles = solve(held).curves.atCutInMost!;
    expect(toFeet(settles.waterLevel)).toBeGreaterThan(200);
    expect(curve.breaksSuction).toBeNull();
    const end = curve.levelAt(30 * DAY);
    expect(Math.abs((end - feet(40)) / (settles.waterLevel - feet(40)) - 1)).toBeLessThan(2e-4);
    expect(curve.phaseAt(30 * DAY)).toBe('pumping');
    expect(Math.abs(curve.flowAt(30 * DAY) / gpm(4) - 1)).toBeLessThan(1e-9);
    expect(curve.flowAt(60)).toBeGreaterThan(gpm(4));
  });
});

test('a dry season that is watched does not change what was measured', () => {
  const plan = rockWell({
    water: { staticLevel: '40 ft', dryFall: '20 ft', pumping: { kind: 'level', level: '100 ft', flow: '10 gpm' } },
  });
  const dry = levelAgainstTime(solve(plan), { pumpFor: null, start: 'dry season', flow: gpm(10) });
  if ('reason' in dry) throw new Error(dry.reason);
  expect(toFeet(dry.levelAt(DAY))).toBeCloseTo(120, 6);
});
