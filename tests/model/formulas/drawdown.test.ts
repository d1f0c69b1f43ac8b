import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PumpingFacts } from '../../../src/model/facts.ts';
import {
  coneDepths,
  coneDistances,
  drawdownAt,
  drawdownWithLoss,
  fitWellLoss,
} from '../../../src/model/formulas/drawdown.ts';
import { theisDrawdown } from '../../../src/model/formulas/theis.ts';
import { feet, gpm, toFeet } from '../../../src/model/units.ts';
import { between, SEED } from '../laws.ts';

const test10: PumpingFacts = { kind: 'test', flow: gpm(10), drawdown: feet(60), after: 4 * 3600 };
const steps: PumpingFacts = {
  kind: 'steps',
  steps: [5, 10, 15].map((flow) => ({ flow: gpm(flow), drawdown: feet(2 * flow + 0.1 * flow * flow), after: 3600 })),
};
const aquifer: PumpingFacts = {
  kind: 'aquifer',
  transmissivity: 5 / 86400,
  storativity: 1e-4,
  radius: 0.0762,
  after: 86400,
};
const level: PumpingFacts = { kind: 'level', level: feet(100), flow: gpm(10) };

test('a tested drawdown is scaled with the flow', () => {
  expect(toFeet(drawdownAt(test10, gpm(7), null)!)).toBeCloseTo(42, 9);
});

test('a pumping level counts from the static level and scales with the flow; without its own flow it is no drawdown', () => {
  expect(toFeet(drawdownAt(level, gpm(5), feet(40))!)).toBeCloseTo(30, 9);
  expect(drawdownAt({ ...level, flow: null }, gpm(5), feet(40))).toBeNull();
});

test('nothing is known from a yield alone, nor from a pumping level above or without the static level', () => {
  expect(drawdownAt({ kind: 'yield only' }, gpm(5), feet(40))).toBeNull();
  expect(drawdownAt(level, gpm(5), feet(120))).toBeNull();
  expect(drawdownAt(level, gpm(5), null)).toBeNull();
});

test('steps that follow B Q + C Q² give B and C back', () => {
  fc.assert(
    fc.property(between(1e3, 1e6), between(0, 1e9), (aquiferLoss, wellLoss) => {
      const measured = [2e-4, 5e-4, 9e-4].map((flow) => ({
        flow,
        drawdown: drawdownWithLoss({ aquiferLoss, wellLoss }, flow),
      }));
      const fit = fitWellLoss(measured);
      expect(Math.abs(fit.aquiferLoss / aquiferLoss - 1)).toBeLessThan(1e-6);
      expect(Math.abs(fit.wellLoss - wellLoss)).toBeLessThan(1e-6 * (wellLoss + aquiferLoss / 1e-4));
    }),
    SEED,
  );
});

test('a fit never makes a loss negative, whatever was measured', () => {
  const measured = fc.array(fc.record({ flow: between(1e-5, 1e-2), drawdown: between(0, 100) }), {
    minLength: 1,
    maxLength: 6,
  });
  fc.assert(
    fc.property(measured, (readings) => {
      const { aquiferLoss, wellLoss } = fitWellLoss(readings);
      expect(aquiferLoss).toBeGreaterThanOrEqual(0);
      expect(wellLoss).toBeGreaterThanOrEqual(0);
    }),
    SEED,
  );
});

test('one step alone gives a straight line', () => {
  expect(fitWellLoss([{ flow: 1e-3, drawdown: 5 }])).toEqual({ aquiferLoss: 5000, wellLoss: 0 });
});

test.each([
  ['test', test10],
  ['level', level],
  ['steps', steps],
  ['aquifer', aquifer],
] as const)('drawdown by %s is none without flow and grows with it', (_, pumping) => {
  expect(drawdownAt(pumping, 0, feet(40))).toBe(0);
  for (let flow = 1; flow < 30; flow++) {
    expect(drawdownAt(pumping, gpm(flow), feet(40))!).toBeGreaterThan(drawdownAt(pumping, gpm(flow - 1), feet(40))!);
  }
});

test.each([
  ['test', test10],
  ['level', level],
  ['steps', steps],
  ['aquifer', aquifer],
] as const)(
  'the cone by %s meets the pumping level at the wall and rises outward to the static level',
  (_, pumping) => {
    const [staticLevel, flow, wellRadius] = [feet(40), gpm(7), 0.0762];
    const drawdown = drawdownAt(pumping, flow, staticLevel);
    const distances = [0.01, ...coneDistances(wellRadius, 400, 40)];
    const cone = coneDepths({ staticLevel, drawdown, flow, pumping, wellRadius, distances })!;
    expect(cone.map(({ distance }) => distance)).toEqual(distances);
    expect(cone[0]!.depth).toBeCloseTo(staticLevel + drawdown!, 9);
    expect(cone[1]!.depth).toBeCloseTo(staticLevel + drawdown!, 9);
    for (let i = 2; i < cone.length; i++) expect(cone[i]!.depth).toBeLessThan(cone[i - 1]!.depth);
    expect(cone.at(-1)!.depth - staticLevel).toBeLessThan(0.05 * drawdown!);
    expect(cone.at(-1)!.depth).toBeGreaterThanOrEqual(staticLevel);
  },
);

