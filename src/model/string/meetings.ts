/** What meets what on the way of the water, from the well's top down to the motor, and how each joint is made. */
import type { Facts } from '../facts.ts';
import type { PartKind, Solved } from '../solution.ts';
import { graphOf, jointBetween, SPOOL } from './graph/graph.ts';
import type { Joint, PieceKind, StringGraph } from './graph/piece.ts';
import { wholePipeKey } from './graph/pieces.ts';
import type { Stretch } from './pipeRun.ts';

export type Neighbour = Extract<
  PartKind,
  'pitlessAdapter' | 'plug' | 'tee' | 'nipple' | 'coupling' | 'dropPipe' | 'checkValve' | 'pump' | 'intake' | 'motor'
>;

/** `pushed`: over the barbs of an insert fitting, held by clamps. `outlet`: in the thread of the pump's outlet. */
export type JoinedBy =
  | { readonly by: 'pushed'; readonly fittings: Facts['string']['fittings']; readonly clamps: number }
  | { readonly by: 'threaded' }
  | { readonly by: 'outlet'; readonly thread: string }
  | { readonly by: 'bolted' };

export type Meeting =
  | { readonly with: Neighbour; readonly joint: JoinedBy }
  /** The upper end of an adapter, which takes the pipe that lifts the string off. */
  | { readonly with: 'liftOutPipe' };

export interface Link extends Stretch {
  /** Key of the part; a pipe that valves cut has one for each piece. */
  readonly key: string;
  readonly kind: Neighbour;
  readonly above: Meeting | null;
  readonly below: Meeting | null;
}

/** From the top down: the chain of the string, its fittings told with the joint that they make, its sections as one pipe. */
export function linksOf(solved: Solved): readonly Link[] {
  const graph = graphOf(solved);
  const { groups, between } = grouped(graph);
  const met = groups.map((_, i) => jointBelow(between[i] ?? null, groups[i + 1], solved));
  return groups.map(({ key, kind, top, bottom }, i): Link => {
    const above = groups[i - 1];
    const below = groups[i + 1];
    const [joined, joins] = [met[i - 1] ?? null, met[i] ?? null];
    const liftedOff = kind === 'pitlessAdapter' ? ({ with: 'liftOutPipe' } as const) : null;
    return {
      key,
      kind,
      top,
      bottom,
      above: above !== undefined && joined !== null ? { with: above.kind, joint: joined } : liftedOff,
      below: below !== undefined && joins !== null ? { with: below.kind, joint: joins } : null,
    };
  });
}

type Group = Pick<Link, 'key' | 'kind' | 'top' | 'bottom'>;

/** Each neighbour with the joints from it to the next; null where the way down breaks off. */
function grouped(graph: StringGraph): { groups: readonly Group[]; between: readonly (readonly Joint[] | null)[] } {
  const pieces = new Map(graph.pieces.map((piece) => [piece.key, piece]));
  const groups: Group[] = [];
  const between: (readonly Joint[] | null)[] = [];
  let way: readonly Joint[] | null = [];
  let last: string | null = null;
  for (const own of graph.chain) {
    const piece = pieces.get(own);
    if (piece === undefined) continue;
    const joint = last === null ? undefined : jointBetween(graph, last, own);
    way = way === null || (last !== null && joint === undefined) ? null : joint === undefined ? way : [...way, joint];
    last = own;
    const { kind, top, bottom } = piece;
    if (!isNeighbour(kind) || isOfPipe(own)) continue;
    const key = own === SPOOL ? 'pitlessAdapter' : wholePipeKey(own);
    const before = groups.at(-1);
    if (before?.key === key) {
      groups[groups.length - 1] = { ...before, bottom };
    } else {
      if (groups.length > 0) between.push(way);
      groups.push({ key, kind, top, bottom });
    }
    way = [];
  }
  return { groups, between };
}

/** A coupling in the pipe or at its end is told with the pipe; one on a seal by itself. */
function isOfPipe(key: string): boolean {
  return /^coupling\/(?:\d|pump)/.test(key);
}

const NEIGHBOURS: Readonly<Record<Neighbour, true>> = {
  pitlessAdapter: true,
  plug: true,
  tee: true,
  nipple: true,
  coupling: true,
  dropPipe: true,
  checkValve: true,
  pump: true,
  intake: true,
  motor: true,
};

function isNeighbour(kind: PieceKind): kind is Neighbour {
  return Object.hasOwn(NEIGHBOURS, kind);
}

function jointBelow(way: readonly Joint[] | null, below: Group | undefined, { facts }: Solved): JoinedBy | null {
  if (way === null || below === undefined) return null;
  for (const { way: made } of way) {
    if (made.by === 'barb') return { by: 'pushed', fittings: made.fittings, clamps: made.clamps };
    if (made.by === 'bolts') return { by: 'bolted' };
  }
  return below.kind === 'pump' ? { by: 'outlet', thread: facts.pump.outlet } : { by: 'threaded' };
}
