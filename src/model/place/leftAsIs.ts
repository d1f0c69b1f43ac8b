/** What placing did not touch and why, and what it does not help. */
import { fixesOf } from '../fixes/fixesOf.ts';
import { withValue } from '../plan/editPlan.ts';
import { mayMove } from '../rules/fix.ts';
import { candidatesFor } from '../fixes/candidatesFor.ts';
import { givenBy } from '../rules/index.ts';
import type { Finding, Solution } from '../solution.ts';
import type { Draft } from './draft.ts';
import { nobodySaid } from './refusal.ts';
import { solvedOf } from './solvedOf.ts';
import { whatStands } from './stands.ts';
import type { NotPlaced, WhyLeft } from './told.ts';

export interface Left {
  readonly path: string;
  readonly why: WhyLeft;
}

/** A finding that stays, and why no placing helps it. */
export interface Remaining extends Finding {
  readonly notPlaced: NotPlaced;
}

/** The choice that a rule would set, where a fact is missing for it to be judged. */
const CHOICE_OF: Readonly<Record<string, string>> = {
  'PR-07': 'pump.flowLimiter',
  'PR-18': 'dropPipe.rating',
  'PR-49': 'wire.size',
};

/** @param reasons  why the depths stay, by path */
export function leftAsIs(
  { changes }: Draft,
  solution: Solution,
  reasons: Readonly<Record<string, WhyLeft | null | undefined>>,
): { left: Left[]; remaining: Remaining[] } {
  const left = new Map<string, WhyLeft>();
  for (const [path, why] of Object.entries(reasons)) {
    if (why !== null && why !== undefined && !changes.has(path)) left.set(path, why);
  }
  const offered = fixesOf(solution.plan, solution);
  const remaining = solution.findings.map((finding, index): Remaining => {
    const { rule, variant, numbers } = finding;
    const { button = null, words = null } = offered[index] ?? {};
    const held = button === null ? heldBy(finding, solution) : [];
    for (const path of held) {
      if (left.has(path)) continue;
      const status = whatStands(solution.facts, path);
      left.set(path, { variant: 'standsAgainst', numbers: { status, finding: { rule, variant, numbers } } });
    }
    const status = held[0] === undefined ? null : whatStands(solution.facts, held[0]);
    const fix = button ?? words;
    return { ...finding, notPlaced: { status, fix: fix === null ? null : { ...fix, changes: null } } };
  });
  for (const { rule, fact, numbers } of solution.notJudged) {
    const path = CHOICE_OF[rule];
    if (path !== undefined && !left.has(path) && !changes.has(path)) left.set(path, nobodySaid(fact, numbers));
  }
  return { left: [...left].map(([path, why]) => ({ path, why })), remaining };
}

/** What a fix would move if nothing stood: the paths of it that do. */
function heldBy({ rule }: Finding, { plan, facts }: Solution): string[] {
  if (Object.keys(facts.status).length === 0) return [];
  const free = candidatesFor({ rule }, givenBy(solvedOf(withValue(plan, 'status', undefined))))[0];
  return (free?.changes ?? []).map(({ path }) => path).filter((path) => !mayMove(facts, path));
}
