import fc from 'fast-check';
import { expect, test } from 'vitest';
import { solve } from '../../../src/model/index.ts';
import { leadLength, wireInWell, wireToMotor } from '../../../src/model/string/wireLengths.ts';
import { feet } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import { anyString } from './anyString.ts';

// Discharge at 138 ft 6 in, casing 12 in above ground; 2 % slack and 5 ft of loop: common practice, no source.
test('worked by hand: a lead of 4 ft leaves 135.5 ft to the casing’s top', () => {
  const { facts, values } = solve(rockWell({ string: { splices: ['4 ft'] } }));
  expect(wireInWell(facts)).toBeCloseTo(feet(135.5 * 1.02 + 5), 9);
  expect(values.wireLength).toBe(wireInWell(facts));
  expect(leadLength(facts)).toBeCloseTo(feet(4), 9);
  expect(wireToMotor(facts)).toBeCloseTo(facts.house.distance! + feet(135.5 * 1.02 + 5 + 4), 9);
});

test('a splice planned above the well leaves the loop, and never less than nothing', () => {
  const { values } = solve(rockWell({ string: { splices: ['190 ft'] } }));
  expect(values.wireLength).toBeCloseTo(feet(5), 9);
});

test('lead and wire reach from the discharge to the casing’s top: any string', () => {
  fc.assert(
    fc.property(anyString, (plan) => {
      const { facts, values } = solve(plan);
      const up = Math.max((values.pumpDischargeDepth ?? 0) + facts.well.casingHeight, 0);
      expect(leadLength(facts) + wireInWell(facts)).toBeGreaterThanOrEqual(up + feet(5) - 1e-9);
    }),
    { numRuns: 200, seed: 8 },
  );
});
