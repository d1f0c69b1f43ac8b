import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitStepTest, wellCondition, type FittedSteps, type StepReading } from '../../../src/model/aquifer/index.ts';
import { feet, gpm } from '../../../src/model/units.ts';
import { between, SEED } from '../laws.ts';
import { noiseFrom } from './noise.ts';
import { publishedSteps } from './published.ts';

function fitted(steps: readonly StepReading[]): FittedSteps {
  const fit = fitStepTest(steps);
  if ('reason' in fit) throw new Error(fit.reason);
  return fit;
}

// Kruseman & de Ridder (1994), ch. 14: B 3.26e-3 d/m² and C 1.45e-7 d²/m⁵ at the six flows of Clark (1977).
describe('the steps of Clark at the published B and C', () => {
  const { steps, aquiferLoss, wellLoss } = publishedSteps();
  const fit = fitted(steps);
  test('give them back', () => {
    expect(fit.aquiferLoss / aquiferLoss).toBeCloseTo(1, 9);
    expect(fit.wellLoss / wellLoss).toBeCloseTo(1, 9);
  });
  test('have an efficiency that falls from 95 % to 82 %: B/(B + C Q) by hand', () => {
    expect(fit.steps[0]!.efficiency).toBeCloseTo(3.26e-3 / (3.26e-3 + 1.45e-7 * 1306), 9);
    expect(fit.steps[5]!.efficiency).toBeCloseTo(0.818, 3);
  });
  test('come from a good well: 1.45e-7 d²/m⁵ are 2.8 s²/ft⁵', () => expect(fit.condition).toBe('good'));
});

// San Joaquin County (California), step-drawdown result of well MW-4: B 0.24 ft/gpm, C 0.045 ft/gpm², 36 % turbulent at 3 gpm.
test('a tested monitoring well loses 36 % of its drawdown in the well at 3 gpm', () => {
  const steps = [1, 2, 3].map((q) => ({ flow: gpm(q), drawdown: feet(0.24 * q + 0.045 * q * q) }));
  expect(1 - fitted(steps).steps[2]!.efficiency).toBeCloseTo(0.36, 6);
});

// Walton (1962), Illinois State Water Survey Bulletin 49, from memory: 5, 10 and 40 s²/ft⁵.
test.each([
  [4.9, 'good'],
  [5.1, 'mildly deteriorated'],
  [10.1, 'severely clogged'],
  [39, 'severely clogged'],
  [41, 'hard to restore'],
])('C of %d s²/ft⁵ is a well that is %s', (perFoot, words) => {
  expect(wellCondition(perFoot / 0.3048 ** 5)).toBe(words);
});

test('the intervals hold the truth about 95 times in a hundred when levels scatter by 2 cm', () => {
  const { steps, aquiferLoss, wellLoss } = publishedSteps();
  const noise = noiseFrom(20_240_602);
  const tries = 1000;
  let [heldB, heldC] = [0, 0];
  for (let i = 0; i < tries; i++) {
    const fit = fitted(steps.map(({ flow, drawdown }) => ({ flow, drawdown: drawdown + 0.02 * noise() })));
    if (Math.abs(fit.aquiferLoss - aquiferLoss) < fit.aquiferLossReach!) heldB++;
    if (Math.abs(fit.wellLoss - wellLoss) < fit.wellLossReach!) heldC++;
  }
  expect(Math.abs(heldB / tries - 0.95)).toBeLessThan(0.021);
  expect(Math.abs(heldC / tries - 0.95)).toBeLessThan(0.021);
});

test('law: neither loss is below zero, whatever the steps', () => {
  const step = fc.record({ flow: between(1e-5, 0.1), drawdown: between(0, 60) });
  fc.assert(
    fc.property(fc.array(step, { maxLength: 8 }), (steps) => {
      const fit = fitStepTest(steps);
      if ('reason' in fit) expect(fit.reason.length).toBeGreaterThan(10);
      else expect(fit.aquiferLoss >= 0 && fit.wellLoss >= 0).toBe(true);
    }),
    SEED,
  );
});

test('one flow is refused: it cannot tell the well from the ground', () => {
  const answer = fitStepTest([
    { flow: 1e-3, drawdown: 1 },
    { flow: 1e-3, drawdown: 1.1 },
  ]);
  expect('reason' in answer && answer.reason).toContain('two different flows');
});
