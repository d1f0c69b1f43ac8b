/** Brings what follows the depths into order: wire, pipe, valves, protection. Only what was tried and makes nothing worse. */
import { offersOn } from '../fixes/fixesOf.ts';
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

function firstFix({ draft, solution }: Followed, solver: Solver): FixOfFinding | null {
  const offerOn = offersOn(draft.plan, solution, solver);
  for (const finding of solution.findings) {
    // A note is no reason to buy something.
    if (finding.severity === 'note') continue;
    const changes = offerOn(finding).button?.changes ?? null;
    if (changes?.every(({ path }) => mayFollow(path)) === true) return { finding, changes };
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
