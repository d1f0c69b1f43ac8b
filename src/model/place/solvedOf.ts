import type { Plan } from '../plan/schema.ts';
import type { Solved } from '../solution.ts';
import { solvingAnew } from '../solve.ts';

/** Everything but the judgement. */
export function solvedOf(plan: Plan): Solved {
  return solvingAnew.place(plan);
}
