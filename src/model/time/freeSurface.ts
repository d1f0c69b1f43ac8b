/** The water surface in the bore: bore less drop pipe, stretch by stretch. */
import type { CubicMetres, Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { usableStorage } from '../formulas/wellStorage.ts';

type Bored = Pick<Solved, 'bore' | 'facts'>;

/** Water between two depths that the pump can take [m³]; 0 when the second lies above the first. */
export function waterBetween({ bore, facts }: Bored, from: Metres, to: Metres): CubicMetres {
  return usableStorage({
    bore,
    staticLevel: from,
    intakeDepth: to,
    dropPipeOutsideDiameter: facts.dropPipe.outsideDiameter,
  });
}

/**
 * Radius of a plain bore with as much free surface as this one has between two depths, on average.
 *
 * @param deepest  where the level would fall to; the bore counts down to its bottom at most
 * @returns  rc [m]; null where no bore stands between them or the pipe fills it
 */
export function freeRadius(bored: Bored, from: Metres, deepest: Metres): Metres | null {
  const to = Math.min(deepest, bored.facts.well.bottom);
  const volume = waterBetween(bored, from, to);
  return to > from && volume > 0 ? Math.sqrt(volume / (Math.PI * (to - from))) : null;
}

/** Depth of the water after a volume was taken from the bore, starting at a level and ending at the bottom at most. */
export function levelAfter({ bore, facts }: Bored, from: Metres, taken: CubicMetres): Metres {
  const pipe = facts.dropPipe.outsideDiameter / 2;
  let left = taken;
  let level = from;
  for (const { top, bottom, insideRadius } of bore) {
    const area = Math.PI * (insideRadius * insideRadius - pipe * pipe);
    // A pipe that fills its stretch leaves no water there to take.
    if (bottom <= from || !(area > 0)) continue;
    const start = Math.max(top, from);
    if (left <= area * (bottom - start)) return start + left / area;
    left -= area * (bottom - start);
    level = bottom;
  }
  return level;
}
