/**
 * "Place it for me": sets what the build leaves to choose to values that meet every rule, says what it changed and why,
 * and where nothing can meet them all names the rules that exclude each other.
 *
 * It owns no limit: pump and adapter go to an end of where the rules let them be, all else follows the rules' own fixes.
 * The shallowest end, as less is to dig and to lift; for the pump of a well that gives little, the deepest.
 */
import type { Plan } from '../plan/schema.ts';
import { RULES } from '../rules/list.ts';
import type { Severity, Solution, Verdict } from '../solution.ts';
import { solve } from '../solve.ts';
import { applyFixes } from './applyFixes.ts';
import type { Fixed } from './applyFixes.ts';
import { clashesOf } from './clashes.ts';
import { draftOf } from './draft.ts';
import type { Draft, PlacedChange } from './draft.ts';
import { leftAsIs } from './leftAsIs.ts';
import type { Left, Remaining } from './leftAsIs.ts';
import { settle } from './settle.ts';
import type { Heeding } from './settle.ts';
import type { Clash } from './told.ts';

export type { Clash, Left, PlacedChange, Remaining };

export interface Placement {
  readonly plan: Plan;
  readonly changes: readonly PlacedChange[];
  /** What stands reported or installed, or waits for a fact that nobody said. */
  readonly left: readonly Left[];
  readonly clashes: readonly Clash[];
  /** Findings that no placing helps. */
  readonly remaining: readonly Remaining[];
}

export function placeForMe(plan: Plan): Placement {
  const { draft, solution } = bestWay(plan);
  const { left, remaining } = leftAsIs(draft, solution);
  return {
    plan: draft.plan,
    changes: [...draft.changes.values()],
    left,
    clashes: clashesOf(solution),
    remaining,
  };
}

/**
 * Of several ways to place, the first that leaves no danger and no warning, else the one that leaves the fewest: past the
 * limits that give way, short of them, and with the depths as typed.
 */
function bestWay(plan: Plan): Fixed {
  const typed = solve(plan);
  let best = settled(draftOf(plan), 'firm');
  if (isClear(best.solution)) return best;
  const fixed = applyFixes(draftOf(plan));
  // From the fixed plan, since thicker wire lets the pump hang deeper.
  for (const found of [settled(fixed.draft, 'every'), fixed]) {
    if (isBetter(found.solution, best.solution, typed)) best = found;
  }
  return best;
}

/** Again until nothing moves, since a fix may give room: thicker wire, a probe that hangs higher. */
function settled(start: Draft, heeding: Heeding): Fixed {
  let now = applyFixes(settleBoth(start, heeding));
  for (let round = 1; round < MOST_ROUNDS; round++) {
    const draft = settleBoth(now.draft, heeding);
    if (draft === now.draft) break;
    now = applyFixes(draft);
  }
  return now;
}

const MOST_ROUNDS = 4;

/** The adapter twice: a pump that hung too high for it may have made room. */
function settleBoth(draft: Draft, heeding: Heeding): Draft {
  const top = settle(draft, 'top.depth', heeding);
  return settle(settle(top, 'pump.setting', heeding), 'top.depth', heeding);
}

function isClear({ findings }: Solution): boolean {
  return findings.every(({ severity }) => severity === 'note');
}

/** Fewer dangers, else fewer warnings, else fewer rules that stand worse than in the plan as typed. */
function isBetter(one: Solution, other: Solution, typed: Solution): boolean {
  const ignored = answeredByEquipment(typed);
  for (const count of [dangers, warnings, worsened]) {
    const difference = count(one, typed, ignored) - count(other, typed, ignored);
    if (difference !== 0) return difference < 0;
  }
  return false;
}

/** What a hoist, a stronger rope or a shroud answers keeps no pump from the water that is stored below it. */
function answeredByEquipment(solution: Solution): ReadonlySet<string> {
  const answered = RULES.filter((rule) =>
    rule.limits(solution).some(({ givesWay, answeredBy }) => givesWay === true && answeredBy === undefined),
  );
  return new Set(answered.map(({ number }) => number));
}

const RANK: Readonly<Record<Verdict, number>> = { ok: 0, 'not judged': 0, note: 1, warning: 2, danger: 3 };

type Count = (solution: Solution, typed: Solution, ignored: ReadonlySet<string>) => number;
const ofSeverity =
  (wanted: Severity): Count =>
  ({ findings }, _typed, ignored) =>
    findings.filter(({ severity, rule }) => severity === wanted && !ignored.has(rule)).length;
const dangers = ofSeverity('danger');
const warnings = ofSeverity('warning');
const worsened: Count = ({ findings }, { verdicts }, ignored) =>
  findings.filter(
    ({ severity, rule }) =>
      severity !== 'note' && !ignored.has(rule) && RANK[severity] > RANK[verdicts[rule] ?? 'not judged'],
  ).length;
