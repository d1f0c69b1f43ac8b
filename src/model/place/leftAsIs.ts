/** What placing did not touch and why: what stands reported or installed, and what waits for a fact that nobody said. */
import { withValue } from '../plan/editPlan.ts';
import { mayMove } from '../rules/fix.ts';
import { candidatesFor, givenBy } from '../rules/index.ts';
import type { Fix } from '../rules/rule.ts';
import type { BandSetting, Finding, Solution } from '../solution.ts';
import type { Draft } from './draft.ts';
import { nobodySaid, solvedOf, whatStands, whyLeft } from './settle.ts';
import type { NotPlaced, WhyLeft } from './told.ts';

export interface Left {
  readonly path: string;
  readonly why: WhyLeft;
}

/** A finding that stays, and why no placing helps it. */
export interface Remaining extends Finding {
  readonly notPlaced: NotPlaced;
}

const SETTINGS: readonly BandSetting[] = ['top.depth', 'pump.setting'];

/** The choice that a rule would set, where a fact is missing for it to be judged. */
const CHOICE_OF: Readonly<Record<string, string>> = {
  'PR-07': 'pump.flowLimiter',
  'PR-18': 'dropPipe.rating',
  'PR-49': 'wire.size',
};

export function leftAsIs({ typed, changes }: Draft, solution: Solution): { left: Left[]; remaining: Remaining[] } {
  const left = new Map<string, WhyLeft>();
  const solved = solvedOf(typed);
  for (const setting of SETTINGS) {
    const why = whyLeft(solved, setting);
    if (why !== null && !changes.has(setting)) left.set(setting, why);
  }
  const given = givenBy(solution);
  const remaining = solution.findings.map((finding): Remaining => {
    const { rule, variant, numbers } = finding;
    const fix = candidatesFor(finding, given)[0] ?? null;
    const held = heldBy(finding, fix, solution);
    for (const path of held) {
      if (left.has(path)) continue;
      const status = whatStands(solution.facts, path);
      left.set(path, { variant: 'standsAgainst', numbers: { status, finding: { rule, variant, numbers } } });
    }
    const status = held[0] === undefined ? null : whatStands(solution.facts, held[0]);
    return { ...finding, notPlaced: { status, fix } };
  });
  for (const { rule, fact, numbers } of solution.notJudged) {
    const path = CHOICE_OF[rule];
    if (path !== undefined && !left.has(path) && !changes.has(path)) left.set(path, nobodySaid(fact, numbers));
  }
  return { left: [...left].map(([path, why]) => ({ path, why })), remaining };
}

/** What a fix would move if nothing stood: the paths of it that do. */
function heldBy({ rule }: Finding, fix: Fix | null, { plan, facts }: Solution): string[] {
  if ((fix?.changes ?? null) !== null || Object.keys(facts.status).length === 0) return [];
  const free = candidatesFor({ rule }, givenBy(solvedOf(withValue(plan, 'status', undefined))))[0];
  return (free?.changes ?? []).map(({ path }) => path).filter((path) => !mayMove(facts, path));
}
