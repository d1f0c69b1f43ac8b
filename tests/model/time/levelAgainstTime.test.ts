import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { solve, type Plan } from '../../../src/model/index.ts';
import { levelAgainstTime, type LevelCurve, type TimeOptions } from '../../../src/model/time/index.ts';
import { theisDrawdown } from '../../../src/model/formulas/theis.ts';
import { feet, gpm, toFeet } from '../../../src/model/units.ts';
import { edgePlan } from '../plan/edgePlan.ts';
import { rockWell } from '../../plans/build.ts';
import { between, SEED } from '../laws.ts';

const HOUR = 3600;
const DAY = 86400;

function curveOf(plan: Plan, options: TimeOptions): LevelCurve {
  const curve = levelAgainstTime(solve(plan), options);
  if ('reason' in curve) throw new Error(curve.reason);
  return curve;
}

const aquiferWell = (transmissivity: string, change: Record<string, unknown> = {}) =>
  rockWell({
    water: { staticLevel: '40 ft', pumping: { kind: 'aquifer', transmissivity, storativity: '0.0001', after: '24 h' } },
    ...change,
  });

describe('a well known from a test', () => {
  test('has the tested drawdown at the tested flow and time: 60 ft at 10 gpm after 4 h', () => {
    const curve = curveOf(rockWell(), { pumpFor: null, flow: gpm(10) });
    expect(toFeet(curve.levelAt(4 * HOUR))).toBeCloseTo(100, 6);
    expect(curve.testTime).toBe(4 * HOUR);
  });
  test('has the drawdown of the figures at the time of the test, also at another flow', () => {
    const solution = solve(rockWell());
    const curve = curveOf(rockWell(), { pumpFor: null, flow: 'demand' });
    expect(Math.abs(curve.levelAt(4 * HOUR) - solution.values.pumpingWaterLevel!)).toBeLessThan(1e-6);
  });
  // Theis, Brown & Meyer (1963), USGS WSP 1536-I, for the method; 3.4677 m²/d computed from it without the water of the
  // bore for 10 gpm, 60 ft, 240 min, rw 0.25 ft and S 1e-4. The bore's own water lets the ground be a little tighter.
  test('has a transmissivity a little under that of Theis without the bore, 3.47 m²/d', () => {
    const { transmissivity } = curveOf(rockWell(), { pumpFor: null });
    expect(transmissivity! * DAY).toBeLessThan(3.4677);
    expect(transmissivity! * DAY).toBeGreaterThan(0.75 * 3.4677);
  });
  test('says what it takes for granted', () => {
    const said = curveOf(rockWell(), { pumpFor: null }).assumptions.join(' ');
    expect(said).toContain('Storativity 0.0001');
    expect(said).toContain('confined');
  });
});

test('a yield is a rough maximum as it was found, and one that a pump brought up is none', () => {
  const said = (yieldFrom: string | undefined) =>
    curveOf(
      rockWell({
        well: { ...rockWell().well, yield: '3 gpm', ...(yieldFrom !== undefined && { yieldFrom }) },
        water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } },
      }),
      { pumpFor: null },
    ).assumptions.join(' ');
  expect(said('air lift')).toMatch(/a yield blown with air is a rough maximum/);
  expect(said('bailer')).toMatch(/bailed is a rough maximum/);
  expect(said(undefined)).toMatch(/nobody said how it was found/);
  expect(said('pump')).not.toMatch(/rough/);
  for (const how of ['bailer', 'pump', undefined]) expect(said(how)).not.toMatch(/blown/);
});

test('a step test comes out with its fitted drawdown at the time of its steps', () => {
  const steps = [
    { flow: '5 gpm', drawdown: '6 ft', after: '2 h' },
    { flow: '10 gpm', drawdown: '14 ft', after: '2 h' },
    { flow: '15 gpm', drawdown: '24 ft', after: '2 h' },
  ];
  const plan = rockWell({ water: { staticLevel: '40 ft', pumping: { kind: 'steps', steps } } });
  const curve = curveOf(plan, { pumpFor: null, flow: gpm(10) });
  // 1 ft/gpm and 0.04 ft/gpm² by hand: 6 = 5 B + 25 C, 24 = 15 B + 225 C.
  expect(toFeet(curve.levelAt(2 * HOUR))).toBeCloseTo(54, 4);
});

test('an aquifer follows Theis once the water of the bore no longer counts', () => {
  const curve = curveOf(aquiferWell('20 m2/d'), { pumpFor: null, flow: gpm(10) });
  for (const time of [DAY, 10 * DAY, 30 * DAY]) {
    const theis = theisDrawdown({
      flow: gpm(10),
      transmissivity: 20 / DAY,
      storativity: 1e-4,
      radius: feet(0.25),
      time,
    });
    expect(Math.abs((curve.levelAt(time) - feet(40)) / theis - 1)).toBeLessThan(0.003);
  }
});

test('no jump: a second after start and stop the level has moved by no more than that second empties or fills', () => {
  const curve = curveOf(aquiferWell('5 m2/d'), { pumpFor: HOUR, flow: gpm(10) });
  const second = gpm(10) / (Math.PI * (feet(0.25) ** 2 - 0.02 ** 2));
  expect(curve.levelAt(1) - feet(40)).toBeLessThan(second * 1.01);
  expect(curve.levelAt(HOUR) - curve.levelAt(HOUR + 1)).toBeLessThan(second * 1.01);
});

