/** Keeps the list of findings short where it would hide what matters. */
import type { Finding } from '../solution.ts';

/** What is only about how the work is done: told with the work whether it is found or not. */
const OF_THE_WORK = 'PR-51';

/**
 * A note on how the string is held stands back while anything else is found, and is told with the work.
 *
 * @returns  `findings` without it, and `atWork` with what stood back
 */
export function quiet(findings: readonly Finding[]): {
  readonly findings: readonly Finding[];
  readonly atWork: readonly Finding[];
} {
  const others = findings.some(({ rule }) => rule !== OF_THE_WORK);
  const standsBack = ({ rule, severity }: Finding) => others && rule === OF_THE_WORK && severity === 'note';
  return { findings: findings.filter((each) => !standsBack(each)), atWork: findings.filter(standsBack) };
}
