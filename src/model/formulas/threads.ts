import type { Metres } from '../si.ts';
import { pipeThread } from '../tables/pipeThreads.ts';
import { inches } from '../units.ts';

/** Turns with the wrench past hand-tight that the standard's make-up counts. Source: ASME B1.20.1. */
export const WRENCH_TURNS = 3;

/** Turns until a thread of this size is tight by hand: its length times the threads per inch. Source: ASME B1.20.1. */
export function handTightTurns(nominalSize: string): number {
  const { handTightInches, threadsPerInch } = pipeThread(nominalSize);
  return handTightInches * threadsPerInch;
}

/**
 * Length of thread engaged in a made-up joint.
 *
 *     L = L1 + turns/TPI
 *
 * @param wrenchTurns  past hand-tight; plastic female threads split, follow their maker
 * @returns            metres
 * Throws              RangeError for negative turns or a size that is not tabulated
 * Source              ASME B1.20.1
 */
export function engagedLength(nominalSize: string, wrenchTurns = WRENCH_TURNS): Metres {
  if (!(wrenchTurns >= 0)) throw new RangeError(`engagedLength: wrench turns ${wrenchTurns}, must not be negative`);
  const { handTightInches, threadsPerInch } = pipeThread(nominalSize);
  return inches(handTightInches + wrenchTurns / threadsPerInch);
}
