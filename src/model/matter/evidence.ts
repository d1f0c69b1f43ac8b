/** What the judgement of the plan says of a cause: rules that are broken, rules that hold by what was said, facts that lack. */
import { standing } from '../fixes/standing.ts';
import { WARNING } from '../headroom/newlyWrong.ts';
import { valueAt } from '../plan/editPlan.ts';
import { UNKNOWN } from '../plan/unknown.ts';
import type { Finding, Holding, Solution } from '../solution.ts';
import type { RuleBroken } from './cause.ts';
import type { Own } from './own.ts';

/** A note alone makes nothing likely. */
export function foundOf(solution: Solution, rules: readonly RuleBroken[]): readonly Finding[] {
  const bad = rules.filter(({ rule }) => standing(solution, rule) >= WARNING);
  return solution.findings.filter((finding) => finding.severity !== 'note' && bad.some((each) => tells(finding, each)));
}

function tells({ rule, variant, together }: Finding, asked: RuleBroken): boolean {
  const isSo = (one: { readonly rule: string; readonly variant: string }): boolean =>
    one.rule === asked.rule && (asked.variants?.includes(one.variant) ?? true);
  return isSo({ rule, variant }) || together.some(isSo);
}

/** Rules that hold, and neither on what was assumed nor for want of a fact. */
export function holdsBySaid({ holding }: Solution, rules: readonly string[]): readonly Holding[] {
  return holding.filter(
    ({ rule, assumed, unsaid, taken }) =>
      rules.includes(rule) && assumed.length === 0 && unsaid.length === 0 && taken === null,
  );
}

/** Fields that would let these rules be judged. */
export function fieldsLacking({ notJudged, findings }: Solution, rules: readonly RuleBroken[]): readonly string[] {
  // A rule of several things lacks for each of them: of one alone its own fields are named.
  const asked = rules.filter(({ variants }) => variants === undefined).map(({ rule }) => rule);
  const lacks = notJudged.filter(({ rule }) => asked.includes(rule)).flatMap(({ fields }) => fields);
  const turns = findings
    .filter((finding) => rules.some((each) => tells(finding, each)))
    .flatMap(({ turn }) => (turn === null ? [] : [turn.field]));
  return [...lacks, ...turns];
}

export function isUnsaid({ plan }: Pick<Solution, 'plan'>, path: string): boolean {
  const typed = valueAt(plan, path);
  return typed === undefined || typed === UNKNOWN;
}

/** What tells a choice of the plan is told where somebody made it. */
export function whenSaid(solution: Pick<Solution, 'plan'>, paths: readonly string[], says: Own): readonly Own[] {
  return paths.some((path) => isUnsaid(solution, path)) ? [] : [says];
}
