/** Pull in the wall of the drop pipe and on its joints. */
import type { Metres, Newtons, Pascals, Ratio, SquareMetres } from '../si.ts';
import { WATER_WEIGHT } from './hangLoad.ts';

/**
 * Pull in the pipe wall just under the suspension.
 *
 *     N = T + p A_i
 *
 * @param load      T, load on the suspension (`hangLoad`) [N]
 * @param pressure  p inside at the top [Pa]: pressure pulls on the wall, not on the suspension
 * @param boreArea  A_i
 * @returns         newtons
 * Throws           RangeError for a negative pressure or bore
 * Source           balance of forces on the closed string
 */
export function wallTension({
  load,
  pressure,
  boreArea,
}: {
  readonly load: Newtons;
  readonly pressure: Pascals;
  readonly boreArea: SquareMetres;
}): Newtons {
  if (!(pressure >= 0 && boreArea >= 0 && Number.isFinite(load))) {
    throw new RangeError(
      `wallTension: load ${load} N, pressure ${pressure} Pa, bore ${boreArea} m2; the last two must not be negative`,
    );
  }
  return load + pressure * boreArea;
}

/**
 * Stress along the pipe from that pull, N/A_w. For polyethylene compare it with the hydrostatic design stress of the
 * grade, 800 psi (PE3608) or 1,000 psi (PE4710).
 *
 * Throws  RangeError unless the wall area is positive
 */
export function axialStress({
  tension,
  wallArea,
}: {
  readonly tension: Newtons;
  readonly wallArea: SquareMetres;
}): Pascals {
  if (!(wallArea > 0)) throw new RangeError(`axialStress: wall area is ${wallArea} m2, must be positive`);
  return tension / wallArea;
}

/**
 * Force that pulls a joint apart at the pump. It does not depend on how deep the pump hangs.
 *
 *     F = W + (p + γ h) A_i
 *
 * @param weightBelow  W, what hangs below the joint, less its buoyancy [N]
 * @param pressureTop  p inside at the suspension [Pa]
 * @param waterDepth   h, level outside below the suspension
 * @param boreArea     A_i
 * @returns            newtons
 * Throws              RangeError for a negative figure
 * Source              balance of forces on the closed end below the joint
 */
export function jointForce({
  weightBelow,
  pressureTop,
  waterDepth,
  boreArea,
}: {
  readonly weightBelow: Newtons;
  readonly pressureTop: Pascals;
  readonly waterDepth: Metres;
  readonly boreArea: SquareMetres;
}): Newtons {
  if (!(weightBelow >= 0 && pressureTop >= 0 && waterDepth >= 0 && boreArea >= 0)) {
    throw new RangeError(
      `jointForce: weight ${weightBelow} N, pressure ${pressureTop} Pa, water ${waterDepth} m, bore ` +
        `${boreArea} m2; none may be negative`,
    );
  }
  return weightBelow + (pressureTop + WATER_WEIGHT * waterDepth) * boreArea;
}

/**
 * Pull that polyethylene pipe may be drawn with for a short time at 73 °F.
 *
 *     ATL = f_y f_t T_y π D² (1/DR − 1/DR²)
 *
 * @param yieldStrength  T_y, 3,000 to 3,500 psi for pipe grades (from memory) [Pa]
 * @param designFactor   f_y, 0.40
 * @param timeFactor     f_t: 1.0, 0.95, 0.91 for a pull of 1, 12, 24 hours
 * @returns              newtons
 * Throws                RangeError unless the figures are positive and DR is above 2
 * Source                ASTM F1804; factors from memory
 */
export function allowablePull({
  outsideDiameter,
  dimensionRatio,
  yieldStrength,
  designFactor = 0.4,
  timeFactor,
}: {
  readonly outsideDiameter: Metres;
  readonly dimensionRatio: Ratio;
  readonly yieldStrength: Pascals;
  readonly designFactor?: Ratio;
  readonly timeFactor: Ratio;
}): Newtons {
  if (!(outsideDiameter > 0 && dimensionRatio > 2 && yieldStrength > 0 && designFactor > 0 && timeFactor > 0)) {
    throw new RangeError(
      `allowablePull: diameter ${outsideDiameter} m, DR ${dimensionRatio}, yield ${yieldStrength} Pa; ` +
        'all must be positive and DR above 2',
    );
  }
  const wall = Math.PI * outsideDiameter ** 2 * (1 / dimensionRatio - 1 / dimensionRatio ** 2);
  return designFactor * timeFactor * yieldStrength * wall;
}
