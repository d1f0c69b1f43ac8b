/** The values at which a quantity is tried: those that a person would say, from the one it has now to the last. */
export interface Grid {
  /** Of the last value; the first is 0, the value now. */
  readonly last: number;
  readonly at: (index: number) => number;
}

export interface GridOptions {
  readonly now: number;
  /** Where the search ends; larger or smaller than now. */
  readonly end: number;
  /** What a person reads: half a foot, one psi. Positive. */
  readonly step: number;
  /** What is told is the way from now, not the value: then the steps count from now, else they are round values. */
  readonly fromNow: boolean;
}

/** Of a step, so that a value that is on the grid but for its last bits counts as on it. */
const HAIR = 1e-6;

export function gridOf({ now, end, step, fromNow }: GridOptions): Grid {
  const sign = end < now ? -1 : 1;
  const from = fromNow ? now / step : sign * Math.floor((sign * now) / step + HAIR);
  const last = Math.max(0, Math.ceil((sign * end) / step - sign * from - HAIR));
  return {
    last,
    at: (index) => (index <= 0 ? now : index >= last ? end : (from + sign * index) * step),
  };
}

/**
 * Which of them are tried first: close together near the value now, then evenly, and where something begins or ends.
 * Between two that differ the turn is then found by halving.
 *
 * @param evenly  how many even stretches
 * @param places  values at which something begins or ends
 */
export function coarse(grid: Grid, evenly: number, places: readonly number[]): readonly number[] {
  const tried = new Set<number>([grid.last]);
  for (let index = 1; index < grid.last; index *= 2) tried.add(index);
  for (let i = 1; i < evenly; i++) tried.add(Math.round((grid.last * i) / evenly));
  const first = grid.at(1);
  const size = grid.last > 2 ? grid.at(2) - first : 1;
  for (const place of places) {
    const index = Math.round((place - first) / size) + 1;
    for (const near of [index - 1, index, index + 1]) if (near > 0 && near < grid.last) tried.add(near);
  }
  tried.delete(0);
  return [...tried].toSorted((one, other) => one - other);
}
