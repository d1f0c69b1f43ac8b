/** The well with what was put in, where it is not as planned: readings are held against what hangs there. */
import { solve } from '../solve.ts';
import type { Solution } from '../solution.ts';
import { asPlan } from './asPlan.ts';

const MADE = new WeakMap<Solution['values'], Solution>();

/** The same solution where nothing was put in otherwise, or where what was written down makes no plan. */
export function asHung(solution: Solution): Solution {
  if (solution.plan.asBuilt?.installed === undefined) return solution;
  const made = MADE.get(solution.values) ?? hungBy(solution);
  MADE.set(solution.values, made);
  return made;
}

function hungBy(solution: Solution): Solution {
  const reading = asPlan(solution.plan);
  return reading.ok ? solve(reading.plan) : solution;
}
