/** Depth of freezing in one soil: Stefan's upper bound and the modified Berggren equation. */
import type { Celsius, Metres, Ratio } from '../si.ts';
import type { Soil } from '../tables/soils.ts';
import { erf, erfc } from './errorFunction.ts';

const SECONDS_PER_DAY = 86_400;

/**
 * Stefan's frost depth: all cold goes into freezing the water. An upper bound.
 *
 *     X = √(172 800 k nF / L),   printed as √(48 k nF / L) in feet, Btu and °F-days
 *
 * @param surfaceIndex  nF, freezing index at the surface [K·day]
 * @param conductivity  k, mean of frozen and unfrozen [W/(m K)]
 * @param latentHeat    L [J/m³]
 * @returns             metres
 * Throws               RangeError unless conductivity and latent heat are positive and the index is not negative
 * Source               UFC 3-130-06 (TM 5-852-6), section 3
 */
export function stefanDepth({
  surfaceIndex,
  conductivity,
  latentHeat,
}: {
  readonly surfaceIndex: number;
  readonly conductivity: number;
  readonly latentHeat: number;
}): Metres {
  if (!(surfaceIndex >= 0 && conductivity > 0 && latentHeat > 0)) {
    throw new RangeError(
      `stefanDepth: index ${surfaceIndex} K day, conductivity ${conductivity} W/(m K), latent heat ` +
        `${latentHeat} J/m3; the index must not be negative, the others must be positive`,
    );
  }
  return Math.sqrt((2 * SECONDS_PER_DAY * conductivity * surfaceIndex) / latentHeat);
}

/**
 * Correction λ of the modified Berggren equation: Neumann's solution with equal properties frozen and unfrozen.
 *
 *     exp(−γ²)/erf γ − α exp(−γ²)/erfc γ = √π γ/μ,   λ = γ √(2/μ)
 *
 * @param thermalRatio  α = T_m / (nF/d) [-]: mean annual temperature over the mean cold of the season
 * @param fusion        μ = (nF/d) C/L [-]
 * @returns             [-], between 0 and 1
 *
 * Error    against 95 points read off the published chart: mean +0.0014, largest 0.010
 * Throws   RangeError for a negative α, for μ that is not positive, and for μ so large that γ would pass 4
 * Source   Aldrich & Paynter, in CRREL Special Report 104 (1966), Figure 1
 */
export function berggrenLambda({ thermalRatio, fusion }: BerggrenNumbers): Ratio {
  requireNumbers('berggrenLambda', thermalRatio, fusion);
  const excess = (gamma: number): number => {
    const bell = Math.exp(-gamma * gamma);
    return bell / erf(gamma) - (thermalRatio * bell) / erfc(gamma) - (Math.sqrt(Math.PI) * gamma) / fusion;
  };
  let low = 1e-9;
  let high = 4;
  if (excess(high) > 0) throw new RangeError(`berggrenLambda: fusion parameter ${fusion} is too large`);
  // The left side less the right side falls steadily with gamma, so halving cannot miss.
  for (let halving = 0; halving < 44; halving++) {
    const middle = (low + high) / 2;
    if (excess(middle) > 0) low = middle;
    else high = middle;
  }
  return ((low + high) / 2) * Math.sqrt(2 / fusion);
}

/**
 * The same λ without iteration, from the series of Neumann's equation.
 *
 *     a = 1 + μ/3 + (2/π) α μ,   b = α √(2μ/π),   λ = (√(b² + 4a) − b) / (2a)
 *
 * Error    at most 0.004 for α to 7 and μ to 0.5, 0.011 up to μ = 1
 * Throws   RangeError for a negative α and for μ that is not positive
 * Source   derived from the equation of `berggrenLambda`
 */
export function berggrenLambdaExplicit({ thermalRatio, fusion }: BerggrenNumbers): Ratio {
  requireNumbers('berggrenLambdaExplicit', thermalRatio, fusion);
  const a = 1 + fusion / 3 + (2 / Math.PI) * thermalRatio * fusion;
  const b = thermalRatio * Math.sqrt((2 * fusion) / Math.PI);
  return (Math.sqrt(b * b + 4 * a) - b) / (2 * a);
}

export interface BerggrenNumbers {
  readonly thermalRatio: Ratio;
  readonly fusion: Ratio;
}

/** What freezes the ground, at its surface. */
export interface FreezingSeason {
  /** nF, freezing index at the surface [K·day], positive. */
  readonly surfaceIndex: number;
  /** T_m, above freezing. Of the air, which is a little colder than the ground and so on the cautious side. */
  readonly meanAnnual: Celsius;
  /** d, length of the freezing season [days]. */
  readonly season: number;
}

/**
 * α and μ of a season in a ground.
 *
 *     v_s = nF/d,   α = T_m/v_s,   μ = v_s C/L
 *
 * Throws  RangeError unless index, season, mean temperature and latent heat are positive
 * Source  UFC 3-130-06 (TM 5-852-6), section 3
 */
export function berggrenNumbers(
  { surfaceIndex, meanAnnual, season }: FreezingSeason,
  { latentHeat, heatCapacity }: Pick<Soil, 'latentHeat' | 'heatCapacity'>,
): BerggrenNumbers {
  if (!(surfaceIndex > 0 && meanAnnual > 0 && season > 0 && latentHeat > 0 && heatCapacity > 0)) {
    throw new RangeError(
      `berggrenNumbers: index ${surfaceIndex} K day, mean ${meanAnnual} degC, season ${season} days, ` +
        `latent heat ${latentHeat} J/m3; all must be positive`,
    );
  }
  const meanCold = surfaceIndex / season;
  return { thermalRatio: meanAnnual / meanCold, fusion: (meanCold * heatCapacity) / latentHeat };
}

/**
 * Frost depth in one soil by the modified Berggren equation.
 *
 *     X = λ √(172 800 k nF / L),   k mean of frozen and unfrozen
 *
 * @returns  metres
 * Range     seasonal frost: mean annual temperature above freezing; within about 25 % of what is met in the ground
 * Throws    RangeError as `berggrenNumbers` and `berggrenLambda`
 * Source    UFC 3-130-06 (TM 5-852-6), section 3
 */
export function berggrenDepth(freezing: FreezingSeason & { readonly soil: Soil }): Metres {
  const { soil, surfaceIndex } = freezing;
  const lambda = berggrenLambda(berggrenNumbers(freezing, soil));
  return lambda * stefanDepth({ surfaceIndex, conductivity: meanConductivity(soil), latentHeat: soil.latentHeat });
}

/** Mean of frozen and unfrozen, W/(m K): what the Corps manuals put into the equation. */
export function meanConductivity({ frozenConductivity, unfrozenConductivity }: Soil): number {
  return (frozenConductivity + unfrozenConductivity) / 2;
}

function requireNumbers(name: string, thermalRatio: Ratio, fusion: Ratio): void {
  if (!(thermalRatio >= 0 && thermalRatio < Infinity && fusion > 0 && fusion < Infinity)) {
    throw new RangeError(
      `${name}: thermal ratio ${thermalRatio}, fusion parameter ${fusion}; the first must not be ` +
        'negative, the second must be positive',
    );
  }
}
