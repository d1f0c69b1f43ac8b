/** Every joint that the water passes, from the pump up and on to the tank: what is held how, what hangs on it, and what is wrong with it. */
import type { Newtons } from '../si.ts';
import type { Finding, Solution } from '../solution.ts';
import { lineEnd, TOP_BUSHING } from '../string/graph/fittings.ts';
import { graphOf, SPOOL } from '../string/graph/graph.ts';
import type { End, Joint, Piece, PieceKind, StringGraph, Way } from '../string/graph/piece.ts';
import type { StringEnd } from '../string/threads.ts';

export interface Connection {
  /** On the side of the pump. */
  readonly from: Met;
  /** On the side of the tank. */
  readonly to: Met;
  readonly way: Way;
  readonly seal: Joint['seal'];
  /** The most that it ever bears; null beside the way of the load, or where nobody knows it. */
  readonly load: Newtons | null;
  /** What was found of it. */
  readonly findings: readonly Finding[];
}

export interface Met extends End {
  /** `spool`: the half of an adapter that the string hangs on. */
  readonly kind: PieceKind | 'spool';
}

export function connectionsOf(solution: Solution): readonly Connection[] {
  const graph = graphOf(solution);
  const byKey = new Map(graph.pieces.map((piece) => [piece.key, piece]));
  const along = alongTheWater(graph);
  const connections = graph.joints.flatMap(({ a, b, way, seal, load }) => {
    const pieces = [byKey.get(a.piece), byKey.get(b.piece)] as const;
    const [one, other] = pieces;
    if (one === undefined || other === undefined || !carriesWater(way, [one, other])) return [];
    const [first, second] = along(one) <= along(other) ? [a, b] : [b, a];
    const ends = first === a ? ([one, other] as const) : ([other, one] as const);
    const connection: Connection = {
      from: { ...first, kind: kindOf(ends[0]) },
      to: { ...second, kind: kindOf(ends[1]) },
      ...{ way, seal },
      load: mostOf(load),
      findings: solution.findings.filter((each) => WRONG_WITH[each.rule]?.(each, { way, ends }) === true),
    };
    return [{ connection, at: [along(ends[0]), along(ends[1])] as const }];
  });
  return connections
    .toSorted((one, other) => one.at[0] - other.at[0] || one.at[1] - other.at[1])
    .map(({ connection }) => connection);
}

function kindOf({ key, kind }: Piece): Met['kind'] {
  return key === SPOOL ? 'spool' : kind;
}

function carriesWater({ by }: Way, ends: readonly [Piece, Piece]): boolean {
  return OF_THE_WATER.has(by) && !ends.some(({ kind }) => BESIDE.has(kind));
}

/** Where a piece stands on the way from the pump to the tank: up the string, along the line, into the house. */
function alongTheWater({ chain }: StringGraph): (piece: Piece) => number {
  const up = new Map(chain.map((key, i) => [key, chain.length - i]));
  return ({ key, kind }) => {
    const onward = ONWARD.findIndex((each) => each === key || each === kind);
    return up.get(key) ?? chain.length + 1 + (onward < 0 ? ONWARD.length : onward);
  };
}

/** Keys or kinds, after the string. */
const ONWARD: readonly string[] = [
  'pitlessAdapter',
  lineEnd('bushing'),
  'union',
  'tap',
  lineEnd('well'),
  'buriedLine',
  lineEnd('house'),
  'elbow',
  'riser',
  'tankTee',
];

const OF_THE_WATER: ReadonlySet<Way['by']> = new Set(['thread', 'barb', 'socket', 'slide', 'rest']);

/** Neither holds water nor hangs from what does. */
const BESIDE: ReadonlySet<PieceKind> = new Set(['cable', 'support', 'casing', 'cap']);

function mostOf(load: Joint['load']): Newtons | null {
  if (load === null) return null;
  const most = Math.max(...[load.atRest, load.pumping, load.dry].map((each) => each ?? 0));
  return most > 0 ? most : null;
}

interface Where {
  readonly way: Way;
  readonly ends: readonly [Piece, Piece];
}

/** Which joints a finding is about: what it says of the string's fittings holds of each of them. */
const WRONG_WITH: Readonly<Record<string, (found: Finding, of: Where) => boolean>> = {
  'PR-18': ({ variant }, of) => {
    if (ON_BARBS.has(variant)) return ofString(of, 'barb');
    return ON_THREADS.has(variant) && ofString(of, 'thread');
  },
  'PR-52': ({ variant }, of) => {
    if (variant === 'barbsDoNotFit') return ofString(of, 'barb');
    // A motor in its casing touches nothing that is screwed together.
    return (
      variant !== 'motorInSteelCasing' && of.way.by === 'thread' && inWell(of) && has(of, 'insertFitting', 'dropPipe')
    );
  },
  'PR-65': ({ numbers }, of) => {
    const { ends } = numbers as { readonly ends: readonly StringEnd[] };
    return of.way.by === 'thread' && of.ends.some(({ key }) => ends.some((end) => key === BETWEEN[end]));
  },
};

/** What takes the thread of that end to the pipe's. */
const BETWEEN: Readonly<Record<StringEnd, string>> = { pump: 'bushing', adapter: TOP_BUSHING };

const ON_BARBS: ReadonlySet<string> = new Set(['weakFittings', 'tooFewClamps', 'rustingScrews']);
const ON_THREADS: ReadonlySet<string> = new Set([
  'threadedSocketPipe',
  'threadedSchedule40',
  'threadsWeakerThanPump',
  'threadsBelowUsualRating',
]);

function ofString(of: Where, by: Way['by']): boolean {
  return of.way.by === by && has(of, 'dropPipe');
}

function inWell({ ends }: Where): boolean {
  return ends.every(({ run, key }) => run === 'water' && !key.startsWith('lineEnd/'));
}

function has({ ends }: Where, ...kinds: readonly PieceKind[]): boolean {
  return ends.some(({ kind }) => kinds.includes(kind));
}
