/** Findings as a whole: how many there are, and what a change did to them. */
import type { Finding, Severity, Solution } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { sayShort } from './sayJudgement.ts';
import type { FirstWords } from './words.ts';

const ORDER: readonly Severity[] = ['danger', 'warning', 'note'];

/** "1 danger, 2 warnings", or "nothing wrong found". */
export function countFindings(
  findings: readonly Pick<Finding, 'severity'>[],
  { long: { findings: said } }: FirstWords,
): string {
  const counted = ORDER.map((severity) => ({
    severity,
    count: findings.filter((finding) => finding.severity === severity).length,
  }))
    .filter(({ count }) => count > 0)
    .map(({ severity, count }) => said.counted[severity](count));
  return counted.length === 0 ? said.none : counted.join(', ');
}

/** What a change added, took away, or made better or worse, for the live region; empty when the list says the same as before. */
export function changeInFindings(
  before: readonly Finding[],
  after: readonly Finding[],
  words: FirstWords,
  show: Show,
): string {
  const { added, changed, gone } = words.long.findings;
  const titleOf = (finding: Finding): string => sayShort(finding, words.short, show).title;
  const had = new Map(before.map((finding) => [identity(finding), finding.severity]));
  const has = new Set(after.map(identity));
  const sentences = [
    ...after.flatMap((finding) => {
      const was = had.get(identity(finding));
      if (was === undefined) return [added(finding.severity, titleOf(finding))];
      return was === finding.severity ? [] : [changed(finding.severity, titleOf(finding))];
    }),
    ...before
      .filter((finding) => !has.has(identity(finding)))
      .map((finding) => gone(finding.severity, titleOf(finding))),
  ];
  return sentences.join(' ');
}

/** How the well stands as a whole: "In all nothing wrong found; 4 checks could not be made." */
export function sayInAll({ findings, notJudged }: Pick<Solution, 'findings' | 'notJudged'>, words: FirstWords): string {
  const { inAll, andOpen } = words.long.findings;
  return inAll(`${countFindings(findings, words)}${notJudged.length === 0 ? '' : andOpen(notJudged.length)}`);
}

function identity(finding: Finding): string {
  return `${finding.rule} ${finding.part}`;
}
