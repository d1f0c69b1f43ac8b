/** What placing did not touch and why: what stands reported or installed, and what waits for a fact that nobody said. */
import { withValue } from '../plan/editPlan.ts';
import { mayMove, statusAt } from '../rules/mend.ts';
import type { BandSetting, Finding, Solution } from '../solution.ts';
import { solve } from '../solve.ts';
import type { Draft } from './draft.ts';
import { solvedOf, whatStands, whyLeft } from './settle.ts';

export interface Left {
  readonly path: string;
  readonly why: string;
}

/** A finding that stays, and why no placing mends it. */
export interface Remaining extends Finding {
  readonly notPlaced: string;
}

const SETTINGS: readonly BandSetting[] = ['top.depth', 'pump.setting'];

/** The choice that a rule would set, where a fact is missing for it to be judged. */
const CHOICE_OF: Readonly<Record<string, string>> = {
  'PR-07': 'pump.flowLimiter',
  'PR-18': 'dropPipe.rating',
  'PR-49': 'wire.size',
};

export function leftAsIs({ typed, changes }: Draft, solution: Solution): { left: Left[]; remaining: Remaining[] } {
  const left = new Map<string, string>();
  const solved = solvedOf(typed);
  for (const setting of SETTINGS) {
    const why = whyLeft(solved, setting);
    if (why !== null && !changes.has(setting)) left.set(setting, why);
  }
  const remaining = solution.findings.map((finding): Remaining => {
    const held = heldBy(finding, solution);
    for (const path of held)
      if (!left.has(path))
        left.set(path, `${whatStands(statusAt(solution.facts, path))} ${finding.title} (${finding.rule}).`);
    const notPlaced =
      held[0] === undefined
        ? finding.mendLabel
        : `${whatStands(statusAt(solution.facts, held[0]))} ${finding.mendLabel}`;
    return { ...finding, notPlaced };
  });
  for (const { rule, missing } of solution.notJudged) {
    const path = CHOICE_OF[rule];
    if (path !== undefined && !left.has(path) && !changes.has(path)) left.set(path, `Nobody said ${missing}.`);
  }
  return { left: [...left].map(([path, why]) => ({ path, why })), remaining };
}

/** What a mend would move if nothing stood: the paths of it that do. */
function heldBy({ rule, mend }: Finding, { plan, facts }: Solution): string[] {
  if (mend !== null || Object.keys(facts.status).length === 0) return [];
  const free = solve(withValue(plan, 'status', undefined)).findings.find((each) => each.rule === rule);
  return (free?.mend ?? []).map(({ path }) => path).filter((path) => !mayMove(facts, path));
}
