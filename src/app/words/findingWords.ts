/** How findings are spoken of: severities, and what a change did to them. */
import type { Finding, Severity } from '../../model/solution.ts';

export const SEVERITY_WORD: Readonly<Record<Severity, string>> = { danger: 'Danger', warning: 'Warning', note: 'Note' };

const PLURAL: Readonly<Record<Severity, string>> = { danger: 'dangers', warning: 'warnings', note: 'notes' };

const ORDER: readonly Severity[] = ['danger', 'warning', 'note'];

/** "1 danger, 2 warnings", or "nothing wrong found". */
export function countFindings(findings: readonly Finding[]): string {
  const counted = ORDER.map((severity) => ({
    severity,
    count: findings.filter((finding) => finding.severity === severity).length,
  }))
    .filter(({ count }) => count > 0)
    .map(({ severity, count }) => `${count} ${count === 1 ? severity : PLURAL[severity]}`);
  return counted.length === 0 ? 'nothing wrong found' : counted.join(', ');
}

/** What a change added, took away, or made better or worse, for the live region; empty when the list says the same as before. */
export function changeInFindings(before: readonly Finding[], after: readonly Finding[]): string {
  const had = new Map(before.map((finding) => [identity(finding), finding.severity]));
  const has = new Set(after.map(identity));
  const sentences = [
    ...after.flatMap((finding) => {
      const was = had.get(identity(finding));
      if (was === undefined) return [`New ${finding.severity}: ${finding.title}.`];
      return was === finding.severity ? [] : [`Now a ${finding.severity}: ${finding.title}.`];
    }),
    ...before.filter((finding) => !has.has(identity(finding))).map((finding) => `No longer: ${finding.title}.`),
  ];
  return sentences.length === 0 ? '' : `${sentences.join(' ')} In all ${countFindings(after)}.`;
}

function identity(finding: Finding): string {
  return `${finding.rule} ${finding.part}`;
}