test('there is no cone where no drawdown is known, and a flat one without flow', () => {
  const well = { staticLevel: feet(40), wellRadius: 0.0762, distances: [0.1, 1, 10] };
  expect(coneDepths({ ...well, drawdown: null, flow: gpm(7), pumping: { kind: 'yield only' } })).toBeNull();
  const flat = coneDepths({ ...well, drawdown: 0, flow: 0, pumping: test10 })!;
  expect(flat.every(({ depth }) => depth === feet(40))).toBe(true);
});

// Jacob (1947): s = B Q + C Q2, neither below zero. Drawdowns are exact, so the fit gives both back.
test('a step test whose drawdown bends the other way has no well loss, one that begins below the line has nothing but', () => {
  const fit = (drawdowns: readonly number[]) =>
    fitWellLoss(drawdowns.map((drawdown, index) => ({ flow: gpm(5 * (index + 1)), drawdown: feet(drawdown) })));
  const bent = fit([10, 18, 24]);
  expect(bent.wellLoss).toBe(0);
  // Least squares through the origin: (5 × 10 + 10 × 18 + 15 × 24) / (25 + 100 + 225).
  expect(bent.aquiferLoss / (feet(1) / gpm(1))).toBeCloseTo(590 / 350, 9);
  const steep = fit([1, 8, 27]);
  expect(steep.aquiferLoss).toBe(0);
  // The same in squares: (25 × 1 + 100 × 8 + 225 × 27) / (25² + 100² + 225²).
  expect(steep.wellLoss / (feet(1) / gpm(1) ** 2)).toBeCloseTo(6900 / 61250, 9);
});

test('steps of one flow tell no well loss', () => {
  const same = [feet(10), feet(12)].map((drawdown) => ({ flow: gpm(5), drawdown }));
  const fit = fitWellLoss(same);
  expect([fit.aquiferLoss / (feet(1) / gpm(1)), fit.wellLoss]).toEqual([expect.closeTo(2.2, 9), 0]);
});

test('a level that pumping does not lower is a drawdown of none', () => {
  expect(drawdownAt(level, gpm(5), feet(100))).toBe(0);
});

describe('the water beside the well', () => {
  const well = { staticLevel: feet(40), wellRadius: 0.0762, flow: gpm(10), drawdown: feet(60) };
  const depthAt = (pumping: PumpingFacts, distance: number, change: Partial<{ flow: number; drawdown: number }> = {}) =>
    coneDepths({ ...well, ...change, pumping, distances: [distance] })![0]!.depth;

  test('of a known aquifer is as Theis has it, whatever drawdown the well itself shows', () => {
    const alone = theisDrawdown({ ...aquifer, flow: gpm(10), time: 86400, radius: 30 });
    expect(depthAt(aquifer, 30)).toBeCloseTo(feet(40) + alone, 9);
    expect(depthAt(aquifer, 30, { drawdown: feet(90) })).toBeCloseTo(feet(40) + alone, 9);
  });

  test('falls farther out the longer it was pumped, and a test of unknown time counts as a day', () => {
    const after = (seconds: number | null) => depthAt({ ...test10, after: seconds } as PumpingFacts, 30);
    expect(after(3600)).toBeLessThan(after(4 * 3600));
    expect(after(4 * 3600)).toBeLessThan(after(86400));
    expect(after(null)).toBe(after(86400));
    expect(after(0)).toBe(after(86400));
    expect(depthAt(level, 30)).toBe(after(86400));
  });

  test('of a step test goes by the time of its last step', () => {
    const stepped = (times: readonly (number | null)[]): PumpingFacts =>
      ({
        kind: 'steps',
        steps: times.map((time) => ({ flow: gpm(5), drawdown: feet(20), after: time })),
      }) as PumpingFacts;
    const byTest = (after: number) => depthAt({ ...test10, after } as PumpingFacts, 30);
    expect(depthAt(stepped([3600, 7200]), 30)).toBe(byTest(7200));
    expect(depthAt(stepped([3600, null]), 30)).toBe(byTest(86400));
    expect(depthAt(stepped([]), 30)).toBe(byTest(86400));
  });

  test('stands at rest where nothing is pumped or nothing falls', () => {
    for (const still of [{ flow: 0 }, { drawdown: 0 }]) {
      expect(depthAt(test10, 30, still)).toBe(feet(40));
      expect(depthAt(aquifer, 30, still)).toBe(feet(40));
    }
  });

  test('is not told where no aquifer gives so little so soon', () => {
    const tiny = { ...test10, after: 1 } as PumpingFacts;
    const wide = { ...well, wellRadius: 20, drawdown: 50, flow: 1e-6 };
    expect(coneDepths({ ...wide, pumping: tiny, distances: [30] })).toBeNull();
  });
});

test('distances from the wall outward keep one ratio, and end at both ends', () => {
  expect(coneDistances(0.1, 10, 3)).toEqual([0.1, expect.closeTo(1, 12), expect.closeTo(10, 12)]);
});
