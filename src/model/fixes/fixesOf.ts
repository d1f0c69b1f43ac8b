/**
 * What may be offered against each finding. A change is offered only after it was tried: its rule must then stand
 * better, and no other may stand worse.
 */
import { withValue } from '../plan/editPlan.ts';
import type { Plan } from '../plan/schema.ts';
import { words } from '../rules/fix.ts';
import { givenBy } from '../rules/index.ts';
import type { Fix } from '../rules/rule.ts';
import type { Change, Finding, Solution } from '../solution.ts';
import { solvingAnew, type Solver } from '../solve.ts';
import { candidatesFor } from './candidatesFor.ts';
import { isBetter, worsened } from './standing.ts';

const FLOWING = 'PR-38';

/** Each costs a solution of its own. */
const MOST_TRIED = 3;

export interface Offered {
  /** A change that was tried and is better; null where none is. */
  readonly button: Fix | null;
  /** What to do where there is no button; null where there is one, or nothing to say. */
  readonly words: Fix | null;
}

/**
 * @param plan      as typed
 * @param solution  what `solve` says of it
 * @param solver    what tries them: one that remembers, where many plans are tried
 * @returns  for each finding, in their order
 */
export function fixesOf(plan: Plan, solution: Solution, solver: Solver = solvingAnew): readonly Offered[] {
  return solution.findings.map(offersOn(plan, solution, solver));
}

/** The same of one finding after another: for who needs no more than the first. */
export function offersOn(plan: Plan, solution: Solution, solver: Solver): (finding: Finding) => Offered {
  const given = givenBy(solution);
  const offer = (finding: Finding) => offered(plan, solution, finding, candidatesFor(finding, given), solver);
  // Nothing is done to a flowing well before it is in hand.
  if (!solution.findings.some(({ rule }) => rule === FLOWING)) return offer;
  const first: Offered = { button: null, words: words('callContractorFirst', {}) };
  return (finding) => (finding.rule === FLOWING ? offer(finding) : first);
}

function offered(
  plan: Plan,
  solution: Solution,
  finding: Finding,
  candidates: readonly Fix[],
  solver: Solver,
): Offered {
  const tried = candidates.filter(({ changes }) => changes !== null).slice(0, MOST_TRIED);
  const button = tried.find(({ changes }) => helps(plan, solution, finding.rule, changes ?? [], solver)) ?? null;
  if (button !== null) return { button, words: null };
  const last = candidates.find(({ changes }) => changes === null) ?? candidates[candidates.length - 1];
  return { button: null, words: last === undefined ? null : { ...last, changes: null } };
}

function helps(plan: Plan, before: Solution, rule: string, changes: readonly Change[], { later }: Solver): boolean {
  const after = later(changed(plan, changes));
  return isBetter(rule, before, after) && worsened(before, after).length === 0;
}

export function changed(plan: Plan, changes: readonly Change[]): Plan {
  return changes.reduce((made, { path, to }) => withValue(made, path, to), plan);
}
