/** How time runs on the page, and what is said of it. */
import { expect, test } from 'vitest';
import { sayDrawn, sayFrost, sayFrostOf, saySeason, saySwitched, sayWhen } from '../../src/app/time/runWords.ts';
import { Ticker } from '../../src/app/time/ticker.ts';
import { timeLater } from '../../src/app/time/timeLater.ts';
import { FIRST, LAST, placeOfTime, timeAtPlace } from '../../src/app/time/timeScale.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import { solve } from '../../src/model/solve.ts';
import { levelAgainstTime } from '../../src/model/time/index.ts';
import { inches, show } from '../../src/model/units.ts';
import rock from '../../static/samples/tamarack-ridge.json';

const HOUR = 3600;
const FRAME = 1000 / 60;
const reading = readPlan(rock);
if (!reading.ok) throw new Error('the sample does not read');
const well = solve(reading.plan);

test('time runs from a minute to thirty days in twelve seconds, evenly by logarithm, and no further', () => {
  expect(timeLater(FIRST, null, 6000)).toBeCloseTo(Math.sqrt(FIRST * LAST), 6);
  expect(timeLater(FIRST, null, 12_000)).toBeCloseTo(LAST, 3);
  expect(timeLater(LAST, null, 100)).toBe(LAST);
});

test('it halts at the stop, and runs afresh from there: a minute after it at first, then faster', () => {
  expect(timeLater(3.9 * HOUR, 4 * HOUR, 5000)).toBe(4 * HOUR);
  const minute = timeLater(4 * HOUR, 4 * HOUR, FRAME) - 4 * HOUR;
  expect(minute).toBeGreaterThan(60);
  expect(minute).toBeLessThan(62);
  expect(timeLater(5 * HOUR, 4 * HOUR, 1000) - 4 * HOUR).toBeCloseTo(HOUR * (LAST / FIRST) ** (1 / 12), 3);
});

test('it never stands still on its way, even through the places of the range', () => {
  for (const stops of [null, 61.3, 4 * HOUR, 12_345.678, LAST / 2]) {
    let time = FIRST;
    let frames = 0;
    while (time < LAST * (1 - 1e-9) && frames < 3000) {
      time = timeAtPlace(placeOfTime(timeLater(time, stops, FRAME)));
      frames++;
    }
    expect(frames).toBeLessThan(1500);
  }
});

test('a time is told from the start, and after a stop from the stop', () => {
  const curve = levelAgainstTime(well, { pumpFor: 4 * HOUR });
  expect(sayWhen(curve, 2 * HOUR)).toBe('2 h after the start');
  expect(sayWhen(curve, 4 * HOUR + 720)).toBe('12 min after the stop');
  expect(sayWhen(null, 2 * HOUR)).toBe('2 h after the start');
});

test('the drawing says what it shows in place of the plan, and nothing where it shows the plan', () => {
  const still = { curve: null, time: HOUR, timed: false, pumping: null, levelKnown: true, frost: null };
  expect(sayDrawn(still)).toBe('');
  expect(sayDrawn({ ...still, pumping: true })).toBe('Drawn: pump on, water at its pumping level');
  expect(sayDrawn({ ...still, pumping: false, frost: 'frost 31 in' })).toBe(
    'Drawn: pump off, water at rest, frost 31 in',
  );
  const untold = { ...still, pumping: true, levelKnown: false };
  expect(sayDrawn(untold)).toBe('Pump on. How far the water falls is not known; drawn at rest.');
  expect(sayDrawn({ ...untold, frost: 'frost 31 in' })).toMatch(/drawn at rest\. Frost 31 in\.$/);
  expect(sayDrawn({ ...untold, pumping: false })).toBe('Drawn: pump off, water at rest');
  expect(sayDrawn({ ...untold, timed: true })).toBe('Drawn: water as it stands 1 h after the start');
  expect(saySwitched(true, false, true, false)).not.toContain('pumping level');
  expect(saySwitched(true, false, true, true)).toContain('at its pumping level');
  expect(sayDrawn({ ...still, timed: true, pumping: true })).toBe('Drawn: water as it stands 1 h after the start');
});

test('frost is told to the whole inch or centimetre, beside the depth that is planned for', () => {
  const frost = { reached: inches(31.4), thawed: 0 };
  expect(sayFrost(frost, show('us'))).toBe('frost 31 in');
  expect(sayFrostOf(frost, well.values.frostDepth, show('us'))).toBe('frost 31 in of 48 in');
  // Both to the inch: reached is never more than planned.
  const whole = { reached: inches(50.8), thawed: 0 };
  expect(sayFrostOf(whole, inches(50.8), show('us'))).toBe('frost 51 in of 51 in');
  expect(sayFrostOf(frost, well.values.frostDepth, show('metric'))).toBe('frost 80 cm of 1.22 m');
  expect(sayFrostOf({ reached: inches(48), thawed: inches(12.2) }, well.values.frostDepth, show('us'))).toBe(
    'thawed to 12 in of 48 in',
  );
  expect([0, 0.4, 1, 1.25, 2].map(saySeason)).toEqual([
    'Autumn, before the first frost',
    '40 % of the freezing season over',
    'Spring, at the end of the frost',
    '25 % of the thaw over',
    'The end of the thaw',
  ]);
});

test('frames are asked for only while somebody wants them', async () => {
  const asked = globalThis.requestAnimationFrame;
  let frames = 0;
  globalThis.requestAnimationFrame = (callback) => {
    frames++;
    return asked(callback);
  };
  const next = () => new Promise((resolve) => asked(resolve));
  try {
    const ticker = new Ticker();
    const steps: number[] = [];
    const end = ticker.add((milliseconds) => steps.push(milliseconds));
    ticker.add((milliseconds) => steps.push(milliseconds))();
    while (steps.length < 3) await next();
    end();
    const stopped = [frames, steps.length];
    for (let i = 0; i < 3; i++) await next();
    expect([frames, steps.length]).toEqual(stopped);
    expect(steps[0]).toBe(0);
    for (const milliseconds of steps) expect(milliseconds).toBeLessThanOrEqual(100);
  } finally {
    globalThis.requestAnimationFrame = asked;
  }
});
