/**
 * Pipe for wells and house lines: diameters and least walls as the standards print them, in inches for 3/4 to 2 in, in
 * millimetres for 20 to 110 mm and for EN 10255.
 *
 * ASTM D2239 and D2737 walls: from memory, each D2239 wall equal to bore / SIDR rounded to 0.001 in, 0.060 in at least.
 * ASTM D3035 outside diameters and walls: as ASTM F2619, same diameter and ratio system.
 * ASTM D1785, ASME B36.10M, ASME B36.19M: outside diameters and walls as printed there. B36.10M schedule 40 is the
 * standard weight of ASTM A53.
 * ISO 4427-2 (2007), Table 2: least walls and PN by series, PE 80 and PE 100, C 1.25.
 * ISO 1452-2 (2009), Tables 2 and 3: least walls by PN, C 2.5 up to 90 mm and 2.0 above; from memory, each equal to the
 * diameter over its SDR rounded up to 0.1 mm (ISO 4065), 1.5 mm at least. PN 6 up to 90 mm is left out: nobody here
 * knows its walls for certain.
 * EN 10255 (2004), Table 2, medium and heavy series, which ISO 65 has too: diameters and walls, from memory.
 */
import type { PipeFacts } from '../facts.ts';
import { pvcRating, ratingFromDimensionRatio, ratingFromSidr } from '../formulas/pipeStrength.ts';
import type { Metres, Pascals } from '../si.ts';
import { bars, inches, psi } from '../units.ts';
import { inchNumber, millimetreNumber, readNominalSize, writeDnName, writeInchName } from './nominalSize.ts';
import { PIPE_MATERIALS, isPlastic } from './pipeMaterials.ts';
import type { PipeMaterial } from './pipeMaterials.ts';

export interface PipeQuery {
  readonly material: PipeMaterial;
  /**
   * Left out: of a size in mm ISO 4427-2 for PE and ISO 1452-2 for PVC; else ASTM D2239 for PE, D1785 for PVC, ASME
   * B36.10M and B36.19M for galvanized and stainless steel.
   */
  readonly standard?: string | null | undefined;
  /** "1-1/4 in", "1.25 in" or, where the standard has such names, "DN 32" or "40 mm". */
  readonly size: string;
  /** The pressure printed on the pipe. */
  readonly rating?: Pascals | null | undefined;
  /** PE only. Left out: PE4710, of ISO standards PE 100. */
  readonly resin?: string | null | undefined;
  /** "SIDR 9", "DR 11", "schedule 80", "PN 10", "heavy", or the number alone. */
  readonly ratio?: string | number | null | undefined;
}

/** What a pipe is measured by, and so which fittings take it. */
export type SizeSystem =
  'inside diameter' | 'IPS outside diameter' | 'CTS outside diameter' | 'metric outside diameter';

interface PipeStandard {
  readonly name: string;
  readonly system: SizeSystem;
  /** Made for sockets alone: its walls are too thin for threads. */
  readonly socketsOnly?: true;
  /** Which diameter the standard holds: the other follows from the wall. */
  readonly controlled: 'inside' | 'outside';
  readonly hasDnNames: boolean;
  /** What its sizes are called and measured in: inches where it is left out. */
  readonly names?: 'mm' | 'DN';
  /** How a class is written before its number. */
  readonly classWord: 'SIDR' | 'DR' | 'SDR' | 'schedule' | 'PN' | '';
  readonly classes: readonly string[];
  /** Taken when neither rating nor ratio is given. Null: nobody may guess the wall. */
  readonly usualClass: string | null;
  /** Lends its wall to pipe of unknown class, so that it can be drawn and weighed. */
  readonly middleClass: string;
  /** PN by resin in the order of `classes` [bar]: what the standard says, not what a formula gives. */
  readonly nominalPressures?: Readonly<Record<string, readonly number[]>>;
  /**
   * Nominal number, controlled diameter, least (metal: nominal) walls in the order of `classes`; inches, or millimetres
   * where the names are. Null: the standard has no such pipe.
   */
  readonly rows: readonly (readonly [size: number, diameter: number, walls: readonly (number | null)[]])[];
}

