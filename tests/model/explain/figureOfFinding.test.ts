import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figureOfFinding } from '../../../src/model/explain/figureOfFinding.ts';
import { solve, type ValueName } from '../../../src/model/index.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf } from '../../plans/build.ts';
import { BAD } from '../../wells/bad.ts';

/** Rules that weigh the figure itself, whatever the plan: the number of the finding is the number of the account. */
const ALWAYS: Readonly<Record<string, ValueName>> = {
  'PR-01': 'clearanceToBottom',
  'PR-03': 'motorBottomDepth',
  'PR-05': 'motorBottomDepth',
  'PR-06': 'velocityPastMotor',
  'PR-07': 'operatingFlowAtCutInMost',
  'PR-19': 'pitlessBelowFrost',
  'PR-43': 'frostDepth',
  'PR-49': 'voltageDropRunning',
};

const findingsOfMany = (count: number, seed: number) =>
  [...fc.sample(anyPlan, { numRuns: count, seed }), ...BAD.map(({ plan }) => plan)].flatMap((json) => {
    const solution = solve(planOf(json));
    return solution.findings.map((finding) => ({
      rule: finding.rule,
      quantity: finding.quantity,
      measured: finding.measured,
      figure: figureOfFinding(finding, solution),
      values: solution.values,
    }));
  });

test('a finding opens into the figure that its rule weighed, in any plan', () => {
  const met = findingsOfMany(400, 11).filter(({ rule, quantity }) => ALWAYS[rule] !== undefined && quantity !== null);
  // With the pumping level unknown a flow is weighed that is no figure of the well.
  expect(met.filter(({ rule, figure, values }) => figure !== ALWAYS[rule] && values[ALWAYS[rule]!] !== null)).toEqual(
    [],
  );
  expect([...new Set(met.map(({ rule }) => rule))].sort()).toEqual(Object.keys(ALWAYS));
});

test('water over the intake opens into the lowest level while pumping, where it is known', () => {
  const met = findingsOfMany(400, 12).filter(({ rule, figure }) => rule === 'PR-02' && figure !== null);
  expect(met.length).toBeGreaterThan(20);
  for (const { measured, figure, values } of met) {
    expect(figure).toBe('lowestPumpingWaterLevel');
    expect(Math.min(values.intakeDepth! - values.lowestPumpingWaterLevel!, 0)).toBeCloseTo(Math.min(measured!, 0), 6);
  }
});

test('a finding that weighs what was typed in opens into nothing', () => {
  const typed = new Set(['PR-10', 'PR-12', 'PR-13', 'PR-15', 'PR-26', 'PR-40', 'PR-52', 'PR-53']);
  const met = findingsOfMany(100, 13).filter(({ rule }) => typed.has(rule));
  expect(met.length).toBeGreaterThan(50);
  expect(met.filter(({ figure }) => figure !== null)).toEqual([]);
});
