import type { Metres, Newtons } from '../si.ts';
import { feet, inches, poundsForce, poundsMass } from '../units.ts';

/**
 * Three-strand ropes, new: diameter in inches, strength in pounds.
 *
 * Sources  polypropylene: published minimum breaking strength (the Cordage Institute's standard CI 1301 was not at hand);
 *          polyester: published average, of which nine tenths is taken as the minimum (from memory)
 */
export interface Rope {
  /** "1/4 in" */
  readonly name: string;
  readonly diameterInches: number;
  readonly breakingPounds: number;
  readonly poundsPerHundredFeet: number | null;
}

export type RopeMaterial = 'polypropylene' | 'polyester';

const POLYESTER_MINIMUM_SHARE = 0.9;

const rope = (
  name: string,
  diameterInches: number,
  breakingPounds: number,
  poundsPerHundredFeet: number | null,
): Rope => ({ name, diameterInches, breakingPounds, poundsPerHundredFeet });

export const ROPES: Readonly<Record<RopeMaterial, readonly Rope[]>> = {
  polypropylene: [
    rope('3/16 in', 0.1875, 720, 0.7),
    rope('1/4 in', 0.25, 1125, 1.2),
    rope('5/16 in', 0.3125, 1710, 1.8),
    rope('3/8 in', 0.375, 2430, 2.8),
    rope('7/16 in', 0.4375, 3150, 3.8),
    rope('1/2 in', 0.5, 3780, 4.7),
    rope('9/16 in', 0.5625, 4590, 6.1),
    rope('5/8 in', 0.625, 5580, 7.5),
    rope('3/4 in', 0.75, 7650, 10.7),
  ],
  polyester: [
    rope('3/16 in', 0.1875, POLYESTER_MINIMUM_SHARE * 1000, null),
    rope('1/4 in', 0.25, POLYESTER_MINIMUM_SHARE * 1650, null),
    rope('5/16 in', 0.3125, POLYESTER_MINIMUM_SHARE * 2550, null),
    rope('3/8 in', 0.375, POLYESTER_MINIMUM_SHARE * 3700, null),
    rope('7/16 in', 0.4375, POLYESTER_MINIMUM_SHARE * 5000, null),
    rope('1/2 in', 0.5, POLYESTER_MINIMUM_SHARE * 6400, null),
    rope('5/8 in', 0.625, POLYESTER_MINIMUM_SHARE * 10400, null),
  ],
};

/** Widest difference at which a diameter still counts as a tabulated size: metric names are rounded (6 mm, 10 mm). */
const SIZE_ROUNDING: Metres = inches(1 / 64) + 1e-6;

/**
 * Least breaking strength of a new rope.
 *
 * @param material  as written in a plan
 * @param diameter  within 1/64 in of a tabulated size, else the next thinner one counts
 * @returns         newtons; null for a material or a diameter that the table does not cover
 */
export function ropeStrength({
  material,
  diameter,
}: {
  readonly material: string;
  readonly diameter: Metres;
}): Newtons | null {
  const row = ropeOf(material, diameter);
  return row === null ? null : poundsForce(row.breakingPounds);
}

/** Mass of a rope, kilograms per metre; null where the table does not say. */
export function ropeMassPerLength({
  material,
  diameter,
}: {
  readonly material: string;
  readonly diameter: Metres;
}): number | null {
  const mass = ropeOf(material, diameter)?.poundsPerHundredFeet ?? null;
  return mass === null ? null : poundsMass(mass) / feet(100);
}

/** Thinnest tabulated rope with at least this strength; null when none is strong enough. */
export function thinnestRope(material: RopeMaterial, strength: Newtons): Rope | null {
  return ROPES[material].find((row) => poundsForce(row.breakingPounds) >= strength) ?? null;
}

function ropeOf(material: string, diameter: Metres): Rope | null {
  if (!(diameter > 0)) throw new RangeError(`ropeStrength: diameter is ${diameter} m, must be positive`);
  const name = material.trim().toLowerCase();
  if (name !== 'polypropylene' && name !== 'polyester') return null;
  return ROPES[name].findLast((row) => inches(row.diameterInches) <= diameter + SIZE_ROUNDING) ?? null;
}
