/** The fall of a pumped level, against closed forms and against small steps in time taken here. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { levelFall, type LevelFall } from '../../../src/model/formulas/levelFall.ts';
import { gpm } from '../../../src/model/units.ts';
import { between, SEED } from '../laws.ts';

const RADIUS = 0.0762;
const PIPE = 0.0334;
const AREA = Math.PI * (RADIUS ** 2 - (PIPE / 2) ** 2);
const plain = [{ top: -0.3, bottom: 200, insideRadius: RADIUS }];
const flat = (flow: number) => [
  { level: 30, flow },
  { level: 150, flow },
];

function fallOf(input: Partial<Parameters<typeof levelFall>[0]>): LevelFall {
  const fall = levelFall({ bore: plain, pipeDiameter: PIPE, pumped: flat(gpm(5)), inflowAt: () => 0, ...input });
  if (fall === null) throw new Error('the well keeps up');
  return fall;
}

// Balance of volumes: V/(Q - Y).
test('a pump whose flow does not change empties the bore in its volume over flow less yield', () => {
  fc.assert(
    fc.property(between(2, 20), between(0, 1.9), (flow, wellYield) => {
      const fall = fallOf({ pumped: flat(gpm(flow)), inflowAt: () => gpm(wellYield) });
      const time = (AREA * 120) / (gpm(flow) - gpm(wellYield));
      expect(Math.abs(fall.time / time - 1)).toBeLessThan(1e-9);
      expect(fall.levelAt(time / 2)).toBeCloseTo(90, 6);
      expect(fall.volume).toBeCloseTo(AREA * 120, 9);
    }),
    SEED,
  );
});

// A ds/dt = Q - c s: t = A/c ln(Q/(Q - c s)), Hvorslev (1951) from memory.
test('with an inflow in proportion to the drawdown the time is a logarithm', () => {
  const c = gpm(3) / 120;
  const fall = fallOf({ inflowAt: (drawdown) => c * drawdown });
  expect(Math.abs(fall.time / ((AREA / c) * Math.log(5 / 2)) - 1)).toBeLessThan(1e-9);
  const after = (time: number) => 30 + (gpm(5) / c) * (1 - Math.exp((-c * time) / AREA));
  for (const share of [0.1, 0.5, 0.9]) expect(fall.levelAt(share * fall.time)).toBeCloseTo(after(share * fall.time), 6);
});

describe('a pump that gives less as the water falls, in a bore of two widths', () => {
  const bore = [
    { top: -0.3, bottom: 60, insideRadius: RADIUS },
    { top: 60, bottom: 200, insideRadius: 0.05 },
  ];
  /** Q = √((h0 - z)/k): what a pump of falling parabola gives, shutting off at 170 m. */
  const pumpAt = (level: number) => gpm(7) * Math.sqrt((170 - level) / 140);
  const inflowAt = (drawdown: number) => Math.min(gpm(0.02) * drawdown, gpm(1.2));
  const pumped = Array.from({ length: 21 }, (_, i) => ({ level: 30 + 6 * i, flow: pumpAt(30 + 6 * i) }));
  const fall = fallOf({ bore, pumped, inflowAt });

  /** Fourth-order Runge-Kutta in steps of a second, until the water stands at 150 m. */
  const marched = (() => {
    const radiusAt = (level: number) => (level < 60 ? RADIUS : 0.05);
    const speed = (level: number) =>
      (pumpAt(level) - inflowAt(level - 30)) / (Math.PI * (radiusAt(level) ** 2 - (PIPE / 2) ** 2));
    const path: number[] = [30];
    for (let level = 30; level < 150; path.push(level)) {
      const k1 = speed(level);
      const k2 = speed(level + k1 / 2);
      const k3 = speed(level + k2 / 2);
      const k4 = speed(level + k3);
      level += (k1 + 2 * k2 + 2 * k3 + k4) / 6;
    }
    return path;
  })();

  test('reaches its intake when small steps in time do, to 0.2 %', () => {
    expect(Math.abs(fall.time / (marched.length - 1) - 1)).toBeLessThan(0.002);
  });
  test('stands in between where small steps put it, to 20 cm of 120 m', () => {
    for (let time = 0; time < fall.time; time += fall.time / 13)
      expect(Math.abs(fall.levelAt(time) - (marched[Math.round(time)] ?? 150))).toBeLessThan(0.2);
  });
  test('takes out what stood in the bore and what flowed in', () => {
    let inflow = 0;
    for (const level of marched) inflow += inflowAt(level - 30);
    expect(Math.abs((fall.volume + inflow) / (fall.meanPumpFlow * fall.time) - 1)).toBeLessThan(0.01);
  });
  test('lasts longer than with its flow at rest all the way, and less long than with its flow at the intake', () => {
    const steady = (flow: number) => fallOf({ bore, pumped: flat(flow), inflowAt }).time;
    expect(fall.time).toBeGreaterThan(steady(pumpAt(30)));
    expect(fall.time).toBeLessThan(steady(pumpAt(150)));
  });
});

