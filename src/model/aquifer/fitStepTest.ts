/** A step test fitted: what of the drawdown the ground takes and what the well. */
import { drawdownWithLoss, fitWellLoss, wellLossShare } from '../formulas/drawdown.ts';
import type { CubicMetresPerSecond, Metres, Ratio } from '../si.ts';
import type { NotFitted } from './fitPumpingTest.ts';
import { studentT95 } from './studentT.ts';
import { feet } from '../units.ts';

export interface StepReading {
  readonly flow: CubicMetresPerSecond;
  /** Each after the same time of pumping at its flow. */
  readonly drawdown: Metres;
}

/** Walton's words for C. */
export type WellCondition = 'good' | 'mildly deteriorated' | 'severely clogged' | 'hard to restore';

export interface FittedSteps {
  /** B [s/m²] and C [s²/m⁵]. */
  readonly aquiferLoss: number;
  readonly wellLoss: number;
  /** Half-widths of their 95 % intervals; null with two steps, which any pair of B and C meets, or where one is held at 0. */
  readonly aquiferLossReach: number | null;
  readonly wellLossReach: number | null;
  readonly condition: WellCondition;
  readonly steps: readonly (StepReading & {
    readonly computed: Metres;
    readonly difference: Metres;
    /** Ground's share of the drawdown. */
    readonly efficiency: Ratio;
  })[];
  readonly rootMeanSquare: Metres;
  readonly assumptions: readonly string[];
  readonly doubts: readonly string[];
}

/**
 * s = B Q + C Q² by least squares, neither below zero.
 *
 * @returns  B, C, their intervals, the efficiency B Q/s at each step, and Walton's class of C; or why not
 *
 * Source   Jacob (1947), Trans. ASCE 112, 1047; classes Walton (1962), Illinois State Water Survey Bulletin 49, from memory
 */
export function fitStepTest(steps: readonly StepReading[]): FittedSteps | NotFitted {
  const refused = refusedSteps(steps);
  if (refused !== null) return { reason: refused };
  const loss = fitWellLoss(steps);
  const told = steps.map((step) => {
    const computed = drawdownWithLoss(loss, step.flow);
    return { ...step, computed, difference: step.drawdown - computed, efficiency: 1 - wellLossShare(loss, step.flow) };
  });
  const squares = told.reduce((sum, { difference }) => sum + difference * difference, 0);
  const held = loss.aquiferLoss === 0 || loss.wellLoss === 0;
  const reach = held || steps.length < 3 ? null : reaches(steps, squares);
  const doubts: string[] = [];
  if (loss.wellLoss === 0)
    doubts.push(
      'The drawdown grows no faster than the flow: no well loss shows, or the well cleaned itself during the test.',
    );
  if (loss.aquiferLoss === 0)
    doubts.push('All of the drawdown goes as the square of the flow: check the levels of the first steps.');
  if (steps.length === 2) doubts.push('Two steps always fit: a third would show whether the form holds.');
  return {
    ...loss,
    aquiferLossReach: reach?.linear ?? null,
    wellLossReach: reach?.square ?? null,
    condition: wellCondition(loss.wellLoss),
    steps: told,
    rootMeanSquare: Math.sqrt(squares / steps.length),
    assumptions: [
      'Each drawdown was read after the same time at its flow, and the steps before it no longer count.',
      'Loss in the well goes as the square of the flow (Jacob); in fractures its power may lie between 1.5 and 3.5 (Rorabaugh).',
    ],
    doubts,
  };
}

/**
 * Walton's class of a well by its loss: C under 5 s²/ft⁵ good, to 10 mild, to 40 severe, above hard to restore.
 *
 * @param wellLoss  C [s²/m⁵]
 *
 * Throws   RangeError when the loss is negative
 * Source   Walton (1962), Illinois State Water Survey Bulletin 49, from memory
 */
export function wellCondition(wellLoss: number): WellCondition {
  if (!(wellLoss >= 0)) throw new RangeError(`wellCondition: well loss is ${wellLoss}, must be zero or more`);
  const perFoot = wellLoss * feet(1) ** 5;
  if (perFoot < 5) return 'good';
  if (perFoot < 10) return 'mildly deteriorated';
  return perFoot < 40 ? 'severely clogged' : 'hard to restore';
}

function refusedSteps(steps: readonly StepReading[]): string | null {
  const wrong = steps.findIndex(
    ({ flow, drawdown }) => !(flow > 0 && flow < Infinity && drawdown >= 0 && drawdown < Infinity),
  );
  if (wrong >= 0) return `Step ${wrong + 1}: flow must be more than zero, and drawdown zero or more.`;
  if (new Set(steps.map(({ flow }) => flow)).size < 2)
    return 'Steps at two different flows are the least: one flow cannot tell the well from the ground.';
  return steps.some(({ drawdown }) => drawdown > 0) ? null : 'No step shows any drawdown.';
}

/** Half-widths of the intervals, from s² (JᵀJ)⁻¹ in shares of the largest flow, or the sums would lose digits. */
function reaches(steps: readonly StepReading[], squares: number) {
  const largest = Math.max(...steps.map(({ flow }) => flow));
  let [q2, q3, q4] = [0, 0, 0];
  for (const { flow } of steps) {
    const q = flow / largest;
    q2 += q * q;
    q3 += q ** 3;
    q4 += q ** 4;
  }
  const degrees = steps.length - 2;
  const determinant = q2 * q4 - q3 * q3;
  if (!(determinant > 1e-12 * q2 * q4)) return null;
  const deviation = studentT95(degrees) * Math.sqrt(squares / degrees / determinant);
  return { linear: (deviation * Math.sqrt(q4)) / largest, square: (deviation * Math.sqrt(q2)) / (largest * largest) };
}
