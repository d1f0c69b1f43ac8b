/**
 * Well casing: outside diameters and walls in inches, and in millimetres for the sizes of metric countries.
 *
 * Steel schedule 40 and 80, stainless 40S and 10S: ASME B36.10M and B36.19M. PVC schedule 40 and 80: ASTM D1785; SDR 17,
 * 21 and 26: ASTM D2241 walls, least wall, so a real bore is a little smaller. 0.244 and 0.250 in steel walls: Montana
 * Administrative Rules 36.21, least steel casing. 0.188 in: Maryland COMAR 26.04.04.17, least metal casing above 4 in.
 * Schedule 80, schedule 40 below 4 in and above 8 in, and schedule 10S: from memory of those standards.
 * PVC in mm: ISO 1452-2 by PN, C 2.0, each wall the diameter over its SDR rounded up to 0.1 mm (ISO 4065); "DIN 4925",
 * parts 1 and 2, well casing with threads, from memory. Steel in mm: outside diameters and usual walls of EN 10220 (ISO
 * 4200), from memory.
 * Concrete rings of a dug well: named by their bore; wall B of ASTM C76 (bore / 12 + 1 in), from memory.
 */
import type { CasingMaterial } from '../facts.ts';
import type { Metres } from '../si.ts';
import { inches } from '../units.ts';
import { inchNumber, millimetreNumber, writeInchName } from './nominalSize.ts';

export interface CasingSize {
  readonly insideDiameter: Metres;
  readonly outsideDiameter: Metres;
  /** As printed: "schedule 40", "SDR 21", "0.250 in wall", "PN 10", "5 mm wall", "wall B". */
  readonly schedule: string;
}

type Walls = Readonly<Record<string, number>>;
/** Nominal number, outside diameter, wall by schedule; all inches, or all millimetres. */
type CasingRow = readonly [size: number, outsideDiameter: number, walls: Walls];

const STEEL: readonly CasingRow[] = [
  [1.25, 1.66, { 'schedule 40': 0.14, 'schedule 80': 0.191 }],
  [1.5, 1.9, { 'schedule 40': 0.145, 'schedule 80': 0.2 }],
  [2, 2.375, { 'schedule 40': 0.154, 'schedule 80': 0.218 }],
  [2.5, 2.875, { 'schedule 40': 0.203, 'schedule 80': 0.276 }],
  [3, 3.5, { 'schedule 40': 0.216, 'schedule 80': 0.3 }],
  [4, 4.5, { 'schedule 40': 0.237, 'schedule 80': 0.337 }],
  [5, 5.563, { 'schedule 40': 0.258, 'schedule 80': 0.375, '0.244 in wall': 0.244, '0.188 in wall': 0.188 }],
  [6, 6.625, { 'schedule 40': 0.28, 'schedule 80': 0.432, '0.250 in wall': 0.25, '0.188 in wall': 0.188 }],
  [8, 8.625, { 'schedule 40': 0.322, 'schedule 80': 0.5, '0.250 in wall': 0.25, '0.188 in wall': 0.188 }],
  [10, 10.75, { 'schedule 40': 0.365, '0.250 in wall': 0.25 }],
  [12, 12.75, { 'schedule 40': 0.406, '0.250 in wall': 0.25 }],
  [16, 16, { 'schedule 40': 0.5, '0.250 in wall': 0.25 }],
];

const STAINLESS: readonly CasingRow[] = [
  [1.25, 1.66, { 'schedule 40S': 0.14, 'schedule 10S': 0.109 }],
  [2, 2.375, { 'schedule 40S': 0.154, 'schedule 10S': 0.109 }],
  [4, 4.5, { 'schedule 40S': 0.237, 'schedule 10S': 0.12 }],
  [5, 5.563, { 'schedule 40S': 0.258, 'schedule 10S': 0.134 }],
  [6, 6.625, { 'schedule 40S': 0.28, 'schedule 10S': 0.134 }],
  [8, 8.625, { 'schedule 40S': 0.322, 'schedule 10S': 0.148 }],
];

