/** What is said of the water over time, beside what the figures say of the same well. */
import { expect, test } from 'vitest';
import { sayBreak, sayFit, sayPhase } from '../../src/app/time/timeWords.ts';
import { withValue } from '../../src/model/plan/editPlan.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import { solve } from '../../src/model/solve.ts';
import { breakRange, levelAgainstTime, type LevelCurve } from '../../src/model/time/index.ts';
import { show } from '../../src/model/units.ts';
import rock from '../../static/samples/tamarack-ridge.json';

const HOUR = 3600;
const DAY = 24 * HOUR;

function solvedWith(changes: Readonly<Record<string, unknown>>) {
  const reading = readPlan(rock);
  if (!reading.ok) throw new Error('the sample does not read');
  const plan = Object.entries(changes).reduce((each, [path, value]) => withValue(each, path, value), reading.plan);
  return solve(plan);
}

function watched(changes: Readonly<Record<string, unknown>> = {}) {
  const solution = solvedWith(changes);
  const curve = levelAgainstTime(solution, { pumpFor: null });
  if ('reason' in curve) throw new Error('nothing is told');
  return { curve, range: breakRange(solution), solution };
}

const say = (curve: LevelCurve, time: number) => sayFit(curve, time);

test('within the hours of the test nothing is said of a fit, past them that nobody measured it', () => {
  const { curve } = watched();
  expect(curve.fitReaches).toBeNull();
  expect(say(curve, 4 * HOUR)).toBe('');
  expect(say(curve, DAY)).toBe(
    'The test’s 4 h prove no more than the figures say, and what comes later is a long-term fit that nobody measured.',
  );
});

test('a well that keeps up never breaks suction, and where the fit alone has it at the intake is said from the start', () => {
  const { curve, range, solution } = watched({
    'water.pumping': { kind: 'test', flow: '10 gpm', drawdown: '90 ft', after: '2 h' },
    'pump.flowLimiter': '10 gpm',
  });
  expect(solution.values.timeToBreakSuction).toBeNull();
  expect(curve.fitReaches).not.toBeNull();
  expect(sayBreak(range)).toBe('');
  expect(say(curve, HOUR)).toMatch(
    /^The test’s 2 h prove no more than the figures say, and what comes later is a long-term fit that nobody measured\. By that fit alone a pump that never stops has the water at the intake in about \d[\d.]* (h|days); only a longer test would tell\.$/,
  );
  expect(sayPhase(curve, 30 * DAY, show('us'))).toBe(
    'By the long-term fit alone the water would be down to the intake.',
  );
});

test('a well that cannot keep up is told with the time of the figure, and with no fit', () => {
  const { curve, range, solution } = watched({
    'water.pumping': { kind: 'test', flow: '2 gpm', drawdown: '80 ft', after: '4 h' },
  });
  const time = solution.values.timeToBreakSuction;
  expect(curve.breaksSuction).toBe(time);
  expect(sayBreak(range)).toMatch(
    /^The pump breaks suction \d+ to \d+ min after the start: first with a strong pump of that rating, last with a weak one\./,
  );
  expect(say(curve, 20 * DAY)).toBe('');
});

test('a test without hours, and an aquifer, are told as what they are', () => {
  const hourless = watched({ 'water.pumping': { kind: 'level', level: '104 ft', flow: '10 gpm' } }).curve;
  expect(say(hourless, 2 * DAY)).toContain('Nobody said how long the test ran, so it is taken as a day');
  const aquifer = { kind: 'aquifer', transmissivity: '20 m2/d', storativity: '0.0001', after: '24 h' };
  expect(say(watched({ 'water.pumping': aquifer }).curve, 2 * DAY)).toContain(
    'The figures take the drawdown after 24 h',
  );
});

test('where a well was blown with air, a pump is generic or the water never comes so far, both ends are told', () => {
  const blown = (changes: Readonly<Record<string, unknown>>) => {
    const yielded = { 'water.pumping': { kind: 'yield only' }, 'well.yield': '4 gpm', 'well.yieldFrom': 'air lift' };
    return sayBreak(breakRange(solvedWith({ ...yielded, ...changes })));
  };
  expect(blown({})).toMatch(
    /^The pump breaks suction \d+ to \d+ min after the start: first with a strong pump of that rating and the least of the yield, last with a weak one on all of the yield\. Half of the stored water is back about [\d.]+ (min|h)? ?to [\d.]+ (min|h) after a stop\.$/,
  );
  expect(blown({ 'pump.flowLimiter': '4 gpm', 'well.yield': '6 gpm' })).toMatch(
    /^The pump breaks suction at the earliest [\d.]+ (min|h) after the start, with a strong pump of that rating and the least of the yield; a weak one on all of the yield never draws it so far\./,
  );
});

test('with the water down, the pump of a well blown with air gets between half of the yield and all of it', () => {
  const changes = { 'water.pumping': { kind: 'yield only' }, 'well.yield': '4 gpm', 'well.yieldFrom': 'air lift' };
  const { curve, range } = watched(changes);
  expect(sayPhase(curve, DAY, show('us'), range?.sure)).toContain('only what the well gives, 2 to 4 gpm.');
  expect(sayPhase(curve, DAY, show('metric'), range?.sure)).toContain('only what the well gives, 7.6 to 15 L/min.');
});
