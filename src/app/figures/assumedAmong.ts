/** Whether any of the fields that a line of figures tells was put in by the program. */
import { assumedPaths } from '../../model/rules/assumed.ts';
import type { Solution } from '../../model/solution.ts';

export function assumedAmong(solution: Pick<Solution, 'assumed'>, paths: readonly string[]): boolean {
  const assumed = assumedPaths(solution);
  return paths.some((path) => assumed.has(path));
}
