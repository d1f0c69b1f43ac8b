/** A pipe as a ring of material. */
import type { Metres, SquareMetres } from '../si.ts';
import { WATER_DENSITY } from './hangLoad.ts';

/**
 * Specific gravities. Polyethylene 0.94 to 0.96, PVC 1.38 to 1.42; real walls exceed the minimum, so that real pipe is
 * 2 to 6 % heavier than these make it.
 */
export const SPECIFIC_GRAVITY = { PE: 0.955, PVC: 1.4, steel: 7.85 } as const;

export interface PipeBody {
  readonly outsideDiameter: Metres;
  readonly insideDiameter: Metres;
}

/** Area of the wall, π/4 (D² − d²). Throws RangeError unless the bore is positive and the wall has a thickness. */
export function wallArea({ outsideDiameter, insideDiameter }: PipeBody): SquareMetres {
  if (!(insideDiameter > 0 && outsideDiameter > insideDiameter && outsideDiameter < Infinity)) {
    throw new RangeError(
      `wallArea: outside ${outsideDiameter} m, inside ${insideDiameter} m; the outside must be the larger`,
    );
  }
  return (Math.PI / 4) * (outsideDiameter - insideDiameter) * (outsideDiameter + insideDiameter);
}

/** Area of the bore, π/4 d². */
export function boreArea({ insideDiameter }: Pick<PipeBody, 'insideDiameter'>): SquareMetres {
  if (!(insideDiameter > 0)) throw new RangeError(`boreArea: inside diameter is ${insideDiameter} m, must be positive`);
  return (Math.PI / 4) * insideDiameter * insideDiameter;
}

/**
 * Mass of a pipe from its section.
 *
 *     w = A_w · 62.4 lb/ft³ · specific gravity
 *
 * @returns  kilograms per metre
 * Source    for steel this is the 10.68 (D − t) t lb/ft of ASME B36.10M
 */
export function pipeMassPerLength(body: PipeBody, specificGravity: number): number {
  if (!(specificGravity > 0))
    throw new RangeError(`pipeMassPerLength: specific gravity is ${specificGravity}, must be positive`);
  return wallArea(body) * WATER_DENSITY * specificGravity;
}

/** Mass of a pipe under water, less the water its wall displaces: negative where it floats. Kilograms per metre. */
export function submergedMassPerLength(body: PipeBody, specificGravity: number): number {
  return pipeMassPerLength(body, specificGravity) - wallArea(body) * WATER_DENSITY;
}

/** Mass of the water that fills the bore. Kilograms per metre. */
export function boreWaterPerLength(body: Pick<PipeBody, 'insideDiameter'>): number {
  return boreArea(body) * WATER_DENSITY;
}
