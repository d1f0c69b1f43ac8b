/**
 * What was made last time, if it was made of the same values, else made anew. What comes out never depends on what is
 * remembered: only how long it takes.
 *
 * @param key   a word of its own for each piece
 * @param from  all that the piece is made of: plain values, or objects that never change
 */
export type Recall = <T>(key: string, from: readonly unknown[], make: () => T) => T;

export function createRecall(): Recall {
  const pieces = new Map<string, { from: readonly unknown[]; piece: unknown }>();
  return <T>(key: string, from: readonly unknown[], make: () => T): T => {
    const last = pieces.get(key);
    if (last !== undefined && equalLists(last.from, from)) return last.piece as T;
    const piece = make();
    pieces.set(key, { from, piece });
    return piece;
  };
}

/** Remembers nothing: everything is made. */
export const makeAnew: Recall = (_key, _from, make) => make();

function equalLists(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((value, i) => Object.is(value, b[i]));
}
