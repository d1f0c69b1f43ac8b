import type { Metres, SquareMetres } from '../si.ts';
import { conductorOf } from '../tables/conductors.ts';
import { feet, inches, poundsMass } from '../units.ts';

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
 *          insulation and jacket thickness UL 83, from memory
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

const INSULATION_INCHES: Readonly<Record<number, number>> = { 14: 0.03, 12: 0.03, 10: 0.03, 8: 0.045 };
const JACKET_INCHES: Readonly<Record<number, number>> = { 14: 0.03, 12: 0.03, 10: 0.03 };
const THICK_INSULATION_INCHES = 0.06;
const THICK_JACKET_INCHES = 0.045;

/**
 * Mass of pump cable with its ground wire; the model above.
 *
 * @param wires  power conductors without the ground
 * @returns      kilograms per metre
 * Throws        RangeError for a gauge that is not tabulated
 */
export function cableMassPerLength(gauge: number, wires: 2 | 3): number {
  return cableSection(gauge, wires).massPerLength;
}

/** Section of the whole cable, which is the water it displaces per metre; the model above. Square metres. */
export function cableDisplacedArea(gauge: number, wires: 2 | 3): SquareMetres {
  return cableSection(gauge, wires).area;
}

/** Thickness of the flat cable; the model above. */
export function cableThickness(gauge: number): Metres {
  return inches(thicknessInches(gauge));
}

function cableSection(gauge: number, wires: 2 | 3): CableSection {
  const { areaCircularMils, strandDiameterInches } = conductorOf(gauge);
  const conductors = wires + 1;
  const thickness = thicknessInches(gauge);
  const insulated = strandDiameterInches + 2 * insulationInches(gauge);
  const section = (conductors - 1) * insulated * thickness + (Math.PI / 4) * thickness ** 2;
  const copper =
    conductors *
    areaCircularMils *
    1e-6 *
    (Math.PI / 4) *
    STRANDING_FACTOR *
    COPPER_SPECIFIC_GRAVITY *
    WATER_POUNDS_PER_FOOT;
  const plastic =
    (section - conductors * (Math.PI / 4) * strandDiameterInches ** 2) * PVC_SPECIFIC_GRAVITY * WATER_POUNDS_PER_FOOT;
  return { massPerLength: poundsMass(copper + plastic) / feet(1), area: section * inches(1) ** 2 };
}

function thicknessInches(gauge: number): number {
  const jacket = JACKET_INCHES[gauge] ?? THICK_JACKET_INCHES;
  return conductorOf(gauge).strandDiameterInches + 2 * insulationInches(gauge) + 2 * jacket;
}

function insulationInches(gauge: number): number {
  return INSULATION_INCHES[gauge] ?? THICK_INSULATION_INCHES;
}
