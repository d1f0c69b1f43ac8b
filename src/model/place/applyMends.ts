/** Applies the rules' own mends, one at a time, since one may settle another or ask for another. */
import type { Change, Finding, Solution } from '../solution.ts';
import { solve } from '../solve.ts';
import { withChange } from './draft.ts';
import type { Draft } from './draft.ts';

/** There are fewer choices than this in a plan: more rounds would be a circle. */
const MOST_ROUNDS = 24;

export interface Mended {
  readonly draft: Draft;
  readonly solution: Solution;
}

/** A mend that was tried once is not tried again. */
export function applyMends(draft: Draft): Mended {
  const tried = new Set<string>();
  let now: Mended = { draft, solution: solve(draft.plan) };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = now.solution.findings.find((finding) => finding.mend !== null && !tried.has(nameOf(finding)));
    if (next === undefined) break;
    tried.add(nameOf(next));
    const mended = applied(now.draft, next, next.mend ?? []);
    now = { draft: mended, solution: solve(mended.plan) };
  }
  return now;
}

function nameOf({ rule, mend }: Finding): string {
  return `${rule} ${JSON.stringify(mend)}`;
}

function applied(draft: Draft, { rule, message }: Finding, mend: readonly Change[]): Draft {
  return mend.reduce(
    (made, { path, to }) => withChange(made, path, to, rule, `${message.replace(/\.$/, '')} (${rule}).`),
    draft,
  );
}
