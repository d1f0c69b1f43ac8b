import { describe, expect, test } from 'vitest';
import { fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import { valveAboveWaterLimit } from '../../../src/model/rules/checkValve.ts';
import { solve } from '../../../src/model/solve.ts';
import { toFeet } from '../../../src/model/units.ts';
import { changed, findingOf, fixOf, judged, saidOf, solvedPlan, verdictOf, type Changes } from './fixture.ts';

/** No more is pumped than at the measured level of 82 ft, which is then the lowest. The discharge is at 138.5 ft. */
const held = { 'pump.flowLimiter': '10 gpm' };

describe('how high a check valve may hang above the pumping level', () => {
  const limitAt = (altitude: string) =>
    toFeet(
      valveAboveWaterLimit(solvedPlan(changed({ 'site.altitude': altitude, 'site.waterTemperature': '15 degC' }))),
    );

  test('is 25 ft at sea level, common practice', () => {
    expect(limitAt('0 ft')).toBeCloseTo(25, 9);
  });

  test('loses at 5,000 ft what the air holds up less there', () => {
    // Standard atmosphere (ISO 2533): 101.325 kPa and 84.31 kPa, 17.02 kPa of water at 15 degC is 5.70 ft.
    expect(limitAt('5000 ft')).toBeCloseTo(25 - 5.7, 1);
  });

  test('is not more than 25 ft in a place below the sea', () => {
    expect(limitAt('-1000 ft')).toBeCloseTo(25, 9);
  });

  test('is told as practice: the air itself holds some 33 ft', () => {
    const { message } = saidOf('PR-09', { ...held, 'string.checkValves': ['0 ft', '100 ft'] });
    expect(message).toBe('The upper valve is 43.5 ft above the lowest pumping level; practice keeps it within 25 ft.');
    const thin = { ...held, 'string.checkValves': ['0 ft', '100 ft'], 'site.altitude': '5000 ft' };
    expect(saidOf('PR-09', thin).message).toMatch(/in thin air practice keeps it within 19\.[34] ft\.$/);
  });
});

describe('an upper valve out of reach', () => {
  test('is left out, and the one at the pump stays', () => {
    const fix = fixOf('PR-09', { ...held, 'string.checkValves': ['0 ft', '100 ft'] });
    expect(fix).toEqual({
      changes: [{ path: 'string.checkValves', to: ['0 ft'] }],
      words: 'Leave the upper valve out',
    });
  });

  test('leaves the valves below it as they were typed', () => {
    // 81.5 ft above the discharge is the highest place: 138.5 - 82 + 25; 24.8 m is 81.4 ft.
    const fix = fixOf('PR-09', { ...held, 'string.checkValves': ['2 in', '24.8 m', '25.1 m', '100 ft'] });
    expect(fix).toEqual({
      changes: [{ path: 'string.checkValves', to: ['2 in', '24.8 m'] }],
      words: 'Leave the upper 2 valves out',
    });
  });

  test('of which none is near enough makes room for one at the pump, and says so', () => {
    // The discharge hangs 1 ft above the lowest water, and a valve 22 ft up stands 23 ft over it.
    const high = { ...held, 'pump.setting': '82.5 ft', 'string.checkValves': ['22 ft', '60 ft'] };
    expect(fixOf('PR-09', high)).toEqual({
      changes: [{ path: 'string.checkValves', to: ['22 ft'] }],
      words: 'Leave the upper valve out',
    });
    expect(fixOf('PR-09', { ...high, 'site.altitude': '5000 ft' })).toEqual({
      changes: [{ path: 'string.checkValves', to: ['0 ft'] }],
      words: 'Have one check valve, at the pump',
    });
  });

  test('keeps the pump down in its band, where the valve is 25 ft above the water', () => {
    const plan = { ...held, 'string.checkValves': ['0 ft', '100 ft'] };
    const band = judged(plan).bands.find(({ setting }) => setting === 'pump.setting')!;
    // 82 - 25 + 100 + 1.5 is 158.5, rounded inward to the foot.
    expect([toFeet(band.from!), band.fromEnd.rule]).toEqual([expect.closeTo(159, 6), 'PR-09']);
    expect(verdictOf('PR-09', { ...plan, 'pump.setting': '158.5 ft' })).toBe('ok');
    expect(verdictOf('PR-09', { ...plan, 'pump.setting': '158.4 ft' })).toBe('warning');
  });
});

describe('the band of the pump', () => {
  const endedBy = (changes: Changes) =>
    judged({ ...held, ...changes }).bands.find(({ setting }) => setting === 'pump.setting')?.fromEnd.rule;

  test('is not ended by a valve that stands alone: the column above it hangs on it, however high the water', () => {
    expect(endedBy({ 'string.checkValves': ['60 ft'] })).not.toBe('PR-09');
    expect(endedBy({ 'string.checkValves': ['0 ft', '100 ft'] })).toBe('PR-09');
    // The one built into the pump counts with the one above it.
    expect(endedBy({ 'pump.checkValveInside': true, 'string.checkValves': ['100 ft'] })).toBe('PR-09');
  });

  test('nor in a well that is drawn down to the intake: the valve goes where the pump goes', () => {
    const emptied = { 'string.checkValves': ['0 ft', '100 ft'], 'pump.lowLevelCutOff': undefined };
    const dry = { ...emptied, 'pump.flowLimiter': undefined, 'well.yield': '1 gpm', 'water.pumping': undefined };
    expect(solve(changed(dry)).lowest?.by).toBe('intake');
    expect(endedBy(dry)).not.toBe('PR-09');
  });
});

test('of a pump with a valve of its own every valve too high is left out, and none is put at the pump', () => {
  const inside = { ...held, 'pump.checkValveInside': true, 'string.checkValves': ['100 ft', '110 ft'] };
  expect(fixOf('PR-09', inside)).toEqual({
    changes: [{ path: 'string.checkValves', to: [] }],
    words: 'Leave the upper 2 valves out',
  });
});

describe('how much pipe one valve holds full', () => {
  const long = { ...held, 'well.depth': '700 ft', 'well.inflows': undefined, 'pump.power': '3 hp' };

  test('runs up to the next valve, or to the top', () => {
    // The sound well's discharge is at 138.5 ft and its adapter at 5 ft.
    const measured = (changes: Changes) => findingOf('PR-09', { ...long, ...changes }).measured!;
    const alone = measured({ 'pump.setting': '400 ft', 'string.checkValves': ['0 ft'] });
    expect(Math.abs(toFeet(alone) - (400 - 1.5 - 5))).toBeLessThan(2);
    const halved = { ...long, 'pump.setting': '400 ft', 'string.checkValves': ['0 ft', '200 ft'] };
    expect(judged({ ...halved, 'water.pumping.level': '190 ft' }).findings.map(({ rule }) => rule)).not.toContain(
      'PR-09',
    );
    // The stretch under the upper valve is the longest one there.
    const upper = {
      'pump.setting': '600 ft',
      'string.checkValves': ['0 ft', '310 ft'],
      'water.pumping.level': '300 ft',
    };
    expect(toFeet(measured(upper))).toBeCloseTo(310, 6);
  });
});

describe('while nobody knows the pumping level', () => {
  const unknown = { 'water.pumping': { kind: 'yield only' }, 'string.checkValves': ['0 ft', '81 ft'] };

  test('an upper valve depends on it, and tells the depth at which that turns', () => {
    const told = judged(unknown).findings.flatMap(({ together }) => together);
    const turning = told.find(({ rule }) => rule === 'PR-09')!;
    // The valve is at 57.5 ft.
    expect(toFeet(turning.turn.at)).toBeCloseTo(57.5 + 25, 6);
    expect([turning.turn.field, turning.bad]).toEqual(['water.pumping', 'warning']);
  });

  test('one too high over the water at rest is told by the water at rest', () => {
    const finding = findingOf('PR-09', { ...unknown, 'string.checkValves': ['0 ft', '124 ft'] });
    expect(finding.variant).toBe('upperTooHighAtRest');
    expect(toFeet(finding.measured!)).toBeCloseTo(40 - (138.5 - 124), 6);
  });
});

test('a lowest valve too high is put at the pump, and those above it stay', () => {
  const plan = { ...held, 'string.checkValves': ['40 ft', '75 ft'] };
  expect(fixOf('PR-09', plan)).toEqual({
    changes: [{ path: 'string.checkValves', to: ['0 ft', '75 ft'] }],
    words: 'Put the lowest check valve at the pump',
  });
  const typed = changed(plan);
  const solution = solve(typed);
  const at = solution.findings.findIndex(({ rule }) => rule === 'PR-09');
  expect(fixesOf(typed, solution)[at]?.button?.variant).toBe('lowestToPump');
});

test('valves typed from the top down are put in their order by the change', () => {
  expect(fixOf('PR-09', { ...held, 'string.checkValves': ['75 ft', '40 ft'] }).changes).toEqual([
    { path: 'string.checkValves', to: ['0 ft', '75 ft'] },
  ]);
});

test('the arrow says nothing where the only valve is built into the pump', () => {
  const inside = { 'string.checkValves': [], 'pump.checkValveInside': true, 'string.arrow': 'down' };
  expect(judged(inside).holding.map(({ rule }) => rule)).not.toContain('PR-11');
  expect(verdictOf('PR-11', inside)).toBe('not judged');
});
