import { parseArgs } from 'node:util';
import { explainAll } from '../model/explain/explain.ts';
import { solve, type Solution } from '../model/index.ts';
import { EXIT, Unreadable } from './exits.ts';
import { readInput } from './readInput.ts';

const WORD = { danger: 'Danger', warning: 'Warning', note: 'Note' } as const;

/** `wellcut check PLAN.json [--json]`: exits 0 without a danger and 1 with one. */
export function checkCommand(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false } },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    throw new Unreadable('check needs one plan: wellcut check PLAN.json');
  const solution = solve(readInput(path));
  process.stdout.write(values.json ? `${JSON.stringify(reportOf(solution), null, 2)}\n` : sayReport(solution));
  return solution.findings.some((finding) => finding.severity === 'danger') ? EXIT.danger : EXIT.good;
}

/** The report that programs read: SI throughout, `null` for what cannot be known. */
export function reportOf(solution: Solution) {
  const { values, assumed, unknown, verdicts, findings } = solution;
  return {
    values,
    assumed,
    unknown,
    verdicts,
    findings: findings.map(({ rule, severity, part, depth, measured, limit, margin, message, source, mend }) => ({
      rule,
      severity,
      part,
      depth,
      measured,
      limit,
      margin,
      message,
      source,
      mend,
    })),
    /** How each figure came about, in the plan's units: the same text as on the page. */
    arithmetic: explainAll(solution),
  };
}

function sayReport({ findings, holding, notJudged, assumed, unknown, notUsed }: Solution): string {
  const lines: string[] = [];
  findings.forEach((finding, i) => {
    lines.push(
      `${i + 1}  ${WORD[finding.severity]}: ${finding.title} (${finding.amount}) [${finding.rule}]`,
      `   ${finding.message}`,
      `   ${finding.why}`,
    );
    if (finding.mendLabel) lines.push(`   To mend it: ${finding.mendLabel}`);
    if (finding.caution) lines.push(`   Caution: ${finding.caution}`);
    lines.push(`   Source: ${finding.source}`, '');
  });
  if (findings.length === 0) lines.push('No danger, warning or note among the rules that could be judged.', '');
  if (holding.length > 0)
    lines.push('Checked and holds:', ...holding.map((each) => `   ${each.title} (${each.amount}) [${each.rule}]`), '');
  if (notJudged.length > 0)
    lines.push('Not judged:', ...notJudged.map((each) => `   ${each.title}: ${each.missing} [${each.rule}]`), '');
  if (assumed.length > 0) lines.push('Assumed:', ...assumed.map((each) => `   ${each.path} ${each.value}`), '');
  if (unknown.length > 0) lines.push(`Not known: ${unknown.join(', ')}`, '');
  if (notUsed.length > 0) lines.push(`Kept, and not used yet: ${notUsed.join(', ')}`, '');
  lines.push('A planning aid, not a permit: local code and licensed practice decide.');
  return `${lines.join('\n')}\n`;
}
