/** Applies the rules' own fixes, one at a time, since one may settle another or ask for another. */
import { candidatesFor, givenBy } from '../rules/index.ts';
import type { Change, Finding, Solution } from '../solution.ts';
import { solve } from '../solve.ts';
import { withChange } from './draft.ts';
import type { Draft } from './draft.ts';

/** There are fewer choices than this in a plan: more rounds would be a circle. */
const MOST_ROUNDS = 24;

export interface Fixed {
  readonly draft: Draft;
  readonly solution: Solution;
}

/** A fix that was tried once is not tried again. */
export function applyFixes(draft: Draft): Fixed {
  const tried = new Set<string>();
  let now: Fixed = { draft, solution: solve(draft.plan) };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = firstFix(now.solution, tried);
    if (next === null) break;
    tried.add(nameOf(next));
    const fixed = applied(now.draft, next);
    now = { draft: fixed, solution: solve(fixed.plan) };
  }
  return now;
}

interface FixOfFinding {
  readonly finding: Finding;
  readonly changes: readonly Change[];
}

function firstFix(solution: Solution, tried: ReadonlySet<string>): FixOfFinding | null {
  const given = givenBy(solution);
  for (const finding of solution.findings) {
    const changes = candidatesFor(finding, given)[0]?.changes ?? null;
    if (changes !== null && !tried.has(nameOf({ finding, changes }))) return { finding, changes };
  }
  return null;
}

function nameOf({ finding, changes }: FixOfFinding): string {
  return `${finding.rule} ${JSON.stringify(changes)}`;
}

function applied(draft: Draft, { finding, changes }: FixOfFinding): Draft {
  const { rule, variant, numbers } = finding;
  const why = { variant: 'finding', numbers: { finding: { rule, variant, numbers } } } as const;
  return changes.reduce((made, { path, to }) => withChange(made, path, to, rule, why), draft);
}
