/**
 * What each material of pipe brings, whole: one that lacks something does not compile, and no formula has to refuse one.
 * What a standard prints of it stands in `pipes.ts`, as complete.
 *
 * Sources  roughness of plastic and galvanized pipe and 120 for galvanized: EPANET 2.2 User Manual, ch. 3, coefficients for
 *          new pipe; 140 for plastic is the lower end there, since cold water in small smooth pipe loses more than 150 says.
 *          Stainless steel from memory. Densities from memory; they give the printed weights of steel pipe.
 *          Steady modulus of PVC: data sheets for cell class 12454, 400,000 to 420,000 psi; steels from memory.
 *          Modulus for sudden load: AWWA M55 and M23, from memory. Poisson's ratios and the short modulus of polyethylene
 *          from memory.
 *          Lengthening: published tables of thermal expansion of piping materials. Polyethylene is printed as 6.7e-5 (HDPE)
 *          and 8.3e-5 (PE); 8.0e-5 is a round choice between them, no source.
 *          Derating: PE AWWA M55 (2006), Table 4-6; PVC PPFA User Bulletin 3-96 at 73 and 80 degF, warmer rows from memory.
 *          Design stress: PVC 1120, ASTM D1785, from memory. Of polyethylene it goes by the resin, in `pipes.ts`.
 */
import type { Ratio } from '../si.ts';

/** `barb`: pushed over an insert fitting and clamped. `socket`: glued. */
export type PipeJoint = 'barb' | 'thread' | 'socket';

/** What a plastic is called where it comes in one compound, and what it may carry for years. */
export interface Compound {
  /** In pipe of inch standards, and of metric ones. */
  readonly name: string;
  readonly metricName: string;
  /** Hydrostatic design stress at 23 degC [psi], and who prints it. */
  readonly designStress: number;
  readonly from: string;
}

/** Share of the rating that is left, up to each temperature [degF]: by steps, or on straight lines between. */
export interface Derating {
  readonly between: 'steps' | 'lines';
  readonly rows: readonly (readonly [fahrenheit: number, share: Ratio])[];
  readonly source: string;
  /** Of pipe of metric standards, where that is another. */
  readonly metricSource?: string;
}

export interface PipeMaterialRow {
  /** Rated for a pressure that warm water takes from; metal is not. */
  readonly plastic: boolean;
  /** Null of metal, and of a plastic that comes in several: then by its resin. */
  readonly compound: Compound | null;
  /** By the pressure printed on it, which any size comes in; or by its wall, whose pressure goes with the size. */
  readonly soldBy: 'pressure' | 'wall';
  /** What it looks like, whole and cut open. */
  readonly looks: 'black plastic' | 'pale plastic' | 'metal';
  /** kg/m³ */
  readonly density: number;
  /** Height of the roughness [mm]. */
  readonly roughness: number;
  readonly hazenWilliams: number;
  /** How its lengths are joined: hung in a well, and buried. */
  readonly inWell: PipeJoint;
  readonly buried: PipeJoint;
  /** Whether its threads are its weakest place, so that they count in its rating. */
  readonly threadsWeaken: boolean;
  readonly derating: Derating | null;
  /** Under steady load [psi]; null where it creeps: then by its resin and the time, `apparentModulus`. */
  readonly steadyModulus: number | null;
  /** For a shock, and for a short load [psi]. */
  readonly suddenModulus: number;
  readonly shortModulus: number;
  readonly poisson: Ratio;
  readonly lengtheningPerFahrenheit: number;
}

const ROWS = {
  PE: {
    plastic: true,
    compound: null,
    soldBy: 'pressure',
    looks: 'black plastic',
    density: 955,
    roughness: 0.0015,
    hazenWilliams: 140,
    inWell: 'barb',
    buried: 'barb',
    threadsWeaken: false,
    derating: {
      between: 'steps',
      rows: [
        [80, 1],
        [90, 0.9],
        [100, 0.8],
      ],
      source: 'AWWA M55 (2006), Table 4-6',
      metricSource: 'ISO 4427-1, annex A, from memory',
    },
    steadyModulus: null,
    suddenModulus: 150_000,
    shortModulus: 110_000,
    poisson: 0.45,
    lengtheningPerFahrenheit: 8.0e-5,
  },
  PVC: {
    plastic: true,
    compound: { name: 'PVC 1120', metricName: 'PVC-U', designStress: 2000, from: 'ASTM D1785' },
    soldBy: 'wall',
    looks: 'pale plastic',
    density: 1400,
    roughness: 0.0015,
    hazenWilliams: 140,
    inWell: 'thread',
    buried: 'socket',
    threadsWeaken: true,
    derating: {
      between: 'lines',
      rows: [
        [73, 1],
        [80, 0.88],
        [90, 0.75],
        [100, 0.62],
        [110, 0.5],
        [120, 0.4],
      ],
      source: 'PPFA User Bulletin 3-96',
    },
    steadyModulus: 400_000,
    suddenModulus: 400_000,
    shortModulus: 400_000,
    poisson: 0.38,
    lengtheningPerFahrenheit: 2.9e-5,
  },
  'galvanized steel': {
    plastic: false,
    compound: null,
    soldBy: 'wall',
    looks: 'metal',
    density: 7850,
    roughness: 0.152,
    hazenWilliams: 120,
    inWell: 'thread',
    buried: 'thread',
    threadsWeaken: false,
    derating: null,
    steadyModulus: 29_000_000,
    suddenModulus: 30_000_000,
    shortModulus: 29_000_000,
    poisson: 0.29,
    lengtheningPerFahrenheit: 6.5e-6,
  },
  'stainless steel': {
    plastic: false,
    compound: null,
    soldBy: 'wall',
    looks: 'metal',
    density: 8030,
    roughness: 0.015,
    hazenWilliams: 140,
    inWell: 'thread',
    buried: 'thread',
    threadsWeaken: false,
    derating: null,
    steadyModulus: 28_000_000,
    suddenModulus: 30_000_000,
    shortModulus: 28_000_000,
    poisson: 0.29,
    lengtheningPerFahrenheit: 9.9e-6,
  },
} satisfies Readonly<Record<string, PipeMaterialRow>>;

/** Those that a plan may name. */
export type PipeMaterial = keyof typeof ROWS;

export const PIPE_MATERIALS: Readonly<Record<PipeMaterial, PipeMaterialRow>> = ROWS;

export const PIPE_MATERIAL_NAMES = Object.keys(ROWS) as readonly PipeMaterial[];

/** Those of which something holds, for a sentence: "PVC". */
export function pipesWith(holds: (row: PipeMaterialRow) => boolean): string {
  return PIPE_MATERIAL_NAMES.filter((name) => holds(PIPE_MATERIALS[name])).join(' and ');
}

interface OfMaterial {
  readonly material: PipeMaterial;
}

export function isPipeMaterial(name: unknown): name is PipeMaterial {
  return typeof name === 'string' && Object.hasOwn(PIPE_MATERIALS, name);
}

export function isPlastic({ material }: OfMaterial): boolean {
  return PIPE_MATERIALS[material].plastic;
}

/** Pushed over barbs in the well: it comes off a coil, and every joint has an insert fitting and clamps. */
export function isBarbed({ material }: OfMaterial): boolean {
  return PIPE_MATERIALS[material].inWell === 'barb';
}

export function isBuriedOnBarbs({ material }: OfMaterial): boolean {
  return PIPE_MATERIALS[material].buried === 'barb';
}
