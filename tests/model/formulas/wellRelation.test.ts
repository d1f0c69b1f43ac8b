import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawdownAt } from '../../../src/model/formulas/drawdown.ts';
import { wellRelation } from '../../../src/model/formulas/wellRelation.ts';
import { feet, gpm } from '../../../src/model/units.ts';
import type { PumpingFacts } from '../../../src/model/facts.ts';
import { between, SEED } from '../laws.ts';

const STILL = feet(40);
const wells: readonly PumpingFacts[] = [
  { kind: 'test', flow: gpm(10), drawdown: feet(60), after: null },
  { kind: 'level', level: feet(82), flow: gpm(7) },
  {
    kind: 'steps',
    steps: [
      { flow: gpm(5), drawdown: feet(6), after: null },
      { flow: gpm(15), drawdown: feet(24), after: null },
    ],
  },
  { kind: 'aquifer', transmissivity: 5 / 86400, storativity: 1e-4, radius: 0.08, after: 86400 },
];

test('what flows in at a drawdown is the flow that draws down so far', () => {
  fc.assert(
    fc.property(fc.constantFrom(...wells), between(0, 50), (pumping, flow) => {
      const relation = wellRelation(pumping, STILL)!;
      const drawdown = relation.drawdownAt(gpm(flow));
      expect(relation.inflowAt(drawdown)).toBeCloseTo(gpm(flow), 12);
      expect(drawdown).toBeCloseTo(drawdownAt(pumping, gpm(flow), STILL)!, 9);
    }),
    SEED,
  );
});

test('a well that showed no drawdown gives any flow', () => {
  const relation = wellRelation({ kind: 'test', flow: gpm(10), drawdown: 0, after: null }, STILL)!;
  expect(relation.inflowAt(0)).toBe(Infinity);
});

test('a yield alone, and a level without its flow or above the water at rest, tell no drawdown', () => {
  expect(wellRelation({ kind: 'yield only' }, STILL)).toBeNull();
  expect(wellRelation({ kind: 'level', level: feet(82), flow: null }, STILL)).toBeNull();
  expect(wellRelation({ kind: 'level', level: feet(30), flow: gpm(7) }, STILL)).toBeNull();
});

test('a pumped level is a drawdown from the water at rest alone: without that none, at that one of none', () => {
  expect(wellRelation({ kind: 'level', level: feet(82), flow: gpm(7) }, null)).toBeNull();
  expect(wellRelation({ kind: 'level', level: STILL, flow: gpm(7) }, STILL)!.drawdownAt(gpm(20))).toBe(0);
});

test('water over the level at rest lets none in', () => {
  for (const pumping of wells) expect(wellRelation(pumping, STILL)!.inflowAt(-1)).toBe(0);
});

test('a step test that is all well loss lets in what the root of the drawdown says', () => {
  const steps = [5, 10].map((flow) => ({ flow: gpm(flow), drawdown: feet(flow ** 3 / 25), after: null }));
  // 5 ft at 5 gpm and 40 ft at 10: least squares in Q² alone, (25 × 5 + 100 × 40) / (25² + 100²) of a foot.
  const relation = wellRelation({ kind: 'steps', steps }, STILL)!;
  expect(relation.inflowAt(feet(10)) / gpm(1)).toBeCloseTo(Math.sqrt(10 / (4125 / 10_625)), 9);
});
