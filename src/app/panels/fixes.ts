/** What is offered against the findings of a well: asked for where they are listed, never while a frame is dragged. */
import { candidatesFor, givenBy } from '../../model/rules/index.ts';
import type { Fix } from '../../model/rules/rule.ts';
import type { Finding, Solution } from '../../model/solution.ts';

/** The fix of each finding that has one, or the words in its place. */
export function fixesOfFindings(solution: Solution): ReadonlyMap<Finding, Fix> {
  const given = givenBy(solution);
  const fixes = new Map<Finding, Fix>();
  for (const finding of solution.findings) {
    const [fix] = candidatesFor(finding, given);
    if (fix !== undefined) fixes.set(finding, fix);
  }
  return fixes;
}
