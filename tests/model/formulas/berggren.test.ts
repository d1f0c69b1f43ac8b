import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  berggrenDepth,
  berggrenLambda,
  berggrenLambdaExplicit,
  meanConductivity,
  stefanDepth,
} from '../../../src/model/formulas/berggren.ts';
import { sineAmplitude, sineSeason } from '../../../src/model/formulas/freezingIndex.ts';
import { SOILS } from '../../../src/model/tables/soils.ts';

const soil = fc.constantFrom(...SOILS);
const meanAnnual = fc.double({ min: 0.5, max: 12, noNaN: true });
const season = fc.double({ min: 40, max: 200, noNaN: true });
const index = fc.double({ min: 20, max: 3000, noNaN: true });
const seed = 20260307;

test('the explicit form stays within 0.004 of the solution', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 7, noNaN: true }),
      fc.double({ min: 0.01, max: 0.5, noNaN: true }),
      (thermalRatio, fusion) => {
        const numbers = { thermalRatio, fusion };
        expect(Math.abs(berggrenLambdaExplicit(numbers) - berggrenLambda(numbers))).toBeLessThanOrEqual(0.0045);
      },
    ),
    { seed },
  );
});

test('a harder winter freezes deeper', () => {
  fc.assert(
    fc.property(soil, meanAnnual, season, index, index, (ground, mean, days, a, b) => {
      fc.pre(b > a * 1.001);
      const depth = (surfaceIndex: number) =>
        berggrenDepth({ surfaceIndex, meanAnnual: mean, season: days, soil: ground });
      expect(depth(a)).toBeLessThan(depth(b));
    }),
    { seed },
  );
});

test('a warmer year freezes less deep, and Stefan’s depth is never passed', () => {
  fc.assert(
    fc.property(soil, meanAnnual, season, index, (ground, mean, days, surfaceIndex) => {
      const depth = (warmth: number) => berggrenDepth({ surfaceIndex, meanAnnual: warmth, season: days, soil: ground });
      expect(depth(mean + 1)).toBeLessThan(depth(mean));
      const { latentHeat } = ground;
      const bound = stefanDepth({ surfaceIndex, conductivity: meanConductivity(ground), latentHeat });
      expect(depth(mean)).toBeLessThan(bound);
    }),
    { seed },
  );
});

// Wisconsin plumbing code, Table 382.30-6, zone C: predicted frost depth by soil, feet. The index of the zone is not printed;
// 2600 °F-days, a mean of 40.7 °F and n = 0.7 are assumed. The estimate claims 25 %.
test.each([
  ['gravelly sand', 9.0],
  ['sand', 6.5],
  ['sandy loam', 6.0],
  ['silt loam', 4.5],
  ['clay loam', 3.5],
  ['clay', 3.5],
])('in %s the estimate comes within 25 %% of the %d ft of the Wisconsin code', (id, feet) => {
  const [index, meanAnnual] = [2600 / 1.8, (40.7 - 32) / 1.8];
  const season = sineSeason({ meanAnnual, amplitude: sineAmplitude({ index, meanAnnual }) });
  const freezing = { surfaceIndex: 0.7 * index, meanAnnual, season };
  const depth = berggrenDepth({ ...freezing, soil: SOILS.find((candidate) => candidate.id === id)! });
  expect(depth / 0.3048 / feet).toBeGreaterThan(0.8);
  expect(depth / 0.3048 / feet).toBeLessThan(1.25);
});

test('figures without a meaning are refused', () => {
  const ground = SOILS[0]!;
  expect(() => berggrenDepth({ surfaceIndex: 0, meanAnnual: 5, season: 100, soil: ground })).toThrow(RangeError);
  expect(() => berggrenDepth({ surfaceIndex: 100, meanAnnual: -1, season: 100, soil: ground })).toThrow(RangeError);
  expect(() => berggrenLambda({ thermalRatio: -1, fusion: 0.1 })).toThrow(RangeError);
  expect(() => berggrenLambda({ thermalRatio: 1, fusion: 0 })).toThrow(RangeError);
  expect(() => stefanDepth({ surfaceIndex: 1, conductivity: 1, latentHeat: 0 })).toThrow(RangeError);
});
