/** What the tests of laws share: a fixed seed, printed on failure with the counterexample, and plain ranges. */
import fc from 'fast-check';

export const SEED = { seed: 1_906_2024, numRuns: 300 } as const;

export function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}
