/** The section as a list: everything in its place, and each joint told from both of its sides alike. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, type Plan, type Solution } from '../../../src/model/index.ts';
import { fromTop, type Standing } from '../../../src/model/string/fromTop.ts';
import { linksOf } from '../../../src/model/string/meetings.ts';
import { feet, gpm, inches } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';

const PE = { string: { checkValves: ['0 ft', '60 ft'], clampsPerJoint: 2, fittings: 'brass' } };
const listed = (plan: Plan): readonly Standing[] => fromTop(solve(plan));
const variants = (plan: Plan) => listed(plan).map(({ telling }) => telling.variant);
const named = (plan: Plan, key: string): Standing => listed(plan).find((each) => each.key === key)!;
const PUSHED = { by: 'pushed', fittings: 'brass', clamps: 2 };

describe('on a rock well with a valve at the pump and one 60 ft above it', () => {
  const plan = rockWell(PE);

  test('the way of the water is told in the order in which it is screwed together', () => {
    expect(linksOf(solve(plan)).map(({ key }) => key)).toEqual([
      'pitlessAdapter',
      'dropPipe',
      'checkValve/2',
      'dropPipe/2',
      'checkValve',
      'nipple',
      'pump',
      'intake',
      'motor',
    ]);
  });
  test('the adapter has the lift-out thread above, and below the pipe on brass with two clamps', () => {
    const { above, below } = named(plan, 'pitlessAdapter');
    expect(above).toEqual({ with: 'liftOutPipe' });
    expect(below).toEqual({ with: 'dropPipe', joint: PUSHED });
  });
  test('the pipe is told in two pieces, with the valve between them', () => {
    const [upper, valve, lower] = [named(plan, 'dropPipe'), named(plan, 'checkValve/2'), named(plan, 'dropPipe/2')];
    expect(upper.below).toEqual({ with: 'checkValve', joint: PUSHED });
    expect(valve.above).toEqual({ with: 'dropPipe', joint: PUSHED });
    expect(valve.below).toEqual({ with: 'dropPipe', joint: PUSHED });
    expect(lower.above).toEqual({ with: 'checkValve', joint: PUSHED });
    expect(upper.telling.numbers).toMatchObject({ index: 0, count: 2 });
  });
  test('the nipple ends in the pump’s outlet', () => {
    expect(named(plan, 'nipple').below).toMatchObject({ with: 'pump', joint: { by: 'outlet' } });
  });
  test('adapter and intake stand at the depths that people mean by theirs', () => {
    expect(named(plan, 'pitlessAdapter')).toMatchObject({ top: feet(5), bottom: null });
    expect(named(plan, 'intake')).toMatchObject({ top: feet(140), bottom: null });
  });
});

test('rigid pipe is threaded everywhere, and tells its couplings', () => {
  const plan = rockWell({ dropPipe: { material: 'galvanized steel', size: '1-1/4 in', sectionLength: '21 ft' } });
  const pipe = named(plan, 'dropPipe');
  expect(pipe.above).toEqual({ with: 'pitlessAdapter', joint: { by: 'threaded' } });
  const couplings = solve(plan).parts.filter(({ key }) => /^coupling\/\d/.test(key)).length;
  expect(couplings).toBeGreaterThan(4);
  expect(pipe.telling.numbers).toMatchObject({ sections: { of: feet(21), assumed: false, couplings } });
});

test('a seal hangs the pipe by its collar, under tee and plug', () => {
  const plan = rockWell({ top: { kind: 'seal' } });
  expect(
    linksOf(solve(plan))
      .slice(0, 6)
      .map(({ key }) => key),
  ).toEqual(['plug', 'tee', 'nipple/top', 'coupling/top', 'nipple/seal', 'dropPipe']);
});

test('what stands on a line over a seal is told, and that nobody asked for it', () => {
  const plan = rockWell({ top: { kind: 'seal' } });
  const keys = listed(plan).map(({ key }) => key);
  for (const key of ['union', 'tap', 'support']) {
    expect(keys).toContain(key);
    expect(named(plan, key).unasked).toBe(true);
  }
  expect(keys.indexOf('tap')).toBeLessThan(keys.indexOf('ground'));
  expect(named(rockWell(), 'capSplice')).toMatchObject({ unasked: true, telling: { numbers: { joints: 4 } } });
});

test('a flow-limiting valve is told with what it holds, at a place that nobody said', () => {
  const limited = (flowLimiter: unknown) =>
    named(rockWell({ pump: { ...rockWell().pump, flowLimiter } }), 'flowLimiter');
  expect(limited('6 gpm')).toMatchObject({ placeAssumed: { top: true, bottom: true }, unasked: false });
  expect((limited('6 gpm').telling.numbers as { flow: number }).flow).toBeCloseTo(gpm(6), 9);
  expect(limited(true).telling.numbers).toEqual({ flow: null });
  expect(limited(false)).toBeUndefined();
});

test('a foot stands before what begins there, and the water among the rest', () => {
  const all = variants(planOf(sample('tamarack-ridge')));
  expect(all.indexOf('casingFoot')).toBe(all.indexOf('openHole') - 1);
  expect(all.indexOf('staticLevel')).toBeLessThan(all.indexOf('pumpingLevel'));
  expect(all.indexOf('pumpingLevel')).toBeLessThan(all.indexOf('pump'));
  expect(all.at(-1)).toBe('wellBottom');
});

test('where a yield alone was told, the pumping level stands under the level at rest, at no depth', () => {
  const plan = planOf(sample('slate-hollow'));
  const all = listed(plan);
  const at = all.findIndex(({ key }) => key === 'pumpingLevel');
  expect(all[at - 1]?.key).toBe('staticLevel');
  expect(all[at]).toMatchObject({ top: null, telling: { numbers: { is: 'anywhere' } } });
});

test('a level that a test foretells under the intake is told as water that falls to the intake', () => {
  const water = { staticLevel: '40 ft', pumping: { kind: 'test', flow: '7 gpm', drawdown: '120 ft', after: '4 h' } };
  expect(named(rockWell({ water }), 'pumpingLevel')).toMatchObject({
    top: feet(140),
    telling: { numbers: { is: 'foretold' } },
  });
});

test('what nobody said is assumed, and what was said is not', () => {
  const { pump, ...rest } = rockWell();
  expect(pump?.setting).toBeDefined();
  expect(named({ ...rest, pump: { power: '1 hp' } }, 'intake').placeAssumed).toEqual({ top: true, bottom: true });
  expect(named(rockWell(), 'intake').placeAssumed).toEqual({ top: false, bottom: false });
  expect(named(rockWell(), 'dropPipe').assumed).toContain('string.clampsPerJoint');
  expect(named(rockWell(PE), 'dropPipe').assumed).toEqual([]);
  expect(named(rockWell(), 'bond').unasked).toBe(true);
});

test('where the pump hangs so high that no pipe is left, the adapter meets nothing that stands in it', () => {
  const plan = rockWell({ pump: { setting: '6 ft 8 in', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } } });
  expect(named(plan, 'pitlessAdapter').below).toBeNull();
});

/** Of the parts that hang in the well itself, each by its key; the list tells the rest with what they hold. */
const TOLD_APART = new Set(['pump', 'intake', 'motor', 'nipple', 'checkValve', 'torqueArrestor', 'splice', 'cable']);

function check(solution: Solution): void {
  const all = fromTop(solution);
  const keys = all.map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
  for (const { key, kind } of solution.parts) if (TOLD_APART.has(kind)) expect(keys).toContain(key);
  let deepest = -Infinity;
  for (const { top, bottom } of all) {
    if (top === null) continue;
    expect(top).toBeGreaterThanOrEqual(deepest);
    deepest = top;
    if (bottom !== null) expect(bottom).toBeGreaterThanOrEqual(top);
  }
  // What one says of its lower end, the next says of its upper one.
  const links = linksOf(solution);
  for (let i = 1; i < links.length; i++) {
    const [upper, lower] = [links[i - 1]!, links[i]!];
    if (upper.below === null) continue;
    expect(upper.below).toEqual({ with: lower.kind, joint: (lower.above as { joint: unknown }).joint });
    expect(lower.above).toMatchObject({ with: upper.kind });
    expect(Math.abs(lower.top - upper.bottom)).toBeLessThanOrEqual(inches(2) + 1e-6);
  }
}

test.each(SAMPLES)('every part of %s is told once, from the top down', (name) => check(solve(planOf(sample(name)))));

test('and so it is of any plan', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => check(solve(plan))),
    { seed: 20, numRuns: 300 },
  );
});