describe('a pump whose flow goes with the root of the head left, in a bore that nothing flows into', () => {
  // A dz/dt = -Q0 √((h0 - z)/k): t = 2 A √k/Q0 (√(h0 - z0) - √(h0 - z)).
  const root = (level: number) => Math.sqrt(170 - level);
  const pumpAt = (level: number) => (gpm(7) * root(level)) / Math.sqrt(140);
  const timeTo = (level: number) => ((2 * AREA * Math.sqrt(140)) / gpm(7)) * (root(30) - root(level));
  const levels = Array.from({ length: 21 }, (_, i) => 30 + 6 * i);
  const fall = () => fallOf({ pumped: levels.map((level) => ({ level, flow: pumpAt(level) })) });

  test('is at its intake when that says, to 0.01 %', () => {
    expect(Math.abs(fall().time / timeTo(150) - 1)).toBeLessThan(1e-4);
  });
  test('is on its way at each depth when that says, and gives what it gives there', () => {
    const { moments, levelAt, pumpFlowAt, time } = fall();
    expect(moments.map(({ level }) => level)).toEqual(levels);
    for (const { time: at, level, pumpFlow } of moments) {
      expect(Math.abs(at - timeTo(level))).toBeLessThan(1e-4 * time);
      expect(levelAt(at)).toBeCloseTo(level, 6);
      expect(pumpFlowAt(at) / pumpFlow).toBeCloseTo(1, 6);
    }
    for (const level of [33, 93, 147]) {
      expect(levelAt(timeTo(level))).toBeCloseTo(level, 1);
      expect(pumpFlowAt(timeTo(level)) / pumpAt(level)).toBeCloseTo(1, 2);
    }
  });
  test('has given what stood in the bore', () => {
    const { time, meanPumpFlow, volume } = fall();
    expect(volume).toBeCloseTo(AREA * 120, 9);
    expect((meanPumpFlow * time) / volume).toBeCloseTo(1, 9);
  });
  test('told to bend at every depth goes in straight lines, which a curve betters', () => {
    const bent = fallOf({ pumped: levels.map((level) => ({ level, flow: pumpAt(level), bend: true })) });
    // A chord under the curve gives less, and takes longer.
    expect(bent.time).toBeGreaterThan(timeTo(150) * 1.0002);
    const straight = levels.slice(1).reduce((sum, level, i) => {
      const [from, to] = [pumpAt(levels[i]!), pumpAt(level)];
      return sum + (AREA * 6 * Math.log(to / from)) / (to - from);
    }, 0);
    expect(bent.time / straight).toBeCloseTo(1, 9);
  });
});

describe('two flows in a straight line, in a bore of two widths', () => {
  const narrow = Math.PI * (0.05 ** 2 - (PIPE / 2) ** 2);
  const bore = [
    { top: -0.3, bottom: 63, insideRadius: RADIUS },
    { top: 63, bottom: 200, insideRadius: 0.05 },
  ];
  const pumped = [
    { level: 30, flow: gpm(7) },
    { level: 150, flow: gpm(3) },
  ];
  const pumpAt = (level: number) => gpm(7) - (gpm(4) * (level - 30)) / 120;
  const perMetre = gpm(4) / 120;
  const narrows = (AREA / perMetre) * Math.log(gpm(7) / pumpAt(63));

  test('falls as the two logarithms of its two widths say', () => {
    const fall = fallOf({ bore, pumped });
    const whole = narrows + (narrow / perMetre) * Math.log(pumpAt(63) / gpm(3));
    expect(fall.time / whole).toBeCloseTo(1, 9);
    expect(fall.volume).toBeCloseTo(AREA * 33 + narrow * 87, 9);
    expect(fall.levelAt(narrows)).toBeCloseTo(63, 6);
    expect(fall.pumpFlowAt(narrows) / pumpAt(63)).toBeCloseTo(1, 9);
    expect(fall.moments.map(({ level }) => level)).toEqual([30, 63, 150]);
    expect(fall.moments[0]).toEqual({ time: 0, level: 30, pumpFlow: gpm(7), inflow: 0 });
  });
  test('before it begins stands at rest, and after its end at the lowest level', () => {
    const { levelAt, pumpFlowAt, time } = fallOf({ bore, pumped });
    expect([levelAt(-5), pumpFlowAt(-5)]).toEqual([30, gpm(7)]);
    expect([levelAt(time), pumpFlowAt(time)]).toEqual([150, gpm(3)]);
    expect([levelAt(2 * time), pumpFlowAt(2 * time)]).toEqual([150, gpm(3)]);
  });
  test('is the same whatever the order in which the widths are listed, and with a depth told twice', () => {
    const fall = fallOf({ bore, pumped });
    expect(fallOf({ bore: [...bore].reverse(), pumped }).time).toBeCloseTo(fall.time, 6);
    expect(fallOf({ bore, pumped: [pumped[0]!, pumped[0]!, pumped[1]!] }).time).toBeCloseTo(fall.time, 6);
  });
});

test('a well keeps up where as much flows in at the lowest level as the pump gives there', () => {
  const given = { bore: plain, pipeDiameter: PIPE, pumped: flat(gpm(5)) };
  expect(levelFall({ ...given, inflowAt: () => gpm(5) })).toBeNull();
  expect(levelFall({ ...given, inflowAt: (drawdown) => (gpm(5) * drawdown) / 120 })).toBeNull();
});

test('a bore that the pipe fills holds nothing: the water is gone at once', () => {
  expect(fallOf({ pipeDiameter: 1 }).time).toBe(0);
  expect(fallOf({ pipeDiameter: 1 }).levelAt(0)).toBe(150);
});

test('depths that do not rise are refused', () => {
  const at = (...levels: number[]) => levels.map((level) => ({ level, flow: gpm(5) }));
  for (const pumped of [[], at(30), at(30, 30), at(30, 90, 60, 150)]) {
    expect(() => levelFall({ bore: plain, pipeDiameter: 0, pumped, inflowAt: () => 0 })).toThrow(/levelFall: .*ris/);
  }
});