const PVC: readonly CasingRow[] = [
  [2, 2.375, { 'schedule 40': 0.154, 'schedule 80': 0.218, 'SDR 21': 0.113 }],
  [4, 4.5, { 'SDR 21': 0.214, 'SDR 17': 0.265, 'SDR 26': 0.173, 'schedule 40': 0.237, 'schedule 80': 0.337 }],
  [5, 5.563, { 'SDR 21': 0.265, 'SDR 17': 0.327, 'SDR 26': 0.214, 'schedule 40': 0.258, 'schedule 80': 0.375 }],
  [6, 6.625, { 'SDR 21': 0.316, 'SDR 17': 0.39, 'SDR 26': 0.255, 'schedule 40': 0.28, 'schedule 80': 0.432 }],
  [8, 8.625, { 'SDR 21': 0.41, 'SDR 17': 0.508, 'SDR 26': 0.332, 'schedule 40': 0.322, 'schedule 80': 0.5 }],
];

const CONCRETE: readonly CasingRow[] = [24, 30, 36, 42, 48].map((bore) => {
  const wall = bore / 12 + 1;
  return [bore, bore + 2 * wall, { 'wall B': wall }] as const;
});

/** Outside diameter is the name. The usual wall comes first. */
const STEEL_MM: readonly CasingRow[] = [
  [114.3, 114.3, { '3.6 mm wall': 3.6, '5 mm wall': 5, '6.3 mm wall': 6.3 }],
  [139.7, 139.7, { '4 mm wall': 4, '5 mm wall': 5, '6.3 mm wall': 6.3 }],
  [168.3, 168.3, { '4.5 mm wall': 4.5, '5 mm wall': 5, '6.3 mm wall': 6.3 }],
  [219.1, 219.1, { '6.3 mm wall': 6.3, '5 mm wall': 5, '8 mm wall': 8 }],
  [273, 273, { '6.3 mm wall': 6.3, '5 mm wall': 5, '8 mm wall': 8 }],
  [323.9, 323.9, { '7.1 mm wall': 7.1, '6.3 mm wall': 6.3, '8 mm wall': 8 }],
];

const PVC_MM: readonly CasingRow[] = [
  [110, 110, { 'PN 10': 4.2, 'PN 6': 2.7, 'PN 8': 3.4, 'PN 12.5': 5.3, 'PN 16': 6.6 }],
  [113, 113, { 'DIN 4925': 5 }],
  [125, 125, { 'PN 10': 4.8, 'PN 6': 3.1, 'PN 8': 3.9, 'PN 12.5': 6, 'PN 16': 7.4, 'DIN 4925': 5 }],
  [140, 140, { 'PN 10': 5.4, 'PN 6': 3.5, 'PN 8': 4.3, 'PN 12.5': 6.7, 'PN 16': 8.3, 'DIN 4925': 6.5 }],
  [160, 160, { 'PN 10': 6.2, 'PN 6': 4, 'PN 8': 4.9, 'PN 12.5': 7.7, 'PN 16': 9.5 }],
  [165, 165, { 'DIN 4925': 7.5 }],
  [195, 195, { 'DIN 4925': 8.5 }],
  [200, 200, { 'PN 10': 7.7, 'PN 6': 4.9, 'PN 8': 6.2, 'PN 12.5': 9.6, 'PN 16': 11.9 }],
  [225, 225, { 'PN 10': 8.6, 'PN 6': 5.5, 'PN 8': 6.9, 'PN 12.5': 10.8, 'PN 16': 13.4, 'DIN 4925': 10 }],
  [250, 250, { 'PN 10': 9.6, 'PN 6': 6.2, 'PN 8': 7.7, 'PN 12.5': 11.9, 'PN 16': 14.8 }],
];

/** What each material of casing brings, whole: one that lacks something does not compile. */
interface CasingMaterialRow {
  /** Rows of inch sizes and of sizes in millimetres; empty where no table here has any. */
  readonly inches: readonly CasingRow[];
  readonly millimetres: readonly CasingRow[];
  /** Schedule of inch sizes where nobody said; of sizes in mm it is the first. */
  readonly usual: string;
  readonly hasDnNames: boolean;
  /** Metal, which is bonded to the ground wire. */
  readonly conducts: boolean;
}

