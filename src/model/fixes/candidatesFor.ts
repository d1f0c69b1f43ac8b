/** What the rule of a finding offers against it, in its order and not tried. */
import { RULES } from '../rules/list.ts';
import type { Fix, Given } from '../rules/rule.ts';
import type { Finding } from '../solution.ts';
import { FIXES } from './list.ts';

export function candidatesFor({ rule }: Pick<Finding, 'rule'>, given: Given): readonly Fix[] {
  const outcome = RULES.find(({ number }) => number === rule)?.judge(given);
  // What turns on an unknown fact is fixed as it is at its worst.
  const broken = outcome?.kind === 'depends' ? outcome.worst : outcome;
  return broken?.kind === 'breaks' ? (FIXES[rule]?.(given, broken) ?? []) : [];
}