/** The usual one of each material first. */
// prettier-ignore
const PRINTED = {
  PE: [
    {
      name: 'ASTM D2239', system: 'inside diameter',
      controlled: 'inside', hasDnNames: false,
      classWord: 'SIDR', classes: ['15', '11.5', '9', '7', '5.3'], usualClass: null, middleClass: '9',
      rows: [
        [0.75, 0.824, [0.06, 0.072, 0.092, 0.118, 0.155]],
        [1, 1.049, [0.07, 0.091, 0.117, 0.15, 0.198]],
        [1.25, 1.38, [0.092, 0.12, 0.153, 0.197, 0.26]],
        [1.5, 1.61, [0.107, 0.14, 0.179, 0.23, 0.304]],
        [2, 2.067, [0.138, 0.18, 0.23, 0.295, 0.39]],
      ],
    },
    {
      name: 'ASTM D3035', system: 'IPS outside diameter',
      controlled: 'outside', hasDnNames: false,
      classWord: 'DR', classes: ['13.5', '11', '9', '7'], usualClass: null, middleClass: '11',
      rows: [
        [0.75, 1.05, [0.078, 0.095, 0.117, 0.15]],
        [1, 1.315, [0.097, 0.12, 0.146, 0.188]],
        [1.25, 1.66, [0.123, 0.151, 0.184, 0.237]],
        [1.5, 1.9, [0.141, 0.173, 0.211, 0.271]],
        [2, 2.375, [0.176, 0.216, 0.264, 0.339]],
      ],
    },
    {
      name: 'ASTM D2737', system: 'CTS outside diameter',
      controlled: 'outside', hasDnNames: false,
      classWord: 'SDR', classes: ['9'], usualClass: '9', middleClass: '9',
      rows: [
        [0.75, 0.875, [0.097]], [1, 1.125, [0.125]], [1.25, 1.375, [0.153]], [1.5, 1.625, [0.181]], [2, 2.125, [0.236]],
      ],
    },
    {
      name: 'ISO 4427-2', system: 'metric outside diameter',
      controlled: 'outside', hasDnNames: false, names: 'mm',
      classWord: 'SDR', classes: ['17', '13.6', '11', '9', '7.4'], usualClass: null, middleClass: '11',
      nominalPressures: { PE100: [10, 12.5, 16, 20, 25], PE80: [8, 10, 12.5, 16, 20] },
      rows: [
        [20, 20, [null, null, 2, 2.3, 3]],
        [25, 25, [null, 2, 2.3, 3, 3.5]],
        [32, 32, [2, 2.4, 3, 3.6, 4.4]],
        [40, 40, [2.4, 3, 3.7, 4.5, 5.5]],
        [50, 50, [3, 3.7, 4.6, 5.6, 6.9]],
        [63, 63, [3.8, 4.7, 5.8, 7.1, 8.6]],
        [75, 75, [4.5, 5.6, 6.8, 8.4, 10.3]],
        [90, 90, [5.4, 6.7, 8.2, 10.1, 12.3]],
        [110, 110, [6.6, 8.1, 10, 12.3, 15.1]],
      ],
    },
  ],
  PVC: [
    {
      // Threaded pipe in a well is schedule 80: schedule 40 is not to be threaded (ASTM D1785, appendix, from memory).
      name: 'ASTM D1785', system: 'IPS outside diameter',
      controlled: 'outside', hasDnNames: true,
      classWord: 'schedule', classes: ['40', '80'], usualClass: '80', middleClass: '80',
      rows: [
        [0.75, 1.05, [0.113, 0.154]], [1, 1.315, [0.133, 0.179]], [1.25, 1.66, [0.14, 0.191]],
        [1.5, 1.9, [0.145, 0.2]], [2, 2.375, [0.154, 0.218]],
      ],
    },
    {
      name: 'ISO 1452-2', system: 'metric outside diameter', socketsOnly: true,
      controlled: 'outside', hasDnNames: false, names: 'mm',
      classWord: 'PN', classes: ['6', '8', '10', '12.5', '16', '20'], usualClass: null, middleClass: '12.5',
      rows: [
        [20, 20, [null, null, null, null, 1.5, 1.9]],
        [25, 25, [null, null, null, 1.5, 1.9, 2.3]],
        [32, 32, [null, 1.5, 1.6, 1.9, 2.4, 2.9]],
        [40, 40, [null, 1.6, 1.9, 2.4, 3, 3.7]],
        [50, 50, [null, 2, 2.4, 3, 3.7, 4.6]],
        [63, 63, [null, 2.5, 3, 3.8, 4.7, 5.8]],
        [75, 75, [null, 2.9, 3.6, 4.5, 5.6, 6.8]],
        [90, 90, [null, 3.5, 4.3, 5.4, 6.7, 8.2]],
        [110, 110, [2.7, 3.4, 4.2, 5.3, 6.6, 8.1]],
      ],
    },
  ],
  'galvanized steel': [
    {
      name: 'ASME B36.10M', system: 'IPS outside diameter',
      controlled: 'outside', hasDnNames: true,
      classWord: 'schedule', classes: ['40', '80'], usualClass: '40', middleClass: '40',
      rows: [
        [0.75, 1.05, [0.113, 0.154]], [1, 1.315, [0.133, 0.179]], [1.25, 1.66, [0.14, 0.191]],
        [1.5, 1.9, [0.145, 0.2]], [2, 2.375, [0.154, 0.218]],
      ],
    },
    {
      name: 'EN 10255', system: 'IPS outside diameter',
      controlled: 'outside', hasDnNames: true, names: 'DN',
      classWord: '', classes: ['medium', 'heavy'], usualClass: 'medium', middleClass: 'medium',
      rows: [
        [0.75, 26.9, [2.6, 3.2]], [1, 33.7, [3.2, 4]], [1.25, 42.4, [3.2, 4]], [1.5, 48.3, [3.2, 4]],
        [2, 60.3, [3.6, 4.5]],
      ],
    },
  ],
  'stainless steel': [
    {
      name: 'ASME B36.19M', system: 'IPS outside diameter',
      controlled: 'outside', hasDnNames: true,
      classWord: 'schedule', classes: ['40S', '10S'], usualClass: '40S', middleClass: '40S',
      rows: [
        [0.75, 1.05, [0.113, 0.083]], [1, 1.315, [0.133, 0.109]], [1.25, 1.66, [0.14, 0.109]],
        [1.5, 1.9, [0.145, 0.109]], [2, 2.375, [0.154, 0.109]],
      ],
    },
  ],
} as const satisfies Readonly<Record<PipeMaterial, readonly [PipeStandard, ...PipeStandard[]]>>;

