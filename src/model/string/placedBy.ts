/** What the place of a part rests on: which ends of it nobody said, and which of them nobody knows. */
import { assumedPaths } from '../rules/assumed.ts';
import type { PartKind, PlacedPart, Solution } from '../solution.ts';
import { HOUSE_KINDS, isInHouse } from './houseKinds.ts';

export interface Ends<Value> {
  readonly top: Value;
  readonly bottom: Value;
}

const SETTING = ['pump.setting'];
/** What stands on the discharge is measured from there. */
const DISCHARGE = ['pump.setting', 'pump.intakeToDischarge'];
const MOTOR = ['pump.setting', 'pump.intakeToMotorBottom'];
const OUTLET = ['top.kind', 'top.depth'];
const CASING = ['well.casing.height'];
const SEAL = ['top.kind', ...CASING];

const both = (paths: readonly string[]): Ends<readonly string[]> => ({ top: paths, bottom: paths });

/** By key, or by kind where all parts of a kind hang on the same. */
const PLACED_BY: Readonly<Record<string, Ends<readonly string[]> | undefined>> = {
  intake: both(SETTING),
  pump: { top: DISCHARGE, bottom: SETTING },
  motor: { top: SETTING, bottom: MOTOR },
  cableGuardStrip: { top: DISCHARGE, bottom: SETTING },
  shroud: { top: SETTING, bottom: MOTOR },
  nipple: both(DISCHARGE),
  'nipple/top': both(SEAL),
  'nipple/seal': both(SEAL),
  checkValve: both([...DISCHARGE, 'string.checkValves']),
  insertFitting: both([...DISCHARGE, 'string.checkValves']),
  'insertFitting/top': both([...OUTLET, ...CASING]),
  torqueArrestor: both([...DISCHARGE, 'string.torqueArrestor']),
  splice: both([...DISCHARGE, 'string.splices']),
  coupling: both(DISCHARGE),
  'coupling/top': both(SEAL),
  dropPipe: { top: OUTLET, bottom: DISCHARGE },
  cable: { top: CASING, bottom: DISCHARGE },
  rope: { top: CASING, bottom: DISCHARGE },
  pitlessAdapter: both(OUTLET),
  buriedLine: both(OUTLET),
  conduit: { top: CASING, bottom: ['wire.conduitDepth'] },
  cap: both(CASING),
  seal: both(SEAL),
  tee: both(SEAL),
  plug: both(SEAL),
};

/** Those that are drawn only where the plan says that they are there; how high, it does not say either. */
const ASKED: ReadonlySet<PartKind> = new Set(['reliefValve', 'drive']);
/** Drawn unasked, at a usual height: no plan says of them where they are. */
const UNASKED: ReadonlySet<PartKind> = new Set<PartKind>([
  'bond',
  'capSplice',
  'union',
  'tap',
  'support',
  ...HOUSE_KINDS.filter((kind) => !ASKED.has(kind)),
]);
/** Planned, but no plan says where: drawn at a usual place. */
const PLACE_UNSAID: ReadonlySet<PartKind> = new Set(['flowLimiter']);

/** Whether no plan says of it whether it is there at all. */
export function isUnasked({ kind }: Pick<PlacedPart, 'kind'>): boolean {
  return UNASKED.has(kind);
}

export function assumedEnds(
  solution: Pick<Solution, 'assumed'>,
  { key, kind }: Pick<PlacedPart, 'key' | 'kind'>,
): Ends<boolean> {
  if (UNASKED.has(kind) || PLACE_UNSAID.has(kind) || isInHouse(kind)) return { top: true, bottom: true };
  const by = PLACED_BY[key] ?? PLACED_BY[kind];
  if (by === undefined) return { top: false, bottom: false };
  const assumed = assumedPaths(solution);
  const rests = (paths: readonly string[]): boolean => paths.some((path) => assumed.has(path));
  return { top: rests(by.top), bottom: rests(by.bottom) };
}

/** What stands in the house, at the height of the rise, is drawn somewhere where nobody knows how high that is. */
export function isPlaceKnown({ facts }: Pick<Solution, 'facts'>, { kind }: Pick<PlacedPart, 'kind'>): boolean {
  return facts.house.rise !== null || !isInHouse(kind);
}
