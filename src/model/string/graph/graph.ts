/** The whole string as a graph, made when it is first asked for and once for each solution: no figure of `solve` needs it. */
import type { Solved } from '../../solution.ts';
import { chainOf } from './chain.ts';
import { jointsOf } from './joints.ts';
import { KINDS } from './kinds.ts';
import type { Joint, Piece, StringGraph } from './piece.ts';
import { piecesOf, SPOOL, type Bare } from './pieces.ts';

const MADE = new WeakMap<Solved['values'], StringGraph>();

export function graphOf(solved: Solved): StringGraph {
  const made = MADE.get(solved.values) ?? makeGraph(solved);
  MADE.set(solved.values, made);
  return made;
}

function makeGraph(solved: Solved): StringGraph {
  const bare = piecesOf(solved);
  const chain = chainOf(bare, solved);
  const joints = jointsOf(solved, bare, chain);
  const [holds, after] = [new Map<string, Set<string>>(), new Map<string, Set<string>>()];
  for (const { a, b, first } of joints) {
    add(holds, a.piece, b.piece);
    if (first === 'a') add(after, b.piece, a.piece);
    else add(after, a.piece, b.piece);
  }
  const pieces = bare.map((piece): Piece => ({
    ...piece,
    holds: [...(holds.get(piece.key) ?? [])],
    after: [...new Set([...(after.get(piece.key) ?? []), ...afterToo(piece, bare)])],
  }));
  return { pieces, joints, chain: chain.map(({ key }) => key) };
}

function add(to: Map<string, Set<string>>, key: string, other: string): void {
  const found = to.get(key);
  if (found === undefined) to.set(key, new Set([other]));
  else found.add(other);
}

/** A cap closes a well that is finished. */
function afterToo({ kind }: Bare, pieces: readonly Bare[]): readonly string[] {
  const { after = [] } = KINDS[kind] ?? {};
  return pieces.filter((each) => after.includes(each.kind)).map(({ key }) => key);
}

/** The joint between two pieces; undefined where they do not meet. */
export function jointBetween({ joints }: StringGraph, one: string, other: string): Joint | undefined {
  return joints.find(({ a, b }) => (a.piece === one && b.piece === other) || (a.piece === other && b.piece === one));
}

export { SPOOL };
