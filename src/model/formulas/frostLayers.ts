import type { Metres } from '../si.ts';
import type { Soil } from '../tables/soils.ts';
import { berggrenLambda, berggrenNumbers, meanConductivity } from './berggren.ts';
import type { FreezingSeason } from './berggren.ts';

const SECONDS_PER_DAY = 86_400;

/** A layer from the surface down. Insulation has a thermal resistance over its thickness and no water to freeze. */
export type FrostLayer =
  | { readonly kind: 'soil'; readonly thickness: Metres; readonly soil: Soil }
  | {
      readonly kind: 'insulation';
      readonly thickness: Metres;
      /** m² K/W over the whole layer */ readonly resistance: number;
    };

/**
 * Frost depth through layers of soil and insulation board.
 *
 *     index used up in layer i:  nF_i = L_i d_i / (86 400 λ²) (ΣR above + R_i/2),   R = d/k
 *
 * The depth is where these add up to the season's index. λ comes from the mean latent heat and heat capacity of the soil
 * above the trial depth, boards left out; one λ for a trial depth is a choice without a source. For one soil this is
 * `berggrenDepth`.
 *
 * @param layers  from the surface down; below the last one its own ground goes on
 * @returns       metres
 * Throws         RangeError as `berggrenDepth`, and unless the last layer is soil
 * Source         Corps of Engineers layer method (TM 5-852-6), from memory
 */
export function layeredFrostDepth(freezing: FreezingSeason & { readonly layers: readonly FrostLayer[] }): Metres {
  const { layers, surfaceIndex } = freezing;
  if (layers.at(-1)?.kind !== 'soil') throw new RangeError('layeredFrostDepth: the last layer must be soil');
  let low = 0;
  let high = 1;
  while (indexToFreeze(freezing, high) < surfaceIndex) high *= 2;
  for (let halving = 0; halving < 50; halving++) {
    const middle = (low + high) / 2;
    if (indexToFreeze(freezing, middle) < surfaceIndex) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Surface index that freezes the layers down to a depth, K·day. */
function indexToFreeze(freezing: FreezingSeason & { readonly layers: readonly FrostLayer[] }, depth: Metres): number {
  const { layers } = freezing;
  let top = 0;
  let resistance = 0;
  let soilDepth = 0;
  let latentHeat = 0; // over the depth, J/m²
  let heatCapacity = 0; // over the depth, J/(m² K)
  let work = 0; // Σ L d (ΣR + R/2)
  layers.forEach((layer, place) => {
    const whole = place === layers.length - 1 ? Infinity : layer.thickness;
    const thickness = Math.min(whole, depth - top);
    if (!(thickness > 0)) return;
    top += thickness;
    if (layer.kind === 'insulation') {
      resistance += (layer.resistance * thickness) / layer.thickness;
      return;
    }
    const own = thickness / meanConductivity(layer.soil);
    work += layer.soil.latentHeat * thickness * (resistance + own / 2);
    resistance += own;
    soilDepth += thickness;
    latentHeat += layer.soil.latentHeat * thickness;
    heatCapacity += layer.soil.heatCapacity * thickness;
  });
  if (soilDepth === 0) return 0;
  const mean = { latentHeat: latentHeat / soilDepth, heatCapacity: heatCapacity / soilDepth };
  return work / (SECONDS_PER_DAY * berggrenLambda(berggrenNumbers(freezing, mean)) ** 2);
}

/**
 * Width of a flat insulation sheet over a buried pipe.
 *
 *     W = D + 2 (F − X) − 0.3 m
 *
 * @param pipeOutsideDiameter  D
 * @param frostDepth           F
 * @param sheetDepth           X, above the frost depth
 * @returns                    metres
 * Throws                      RangeError where the sheet lies below the frost or the formula gives no width
 * Source                      Ontario Building Code, explanatory note B-7.3.5.4.(1)
 */
export function insulationWidth({
  pipeOutsideDiameter,
  frostDepth,
  sheetDepth,
}: {
  readonly pipeOutsideDiameter: Metres;
  readonly frostDepth: Metres;
  readonly sheetDepth: Metres;
}): Metres {
  const width = pipeOutsideDiameter + 2 * (frostDepth - sheetDepth) - 0.3;
  if (!(pipeOutsideDiameter > 0 && sheetDepth >= 0 && width > 0)) {
    throw new RangeError(
      `insulationWidth: pipe ${pipeOutsideDiameter} m, frost ${frostDepth} m, sheet at ${sheetDepth} m; ` +
        'the sheet must lie above the frost depth by enough to have a width',
    );
  }
  return width;
}
