import { parseArgs } from 'node:util';
import { explainAll } from '../model/explain/explain.ts';
import { solve, type Finding, type Holding, type NotJudged, type Solution } from '../model/index.ts';
import { candidatesFor, givenBy } from '../model/rules/index.ts';
import type { Fix } from '../model/rules/rule.ts';
import { show, type Show } from '../model/units.ts';
import { en } from '../words/en/index.ts';
import { sayFinding, sayFix, sayHolding, sayNotJudged } from '../words/sayJudgement.ts';
import { EXIT, Unreadable } from './exits.ts';
import { readInput } from './readInput.ts';

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
  const { values, assumed, unknown, verdicts, findings, facts } = solution;
  const fixOf = fixesIn(solution);
  return {
    values,
    assumed,
    unknown,
    verdicts,
    findings: findings.map((finding) => {
      const { rule, severity, part, depth, measured, limit, margin } = finding;
      const { message, source } = sayFinding(finding, en, show(facts.units));
      return {
        rule,
        severity,
        part,
        depth,
        measured,
        limit,
        margin,
        message,
        source,
        mend: fixOf(finding)?.changes ?? null,
      };
    }),
    /** How each figure came about, in the plan's units: the same text as on the page. */
    arithmetic: explainAll(solution),
  };
}

/** The first that the rules offer against a finding; null where they offer nothing. */
function fixesIn(solution: Solution): (finding: Finding) => Fix | null {
  const given = givenBy(solution);
  return (finding) => candidatesFor(finding, given)[0] ?? null;
}

function sayReport(solution: Solution): string {
  const { findings, holding, notJudged, assumed, unknown, notUsed, facts } = solution;
  const units = show(facts.units);
  const fixOf = fixesIn(solution);
  const lines: string[] = [];
  findings.forEach((finding, i) => {
    const { title, amount, message, why, caution, source } = sayFinding(finding, en, units);
    const severity = en.long.findings.severities[finding.severity];
    const fix = fixOf(finding);
    lines.push(`${i + 1}  ${severity}: ${title} (${amount}) [${finding.rule}]`, `   ${message}`, `   ${why}`);
    if (fix !== null) lines.push(`   To mend it: ${sayFix(finding.rule, fix, en, units)}`);
    if (caution !== '') lines.push(`   Caution: ${caution}`);
    lines.push(`   Source: ${source}`, '');
  });
  if (findings.length === 0) lines.push('No danger, warning or note among the rules that could be judged.', '');
  if (holding.length > 0)
    lines.push('Checked and holds:', ...holding.map((each) => `   ${sayHeld(each, units)} [${each.rule}]`), '');
  if (notJudged.length > 0)
    lines.push('Not judged:', ...notJudged.map((each) => `   ${sayOpen(each)} [${each.rule}]`), '');
  if (assumed.length > 0) lines.push('Assumed:', ...assumed.map((each) => `   ${each.path} ${each.value}`), '');
  if (unknown.length > 0) lines.push(`Not known: ${unknown.join(', ')}`, '');
  if (notUsed.length > 0) lines.push(`Kept, and not used yet: ${notUsed.join(', ')}`, '');
  lines.push('A planning aid, not a permit: local code and licensed practice decide.');
  return `${lines.join('\n')}\n`;
}

function sayHeld(held: Holding, units: Show): string {
  const { title, amount } = sayHolding(held, en, units);
  return `${title} (${amount})`;
}

function sayOpen(open: NotJudged): string {
  const { title, missing } = sayNotJudged(open, en);
  return `${title}: ${missing}`;
}