const STANDARDS: Readonly<Record<PipeMaterial, readonly PipeStandard[]>> = PRINTED;
const ALL_STANDARDS: readonly PipeStandard[] = Object.values(STANDARDS).flat();

export type PipeStandardName = (typeof PRINTED)[PipeMaterial][number]['name'];

/** Those that a plan may name: of inch sizes first. */
export const PIPE_STANDARD_NAMES: readonly PipeStandardName[] = Object.values(PRINTED)
  .flat()
  .toSorted((one, other) => Number('names' in one) - Number('names' in other))
  .map(({ name }) => name);

/** Hydrostatic design stress at 23 degC [psi]. PE3408 and PE3608: hydrostatic design basis 1600 psi. PE4710: AWWA C901, from memory. */
const PE_DESIGN_STRESS_PSI: Readonly<Record<string, number>> = { PE3408: 800, PE3608: 800, PE4710: 1000 };

/** A printed rating may be rounded: 315 psi is SIDR 5.3 that computes to 317. */
const RATING_GRACE = 0.02;
/** Printed so far below every class that it belongs to none of them: 80 psi is not SIDR 15. */
const RATING_SURPLUS = 0.1;

/** The standards that have pipe of a material, the usual one first. */
export function pipeStandards(material: PipeMaterial): readonly string[] {
  return STANDARDS[material].map(({ name }) => name);
}

/** Size names of a standard ("3/4 in", ...), or of all the standards together when none is named. */
export function pipeSizes(standardName?: string): readonly string[] {
  const standards = ALL_STANDARDS.filter(({ name }) => standardName === undefined || name === standardName);
  return [...new Set(standards.flatMap((standard) => standard.rows.map(([size]) => sizeName(standard, size))))];
}

/** The wall classes that a standard has in one size, as printed, thinnest wall first for plastic. */
export function classesOfSize(standardName: string, size: string): readonly string[] {
  const standard = ALL_STANDARDS.find(({ name }) => name === standardName);
  const row = standard && rowOf(standard, size);
  if (!standard || !row) return [];
  return standard.classes.filter((_, i) => row[2][i] !== null).map((name) => className(standard, name));
}

/** Whether its sizes are outside diameters in millimetres ("40 mm"). */
export function isMetricPipe({ standard }: { readonly standard: string }): boolean {
  return ALL_STANDARDS.some(({ name, names }) => name === standard && names === 'mm');
}

