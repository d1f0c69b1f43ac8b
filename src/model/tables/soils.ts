import { kerstenFrozen, kerstenUnfrozen, latentHeat, meanHeatCapacity } from '../formulas/soilHeat.ts';
import { btuPerHourFootFahrenheit, poundsPerCubicFoot } from '../units.ts';

/**
 * Soils by typical density and moisture. More water means less frost, because water gives off heat as it freezes: dry
 * gravel is the worst case, wet clay the mildest.
 *
 * Sources  density and water content: chosen within the usual ranges for each soil (gravel and sand 120 to 140 lb/ft³ and
 *          2 to 15 %, silt and clay 90 to 100 lb/ft³ and 5 to 50 %), no source for the exact figures;
 *          conductivity, latent heat and heat capacity: `soilHeat.ts`;
 *          peat and bedrock: from memory, low confidence, and Kersten's equations do not cover them
 */
export interface Soil {
  readonly id: string;
  readonly label: string;
  /** Dry density, kg/m³. */
  readonly dryDensity: number;
  /** Water by dry weight: 0.15 is fifteen percent. */
  readonly water: number;
  /** W/(m K) */
  readonly frozenConductivity: number;
  readonly unfrozenConductivity: number;
  /** J/m³, given off as the water in it freezes. */
  readonly latentHeat: number;
  /** J/(m³ K), mean of frozen and unfrozen. */
  readonly heatCapacity: number;
  readonly confidence: 'usual' | 'low';
}

/** A soil that Kersten's equations cover. */
function mineralSoil(
  id: string,
  label: string,
  grain: 'fine' | 'coarse',
  dryPounds: number,
  waterPercent: number,
): Soil {
  const dryDensity = poundsPerCubicFoot(dryPounds);
  const water = waterPercent / 100;
  return {
    id,
    label,
    dryDensity,
    water,
    frozenConductivity: kerstenFrozen({ grain, dryDensity, water }),
    unfrozenConductivity: kerstenUnfrozen({ grain, dryDensity, water }),
    latentHeat: latentHeat(dryDensity, water),
    heatCapacity: meanHeatCapacity(dryDensity, water),
    confidence: 'usual',
  };
}

/** A ground with conductivities from memory, Btu/(h ft °F). */
function otherGround(
  id: string,
  label: string,
  dryPounds: number,
  waterPercent: number,
  frozen: number,
  unfrozen: number,
): Soil {
  const dryDensity = poundsPerCubicFoot(dryPounds);
  const water = waterPercent / 100;
  return {
    id,
    label,
    dryDensity,
    water,
    frozenConductivity: btuPerHourFootFahrenheit(frozen),
    unfrozenConductivity: btuPerHourFootFahrenheit(unfrozen),
    latentHeat: latentHeat(dryDensity, water),
    heatCapacity: meanHeatCapacity(dryDensity, water),
    confidence: 'low',
  };
}

export const SOILS: readonly Soil[] = [
  mineralSoil('gravelly sand', 'clean gravelly sand, well drained', 'coarse', 125, 4),
  mineralSoil('sand', 'sand, moist, drained', 'coarse', 115, 7),
  mineralSoil('sandy loam', 'sandy loam, loamy or silty sand, moist', 'coarse', 110, 12),
  mineralSoil('silt loam', 'silt, silt loam', 'fine', 100, 20),
  mineralSoil('clay loam', 'clay loam, silty clay loam', 'fine', 95, 25),
  mineralSoil('clay', 'clay, moist', 'fine', 90, 30),
  otherGround('peat', 'peat, organic soil', 20, 200, 0.6, 0.3),
  otherGround('bedrock', 'dry sound rock', 165, 1, 1.7, 1.7),
];

/** What is taken where nobody named the soil: not the worst case, but deeper than most. */
export const USUAL_SOIL = 'sandy loam';

/** A soil by its id or label; null when there is none of that name. */
export function findSoil(text: string): Soil | null {
  const wanted = text.trim().toLowerCase().replaceAll('_', ' ');
  return SOILS.find(({ id, label }) => id === wanted || label === wanted) ?? null;
}
