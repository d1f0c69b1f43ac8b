/** Unlike metals in one water: which gives way, how readily, and whether it matters here. */
import type { Ratio, SquareMetres, Volts } from '../si.ts';
import { METALS } from '../tables/metals.ts';
import type { Metal } from '../tables/metals.ts';

/** Potential of a metal in flowing sea water against saturated calomel [V]; the table in `metals.ts`. */
export function potential(metal: Metal): Volts {
  return METALS[metal].potential;
}

/** Difference of two potentials [V]. Ranks couples; it is not a rate. */
export function galvanicDifference(first: Metal, second: Metal): Volts {
  return Math.abs(potential(first) - potential(second));
}

/** The metal of the two that dissolves, the more negative one; null where their potentials are equal. */
export function anodeOf(first: Metal, second: Metal): Metal | null {
  const difference = potential(first) - potential(second);
  if (difference === 0) return null;
  return difference < 0 ? first : second;
}

/** A: harmless even in a harsh place. B: in a normal one. C: beyond both. */
export type CoupleClass = 'A' | 'B' | 'C';

const CLASS_A_LIMIT: Volts = 0.15;
const CLASS_B_LIMIT: Volts = 0.25;
/** Potentials are printed to the hundredth; binary differences of them miss the limit by a last bit. */
const PRINTED_PRECISION: Volts = 1e-9;

/**
 * Class of a couple by its difference: A to 0.15 V, B to 0.25 V, C beyond.
 *
 * Source  limits for harsh and normal places as commonly printed beside the anodic index; common practice
 */
export function coupleClass(first: Metal, second: Metal): CoupleClass {
  const difference = galvanicDifference(first, second);
  if (difference <= CLASS_A_LIMIT + PRINTED_PRECISION) return 'A';
  return difference <= CLASS_B_LIMIT + PRINTED_PRECISION ? 'B' : 'C';
}

/**
 * Mild: conductivity under 500 uS/cm and pH of 7 or more. Aggressive: over 1,500 uS/cm or pH under 7. What lies between, or
 * is not known, is judged as aggressive.
 */
export type WaterClass = 'mild' | 'between' | 'aggressive';

/** 500 and 1,500 uS/cm; a choice, no source. */
const MILD_CONDUCTIVITY = 0.05;
const AGGRESSIVE_CONDUCTIVITY = 0.15;
const NEUTRAL = 7;

/**
 * Class of a water for metals.
 *
 * @param conductivity  S/m; null when unknown
 * @param acidity       pH; null when unknown
 * Throws               RangeError for a negative conductivity or a pH outside 0 to 14
 * Source               pH: guidance on monitoring wells after Driscoll (1986), Groundwater and Wells; conductivity: a choice
 */
export function waterClass({
  conductivity,
  acidity,
}: {
  readonly conductivity: number | null;
  readonly acidity: number | null;
}): WaterClass {
  if ((conductivity !== null && !(conductivity >= 0)) || (acidity !== null && !(acidity >= 0 && acidity <= 14))) {
    throw new RangeError(
      `waterClass: conductivity ${conductivity} S/m, pH ${acidity}; the first must not be negative, ` +
        'the second lies between 0 and 14',
    );
  }
  if ((conductivity !== null && conductivity > AGGRESSIVE_CONDUCTIVITY) || (acidity !== null && acidity < NEUTRAL)) {
    return 'aggressive';
  }
  return conductivity !== null && conductivity < MILD_CONDUCTIVITY && acidity !== null ? 'mild' : 'between';
}

/** How the two parts face the water. `apart`: plastic between them and no wire that joins them. */
export type AreaSituation = 'similar' | 'small noble part' | 'small active part' | 'large noble field' | 'apart';

export type PairVerdict = 'ok' | 'caution' | 'avoid';

/**
 * Whether two metals belong together in a well.
 *
 * Attack goes with the area of the noble part over that of the active one: never make the small part the anode. Zinc is
 * spent first and leaves bare steel; aluminium does not last beside anything. A rule of thumb, not a rate.
 *
 * @param water  what lies between mild and aggressive gets the worse verdict
 * Source        area rule MIL-DTL-14072F, 3.13 and MIL-STD-1250A, 5.6; mild supply waters: Corrosion Engineering Principles
 *               and Practice, pp. 178-179; the verdicts in words are common practice
 */
export function pairVerdict({
  first,
  second,
  areas,
  water,
}: {
  readonly first: Metal;
  readonly second: Metal;
  readonly areas: AreaSituation;
  readonly water: WaterClass;
}): PairVerdict {
  if (areas === 'apart' || first === second) return 'ok';
  if (first === 'aluminium' || second === 'aluminium') return 'avoid';
  const couple = coupleClass(first, second);
  if (couple === 'A') return 'ok';
  const mild = water === 'mild';
  if (areas === 'small active part') return couple === 'C' || !mild ? 'avoid' : 'caution';
  if (areas === 'large noble field') return 'caution';
  if (anodeOf(first, second) === 'zinc') return mild || zincOnSteel(first, second) ? 'caution' : 'avoid';
  return mild ? 'ok' : 'caution';
}

/** The zinc is used up, but it guards the steel meanwhile, and what is left is steel on steel. */
function zincOnSteel(first: Metal, second: Metal): boolean {
  const other = first === 'zinc' ? second : first;
  return other === 'carbon steel' || other === 'cast iron';
}

/** Most lead in wetted surfaces, on average. Source: Safe Drinking Water Act, section 1417. Solder and flux 0.2 %. */
export const LEAD_FREE_LIMIT: Ratio = 0.0025;

/**
 * Average lead of wetted parts, by area.
 *
 *     Σ lead · area/Σ area
 *
 * @returns  [-]; lead free up to `LEAD_FREE_LIMIT`
 * Throws    RangeError without any area and for negative figures
 * Source    Safe Drinking Water Act, section 1417(d)
 */
export function leadAverage(parts: readonly { readonly area: SquareMetres; readonly lead: Ratio }[]): Ratio {
  let area = 0;
  let lead = 0;
  for (const part of parts) {
    if (!(part.area >= 0 && part.lead >= 0)) {
      throw new RangeError(`leadAverage: area ${part.area} m2, lead ${part.lead}; neither may be negative`);
    }
    area += part.area;
    lead += part.area * part.lead;
  }
  if (!(area > 0)) throw new RangeError('leadAverage: no wetted area');
  return lead / area;
}
