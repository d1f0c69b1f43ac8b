import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { PumpingFacts } from '../../../src/model/facts.ts';
import {
  coneDepths,
  coneDistances,
  drawdownAt,
  drawdownWithLoss,
  fitWellLoss,
} from '../../../src/model/formulas/drawdown.ts';
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
