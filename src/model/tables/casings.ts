/**
 * Well casing: outside diameters and walls in inches.
 *
 * Steel schedule 40 and 80, stainless 40S and 10S: ASME B36.10M and B36.19M. PVC schedule 40 and 80: ASTM D1785; SDR 17,
 * 21 and 26: ASTM D2241 walls, least wall, so a real bore is a little smaller. 0.244 and 0.250 in steel walls: Montana
 * Administrative Rules 36.21, least steel casing. 0.188 in: Maryland COMAR 26.04.04.17, least metal casing above 4 in.
 * Schedule 80, schedule 40 below 4 in and above 8 in, and schedule 10S: from memory of those standards.
 * Concrete rings of a dug well: named by their bore; wall B of ASTM C76 (bore / 12 + 1 in), from memory.
 */
import type { CasingMaterial } from '../facts.ts';
import type { Metres } from '../si.ts';
import { inches } from '../units.ts';
import { inchNumber, writeInchName } from './nominalSize.ts';

export interface CasingSize {
  readonly insideDiameter: Metres;
  readonly outsideDiameter: Metres;
  /** As printed: "schedule 40", "SDR 21", "0.250 in wall", "wall B". */
  readonly schedule: string;
}

type Walls = Readonly<Record<string, number>>;
/** Nominal inch number, outside diameter [in], wall by schedule [in]. */
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

const TABLES: Readonly<Record<CasingMaterial, { rows: readonly CasingRow[]; usual: string }>> = {
  steel: { rows: STEEL, usual: 'schedule 40' },
  PVC: { rows: PVC, usual: 'SDR 21' },
  'stainless steel': { rows: STAINLESS, usual: 'schedule 40S' },
  concrete: { rows: CONCRETE, usual: 'wall B' },
  other: { rows: [], usual: '' },
};

export interface CasingQuery {
  readonly material: CasingMaterial;
  /** "6 in"; steel and PVC also "DN 150". */
  readonly size: string;
  /** Left out: schedule 40 for steel, SDR 21 for PVC, 40S for stainless steel. */
  readonly schedule?: string | null | undefined;
}

/** The casing that a plan names; null when no standard here has it, and its inside diameter must then be measured. */
export function findCasing({ material, size, schedule }: CasingQuery): CasingSize | null {
  const { rows, usual } = TABLES[material];
  const number = inchNumber(size, material !== 'concrete');
  const row = rows.find(([name]) => name === number);
  if (!row) return null;
  const [, outsideDiameter, walls] = row;
  const asked = plainSchedule(schedule ?? usual);
  const found = Object.entries(walls).find(
    ([name]) => plainSchedule(name) === asked || plainSchedule(name) === `${asked}S`,
  );
  if (!found) return null;
  const [name, wall] = found;
  return {
    insideDiameter: inches(outsideDiameter - 2 * wall),
    outsideDiameter: inches(outsideDiameter),
    schedule: name,
  };
}

/** Size names of a material ("4 in", ...). */
export function casingSizes(material: CasingMaterial): readonly string[] {
  return TABLES[material].rows.map(([size]) => writeInchName(size));
}

/** Schedules of one size as printed; every schedule of the material when the size is left out or unknown. */
export function casingSchedules(material: CasingMaterial, size?: string): readonly string[] {
  const { rows } = TABLES[material];
  const number = size === undefined ? null : inchNumber(size, material !== 'concrete');
  const row = rows.find(([name]) => name === number);
  return [...new Set((row ? [row] : rows).flatMap(([, , walls]) => Object.keys(walls)))];
}

/** "SCH 40", "sch. 40", "40" and "schedule 40" alike; ".250", "0.25 in" and "0.250 in wall" alike; "SDR-21" as "SDR 21". */
function plainSchedule(text: string): string {
  const plain = text.trim().toUpperCase();
  const schedule = /^(?:SCHEDULE|SCH\.?)?[\s-]*(\d+)\s*(S?)$/.exec(plain);
  if (schedule) return `SCHEDULE ${schedule[1]}${schedule[2]}`;
  const ratio = /^S?DR[\s-]*(\d+(?:\.\d+)?)$/.exec(plain);
  if (ratio) return `SDR ${ratio[1]}`;
  const wall = /^(\d*\.\d+)\s*(?:IN|INCH|")?\s*(?:WALL)?$/.exec(plain);
  return wall ? `WALL ${Number(wall[1])}` : plain;
}
