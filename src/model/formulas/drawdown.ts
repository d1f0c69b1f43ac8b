/** Drawdown that a plan's account of the well gives at any flow, and the cone round the well. */
import type { PumpingFacts } from '../facts.ts';
import type { ConePoint } from '../solution.ts';
import type { CubicMetresPerSecond, Metres, Ratio, Seconds, SquareMetresPerSecond } from '../si.ts';
import { transmissivityFromSpecificCapacity } from './aquiferTest.ts';
import { requireNotNegative, requirePositive } from './require.ts';
import { theisDrawdown } from './theis.ts';

export { theisDrawdown, wellFunction } from './theis.ts';

/** Time since pumping began where nobody said: a day, after which a household well hardly falls further. */
export const USUAL_PUMPING_TIME: Seconds = 86400;

/** Storativity guessed for the cone of a tested well: confined. Common practice; the cone depends on it weakly. */
export const GUESSED_STORATIVITY: Ratio = 1e-4;

/**
 * Specific capacity Q/s [m²/s]: flow Q [m³/s] per drawdown s [m], after some time of pumping.
 *
 * Throws   RangeError when flow or drawdown is not positive
 * Source   definition
 */
export function specificCapacity(input: {
  readonly flow: CubicMetresPerSecond;
  readonly drawdown: Metres;
}): SquareMetresPerSecond {
  requirePositive('specificCapacity', 'flow', input.flow);
  requirePositive('specificCapacity', 'drawdown', input.drawdown);
  return input.flow / input.drawdown;
}

/** Drawdown of a pumped well as s = B Q + C Q²: loss in the ground and loss in the well. */
export interface WellLoss {
  /** B [s/m²] */
  readonly aquiferLoss: number;
  /** C [s²/m⁵] */
  readonly wellLoss: number;
}

/**
 * Drawdown with well loss.
 *
 *     s = B Q + C Q²
 *
 * Throws   RangeError when the flow is negative
 * Source   Jacob (1947), Trans. ASCE 112, 1047
 */
export function drawdownWithLoss({ aquiferLoss, wellLoss }: WellLoss, flow: CubicMetresPerSecond): Metres {
  requireNotNegative('drawdownWithLoss', 'flow', flow);
  return flow * (aquiferLoss + wellLoss * flow);
}

/** Share of the drawdown that is well loss: C Q² / (B Q + C Q²) [-]; one minus it is the well's efficiency. */
export function wellLossShare({ aquiferLoss, wellLoss }: WellLoss, flow: CubicMetresPerSecond): Ratio {
  requirePositive('wellLossShare', 'flow', flow);
  return (wellLoss * flow) / (aquiferLoss + wellLoss * flow);
}

/**
 * B and C of a step test: least squares on the drawdowns, neither below zero.
 *
 * A single step gives B alone.
 *
 * @param steps  flow [m³/s] and drawdown [m], all after the same time of pumping
 *
 * Throws   RangeError without a step, or when a flow is not positive or a drawdown negative
 * Source   Jacob (1947) for the form
 */
export function fitWellLoss(
  steps: readonly { readonly flow: CubicMetresPerSecond; readonly drawdown: Metres }[],
): WellLoss {
  let largest = 0;
  for (const { flow, drawdown } of steps) {
    requirePositive('fitWellLoss', 'flow', flow);
    requireNotNegative('fitWellLoss', 'drawdown', drawdown);
    largest = Math.max(largest, flow);
  }
  if (largest === 0) throw new RangeError('fitWellLoss: needs one step or more');
  // In shares of the largest flow, or the sums of fourth powers would lose digits.
  let [q2, q3, q4, sq, sq2] = [0, 0, 0, 0, 0];
  for (const { flow, drawdown } of steps) {
    const q = flow / largest;
    q2 += q * q;
    q3 += q ** 3;
    q4 += q ** 4;
    sq += drawdown * q;
    sq2 += drawdown * q * q;
  }
  const determinant = q2 * q4 - q3 * q3;
  if (determinant > 1e-12 * q2 * q4) {
    const linear = (sq * q4 - sq2 * q3) / determinant;
    const square = (sq2 * q2 - sq * q3) / determinant;
    if (linear >= 0 && square >= 0) return { aquiferLoss: linear / largest, wellLoss: square / (largest * largest) };
    if (linear < 0) return { aquiferLoss: 0, wellLoss: sq2 / q4 / (largest * largest) };
  }
  return { aquiferLoss: sq / q2 / largest, wellLoss: 0 };
}

/**
 * Drawdown at a flow by what the plan knows.
 *
 *     test           s = s_test Q/Q_test
 *     level          s = (level - static level) Q/Q_test; unknown where its flow is
 *     steps          s = B Q + C Q², fitted
 *     aquifer        Theis at the given radius and time
 *     yield only     unknown
 *
 * @param flow         Q [m³/s]
 * @param staticLevel  depth of the water at rest [m]; only `level` asks for it
 * @returns  s [m], or null: nothing is known, or the pumping level stands above the static level or has no flow
 *
 * Range    up to the tested flow or little more; scaling promises too little drawdown beyond it
 * Throws   RangeError when the flow is negative or a tested flow is not positive
 */
