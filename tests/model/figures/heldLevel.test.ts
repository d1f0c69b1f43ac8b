/** No figure, sentence of an account or drawn level of the water while pumping lies below the intake or the well. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { explainAll } from '../../../src/model/explain/explain.ts';
import { solve } from '../../../src/model/solve.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { rockWell } from '../../plans/build.ts';

const LEVELS = ['pumpingWaterLevel', 'pumpingWaterLevelDry', 'lowestPumpingWaterLevel', 'lift'] as const;
const COVERS = ['submergence', 'submergenceDry'] as const;
const MILLIMETRE = 0.001;

describe('a pumping level that no pump holds', () => {
  // 1 gpm drew it down 150 ft: at 7 gpm the sum is 1,090 ft in a well of 200 ft.
  const poor = solve(
    rockWell({ water: { staticLevel: '40 ft', pumping: { kind: 'test', flow: '1 gpm', drawdown: '150 ft' } } }),
  );

  test('is null, and so are drawdown, lift, head and cover', () => {
    const { values, levels } = poor;
    for (const name of [...LEVELS, ...COVERS, 'drawdown', 'totalDynamicHead'] as const)
      if (name !== 'lowestPumpingWaterLevel') expect(values[name], name).toBeNull();
    expect(values.lowestPumpingWaterLevel).toBeCloseTo(values.intakeDepth ?? 0, 6);
    expect(levels).toMatchObject({ pumping: null, pumpingDry: null });
  });

  test('and its account says why', () => {
    for (const { name, unknown, worked } of explainAll(poor).filter(
      ({ name }) => name === 'pumpingWaterLevel' || name === 'drawdown',
    )) {
      expect(worked, name).toBeNull();
      expect(unknown.map(({ words }) => words).join(), name).toMatch(/falls to the pump/);
    }
  });

  test('between intake and bottom the fall is told, and no level', () => {
    // 70 ft of drawdown at 7 gpm from 40 ft, with the pump at 90 ft.
    const { values } = solve(
      rockWell({
        water: { staticLevel: '40 ft', pumping: { kind: 'test', flow: '7 gpm', drawdown: '70 ft' } },
        pump: { setting: '90 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } },
      }),
    );
    expect(values.pumpingWaterLevel).toBeNull();
    expect(values.drawdown).toBeCloseTo(70 * 0.3048, 6);
  });
});

test('in 400 plans made at random every level is null or above intake and bottom, and every null has its reason', () => {
  let without = 0;
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const solution = solve(plan);
      const { values, levels, facts } = solution;
      const end = Math.min(facts.pump.setting, facts.well.bottom) + MILLIMETRE;
      for (const name of LEVELS) expect(values[name] ?? -Infinity, name).toBeLessThanOrEqual(end);
      for (const name of COVERS) expect(values[name] ?? 0, name).toBeGreaterThanOrEqual(-MILLIMETRE);
      for (const level of [levels.pumping, levels.pumpingDry])
        expect(level ?? -Infinity).toBeLessThanOrEqual(facts.well.bottom + MILLIMETRE);
      for (const { name, unknown } of explainAll(solution)) {
        if (![...LEVELS, ...COVERS, 'totalDynamicHead'].includes(name) || values[name] !== null) continue;
        without++;
        expect(unknown.length, `${name} is null without a reason`).toBeGreaterThan(0);
      }
    }),
    { seed: 61, numRuns: 400 },
  );
  expect(without).toBeGreaterThan(100);
});
