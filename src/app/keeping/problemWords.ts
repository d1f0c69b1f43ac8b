/** What is wrong with a plan that was opened, as a sentence of its own. */
import { sayProblem as told, type Problem } from '../../model/plan/readPlan.ts';
import { capital } from '../../words/en/phrases.ts';

/** The name of a field stays as a file has it. */
export function sayProblem(problem: Problem): string {
  const words = told(problem);
  return /^\S*\.\S/.test(words) ? words : capital(words);
}
