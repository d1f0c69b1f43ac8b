/** The name that was probably meant, or null when none is near. */
export function nearestName(typed: string, names: readonly string[]): string | null {
  let best: string | null = null;
  let least = Math.max(1, Math.floor(Math.max(typed.length, 3) / 3)) + 1;
  for (const name of names) {
    if (Math.abs(name.length - typed.length) >= least) continue;
    const distance = editDistance(typed.toLowerCase(), name.toLowerCase());
    if (distance < least) {
      best = name;
      least = distance;
    }
  }
  return best;
}

/** Letters to insert, delete, replace or swap with their neighbour. */
function editDistance(from: string, to: string): number {
  let before: number[] = [];
  let previous = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let row = 1; row <= from.length; row++) {
    const current = [row];
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1];
      let cost = Math.min(
        (previous[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (previous[column - 1] ?? 0) + (same ? 0 : 1),
      );
      if (row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1]) {
        cost = Math.min(cost, (before[column - 2] ?? 0) + 1);
      }
      current.push(cost);
    }
    before = previous;
    previous = current;
  }
  return previous[to.length] ?? 0;
}
