import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreResponse, groundResponse } from '../../../src/model/formulas/boreStorage.ts';
import { theisDrawdown } from '../../../src/model/formulas/theis.ts';
import { solve } from '../../../src/model/index.ts';
import {
  coneAt,
  levelAgainstTime,
  operatingLevels,
  type Cone,
  type LevelCurve,
} from '../../../src/model/time/index.ts';
import { feet, gpm } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import { between, SEED } from '../laws.ts';

const DAY = 86400;
const aquifer = rockWell({
  water: {
    staticLevel: '40 ft',
    pumping: { kind: 'aquifer', transmissivity: '10 m2/d', storativity: '0.0001', after: '24 h' },
  },
});
const cone = (time: number, distances: readonly number[], pumpFor: number | null = null): Cone => {
  const answer = coneAt(solve(aquifer), time, distances, { pumpFor, flow: gpm(5) });
  if ('reason' in answer) throw new Error(answer.reason);
  return answer;
};

// Theis (1935): away from the well and after its water no longer counts, the cone is his.
test.each([10, 50, 200])('after a day the drawdown %d m away is that of Theis', (radius) => {
  const theis = theisDrawdown({ flow: gpm(5), transmissivity: 10 / DAY, storativity: 1e-4, radius, time: DAY });
  expect(Math.abs(cone(DAY, [radius]).points[0]!.drawdown - theis)).toBeLessThan(0.01 * theis + 0.001);
});

// Cooper & Jacob (1946): sqrt(2.25 T t/S) = sqrt(2.25 x 10 x 1 / 1e-4) m.
test('the radius of influence after a day is 474.3 m', () => {
  expect(cone(DAY, [1]).radiusOfInfluence).toBeCloseTo(474.34, 2);
});

test('at the wall of a well without entry loss the ground stands as the water in the well', () => {
  const curve = levelAgainstTime(solve(aquifer), { pumpFor: 3600, flow: gpm(5) }) as LevelCurve;
  for (const time of [60, 600, 3600, 5000, DAY]) {
    const wall = curve.coneAt(time, [feet(0.25)])![0]!;
    expect(Math.abs(wall.depth - curve.levelAt(time))).toBeLessThan(1e-6);
  }
});

test('an entry loss stands between the ground at the wall and the water in the well', () => {
  const bore = { transmissivity: 1e-4, storativity: 1e-4, wellRadius: 0.08, casingRadius: 0.08, entryLoss: 2000 };
  const late = 30 * DAY;
  expect(Math.abs(boreResponse(bore, late) - groundResponse(bore, 0.08, late) - 2000)).toBeLessThan(2);
});

test('law: the cone falls off outward, and deepens and widens with time', () => {
  fc.assert(
    fc.property(between(60, 20 * DAY), between(1.05, 3), (time, factor) => {
      const distances = [0.1, 0.3, 1, 3, 10, 30];
      const [now, later] = [cone(time, distances), cone(time * factor, distances)];
      now.points.forEach((point, i) => {
        expect(later.points[i]!.drawdown).toBeGreaterThanOrEqual(point.drawdown - 1e-5);
        if (i > 0) expect(point.drawdown).toBeLessThanOrEqual(now.points[i - 1]!.drawdown);
      });
      expect(later.radiusOfInfluence).toBeGreaterThan(now.radiusOfInfluence);
    }),
    { ...SEED, numRuns: 60 },
  );
});

test('law: pumping twice as much, or two histories added up, adds up the drawdown', () => {
  const of = (flow: number) => levelAgainstTime(solve(aquifer), { pumpFor: 7200, flow }) as LevelCurve;
  const [small, large, both] = [of(gpm(1)), of(gpm(2)), of(gpm(3))];
  for (const time of [60, 3600, 7200, 9000, DAY]) {
    const sum = small.coneAt(time, [5])![0]!.drawdown + large.coneAt(time, [5])![0]!.drawdown;
    // The bore's mean width moves with the drawdown by a hair, as the casing is wider than the hole.
    expect(Math.abs(both.coneAt(time, [5])![0]!.drawdown / sum - 1)).toBeLessThan(0.01);
  }
});

test('weeks after the pump stopped the cone has nearly filled', () => {
  const before = cone(DAY, [1], DAY).points[0]!.drawdown;
  expect(cone(29 * DAY, [1], DAY).points[0]!.drawdown).toBeLessThan(0.01 * before);
});

describe('levels at the operating points', () => {
  const solution = solve(rockWell());
  const levels = operatingLevels(solution);
  test('each belongs to its own flow: 6 ft of drawdown for each gpm', () => {
    const { operatingFlowAtCutIn, operatingFlowAtCutOut } = solution.values;
    expect(levels.pumpingLevelAtCutIn).toBeCloseTo(feet(40 + (6 * operatingFlowAtCutIn!) / gpm(1)), 9);
    expect(levels.pumpingLevelAtCutOut).toBeCloseTo(feet(40 + (6 * operatingFlowAtCutOut!) / gpm(1)), 9);
  });
  test('cut-in, with more flow, stands deeper', () => {
    expect(levels.pumpingLevelAtCutIn).toBeGreaterThan(levels.pumpingLevelAtCutOut!);
  });
  test('a report with a yield alone leaves all of them unknown', () => {
    const unknown = operatingLevels(
      solve(rockWell({ water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } } })),
    );
    expect(Object.values(unknown)).toEqual([null, null, null, null]);
  });
});
