import type { Metres, SquareMetres } from '../si.ts';
import { conductorOf } from '../tables/conductors.ts';
import { metricConductorOf } from '../tables/metricConductors.ts';
import { isMetricWire } from '../tables/wireSizes.ts';
import type { WireSize } from '../tables/wireSizes.ts';
import { feet, inches, poundsMass, toInches } from '../units.ts';

/**
 * Flat jacketed pump cable as a model: insulated strands side by side in one jacket that fills the gaps, all
 * conductors alike, the ground among them.
 *
 *     thickness t = d + 2 i + 2 j,   width = n (d + 2 i) + 2 j,   section = (width − t) t + π/4 t²
 *     copper = n · CM · 10⁻⁶ · π/4 · 1.02 · 8.89 · 62.4/144  lb/ft,   plastic = (section − n π/4 d²) · 1.40 · 62.4/144
 *
 * d strand diameter, i insulation, j jacket [in], n conductors with the ground, CM circular mils; 1.02 for the lay of
 * the strands, 8.89 and 1.40 the specific gravities of copper and PVC.
 *
 * Range    real cable differs by 15 %. Pump cable of 4 and 2 AWG is rare: those figures are the same model with the
 *          insulation and jacket of 6 AWG.
 * Source   strand diameter and area NFPA 70 (NEC), Chapter 9, Table 8; copper density NBS Handbook 100 (1966);
 *          insulation and jacket thickness UL 83, from memory. Of mm2 the strand diameter is 1.14 times that of a
 *          solid conductor of the nominal area, as in Table 8; thicknesses from memory
 */
interface CableSection {
  readonly massPerLength: number;
  readonly area: SquareMetres;
}

const COPPER_SPECIFIC_GRAVITY = 8.89;
const PVC_SPECIFIC_GRAVITY = 1.4;
const STRANDING_FACTOR = 1.02;
/** Pounds per foot of a bar of water one square inch in section. */
const WATER_POUNDS_PER_FOOT = 62.4 / 144;

/** Diameter of stranded over solid copper of the same area: 0.073 to 0.0641 in for 14 AWG, and so on. NEC Chapter 9, Table 8. */
const STRANDED_OVER_SOLID = 1.14;
const CIRCULAR_MILS_PER_SQUARE_INCH = 1e6 / (Math.PI / 4);

const INSULATION_INCHES: Readonly<Record<number, number>> = { 14: 0.03, 12: 0.03, 10: 0.03, 8: 0.045 };
const JACKET_INCHES: Readonly<Record<number, number>> = { 14: 0.03, 12: 0.03, 10: 0.03 };
const THICK_INSULATION_INCHES = 0.06;
const THICK_JACKET_INCHES = 0.045;

/**
 * Mass of pump cable with its ground wire; the model above.
 *
 * @param wires  power conductors without the ground
 * @returns      kilograms per metre
 * Throws        RangeError for a size that is not tabulated
 */
export function cableMassPerLength(size: WireSize, wires: 2 | 3): number {
  return cableSection(size, wires).massPerLength;
}

/** Section of the whole cable, which is the water it displaces per metre; the model above. Square metres. */
export function cableDisplacedArea(size: WireSize, wires: 2 | 3): SquareMetres {
  return cableSection(size, wires).area;
}

/** Thickness of the flat cable; the model above. */
export function cableThickness(size: WireSize): Metres {
  const { strand, insulation, jacket } = conductorInches(size);
  return inches(strand + 2 * insulation + 2 * jacket);
}

function cableSection(size: WireSize, wires: 2 | 3): CableSection {
  const { circularMils, strand, insulation, jacket } = conductorInches(size);
  const conductors = wires + 1;
  const insulated = strand + 2 * insulation;
  const thickness = insulated + 2 * jacket;
  const section = (conductors - 1) * insulated * thickness + (Math.PI / 4) * thickness ** 2;
  const copper =
    conductors *
    circularMils *
    1e-6 *
    (Math.PI / 4) *
    STRANDING_FACTOR *
    COPPER_SPECIFIC_GRAVITY *
    WATER_POUNDS_PER_FOOT;
  const plastic = (section - conductors * (Math.PI / 4) * strand ** 2) * PVC_SPECIFIC_GRAVITY * WATER_POUNDS_PER_FOOT;
  return { massPerLength: poundsMass(copper + plastic) / feet(1), area: section * inches(1) ** 2 };
}

/** One conductor of the model, in inches. */
function conductorInches(size: WireSize) {
  if (isMetricWire(size)) {
    const { area, insulationMillimetres, sheathMillimetres } = metricConductorOf(size);
    const squareInches = area * toInches(0.001) ** 2;
    return {
      circularMils: squareInches * CIRCULAR_MILS_PER_SQUARE_INCH,
      strand: STRANDED_OVER_SOLID * Math.sqrt((4 / Math.PI) * squareInches),
      insulation: toInches(insulationMillimetres / 1000),
      jacket: toInches(sheathMillimetres / 1000),
    };
  }
  const { areaCircularMils, strandDiameterInches } = conductorOf(size);
  return {
    circularMils: areaCircularMils,
    strand: strandDiameterInches,
    insulation: INSULATION_INCHES[size] ?? THICK_INSULATION_INCHES,
    jacket: JACKET_INCHES[size] ?? THICK_JACKET_INCHES,
  };
}
