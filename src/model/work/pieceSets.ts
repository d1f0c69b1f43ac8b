/** The pieces of a string by what step takes them: each step takes what is its own, and none is left or taken twice. */
import type { Piece, PieceKind, StringGraph } from '../string/graph/piece.ts';

export interface PieceSets {
  readonly graph: StringGraph;
  /** Keys of the pieces of these kinds, in the order of the graph. */
  readonly ofKinds: (...kinds: readonly PieceKind[]) => readonly string[];
  /** Those of these keys that are there. */
  readonly named: (...keys: readonly string[]) => readonly string[];
  /** A fitting with the clamps on its joint. */
  readonly withClamps: (joint: string, ...keys: readonly string[]) => readonly string[];
  readonly piece: (key: string) => Piece;
  readonly has: (kind: PieceKind) => boolean;
}

export function pieceSets(graph: StringGraph): PieceSets {
  const byKey = new Map(graph.pieces.map((piece) => [piece.key, piece]));
  const named = (...keys: readonly string[]): readonly string[] => keys.filter((key) => byKey.has(key));
  return {
    graph,
    named,
    ofKinds: (...kinds) => graph.pieces.filter(({ kind }) => kinds.includes(kind)).map(({ key }) => key),
    withClamps: (joint, ...keys) => [
      ...named(...keys),
      ...graph.pieces.filter(({ key }) => key.startsWith(`clamp/${joint}/`)).map(({ key }) => key),
    ],
    piece: (key) => {
      const found = byKey.get(key);
      if (found === undefined) throw new Error(`pieceSets: no piece "${key}"`);
      return found;
    },
    has: (kind) => graph.pieces.some((piece) => piece.kind === kind),
  };
}
