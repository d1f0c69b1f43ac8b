import { parseArgs } from 'node:util';
import { explainAll } from '../model/explain/explain.ts';
import { fixesOf } from '../model/fixes/fixesOf.ts';
import { headroomOf } from '../model/headroom/headroom.ts';
import { rowsOf } from '../model/asBuilt/asked.ts';
import { compared } from '../model/asBuilt/measured.ts';
import { solve, type Finding, type Holding, type Solution } from '../model/index.ts';
import { lackingIn } from '../model/rules/lacking.ts';
import { isSure } from '../model/rules/sure.ts';
import { turnsOnCurve, turnsOnFrequency } from '../model/rules/turnsOnCurve.ts';
import type { Fix } from '../model/rules/rule.ts';
import { show, type Show } from '../model/units.ts';
import { en } from '../words/en/index.ts';
import { capital } from '../words/en/phrases.ts';
import { sayAssumed } from '../words/en/plan/assumed.ts';
import { nameOfPath } from '../words/en/plan/paths.ts';
import { headroomLines, headroomReport } from './headroomLines.ts';
import { sayFinding, sayFix, sayHolding, sayLacking, sayMeasure, sayTurning, sayTurns } from '../words/sayJudgement.ts';
import { countFindings, sayInAll } from '../words/sayFindings.ts';
import { choiceLines } from './choiceLines.ts';
import { choiceReport } from './choiceReport.ts';
import { EXIT, Unreadable } from './exits.ts';
import { figureLines } from './figureLines.ts';
import { print } from './print.ts';
import { readInput } from './readInput.ts';

interface Asked {
  readonly json: boolean;
  readonly choose: boolean;
  readonly brief: boolean;
}

/** `wellcut check PLAN.json … [--json | --brief] [--choose]`: exits 0 without a danger, 1 with one, 2 where a plan cannot be read. */
export function checkCommand(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      json: { type: 'boolean', default: false },
      choose: { type: 'boolean', default: false },
      brief: { type: 'boolean', default: false },
    },
  });
  const [path] = positionals;
  if (path === undefined) throw new Unreadable('check needs a plan: wellcut check PLAN.json');
  if (values.brief && (values.json || values.choose))
    throw new Unreadable(`--brief and --${values.json ? 'json' : 'choose'}: choose one of them`);
  if (positionals.length > 1 || values.brief) return checkAll(positionals, values);
  const solution = solve(readInput(path));
  print(values.json ? `${JSON.stringify(asked(solution, values), null, 2)}\n` : said(solution, values));
  return worst([solution]);
}

/** A plan that cannot be read is told, and the others are checked all the same. */
function checkAll(paths: readonly string[], values: Asked): number {
  let unread = false;
  const solutions: Solution[] = [];
  for (const path of paths)
    try {
      const solution = solve(readInput(path));
      solutions.push(solution);
      if (values.brief) print(`${inOneLine(path)}: ${briefly(solution)}\n`);
      else if (values.json) print(`${JSON.stringify({ file: path, ...asked(solution, values) })}\n`);
      else print(`== ${inOneLine(path)}\n${said(solution, values)}\n`);
    } catch (fault) {
      if (!(fault instanceof Unreadable)) throw fault;
      unread = true;
      process.stderr.write(`${fault.message}\n`);
    }
  return unread ? EXIT.unreadable : worst(solutions);
}

function worst(solutions: readonly Solution[]): number {
  const danger = solutions.some(({ findings }) => findings.some(({ severity }) => severity === 'danger'));
  return danger ? EXIT.danger : EXIT.good;
}

function asked(solution: Solution, { choose }: Asked): object {
  return choose ? { ...reportOf(solution), choose: choiceReport(solution.plan) } : reportOf(solution);
}

function said(solution: Solution, { choose }: Asked): string {
  return choose ? `${choiceLines(solution.plan, sayInAll(solution, en)).join('\n')}\n` : sayReport(solution);
}

/** "1 danger, 2 warnings, 3 not checked; The pipe can freeze (24 in)" */
function briefly(solution: Solution): string {
  const [first] = solution.findings;
  const open = solution.notJudged.length;
  const counted = `${countFindings(solution.findings, en)}${open === 0 ? '' : `, ${open} not checked`}`;
  if (first === undefined) return counted;
  const { title, amount } = sayFinding(first, en, show(solution.facts.units));
  return `${counted}; ${title} (${amount}) [${first.rule}]`;
}

/** The report that programs read: SI throughout, `null` for what cannot be known. docs/check-json.md names all of it. */
export function reportOf(solution: Solution) {
  const { values, assumed, unknown, verdicts, findings, facts } = solution;
  const units = show(facts.units);
  const offered = fixesOf(solution.plan, solution);
  return {
    values,
    assumed,
    unknown,
    verdicts,
    findings: findings.map((finding, i) => {
      const { rule, severity, part, depth, measured, limit, margin, turn, together, worse } = finding;
      const { message, source } = sayFinding(finding, en, units);
      const { button = null, words = null } = offered[i] ?? {};
      const fix = button ?? words;
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
        turn,
        together: together.map((each) => ({
          rule: each.rule,
          turn: each.turn,
          bad: each.bad,
          message: sayTurning(each, en, units),
          worse: each.worse,
        })),
        worse,
        assumed: finding.assumed,
        fix: fix === null ? null : sayFix(rule, fix, en, units),
        mend: button?.changes ?? null,
      };
    }),
    headroom: headroomReport(headroomOf(solution.plan, solution), units),
    asBuilt: asBuiltOf(solution),
    /** How each figure came about, in the plan's units: the same text as on the page. */
    arithmetic: explainAll(solution),
  };
}