const MATERIALS: Readonly<Record<CasingMaterial, CasingMaterialRow>> = {
  steel: { inches: STEEL, millimetres: STEEL_MM, usual: 'schedule 40', hasDnNames: true, conducts: true },
  PVC: { inches: PVC, millimetres: PVC_MM, usual: 'SDR 21', hasDnNames: true, conducts: false },
  'stainless steel': { inches: STAINLESS, millimetres: [], usual: 'schedule 40S', hasDnNames: true, conducts: true },
  concrete: { inches: CONCRETE, millimetres: [], usual: 'wall B', hasDnNames: false, conducts: false },
  other: { inches: [], millimetres: [], usual: '', hasDnNames: true, conducts: false },
};

export function isCasingMaterial(name: unknown): name is CasingMaterial {
  return typeof name === 'string' && Object.hasOwn(MATERIALS, name);
}

export function isConducting({ material }: { readonly material: CasingMaterial }): boolean {
  return MATERIALS[material].conducts;
}

export interface CasingQuery {
  readonly material: CasingMaterial;
  /** "6 in"; steel and PVC also "DN 150" and, by the outside diameter, "160 mm". */
  readonly size: string;
  /** Left out: schedule 40 for steel, SDR 21 for PVC, 40S for stainless steel; of sizes in mm the usual wall. */
  readonly schedule?: string | null | undefined;
}

/** The casing that a plan names; null when no standard here has it, and its inside diameter must then be measured. */
export function findCasing({ material, size, schedule }: CasingQuery): CasingSize | null {
  const metric = millimetreNumber(size) !== null;
  const row = rowOf(material, size);
  if (!row) return null;
  const [, outsideDiameter, walls] = row;
  const usual = metric ? Object.keys(walls)[0] : MATERIALS[material].usual;
  const asked = plainSchedule(schedule ?? usual ?? '');
  const found = Object.entries(walls).find(
    ([name]) => plainSchedule(name) === asked || plainSchedule(name) === `${asked}S`,
  );
  if (!found) return null;
  const [name, wall] = found;
  const measured = metric ? (count: number) => count / 1000 : inches;
  return {
    insideDiameter: measured(outsideDiameter - 2 * wall),
    outsideDiameter: measured(outsideDiameter),
    schedule: name,
  };
}

function rowOf(material: CasingMaterial, size: string): CasingRow | undefined {
  const millimetres = millimetreNumber(size);
  if (millimetres !== null) return MATERIALS[material].millimetres.find(([name]) => name === millimetres);
  const number = inchNumber(size, MATERIALS[material].hasDnNames);
  return MATERIALS[material].inches.find(([name]) => name === number);
}

/** Size names of a material: "4 in", ..., and then "110 mm", .... */
export function casingSizes(material: CasingMaterial): readonly string[] {
  const { inches: inInches, millimetres } = MATERIALS[material];
  return [...inInches.map(([size]) => writeInchName(size)), ...millimetres.map(([size]) => `${size} mm`)];
}

/** Schedules of one size as printed; every schedule of the material when the size is left out or unknown. */
export function casingSchedules(material: CasingMaterial, size?: string): readonly string[] {
  const row = size === undefined ? undefined : rowOf(material, size);
  return [...new Set((row ? [row] : MATERIALS[material].inches).flatMap(([, , walls]) => Object.keys(walls)))];
}

/** "SCH 40", "sch. 40", "40" and "schedule 40" alike; ".250", "0.25 in" and "0.250 in wall" alike; "SDR-21" as "SDR 21". */
function plainSchedule(text: string): string {
  const plain = text.trim().toUpperCase();
  const schedule = /^(?:SCHEDULE|SCH\.?)?[\s-]*(\d+)\s*(S?)$/.exec(plain);
  if (schedule) return `SCHEDULE ${schedule[1]}${schedule[2]}`;
  const ratio = /^S?DR[\s-]*(\d+(?:\.\d+)?)$/.exec(plain);
  if (ratio) return `SDR ${ratio[1]}`;
  const pressure = /^PN[\s-]*(\d+(?:[.,]\d+)?)$/.exec(plain);
  if (pressure) return `PN ${Number((pressure[1] ?? '').replace(',', '.'))}`;
  const thick = /^(\d+(?:[.,]\d+)?)\s*MM\s*(?:WALL)?$/.exec(plain);
  if (thick) return `WALL ${Number((thick[1] ?? '').replace(',', '.'))} MM`;
  const wall = /^(\d*\.\d+)\s*(?:IN|INCH|")?\s*(?:WALL)?$/.exec(plain);
  return wall ? `WALL ${Number(wall[1])}` : plain;
}
