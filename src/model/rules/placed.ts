import type { PartKind, PlacedPart, Solved } from '../solution.ts';

/** The first part of a kind as it is placed; undefined where none is. */
export function placed({ parts }: Solved, kind: PartKind): PlacedPart | undefined {
  for (const part of parts) if (part.kind === kind) return part;
  return undefined;
}