/** What was put in and measured beside what was planned; null where nothing was written down. */
function asBuiltOf(solution: Solution) {
  const { asBuilt } = solution.plan;
  if (asBuilt === undefined) return null;
  const { date = null, by = null, pulled = null } = asBuilt;
  const installed = rowsOf(solution).filter((row) => row.installed !== null);
  return { date, by, installed, measured: compared(solution), pulled };
}

/** What a stranger typed may hold signs that break a line, turn it round or move a terminal's cursor. */
function inOneLine(typed: string): string {
  return typed.replace(/[\s\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]+/gu, ' ').trim();
}

export function sayReport(solution: Solution): string {
  const { findings, holding, assumed, unknown, notUsed, facts } = solution;
  const units = show(facts.units);
  const offered = fixesOf(solution.plan, solution);
  const lines: string[] = [
    ...[facts.title, facts.place].map(inOneLine).filter((each) => each !== ''),
    en.long.well(solution, units),
    '',
    ...figureLines(solution),
    '',
  ];
  findings.forEach((finding, i) => {
    const { button = null, words = null } = offered[i] ?? {};
    // What is to be measured first says enough where nothing can be clicked.
    const fix = button ?? (finding.turn === null ? words : null);
    lines.push(...sayOne(finding, fix, i + 1, solution, units), '');
  });
  if (findings.length === 0) lines.push('No danger, warning or note among the rules that could be checked.', '');
  for (const finding of solution.atWork) {
    const { title, message, caution } = sayFinding(finding, en, units);
    lines.push(`${en.long.findings.atWork}: ${title} [${finding.rule}]`, `   ${message}`);
    if (caution !== '') lines.push(`   Caution: ${caution}`);
    lines.push('');
  }
  lines.push(...headroomLines(headroomOf(solution.plan, solution), solution), '');
  const open = lackingIn(solution).flatMap((lacking) => {
    const { missing, unchecked } = sayLacking(lacking, en, units);
    return [
      `   ${capital(missing)} (${lacking.field})`,
      `      Not checked: ${unchecked} [${lacking.rules.join(', ')}]`,
    ];
  });
  if (open.length > 0) lines.push('Could not check, for want of:', ...open, '');
  if (assumed.length > 0)
    lines.push('Assumed:', ...assumed.map((each) => `   ${sayAssumed(each, facts.units)} (${each.path})`), '');
  const sure = holding.filter(isSure);
  const resting = holding.filter((held) => !isSure(held));
  if (resting.length > 0)
    lines.push(
      'OK if what is assumed is right:',
      ...resting.flatMap((held) => [
        `   ${sayHeld(held, units)}`,
        ...(held.taken === null ? [] : [`      ${en.long.findings.taken[held.taken]} ${sayPaths(held.unsaid)}.`]),
        ...(held.assumed.length > 0 ? [`      If this is right: ${sayThose(held.assumed, solution)}`] : []),
      ]),
      '',
    );
  if (sure.length > 0) lines.push('Checked, OK:', ...sure.map((held) => `   ${sayHeld(held, units)}`), '');
  if (unknown.length > 0) lines.push(`Not known: ${sayPaths(unknown)}`, '');
  if (notUsed.length > 0) lines.push(`Kept, and not used yet: ${sayPaths(notUsed)}`, '');
  lines.push('A planning aid, not a permit: local code and licensed practice decide.');
  return `${lines.join('\n')}\n`;
}

function sayOne(finding: Finding, fix: Fix | null, number: number, solution: Solution, units: Show): string[] {
  const { title, amount, message, why, caution, source } = sayFinding(finding, en, units);
  const severity = en.long.findings.severities[finding.severity];
  const turning = sayTurns(finding, en, units);
  const measure = finding.turn === null ? null : sayMeasure(finding.turn, en);
  return [
    `${number}  ${severity}: ${title} (${amount}) [${finding.rule}]`,
    `   ${message}`,
    ...turning.map((sentence) => `   - ${sentence}`),
    `   ${why}`,
    ...(finding.assumed.length > 0 ? [`   Rests on what is assumed: ${sayThose(finding.assumed, solution)}`] : []),
    ...(turnsOnCurve(finding, solution) ? [`   ${en.long.findings.ownCurve.before} (pump.curve)`] : []),
    ...(turnsOnFrequency(finding, solution)
      ? [`   ${en.long.findings.frequency.before} ${en.long.findings.frequency.link} (pump.frequency)`]
      : []),
    ...(measure === null ? [] : [`   ${measure} (${finding.turn?.field ?? ''})`]),
    ...(fix === null ? [] : [`   To fix it: ${sayFix(finding.rule, fix, en, units)}`]),
    ...(caution === '' ? [] : [`   Caution: ${caution}`]),
    `   Source: ${source}`,
  ];
}

function sayHeld(held: Holding, units: Show): string {
  const { title, amount } = sayHolding(held, en, units);
  return `${title} (${amount}) [${held.rule}]`;
}

function sayThose(paths: readonly string[], { assumed, facts }: Solution): string {
  const named = assumed.filter(({ path }) => paths.includes(path.replace(/^well\.casings\.0\./, 'well.casing.')));
  return `${named.map((each) => sayAssumed(each, facts.units)).join('; ')}.`;
}

/** "Frost depth (site.frostDepth)": a person reads the first, and looks for the second in the file. */
function sayPaths(paths: readonly string[]): string {
  return paths.map((path) => `${nameOfPath(path)} (${path})`).join(', ');
}
