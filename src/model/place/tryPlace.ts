/** A place is taken only after it was solved: nothing may stand worse than before, from a warning on. */
import { worsened } from '../fixes/standing.ts';
import { levelAtNoFlow } from '../figures/curves.ts';
import { lowestLevel } from '../figures/lowestLevel.ts';
import { meets } from '../rules/grace.ts';
import type { Finding, Solution } from '../solution.ts';
import { solvingAnew, type Solver } from '../solve.ts';
import type { Draft } from './draft.ts';
import { follow } from './follow.ts';
import type { ToldFinding, Wrong } from './told.ts';

export type Tried =
  | { readonly kind: 'taken'; readonly draft: Draft; readonly solution: Solution }
  | { readonly kind: 'worse'; readonly wrong: Wrong | null };

/** @param lifting  of a pump that was moved: it also has to get its water up from there */
export function tryPlace(
  draft: Draft,
  before: Solution,
  { lifting = false, solver = solvingAnew }: { readonly lifting?: boolean; readonly solver?: Solver } = {},
): Tried {
  const isFine = (after: Solution) => worse(before, after).length === 0 && (!lifting || lifts(after));
  const solution = solver.later(draft.plan);
  if (isFine(solution)) return { kind: 'taken', draft, solution };
  // Wire and pipe follow the depth.
  const followed = follow(draft, solver, solution);
  if (isFine(followed.solution)) return { kind: 'taken', ...followed };
  return { kind: 'worse', wrong: wrongAfter(before, followed.solution) };
}

/** Hands and hoist never limit a depth, and nothing can be bought against them: what hangs on the hook is said. */
const ON_THE_HOOK = 'PR-51';

function worse(before: Solution, after: Solution): string[] {
  return worsened(before, after).filter(
    (rule) =>
      rule !== ON_THE_HOOK &&
      !opensLate(after, rule) &&
      (after.verdicts[rule] !== 'not judged' || isHidden(before, after, rule)),
  );
}

/** What a weak pump in a poor well does wherever its store is used: told, and no reason to leave the water unused. */
export function opensLate({ findings }: Pick<Solution, 'findings'>, rule: string): boolean {
  return findings.some((each) => each.rule === rule && rule === 'PR-46' && each.variant === 'opensLate');
}

/** Wrong before, and not to be judged any more for want of a fact; not so where the rule has nothing to say any more. */
function isHidden(before: Solution, after: Solution, rule: string): boolean {
  return after.notJudged.some((each) => each.rule === rule) && findOf(atLeastWarned(before), rule) !== null;
}

/** Whether the pump gets water into the tank with the well drawn down as far as it can be. */
function lifts({ facts, lowest }: Solution): boolean {
  const deepest = levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' });
  return deepest === null || meets(deepest - (lowest?.depth ?? lowestLevel(facts).depth), 'length');
}

/** Of a pump that is drawn down where it hangs: what is wrong with what then comes up; null where nothing is. */
export function liftsBadly(solution: Solution): ToldFinding | null {
  const warned = atLeastWarned(solution);
  return (opensLate(solution, 'PR-46') ? null : findOf(warned, 'PR-46')) ?? findOf(warned, 'PR-54');
}

function wrongAfter(before: Solution, after: Solution): Wrong | null {
  for (const rule of worse(before, after)) {
    const hidden = after.verdicts[rule] === 'not judged';
    const finding = findOf((hidden ? before : after).findings, rule);
    if (finding !== null) return { finding, hidden };
  }
  return null;
}

function atLeastWarned({ findings }: Solution): Finding[] {
  return findings.filter(({ severity }) => severity !== 'note');
}

/** What is told of a rule, also where it is told together with others that turn on the same unknown fact. */
function findOf(findings: readonly Finding[], wanted: string): ToldFinding | null {
  for (const finding of findings) {
    const told = finding.together.length > 0 ? finding.together : [finding];
    const found = told.find(({ rule }) => rule === wanted);
    if (found === undefined) continue;
    const { rule, variant, numbers } = found;
    return { rule, variant, numbers };
  }
  return null;
}
