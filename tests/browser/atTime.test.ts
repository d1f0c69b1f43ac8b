/** The well at a time: the sample was tested with 42 ft of drawdown at 10 gpm after 4 h, from 62 ft at rest. */
import { expect, test } from 'vitest';
import { atTime } from '../../src/app/time/atTime.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import { withValue } from '../../src/model/plan/editPlan.ts';
import { solve } from '../../src/model/solve.ts';
import type { Solution } from '../../src/model/solution.ts';
import { levelAgainstTime, type LevelCurve, type TimeOptions } from '../../src/model/time/index.ts';
import { gpm, toFeet } from '../../src/model/units.ts';
import rock from '../../static/samples/tamarack-ridge.json';

const HOUR = 3600;
const TESTED = gpm(10);

function solved(changes: Readonly<Record<string, unknown>> = {}): Solution {
  const reading = readPlan(rock);
  if (!reading.ok) throw new Error('the sample does not read');
  return solve(Object.entries(changes).reduce((plan, [path, value]) => withValue(plan, path, value), reading.plan));
}

function curveOf(solution: Solution, options: TimeOptions): LevelCurve {
  const curve = levelAgainstTime(solution, options);
  if ('reason' in curve) throw new Error(curve.reason);
  return curve;
}

const WELL = solved();
const PUMPED = curveOf(WELL, { pumpFor: null, flow: TESTED });

test('at the time of its test the well stands as it was measured', () => {
  const { levels, values, facts } = atTime(WELL, PUMPED, 4 * HOUR);
  expect(toFeet(levels.pumping ?? 0)).toBeCloseTo(104, 6);
  expect(toFeet(values.pumpingWaterLevel ?? 0)).toBeCloseTo(104, 6);
  expect(toFeet(values.drawdown ?? 0)).toBeCloseTo(42, 6);
  expect(facts.house.demand).toBeCloseTo(TESTED, 12);
});

test('water over the intake and drawdown are lengths between the levels that are drawn', () => {
  for (const time of [60, HOUR, 30 * 24 * HOUR]) {
    const { levels, values } = atTime(WELL, PUMPED, time);
    const level = levels.pumping ?? NaN;
    expect(values.submergence).toBeCloseTo((values.intakeDepth ?? NaN) - level, 9);
    expect(values.drawdown).toBeCloseTo(level - (levels.static ?? NaN), 9);
  }
});

test('a level that comes back is no drawdown of any flow, and the demand is the house’s own again', () => {
  const stopped = curveOf(WELL, { pumpFor: 4 * HOUR, flow: TESTED });
  const during = atTime(WELL, stopped, 4 * HOUR);
  const after = atTime(WELL, stopped, 5 * HOUR);
  expect(during.values.drawdown).not.toBeNull();
  expect(after.values.drawdown).toBeNull();
  expect(after.facts.house.demand).toBe(WELL.facts.house.demand);
  expect(after.levels.pumping ?? NaN).toBeLessThan(during.levels.pumping ?? NaN);
  expect(after.levels.pumping ?? NaN).toBeGreaterThan(after.levels.static ?? NaN);
});

test('from a dry season’s level on, the dashes of the dry season would say it twice', () => {
  const dry = curveOf(WELL, { pumpFor: null, flow: TESTED, start: 'dry season' });
  const { levels } = atTime(WELL, dry, HOUR);
  expect(WELL.levels.pumpingDry).not.toBeNull();
  expect(levels.pumpingDry).toBeNull();
  // 15 ft lower than 62 ft.
  expect(toFeet(levels.static ?? 0)).toBeCloseTo(77, 6);
});

test('the cone keeps its distances, and is nowhere deeper than the water in the well', () => {
  const early = atTime(WELL, PUMPED, 10 * 60);
  const late = atTime(WELL, PUMPED, 24 * HOUR);
  expect(early.cone?.map(({ distance }) => distance)).toEqual(WELL.cone?.map(({ distance }) => distance));
  expect(late.cone?.map(({ distance }) => distance)).toEqual(WELL.cone?.map(({ distance }) => distance));
  const level = late.levels.pumping ?? NaN;
  for (const [i, { depth }] of (late.cone ?? []).entries()) {
    expect(depth).toBeLessThanOrEqual(level + 1e-6);
    expect(depth).toBeGreaterThanOrEqual((early.cone?.[i]?.depth ?? NaN) - 1e-9);
  }
});

test('a curve of stored water alone has no cone', () => {
  const known = solved({ 'water.pumping': { kind: 'yield only' }, 'well.yield': '2 gpm' });
  const curve = curveOf(known, { pumpFor: null });
  expect(curve.by).toBe('stored water');
  expect(atTime(known, curve, HOUR).cone).toBeNull();
});

test('what is usual, and all else of the well, is left as it was', () => {
  const before = JSON.stringify(WELL);
  const { plan, parts, bore, findings } = atTime(WELL, PUMPED, HOUR);
  expect(JSON.stringify(WELL)).toBe(before);
  expect([plan, parts, bore, findings]).toEqual([WELL.plan, WELL.parts, WELL.bore, WELL.findings]);
});
