/**
 * What a drawing has to know of each kind of part besides how it looks: one row of one record, which the compiler wants
 * complete. How it looks stands in its own file under `parts`.
 */
import type { PartKind } from '../model/solution.ts';

export interface DrawnKind {
  /** With what it is drawn: the string in the well, the works on top, the house, the hole and its ground, the water's levels. */
  readonly of: 'string' | 'top' | 'house' | 'hole' | 'level';
  /** It runs through a frame from edge to edge, and is drawn as far as that. */
  readonly runs?: true;
  /** Of the string: far from a frame, nothing in it hangs on it. */
  readonly local?: true;
  /** From afar it has a symbol of its own, where that stands clear of what is below. */
  readonly small?: true;
  /** The water in the pipe is not seen through it. */
  readonly hidesBore?: true;
  /** A probe hangs beside it; where it is bare, a strap holds. */
  readonly besideProbe?: 'bare' | 'fitted';
  /** What signs do about it: keep off a body, stand over a line before they stand far off, stand in a wall. */
  readonly signs?: 'body' | 'line' | 'wall';
  /** A dashed box goes round it where it is in danger. */
  readonly boxed?: true;
  /** The pump's detail reaches up to it. */
  readonly stretches?: true;
  /** It stands on the casing: the section begins over it. */
  readonly onTop?: true;
  /** The close-up does not name it. */
  readonly unnamed?: true;
}

const inHouse: DrawnKind = { of: 'house', signs: 'body', unnamed: true };

const ROWS = {
  motor: { of: 'string', local: true, besideProbe: 'bare', signs: 'body', boxed: true },
  intake: { of: 'string', local: true, besideProbe: 'fitted', signs: 'body', boxed: true },
  pump: { of: 'string', besideProbe: 'bare', signs: 'body', boxed: true },
  cableGuardStrip: { of: 'string', local: true, besideProbe: 'bare' },
  shroud: { of: 'string', local: true, besideProbe: 'fitted' },
  nipple: { of: 'string', local: true, hidesBore: true, besideProbe: 'bare' },
  checkValve: {
    of: 'string',
    local: true,
    small: true,
    hidesBore: true,
    besideProbe: 'fitted',
    signs: 'body',
    boxed: true,
  },
  flowLimiter: { of: 'string', local: true, hidesBore: true, besideProbe: 'fitted' },
  insertFitting: {
    of: 'string',
    local: true,
    hidesBore: true,
    besideProbe: 'fitted',
    signs: 'body',
    boxed: true,
    stretches: true,
  },
  clamp: { of: 'string', local: true, hidesBore: true, besideProbe: 'fitted', boxed: true, unnamed: true },
  dropPipe: { of: 'string', runs: true, besideProbe: 'bare', signs: 'body' },
  torqueArrestor: { of: 'string', local: true, small: true, hidesBore: true, boxed: true, stretches: true },
  splice: { of: 'string', local: true, small: true, signs: 'body', boxed: true, stretches: true },
  probe: { of: 'string', signs: 'body', boxed: true, stretches: true },
  tie: { of: 'string', local: true },
  guard: { of: 'string', local: true, small: true },
  // It leaves through the top, and is drawn with it too.
  cable: { of: 'top', runs: true, signs: 'line' },
  rope: { of: 'string', runs: true, signs: 'line' },
  coupling: { of: 'string', local: true, small: true, hidesBore: true, besideProbe: 'fitted', onTop: true },
  capSplice: { of: 'top' },
  pitlessAdapter: { of: 'top', signs: 'body', boxed: true },
  cap: { of: 'top', boxed: true, onTop: true },
  conduit: { of: 'top' },
  bond: { of: 'top' },
  seal: { of: 'top', signs: 'body', boxed: true, onTop: true },
  tee: { of: 'top', onTop: true },
  plug: { of: 'top', onTop: true, unnamed: true },
  union: { of: 'top' },
  tap: { of: 'top' },
  support: { of: 'top' },
  buriedLine: { of: 'top' },
  riser: inHouse,
  tankTee: inHouse,
  gauge: inHouse,
  switch: { ...inHouse, boxed: true },
  reliefValve: inHouse,
  reliefPipe: inHouse,
  drain: inHouse,
  shutOff: inHouse,
  tank: { ...inHouse, boxed: true },
  float: inHouse,
  disconnect: inHouse,
  controlBox: inHouse,
  drive: inHouse,
  casing: { of: 'hole', signs: 'wall' },
  screen: { of: 'hole', signs: 'wall' },
  openHole: { of: 'hole', signs: 'wall' },
  grout: { of: 'hole', signs: 'wall' },
  well: { of: 'hole' },
  frost: { of: 'hole' },
  staticLevel: { of: 'level' },
  pumpingLevel: { of: 'level' },
} as const satisfies Readonly<Record<PartKind, DrawnKind>>;

export const KINDS: Readonly<Record<PartKind, DrawnKind>> = ROWS;

type KindWith<Row> = { [Kind in PartKind]: (typeof ROWS)[Kind] extends Row ? Kind : never }[PartKind];

/** Those that are drawn with the string, and those that have a symbol of their own from afar. */
export type StringKind = KindWith<{ readonly of: 'string' }>;
export type SmallKind = KindWith<{ readonly small: true }>;

export function isPartKind(name: string): name is PartKind {
  return Object.hasOwn(KINDS, name);
}

/** The kinds of which something holds. */
export function kindsWith(holds: (row: DrawnKind) => boolean): ReadonlySet<PartKind> {
  return new Set((Object.keys(KINDS) as PartKind[]).filter((kind) => holds(KINDS[kind])));
}
