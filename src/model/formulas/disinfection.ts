/** Chlorine for a well. */
import type { CubicMetres, Kilograms, Ratio } from '../si.ts';
import { requireNotNegative, requirePositive } from './require.ts';

/** Mass of bleach per volume that its label takes for granted [kg/m³]: 5.25 % is 52.5 g of chlorine a litre. */
const LABEL_DENSITY = 1000;

/**
 * Liquid bleach for a dose.
 *
 *     V_bleach = V_water C / (1000 P)
 *
 * @param waterVolume  V_water [m³]
 * @param target       C, chlorine wanted [kg/m³]: 100 mg/L is 0.1
 * @param strength     P, available chlorine on the label [-]: 5.25 % is 0.0525
 * @returns  V_bleach [m³]
 *
 * Range    fresh, unscented bleach
 * Error    15 %: density, and age of the bleach
 * Throws   RangeError when volume or target is negative or the strength is not between 0 and 1
 * Source   proportion; agrees with Illinois Administrative Code 77, Part 925.50 (3 cups of 5.25 % to 100 gal for 100 mg/L)
 */
export function chlorineProduct(input: {
  readonly waterVolume: CubicMetres;
  readonly target: number;
  readonly strength: Ratio;
}): CubicMetres {
  requireNotNegative('chlorineProduct', 'water volume', input.waterVolume);
  requireNotNegative('chlorineProduct', 'target', input.target);
  requireStrength('chlorineProduct', input.strength);
  return (input.waterVolume * input.target) / (LABEL_DENSITY * input.strength);
}

/** The way back: chlorine [kg/m³] that a volume of bleach gives the water. */
export function chlorineStrength(input: {
  readonly bleachVolume: CubicMetres;
  readonly waterVolume: CubicMetres;
  readonly strength: Ratio;
}): number {
  requireNotNegative('chlorineStrength', 'bleach volume', input.bleachVolume);
  requirePositive('chlorineStrength', 'water volume', input.waterVolume);
  requireStrength('chlorineStrength', input.strength);
  return (input.bleachVolume * LABEL_DENSITY * input.strength) / input.waterVolume;
}

/**
 * Dry hypochlorite for a dose.
 *
 *     m = V_water C / f
 *
 * @param strength  f, available chlorine [-]: 0.65 to 0.70
 * @returns  m [kg]
 *
 * Throws   as `chlorineProduct`
 * Source   proportion; agrees with Illinois Administrative Code 77, Part 925.50 (2 oz of 70 % to 100 gal for 100 mg/L)
 */
export function chlorineGranules(input: {
  readonly waterVolume: CubicMetres;
  readonly target: number;
  readonly strength: Ratio;
}): Kilograms {
  requireNotNegative('chlorineGranules', 'water volume', input.waterVolume);
  requireNotNegative('chlorineGranules', 'target', input.target);
  requireStrength('chlorineGranules', input.strength);
  return (input.waterVolume * input.target) / input.strength;
}

function requireStrength(where: string, strength: Ratio): void {
  if (!(strength > 0 && strength <= 1))
    throw new RangeError(`${where}: strength is ${strength}, must be above 0 and at most 1`);
}
