/** What the place of a part rests on: which ends of it nobody said, and which of them nobody knows. */
import { assumedPaths } from '../rules/assumed.ts';
import type { PartKind, PlacedPart, Solution } from '../solution.ts';
import { isInHouse } from './houseKinds.ts';

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

/**
 * By kind. `unasked`: no plan says whether it is there, so it is drawn at a usual height. `unsaid`: planned, but no plan
 * says where. Null: its place is a fact of the well, or that of what it is fastened to.
 */
const PLACED_BY: Readonly<Record<PartKind, Ends<readonly string[]> | 'unasked' | 'unsaid' | null>> = {
  intake: both(SETTING),
  pump: { top: DISCHARGE, bottom: SETTING },
  motor: { top: SETTING, bottom: MOTOR },
  cableGuardStrip: { top: DISCHARGE, bottom: SETTING },
  shroud: { top: SETTING, bottom: MOTOR },
  nipple: both(DISCHARGE),
  checkValve: both([...DISCHARGE, 'string.checkValves']),
  insertFitting: both([...DISCHARGE, 'string.checkValves']),
  torqueArrestor: both([...DISCHARGE, 'string.torqueArrestor']),
  splice: both([...DISCHARGE, 'string.splices']),
  coupling: both(DISCHARGE),
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
  flowLimiter: 'unsaid',
  clamp: null,
  capSplice: 'unasked',
  probe: null,
  tie: null,
  guard: null,
  bond: 'unasked',
  union: 'unasked',
  tap: 'unasked',
  support: 'unasked',
  riser: 'unasked',
  tankTee: 'unasked',
  reliefValve: 'unsaid',
  reliefPipe: 'unasked',
  gauge: 'unasked',
  switch: 'unasked',
  drain: 'unasked',
  shutOff: 'unasked',
  tank: 'unasked',
  float: 'unasked',
  disconnect: 'unasked',
  controlBox: 'unasked',
  drive: 'unsaid',
  casing: null,
  screen: null,
  openHole: null,
  grout: null,
  well: null,
  frost: null,
  staticLevel: null,
  pumpingLevel: null,
};

/** By key, where it hangs on something else than its kind. */
const PLACED_BY_KEY: Readonly<Record<string, Ends<readonly string[]> | undefined>> = {
  'nipple/top': both(SEAL),
  'nipple/seal': both(SEAL),
  'insertFitting/top': both([...OUTLET, ...CASING]),
  'coupling/top': both(SEAL),
};

/** Whether no plan says of it whether it is there at all. */
export function isUnasked({ kind }: Pick<PlacedPart, 'kind'>): boolean {
  return PLACED_BY[kind] === 'unasked';
}

export function assumedEnds(
  solution: Pick<Solution, 'assumed'>,
  { key, kind }: Pick<PlacedPart, 'key' | 'kind'>,
): Ends<boolean> {
  const by = PLACED_BY_KEY[key] ?? PLACED_BY[kind];
  if (by === 'unasked' || by === 'unsaid') return { top: true, bottom: true };
  if (by === null) return { top: false, bottom: false };
  const assumed = assumedPaths(solution);
  const rests = (paths: readonly string[]): boolean => paths.some((path) => assumed.has(path));
  return { top: rests(by.top), bottom: rests(by.bottom) };
}

/** What stands in the house, at the height of the rise, is drawn somewhere where nobody knows how high that is. */
export function isPlaceKnown({ facts }: Pick<Solution, 'facts'>, { kind }: Pick<PlacedPart, 'kind'>): boolean {
  return facts.house.rise !== null || !isInHouse(kind);
}
