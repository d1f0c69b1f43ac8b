/** Pressure that plastic pipe is rated for, at 23 degC and warmer. */
import type { PipeMaterial } from '../facts.ts';
import type { Celsius, Metres, Pascals, Ratio } from '../si.ts';
import { requirePositive } from './require.ts';
import { toFahrenheit } from '../units.ts';
import { PIPE_MATERIALS } from '../tables/pipeMaterials.ts';

/** Largest working pressure, as a share of the rating, where surge is not computed. Missouri Livestock Watering Systems Handbook, ch. 5. */
export const WORKING_SHARE_WITHOUT_SURGE: Ratio = 0.72;

/**
 * Pressure rating of pipe made to a controlled outside diameter.
 *
 *     P = 2 HDS / (DR - 1),   DR = outside diameter / least wall
 *
 * @param hydrostaticDesignStress  HDS [Pa]
 * @param dimensionRatio           DR [-]
 * @returns  pressure rating at 23 degC [Pa]
 *
 * Range    thin plastic pipe, DR 5 to 41
 * Throws   RangeError when the stress is not positive or DR is 2 or less (no bore)
 * Source   ISO thin-wall equation as in ASTM D3035, appendix; equation from memory
 */
export function ratingFromDimensionRatio(hydrostaticDesignStress: Pascals, dimensionRatio: Ratio): Pascals {
  requirePositive('ratingFromDimensionRatio', 'hydrostatic design stress', hydrostaticDesignStress);
  if (!(dimensionRatio > 2 && dimensionRatio < Infinity)) {
    throw new RangeError(`ratingFromDimensionRatio: dimension ratio is ${dimensionRatio}, must be above 2`);
  }
  return (2 * hydrostaticDesignStress) / (dimensionRatio - 1);
}

/**
 * Pressure rating of pipe made to a controlled inside diameter.
 *
 *     P = 2 HDS / (SIDR + 1),   SIDR = inside diameter / least wall = DR - 2
 *
 * @param hydrostaticDesignStress  HDS [Pa]
 * @param insideDimensionRatio     SIDR [-]
 * @returns  pressure rating at 23 degC [Pa]
 *
 * Range    thin plastic pipe, SIDR 3 to 39
 * Throws   RangeError when an input is not positive
 * Source   ISO thin-wall equation as in ASTM D2239, appendix; equation from memory
 */
export function ratingFromSidr(hydrostaticDesignStress: Pascals, insideDimensionRatio: Ratio): Pascals {
  requirePositive('ratingFromSidr', 'hydrostatic design stress', hydrostaticDesignStress);
  requirePositive('ratingFromSidr', 'SIDR', insideDimensionRatio);
  return (2 * hydrostaticDesignStress) / (insideDimensionRatio + 1);
}

/**
 * Pressure rating of PVC pipe made to a schedule.
 *
 *     P = 2 HDS t / (D - t)
 *
 * @param hydrostaticDesignStress  HDS [Pa]: 2000 psi for PVC 1120
 * @param outsideDiameter          D [m]
 * @param wall                     t, least wall [m]
 * @returns  pressure rating at 23 degC of pipe with plain ends [Pa]; threaded schedule 80 is rated half
 *
 * Range    plastic pipe; threaded schedule 40 PVC is not used
 * Throws   RangeError when an input is not positive or the walls meet
 * Source   ASTM D1785, appendix; equation from memory
 */
export function pvcRating(input: {
  readonly hydrostaticDesignStress: Pascals;
  readonly outsideDiameter: Metres;
  readonly wall: Metres;
}): Pascals {
  const { hydrostaticDesignStress, outsideDiameter, wall } = input;
  requirePositive('pvcRating', 'hydrostatic design stress', hydrostaticDesignStress);
  requirePositive('pvcRating', 'wall', wall);
  if (!(outsideDiameter > 2 * wall && outsideDiameter < Infinity)) {
    throw new RangeError(`pvcRating: outside diameter is ${outsideDiameter}, must be more than two walls of ${wall}`);
  }
  return (2 * hydrostaticDesignStress * wall) / (outsideDiameter - wall);
}

/**
 * Share of the 23 degC rating that warmer pipe keeps.
 *
 * PE goes by steps, PVC along straight lines between the tabled temperatures.
 *
 * @param temperature  of the pipe [degC]
 * @returns  factor [-], 1 at 23 degC and colder; null above the table (38 degC PE, 49 degC PVC), where no rating is printed, and of metal
 *
 * Throws   RangeError when the temperature is not a finite number
 * Source   PE: AWWA M55 (2006), Table 4-6. PVC: PPFA User Bulletin 3-96 at 73 and 80 degF; warmer rows from memory
 */
export function deratingFactor(material: PipeMaterial, temperature: Celsius): Ratio | null {
  if (!Number.isFinite(temperature))
    throw new RangeError(`deratingFactor: temperature is ${temperature}, must be finite`);
  const fahrenheit = toFahrenheit(temperature) - 1e-9; // so that 80 degF stays 80 after the trip through Celsius
  const { derating } = PIPE_MATERIALS[material];
  if (derating === null) return null;
  let [cooler, more] = [-Infinity, 1];
  for (const [warmer, less] of derating.rows) {
    if (fahrenheit <= warmer) {
      if (derating.between === 'steps' || less === more) return less;
      return more + ((fahrenheit - cooler) / (warmer - cooler)) * (less - more);
    }
    [cooler, more] = [warmer, less];
  }
  return null;
}

/**
 * Share of the 20 degC rating that warmer PE pipe of the ISO standards keeps: 1 at 20, 0.87 at 30, 0.74 at 40 degC, straight
 * lines between.
 *
 * @returns  factor [-], 1 at 20 degC and colder; null above 40 degC
 * Throws    RangeError when the temperature is not a finite number
 * Source    ISO 4427-1, annex A (as ISO 13761), from memory
 */
export function isoDeratingFactor(temperature: Celsius): Ratio | null {
  if (!Number.isFinite(temperature)) {
    throw new RangeError(`isoDeratingFactor: temperature is ${temperature}, must be finite`);
  }
  return temperature > 40 ? null : 1 - 0.013 * Math.max(temperature - 20, 0);
}
