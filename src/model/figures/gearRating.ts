/** What hoist and clamps have to be rated for: one figure for findings, steps, parts and sheet. Common practice, no source. */
import type { Newtons } from '../si.ts';
import type { Solved } from '../solution.ts';

/** Pulling takes half as much again as what hangs there full of water, where it sticks. */
export const FOR_STICKING = 1.5;

/** Of what hangs in the water. */
const TWICE = 2;

/**
 * Never less than the string lifted clear of the water, nor than what pulling may take.
 *
 * @returns  null while nobody knows what the pump weighs
 */
export function gearRating({ values }: Pick<Solved, 'values'>, work: 'new' | 'replace'): Newtons | null {
  const { hangLoadAtRest, hangLoadDry: clear } = values;
  if (clear === null) return null;
  return Math.max(TWICE * (hangLoadAtRest ?? clear), work === 'replace' ? clear * FOR_STICKING : clear);
}
