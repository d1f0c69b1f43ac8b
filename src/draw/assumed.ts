/** What nobody said looks like it: a dotted line under every figure that the program put in. */
import type { Band, PartKind, Solution } from '../model/solution.ts';
import { assumedPaths, plainPath } from '../model/rules/assumed.ts';
import { isPartKind } from './kinds.ts';
import { stroke } from './parts/outline.ts';
import type { Shape } from './scene.ts';
import { path, type Place } from './shapes.ts';

/** Choices that the two lines of a part's label tell: paths of the plan. */
export interface Told {
  readonly name?: readonly string[];
  readonly note?: readonly string[];
  /** No plan says of it whether it is there: the program drew it unasked. */
  readonly unasked?: true;
}

/** Figures that are worked out from several choices: paths of the plan. The bottom itself is never assumed. */
export const RESTS_ON = {
  underMotor: ['pump.setting', 'pump.intakeToMotorBottom'],
  overIntake: ['pump.setting', 'house.demand', 'water.pumping.flow'],
  underFrost: ['top.kind', 'top.depth', 'site.frostDepth'],
  drawdown: ['house.demand', 'water.pumping.flow'],
} as const;

/** By kind; null where its label tells nothing that could be assumed. */
const TOLD: Readonly<Record<PartKind, Told | null>> = {
  bond: { unasked: true },
  capSplice: { unasked: true },
  union: { unasked: true },
  tap: { unasked: true },
  support: { unasked: true },
  conduit: { note: ['wire.conduitDepth'] },
  buriedLine: { note: ['top.depth', 'top.kind'] },
  nipple: { note: ['pump.outlet'] },
  cap: { note: ['well.casing.height'] },
  rope: { name: ['rope.tied'] },
  cable: { note: ['wire.size', 'pump.wires'] },
  pitlessAdapter: { name: ['top.kind'], note: ['top.depth'] },
  seal: { name: ['top.kind'], note: ['well.casing.height'] },
  frost: { note: ['site.frostDepth'] },
  insertFitting: { name: ['string.clampsPerJoint'], note: ['string.fittings'] },
  dropPipe: {
    name: ['dropPipe.size', 'dropPipe.material'],
    // Its length to cut hangs on both of its ends.
    note: ['dropPipe.rating', 'pump.setting', 'top.kind', 'top.depth'],
  },
  splice: { note: ['string.splices'] },
  torqueArrestor: { note: ['string.torqueArrestor'] },
  checkValve: { name: ['string.checkValves'], note: ['string.arrow'] },
  tie: { note: ['string.ties'] },
  shroud: { note: ['pump.shroudWall'] },
  pump: { note: ['pump.curve.flow', 'house.cutOut'] },
  intake: { name: ['pump.setting'] },
  motor: { note: ['pump.motorDiameter'] },
  pumpingLevel: { note: ['house.demand', 'water.pumping.flow'] },
  cableGuardStrip: null,
  flowLimiter: null,
  clamp: null,
  probe: null,
  guard: null,
  coupling: null,
  tee: null,
  plug: null,
  riser: null,
  tankTee: null,
  reliefValve: null,
  reliefPipe: null,
  gauge: null,
  switch: null,
  drain: null,
  shutOff: null,
  tank: null,
  float: null,
  disconnect: null,
  controlBox: null,
  drive: null,
  casing: null,
  screen: null,
  openHole: null,
  grout: null,
  well: null,
  staticLevel: null,
};

/** By key, where it tells something else than its kind, and of what is no part. */
const TOLD_BY_KEY: Readonly<Record<string, Told | undefined>> = {
  'insertFitting/top': { name: ['string.clampsPerJoint'] },
  toBottom: { name: RESTS_ON.underMotor },
};

export function toldBy(key: string, kind: string): Told | undefined {
  return TOLD_BY_KEY[key] ?? TOLD_BY_KEY[kind] ?? (isPartKind(kind) ? (TOLD[kind] ?? undefined) : undefined);
}

export function isAnyAssumed(solution: Pick<Solution, 'assumed'>, paths: readonly string[] | undefined): boolean {
  if (paths === undefined || solution.assumed.length === 0) return false;
  const assumed = assumedPaths(solution);
  return paths.some((own) => assumed.has(plainPath(own)));
}

/** Rules that hold the motor's foot against something: its length is one of their choices. */
const BY_MOTOR: ReadonlySet<string> = new Set(['PR-01', 'PR-03', 'PR-05']);

/** Whether the end of a band would be another had somebody said what was put in. Where the pump hangs itself moves no end. */
export function isEndAssumed(
  solution: Pick<Solution, 'assumed'>,
  { setting, ...band }: Band,
  side: 'from' | 'to',
): boolean {
  const { rule, variant, assumed } = side === 'from' ? band.fromEnd : band.toEnd;
  const ofMotor = variant === 'motorOnBottom' || (rule !== null && BY_MOTOR.has(rule));
  if (ofMotor && isAnyAssumed(solution, ['pump.intakeToMotorBottom'])) return true;
  return assumed.some((path) => path !== setting && path !== 'top.kind');
}

/** Whether anything is marked on a sheet: then its legend explains the dots. */
export function marksAssumed(solution: Pick<Solution, 'assumed' | 'parts'>): boolean {
  if (solution.parts.some(({ key, kind }) => toldBy(key, kind)?.unasked === true)) return true;
  return MARKED.some((paths) => isAnyAssumed(solution, paths));
}

const MARKED: readonly (readonly string[] | undefined)[] = [
  ['pump.setting', 'well.casing.height', 'top.depth', 'site.frostDepth'],
  ...[...Object.values(TOLD), ...Object.values(TOLD_BY_KEY)].flatMap((told) => [told?.name, told?.note]),
];

/** A stretch under words: from x on, so wide, at y [px]. */
export type Under = Omit<Place, 'height'>;

/** All of a view are one path. */
export function drawDots(unders: readonly Under[], ink: string): Shape[] {
  if (unders.length === 0) return [];
  const d = unders.map(({ x, y, width }) => stroke(x, y, x + width, y)).join('');
  return [path('assumed', d, { fill: 'none', stroke: ink, 'stroke-width': 1.2, 'stroke-dasharray': DOTS })];
}

/** Dots and gaps; nothing else on a sheet is dashed as finely. */
export const DOTS = '1.5 2';
