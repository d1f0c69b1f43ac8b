/** Whether a barb goes into a pipe: sizes of one name have three bores. */
import type { Metres } from '../si.ts';
import { inches } from '../units.ts';

export type FittingMatch = 'loose' | 'match' | 'forced' | 'does not enter';

/** Limits of the gap; a choice, no source. */
const LOOSE: Metres = inches(0.01);
const TIGHT: Metres = inches(-0.01);
const TOO_TIGHT: Metres = inches(-0.05);

/**
 * Play of an insert fitting in a pipe.
 *
 *     gap = bore of the pipe − bore the barb was made for
 *
 * @returns  metres, negative where the barb is too thick
 * Throws    RangeError unless both are positive
 */
export function fittingGap({ pipeBore, madeFor }: BarbInPipe): Metres {
  if (!(pipeBore > 0 && madeFor > 0 && pipeBore + madeFor < Infinity)) {
    throw new RangeError(`fittingGap: pipe ${pipeBore} m, barb for ${madeFor} m; both must be positive`);
  }
  return pipeBore - madeFor;
}

export interface BarbInPipe {
  /** Inside diameter of the pipe. */
  readonly pipeBore: Metres;
  /** Inside diameter of the pipe that the barb was made for. */
  readonly madeFor: Metres;
}

/**
 * How a barb sits: loose beyond +0.010 in, a match down to −0.010 in, forced down to −0.050 in, below that it does not go in.
 *
 * Source  limits: a choice, no source; sizes ASTM D2239, D3035, D2737
 */
export function fittingMatch(barb: BarbInPipe): FittingMatch {
  const gap = fittingGap(barb);
  if (gap > LOOSE) return 'loose';
  if (gap >= TIGHT) return 'match';
  return gap >= TOO_TIGHT ? 'forced' : 'does not enter';
}
