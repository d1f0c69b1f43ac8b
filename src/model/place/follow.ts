/** Brings what follows the depths into order: wire, pipe, valves, protection. Only what was tried and makes nothing worse. */
import { fixesOf } from '../fixes/fixesOf.ts';
import type { Change, Finding, Solution } from '../solution.ts';
import { solvingAnew, type Solver } from '../solve.ts';
import { withChange } from './draft.ts';
import type { Draft } from './draft.ts';

export interface Followed {
  readonly draft: Draft;
  readonly solution: Solution;
}

/** Each step takes away a warning or a danger and adds none: there are never more than this. */
const MOST_STEPS = 24;

export function follow(
  start: Draft,
  solver: Solver = solvingAnew,
  solution: Solution = solver.later(start.plan),
): Followed {
  let now: Followed = { draft: start, solution };
  for (let step = 0; step < MOST_STEPS; step++) {
    const next = firstFix(now, solver);
    if (next === null) break;
    const draft = applied(now.draft, next);
    now = { draft, solution: solver.later(draft.plan) };
  }
  return now;
}

interface FixOfFinding {
  readonly finding: Finding;
  readonly changes: readonly Change[];
}

/** A note is no reason to buy something. */
function firstFix({ draft, solution }: Followed, solver: Solver): FixOfFinding | null {
  const offered = fixesOf(draft.plan, solution, solver);
  for (const [index, finding] of solution.findings.entries()) {
    const changes = offered[index]?.button?.changes ?? null;
    if (finding.severity !== 'note' && changes !== null && changes.every(({ path }) => mayFollow(path)))
      return { finding, changes };
  }
  return null;
}

/** Depths are placed, and what stands in the house is for its people to choose: only what hangs in the well follows. */
function mayFollow(path: string): boolean {
  return path !== 'pump.setting' && path !== 'top.depth' && !path.startsWith('house.');
}

function applied(draft: Draft, { finding, changes }: FixOfFinding): Draft {
  const { rule, variant, numbers } = finding;
  const why = { variant: 'finding', numbers: { finding: { rule, variant, numbers } } } as const;
  return changes.reduce((made, { path, to }) => withChange(made, path, to, rule, why), draft);
}