/** Made for sockets alone. */
export function isSocketPipe({ standard }: { readonly standard: string }): boolean {
  return ALL_STANDARDS.some(({ name, socketsOnly }) => name === standard && socketsOnly === true);
}

/**
 * Size system of a pipe standard; null for one that is not listed. Pipes of one nominal size share fittings only within
 * one system: barbs with clamps for pipe made to an inside diameter, fusion, compression or stab fittings for the others.
 */
export function sizeSystem(standard: string): SizeSystem | null {
  return ALL_STANDARDS.find(({ name }) => name === standard)?.system ?? null;
}

function sizeName({ names }: PipeStandard, size: number): string {
  return names === 'mm' ? `${size} mm` : names === 'DN' ? writeDnName(size) : writeInchName(size);
}

function rowOf(standard: PipeStandard, size: string): Row | undefined {
  const number = standard.names === 'mm' ? millimetreNumber(size) : inchNumber(size, standard.hasDnNames);
  return standard.rows.find(([name]) => name === number);
}

function className({ classWord }: PipeStandard, name: string): string {
  return `${classWord} ${name}`.trim();
}

/** Wall classes of a standard as printed ("SIDR 9"), thinnest wall first for plastic. */
export function pipeClasses(standardName: string): readonly string[] {
  const standard = ALL_STANDARDS.find(({ name }) => name === standardName);
  return standard ? standard.classes.map((name) => className(standard, name)) : [];
}

/**
 * The pipe that a plan names.
 *
 * The class comes from the ratio; else from the printed rating, as the weakest class of that resin that carries it
 * (2 % under is rounding, more than 10 % over is some other pipe); else it is the usual one of the standard. For PE of
 * ASTM D2239 the bore is the same in every class, so pipe without rating and ratio has a known bore and an unknown
 * wall: `wallClass` and `rating` are null and the outside diameter and mass are those of SIDR 9. ASTM D3035 without
 * either, and any pipe whose rating fits no class, takes the diameters of the middle class the same way.
 *
 * @returns  null when the standard has no such material, size or class
 */
export function findPipe(query: PipeQuery): PipeFacts | null {
  const standard = findStandard(query);
  if (!standard) return null;
  const row = rowOf(standard, query.size);
  if (!row) return null;

  const usualResin = standard.nominalPressures === undefined ? 'PE4710' : 'PE 100';
  const resin = query.material === 'PE' ? (query.resin ?? usualResin) : null;
  const wallClass = findClass(standard, row, resin, query);
  if (wallClass === undefined) return null;

  const pipe = dimensions(standard, row, wallClass ?? middleOf(standard, row));
  if (pipe === null) return null;
  const { density, roughness, hazenWilliams } = PIPE_MATERIALS[query.material];
  const wall = (pipe.outsideDiameter - pipe.insideDiameter) / 2;
  return {
    material: query.material,
    standard: standard.name,
    nominalSize: sizeName(standard, row[0]),
    insideDiameter: pipe.insideDiameter,
    outsideDiameter: pipe.outsideDiameter,
    wallClass: wallClass === null ? null : className(standard, wallClass),
    wallKnown: wallClass !== null,
    resin,
    rating: isPlastic(query)
      ? (query.rating ??
        (wallClass === null ? null : computedRating(standard, row, wallClass, { material: query.material, resin })))
      : null,
    roughness: roughness / 1000,
    hazenWilliams,
    massPerLength: density * Math.PI * (pipe.outsideDiameter - wall) * wall,
  };
}

/** Of a standard that nobody named the size tells the family: millimetres are of another than inches. */
function findStandard({ material, standard: asked, size }: PipeQuery): PipeStandard | undefined {
  const ours = STANDARDS[material];
  if (asked === null || asked === undefined) {
    const metric = readNominalSize(size)?.system === 'mm';
    return ours.find(({ names }) => (names === 'mm') === metric);
  }
  const plain = (name: string) =>
    name
      .toUpperCase()
      .replace(/^(?:AS(?:TM|ME)|ISO|EN)/, '')
      .replace(/[^A-Z0-9.]/g, '');
  return ours.find(({ name }) => plain(name) === plain(asked));
}

type Row = PipeStandard['rows'][number];

