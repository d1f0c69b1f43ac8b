import { readFacts } from '../plan/readFacts.ts';
import type { Plan } from '../plan/schema.ts';
import type { Solved } from '../solution.ts';
import { solveFacts } from '../solve.ts';

/** Everything but the judgement. */
export function solvedOf(plan: Plan): Solved {
  return solveFacts(plan, readFacts(plan));
}
