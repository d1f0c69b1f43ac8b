/** Heat in soil: what it gives off when it freezes, what it holds and how it conducts. */
import type { Ratio } from '../si.ts';
import { btuPerHourFootFahrenheit, toPoundsPerCubicFoot } from '../units.ts';

/** Heat of fusion of water, J/kg: 144 Btu/lb, the rounded figure that the Corps manuals print. */
export const HEAT_OF_FUSION = 144 * 2326;

/** J/(kg K) in one Btu/(lb °F). */
const HEAT_CAPACITY_OF_WATER = 4186.8;

/**
 * Latent heat of the water in a soil.
 *
 *     L = 334 900 ρ_d w,   printed as 144 γ_d w/100  Btu/ft³
 *
 * @param dryDensity  ρ_d [kg/m³]
 * @param water       w, water by dry weight [-]
 * @returns           J/m³
 * Throws             RangeError for a density that is not positive or a negative water content
 * Source             TM 5-852-6 / UFC 3-130-06; the formula also in UFC 3-130-05
 */
export function latentHeat(dryDensity: number, water: Ratio): number {
  requireSoil('latentHeat', dryDensity, water);
  return HEAT_OF_FUSION * dryDensity * water;
}

/**
 * Heat capacity of a soil, mean of frozen and unfrozen.
 *
 *     C = γ_d (0.17 + 0.75 w/100)  Btu/(ft³ °F); 0.75 is the mean of ice 0.5 and water 1.0
 *
 * @returns  J/(m³ K)
 * Source    TM 5-852-6; UFC 3-130-05 takes 0.20 for the mineral part, which moves the frost depth by less than 1 %
 */
export function meanHeatCapacity(dryDensity: number, water: Ratio): number {
  requireSoil('meanHeatCapacity', dryDensity, water);
  return dryDensity * (0.17 + 0.75 * water) * HEAT_CAPACITY_OF_WATER;
}

export interface MineralSoil {
  /** Fine: silt and clay. Coarse: sand and gravel. */
  readonly grain: 'fine' | 'coarse';
  /** kg/m³ */
  readonly dryDensity: number;
  /** By dry weight. */
  readonly water: Ratio;
}

/**
 * Conductivity of unfrozen soil.
 *
 *     fine    k = (0.9 log₁₀ w − 0.2) 10^(0.01 γ),   coarse  k = (0.7 log₁₀ w + 0.4) 10^(0.01 γ)
 *
 * in Btu in/(h ft² °F), γ dry density in lb/ft³, w water in percent.
 *
 * @returns  W/(m K)
 * Range     water from 7 % (fine) or 1 % (coarse) on; about 25 %
 * Throws    RangeError where the logarithm leaves nothing, and for figures that are not positive
 * Source    Kersten (1949), Thermal Properties of Soils, Univ. of Minnesota Eng. Exp. Station Bulletin 28
 */
export function kerstenUnfrozen({ grain, dryDensity, water }: MineralSoil): number {
  requireSoil('kerstenUnfrozen', dryDensity, water);
  const logarithm = Math.log10(100 * water);
  const factor = grain === 'fine' ? 0.9 * logarithm - 0.2 : 0.7 * logarithm + 0.4;
  if (!(factor > 0)) {
    throw new RangeError(
      `kerstenUnfrozen: water content ${water} is too low for ${grain} soil; the equation gives nothing`,
    );
  }
  return factor * 10 ** (0.01 * toPoundsPerCubicFoot(dryDensity)) * WATTS_PER_KERSTEN;
}

/**
 * Conductivity of frozen soil.
 *
 *     fine    k = 0.01 · 10^(0.022 γ) + 0.085 · 10^(0.008 γ) w,   coarse  k = 0.076 · 10^(0.013 γ) + 0.032 · 10^(0.0146 γ) w
 *
 * in Btu in/(h ft² °F), γ in lb/ft³, w in percent. In dry coarse soil it can be below the unfrozen figure; that is right.
 *
 * @returns  W/(m K)
 * Range, throws and source as `kerstenUnfrozen`
 */
export function kerstenFrozen({ grain, dryDensity, water }: MineralSoil): number {
  requireSoil('kerstenFrozen', dryDensity, water);
  const density = toPoundsPerCubicFoot(dryDensity);
  const percent = 100 * water;
  const printed =
    grain === 'fine'
      ? 0.01 * 10 ** (0.022 * density) + 0.085 * 10 ** (0.008 * density) * percent
      : 0.076 * 10 ** (0.013 * density) + 0.032 * 10 ** (0.0146 * density) * percent;
  return printed * WATTS_PER_KERSTEN;
}

/** W/(m K) in one Btu in/(h ft² °F), the unit Kersten printed. */
const WATTS_PER_KERSTEN = btuPerHourFootFahrenheit(1) / 12;

function requireSoil(name: string, dryDensity: number, water: Ratio): void {
  if (!(dryDensity > 0 && dryDensity < Infinity && water >= 0 && water < Infinity)) {
    throw new RangeError(
      `${name}: dry density ${dryDensity} kg/m3, water ${water}; the first must be positive, ` +
        'the second must not be negative',
    );
  }
}