test('laws: the level falls while the pump runs, rises after, comes back, and lies between rest and intake', () => {
  fc.assert(
    fc.property(between(0.3, 100), between(1, 15), between(300, 5 * DAY), (transmissivity, flow, pumpFor) => {
      const curve = curveOf(aquiferWell(`${transmissivity.toFixed(3)} m2/d`), { pumpFor, flow: gpm(flow) });
      const { samples, staticLevel, lowest } = curve;
      for (const [i, sample] of samples.entries()) {
        expect(sample.level).toBeGreaterThanOrEqual(staticLevel);
        expect(sample.level).toBeLessThanOrEqual(lowest.depth + 1e-6);
        const before = samples[i - 1];
        if (!before) continue;
        const rise = before.level - sample.level;
        if (sample.phase === 'recovery') expect(rise).toBeGreaterThan(-1e-4);
        else expect(rise).toBeLessThan(1e-9);
      }
      const deepest = Math.max(...samples.map(({ level }) => level)) - staticLevel;
      expect(curve.levelAt(pumpFor + 30 * DAY) - staticLevel).toBeLessThan(0.25 * deepest);
    }),
    { ...SEED, numRuns: 60 },
  );
});

test('more flow, more drawdown, at every time', () => {
  const few = curveOf(aquiferWell('10 m2/d'), { pumpFor: HOUR, flow: gpm(5) });
  const many = curveOf(aquiferWell('10 m2/d'), { pumpFor: HOUR, flow: gpm(8) });
  for (const { time } of few.samples) expect(many.levelAt(time)).toBeGreaterThan(few.levelAt(time));
});

describe('a pump stronger than its well', () => {
  const tight = curveOf(aquiferWell('0.3 m2/d'), { pumpFor: 10 * HOUR, flow: gpm(10) });
  test('draws the water to the intake, not below, and then gets less', () => {
    expect(tight.breaksSuction).not.toBeNull();
    expect(tight.phaseAt(tight.breaksSuction! + 1)).toBe('at lowest');
    expect(tight.levelAt(9 * HOUR)).toBe(feet(140));
    expect(tight.flowAt(9 * HOUR)).toBeLessThan(gpm(10));
    expect(tight.flowAt(9 * HOUR)).toBeGreaterThan(0);
    expect(tight.flowAt(5 * HOUR)).toBeGreaterThan(tight.flowAt(9.9 * HOUR));
  });
  test('breaks suction no sooner than its flow empties the bore above the intake', () => {
    const emptied = (Math.PI * (feet(0.25) ** 2 - 0.02 ** 2) * feet(100)) / gpm(10);
    expect(tight.breaksSuction).toBeGreaterThan(emptied * 0.98);
  });
  test('stops at a low-level cut-off that hangs above the intake', () => {
    const pump = {
      setting: '140 ft',
      power: '1 hp',
      curve: { kind: 'generic', flow: '10 gpm' },
      lowLevelCutOff: '120 ft',
    };
    const curve = curveOf(aquiferWell('0.3 m2/d', { pump }), { pumpFor: 10 * HOUR, flow: gpm(10) });
    expect(curve.lowest.by).toBe('low-level cut-off');
    expect(toFeet(curve.levelAt(9 * HOUR))).toBeCloseTo(120, 9);
  });
});

describe('a report that gives a yield and no drawdown', () => {
  const poor = rockWell({
    well: {
      depth: '200 ft',
      casing: { material: 'steel', size: '6 in', bottom: '200 ft', height: '12 in' },
      intake: { kind: 'open hole', diameter: '6 in' },
      yield: '1 gpm',
      yieldFrom: 'air lift',
    },
    water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } },
  });
  test('is followed by the water stored: 7 gpm take 6 gpm out of the bore', () => {
    const curve = curveOf(poor, { pumpFor: null, flow: 'demand' });
    expect(curve.by).toBe('stored water');
    const area =
      Math.PI * ((0.154051 / 2) ** 2 - (curve.flow * 0 + 0.5 * solve(poor).facts.dropPipe.outsideDiameter) ** 2);
    expect(Math.abs(curve.levelAt(600) - feet(40) - (gpm(6) * 600) / area)).toBeLessThan(0.01);
  });
  test('says nothing of a flow that the yield may cover', () => {
    const answer = levelAgainstTime(solve(poor), { pumpFor: null, flow: gpm(0.8) });
    expect('reason' in answer && answer.reason).toContain('no drawdown');
  });
});

test('an unknown static level is a reason, not a throw', () => {
  const answer = levelAgainstTime(
    solve(
      rockWell({ water: { staticLevel: 'unknown', pumping: { kind: 'test', flow: '10 gpm', drawdown: '60 ft' } } }),
    ),
    { pumpFor: null },
  );
  expect('reason' in answer && answer.reason).toContain('static level');
});

test('law: any plan gives finite levels or a reason', () => {
  fc.assert(
    fc.property(edgePlan, between(60, 40 * DAY), (plan, pumpFor) => {
      for (const start of ['rest', 'dry season'] as const) {
        const curve = levelAgainstTime(solve(plan), { pumpFor, start });
        if ('reason' in curve) expect(curve.reason).not.toBe('');
        else for (const { level, time } of curve.samples) expect(Number.isFinite(level) && time > 0).toBe(true);
      }
    }),
    { ...SEED, numRuns: 100 },
  );
});
