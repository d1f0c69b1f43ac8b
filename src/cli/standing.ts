/** What was found, before anybody buys or builds: a list of parts or steps alone would hide it. */
import type { Solution } from '../model/index.ts';
import { en } from '../words/en/index.ts';
import { sayFinding } from '../words/sayJudgement.ts';
import { sayInAll } from '../words/sayFindings.ts';
import { show } from '../model/units.ts';

/** Lines: how the well stands in all, and each danger by its title. */
export function standing(solution: Solution): readonly string[] {
  const units = show(solution.facts.units);
  const dangers = solution.findings.filter(({ severity }) => severity === 'danger');
  return [
    sayInAll(solution, en),
    ...dangers.map((finding) => {
      const { title, message } = sayFinding(finding, en, units);
      return `  ${en.long.findings.severities.danger}: ${title}. ${message}`;
    }),
    '',
  ];
}
