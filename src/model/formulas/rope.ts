/** What a rope to the pump can bear. It may catch a slipping string once; it is never lifting gear. */
import type { Metres, Newtons, Ratio } from '../si.ts';

/** Strength left in a knotted rope; a splice keeps 0.9 (from memory). Source: Cordage Institute CI 1401-06, knots take up to 50 %. */
export const KNOT_EFFICIENCY: Ratio = 0.5;
/** Least and most usual factor between strength and load. Source: Cordage Institute CI 1401-06. */
export const DESIGN_FACTOR = { least: 5, most: 12 } as const;
/** Stretch of polypropylene as it breaks, 0.20 to 0.25; from general data. */
export const POLYPROPYLENE_ELONGATION: Ratio = 0.2;

/**
 * Strength of a rope over its load.
 *
 *     f = S η/W
 *
 * @param knotEfficiency  η, 0.5 knotted
 * @returns               [-]
 * Range                  new rope, steady load
 * Throws                 RangeError unless load and strength are positive
 * Source                 Cordage Institute CI 1401-06
 */
export function ropeFactor({
  breakingStrength,
  load,
  knotEfficiency = KNOT_EFFICIENCY,
}: {
  readonly breakingStrength: Newtons;
  readonly load: Newtons;
  readonly knotEfficiency?: Ratio;
}): Ratio {
  requirePositive('ropeFactor', breakingStrength, load, knotEfficiency);
  return (breakingStrength * knotEfficiency) / load;
}

/**
 * Load that leaves a design factor.
 *
 *     W = S η/f
 *
 * @returns  newtons
 * Source    Cordage Institute CI 1401-06
 */
export function ropeLoadLimit({
  breakingStrength,
  designFactor,
  knotEfficiency = KNOT_EFFICIENCY,
}: {
  readonly breakingStrength: Newtons;
  readonly designFactor: Ratio;
  readonly knotEfficiency?: Ratio;
}): Newtons {
  requirePositive('ropeLoadLimit', breakingStrength, designFactor, knotEfficiency);
  return (breakingStrength * knotEfficiency) / designFactor;
}

/** Breaking strength that a load needs: `ropeLoadLimit` turned round. Newtons. */
export function requiredRopeStrength({
  load,
  designFactor,
  knotEfficiency = KNOT_EFFICIENCY,
}: {
  readonly load: Newtons;
  readonly designFactor: Ratio;
  readonly knotEfficiency?: Ratio;
}): Newtons {
  requirePositive('requiredRopeStrength', load, designFactor, knotEfficiency);
  return (load * designFactor) / knotEfficiency;
}

/** Pull per metre of stretch of a rope taken as linear up to its break: k of `peakOnSlackRope`. Newtons per metre. */
export function ropeStiffness({
  breakingStrength,
  ropeLength,
  elongationAtBreak = POLYPROPYLENE_ELONGATION,
}: {
  readonly breakingStrength: Newtons;
  readonly ropeLength: Metres;
  readonly elongationAtBreak?: Ratio;
}): number {
  requirePositive('ropeStiffness', breakingStrength, ropeLength, elongationAtBreak);
  return breakingStrength / (elongationAtBreak * ropeLength);
}

/**
 * Peak pull when a load falls onto a slack rope.
 *
 *     k = S/(ε L),   F = W (1 + √(1 + 2 k s/W))
 *
 * @param load               W
 * @param slack              s; without any the peak is still twice the load
 * @param ropeLength         L
 * @param breakingStrength   S
 * @param elongationAtBreak  ε [-]
 * @returns                  newtons
 * Range                     rope taken as linear, drag of the water left out: on the cautious side
 * Throws                    RangeError for a negative slack and unless the others are positive
 * Source                    textbook balance of energy
 */
export function peakOnSlackRope({
  load,
  slack,
  ropeLength,
  breakingStrength,
  elongationAtBreak = POLYPROPYLENE_ELONGATION,
}: {
  readonly load: Newtons;
  readonly slack: Metres;
  readonly ropeLength: Metres;
  readonly breakingStrength: Newtons;
  readonly elongationAtBreak?: Ratio;
}): Newtons {
  if (!(load > 0)) throw new RangeError(`peakOnSlackRope: load is ${load} N, must be positive`);
  if (!(slack >= 0)) throw new RangeError(`peakOnSlackRope: slack is ${slack} m, must not be negative`);
  const stiffness = ropeStiffness({ breakingStrength, ropeLength, elongationAtBreak });
  return load * (1 + Math.sqrt(1 + (2 * stiffness * slack) / load));
}

function requirePositive(name: string, first: number, second: number, third: number): void {
  if (!(first > 0 && second > 0 && third > 0 && first * second * third < Infinity)) {
    throw new RangeError(`${name}: got ${first}, ${second}, ${third}; all must be positive`);
  }
}