/** A class, null when nobody can know it, undefined when the standard does not have the one asked for. */
function findClass(
  standard: PipeStandard,
  row: Row,
  resin: string | null,
  query: PipeQuery,
): string | null | undefined {
  if (query.ratio !== null && query.ratio !== undefined) {
    if (standard.names === 'mm' && !speaksOf(standard, String(query.ratio))) return undefined;
    const asked = readClass(String(query.ratio));
    const found = standard.classes.find((name) => name === asked || name === `${asked}S`);
    return found === undefined || dimensions(standard, row, found) === null ? undefined : found;
  }
  const { rating } = query;
  if (rating === null || rating === undefined || !isPlastic(query)) return standard.usualClass;
  let weakest: { name: string; carries: Pascals } | null = null;
  for (const name of standard.classes) {
    const carries = computedRating(standard, row, name, { material: query.material, resin });
    if (carries === null || carries < rating * (1 - RATING_GRACE)) continue;
    if (weakest === null || carries < weakest.carries) weakest = { name, carries };
  }
  return weakest !== null && weakest.carries <= rating * (1 + RATING_SURPLUS) ? weakest.name : null;
}

/** "SIDR 9", "DR-11", "schedule 80", "sch. 40", "SCH40S", "PN 12,5" down to "9", "11", "80", "40", "40S", "12.5". */
function readClass(text: string): string {
  const plain = text.trim().replace(',', '.');
  const match = /^(?:sidr|sdr|dr|schedule|sch\.?|pn)?[\s-]*(\d+(?:\.\d+)?)\s*(s?)$/i.exec(plain);
  return match ? `${Number(match[1])}${(match[2] ?? '').toUpperCase()}` : plain.toLowerCase();
}

/** Metric standards have classes of one kind: "SIDR 9" or "PN 9" is none of SDR 9. */
function speaksOf({ classWord }: PipeStandard, text: string): boolean {
  const word = /^[a-z.]*/i.exec(text.trim())?.[0] ?? '';
  return word === '' || word.toUpperCase() === classWord;
}

/** The middle class where the size comes in it, else the strongest. */
function middleOf(standard: PipeStandard, row: Row): string {
  const { middleClass, classes } = standard;
  return dimensions(standard, row, middleClass) === null ? (classes.at(-1) ?? middleClass) : middleClass;
}

function computedRating(
  standard: PipeStandard,
  row: Row,
  wallClass: string,
  { material, resin }: Pick<PipeFacts, 'material' | 'resin'>,
): Pascals | null {
  const pipe = dimensions(standard, row, wallClass);
  if (pipe === null) return null;
  if (standard.classWord === 'PN') return bars(Number(wallClass));
  const { compound } = PIPE_MATERIALS[material];
  if (standard.classWord === 'schedule') {
    return compound === null ? null : pvcRating({ hydrostaticDesignStress: psi(compound.designStress), ...pipe });
  }
  const plainResin = (resin ?? '').toUpperCase().replace(/[^A-Z0-9]/g, '');
  if (standard.nominalPressures !== undefined) {
    const printed = standard.nominalPressures[plainResin]?.[standard.classes.indexOf(wallClass)];
    return printed === undefined ? null : bars(printed);
  }
  const stress = compound === null ? PE_DESIGN_STRESS_PSI[plainResin] : compound.designStress;
  if (stress === undefined) return null;
  const ratio = Number(wallClass);
  return standard.controlled === 'inside'
    ? ratingFromSidr(psi(stress), ratio)
    : ratingFromDimensionRatio(psi(stress), ratio);
}

/** Null where the standard has no such wall in this size. */
function dimensions(standard: PipeStandard, [, diameter, walls]: Row, wallClass: string) {
  const printed = walls[standard.classes.indexOf(wallClass)];
  if (printed === null || printed === undefined) return null;
  const measured = standard.names === undefined ? inches : (count: number) => count / 1000;
  const wall: Metres = measured(printed);
  const controlled = measured(diameter);
  return standard.controlled === 'inside'
    ? { insideDiameter: controlled, outsideDiameter: controlled + 2 * wall, wall }
    : { insideDiameter: controlled - 2 * wall, outsideDiameter: controlled, wall };
}

/**
 * System of the threads that such pipe is cut with, and of the fittings that are bought with it: NPT on inch sizes (ASME
 * B1.20.1), ISO 7-1 on DN sizes (EN 10255, from memory). Null: pipe in mm goes with fittings of either.
 */
export function threadSystem({ standard }: { readonly standard: string }): 'NPT' | 'ISO 7-1' | null {
  const names = ALL_STANDARDS.find(({ name }) => name === standard)?.names;
  return names === undefined ? 'NPT' : names === 'DN' ? 'ISO 7-1' : null;
}