export function drawdownAt(
  pumping: PumpingFacts,
  flow: CubicMetresPerSecond,
  staticLevel: Metres | null,
): Metres | null {
  requireNotNegative('drawdownAt', 'flow', flow);
  switch (pumping.kind) {
    case 'test':
      requirePositive('drawdownAt', 'tested flow', pumping.flow);
      return (pumping.drawdown * flow) / pumping.flow;
    case 'level': {
      if (staticLevel === null || pumping.flow === null || pumping.level < staticLevel) return null;
      const drawdown = pumping.level - staticLevel;
      requirePositive('drawdownAt', 'flow of the pumping level', pumping.flow);
      return (drawdown * flow) / pumping.flow;
    }
    case 'steps':
      return drawdownWithLoss(fitWellLoss(pumping.steps), flow);
    case 'aquifer':
      return theisDrawdown({ ...pumping, flow, time: pumping.after });
    case 'yield only':
      return null;
  }
}

/**
 * Depth of the water in the ground beside the pumped well.
 *
 * An aquifer's figures give it by Theis. Where only the well was measured, transmissivity is estimated from flow and
 * drawdown with a storativity of 1e-4, after the tested time or a day, and the Theis cone is scaled so that it meets
 * the drawdown at the wall: a picture of the shape, not a prediction for a neighbour's well. Closer than the wall the
 * water stands as at the wall.
 *
 * @param staticLevel  depth of the water at rest [m]
 * @param drawdown     in the pumped well, at `flow` [m]
 * @param wellRadius   half the hole [m]
 * @param distances    from the well's axis, rising [m]
 * @returns  null where nothing is known of the drawdown or no aquifer fits it
 *
 * Throws   RangeError when drawdown or flow is negative or the radius is not positive
 * Source   Theis (1935); Theis, Brown & Meyer (1963) for the estimate
 */
export function coneDepths(input: {
  readonly staticLevel: Metres;
  readonly drawdown: Metres | null;
  readonly flow: CubicMetresPerSecond;
  readonly pumping: PumpingFacts;
  readonly wellRadius: Metres;
  readonly distances: readonly Metres[];
}): ConePoint[] | null {
  const { staticLevel, drawdown, flow, pumping, wellRadius, distances } = input;
  requireNotNegative('coneDepths', 'flow', flow);
  requirePositive('coneDepths', 'well radius', wellRadius);
  if (pumping.kind === 'yield only' || drawdown === null) return null;
  requireNotNegative('coneDepths', 'drawdown', drawdown);
  if (flow === 0 || drawdown === 0) return distances.map((distance) => ({ distance, depth: staticLevel }));

  const aquifer = pumping.kind === 'aquifer' ? pumping : estimatedAquifer(flow, drawdown, pumping, wellRadius);
  if (aquifer === null) return null;
  const { transmissivity, storativity, after: time, radius: innermost } = aquifer;
  const fallAt = (radius: Metres) =>
    theisDrawdown({ flow, transmissivity, storativity, time, radius: Math.max(radius, innermost) });
  const scale = pumping.kind === 'aquifer' ? 1 : drawdown / fallAt(wellRadius);
  return distances.map((distance) => ({ distance, depth: staticLevel + scale * fallAt(distance) }));
}

function estimatedAquifer(
  flow: CubicMetresPerSecond,
  drawdown: Metres,
  pumping: Exclude<PumpingFacts, { kind: 'aquifer' | 'yield only' }>,
  radius: Metres,
) {
  const after = timeOf(pumping);
  const storativity = GUESSED_STORATIVITY;
  const transmissivity = transmissivityFromSpecificCapacity({ flow, drawdown, time: after, radius, storativity });
  return transmissivity === null ? null : { transmissivity, storativity, after, radius };
}

function timeOf(pumping: Exclude<PumpingFacts, { kind: 'aquifer' | 'yield only' }>): Seconds {
  const after =
    pumping.kind === 'test'
      ? pumping.after
      : pumping.kind === 'steps'
        ? (pumping.steps[pumping.steps.length - 1]?.after ?? null)
        : null;
  return after !== null && after > 0 ? after : USUAL_PUMPING_TIME;
}

/** Distances from the wall outward, evenly spaced on a logarithmic scale, both ends included. */
export function coneDistances(wellRadius: Metres, farthest: Metres, count: number): Metres[] {
  requirePositive('coneDistances', 'well radius', wellRadius);
  if (!(farthest > wellRadius && count >= 2)) {
    throw new RangeError(
      'coneDistances: the farthest distance must lie outside the well, and two points are the least',
    );
  }
  return Array.from({ length: count }, (_, i) => wellRadius * (farthest / wellRadius) ** (i / (count - 1)));
}
