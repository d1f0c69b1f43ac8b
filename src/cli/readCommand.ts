import { parseArgs } from 'node:util';
import { sayProblem } from '../model/index.ts';
import { openQuestions } from '../reading/questions.ts';
import { readReport } from '../reading/readReport.ts';
import type { ReadReport } from '../reading/reading.ts';
import { isOpen, soundDraft } from '../reading/soundDraft.ts';
import { sayQuestion } from '../words/en/questions.ts';
import { NOTES, sayDoubt, sayNameOf, sayReadValue, WHY_NOT } from '../words/en/reading.ts';
import { EXIT, Unreadable } from './exits.ts';
import { print } from './print.ts';
import { readText } from './readInput.ts';
import { writeOutput } from './writeOutput.ts';

/** `wellcut read REPORT.txt [-o plan.json] [--why]`: the text of a driller's report as a plan. */
export function readCommand(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { output: { type: 'string', short: 'o' }, why: { type: 'boolean' } },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    throw new Unreadable('read needs one report: wellcut read REPORT.txt');
  const report = reportIn(readText(path), path);
  const { plan, leftOut, problems } = soundDraft(report, report.readings);
  const text = `${JSON.stringify(plan, null, 2)}\n`;
  if (values.output !== undefined) writeOutput(values.output, text);
  if (values.why === true) print(whyLines(report, plan).join('\n') + '\n');
  else if (values.output === undefined) print(text);
  const open = report.readings.filter(isOpen).length;
  if (values.why !== true && open > 0)
    process.stderr.write(
      `${open === 1 ? 'One value is' : `${open} values are`} in doubt and left out: --why tells which.\n`,
    );
  for (const { reading, problem } of leftOut)
    process.stderr.write(`${sayNameOf(reading)} is left out of the plan: ${sayProblem(problem)}\n`);
  if (problems.length === 0) return EXIT.good;
  process.stderr.write(
    `${['This is no whole plan yet:', ...problems.map((each) => `  ${sayProblem(each)}`)].join('\n')}\n`,
  );
  return EXIT.unreadable;
}

function reportIn(text: string, path: string): ReadReport {
  try {
    return readReport(text);
  } catch (fault) {
    if (!(fault instanceof RangeError)) throw fault;
    throw new Unreadable(
      `${path === '-' ? 'standard input' : path} is longer than a report can be; take the pages of one well out of it`,
    );
  }
}

/** Each value with its lines, what was not taken and why, what was not understood, and what is still to ask. */
function whyLines(report: ReadReport, plan: unknown): string[] {
  const at = (lines: readonly number[]): string => `line ${lines.join(', ')}`;
  const quoted = (text: string): string[] => text.split('\n').map((line) => `    | ${line.trim()}`);
  const lines: string[] = [];
  for (const reading of report.readings) {
    lines.push(`${sayNameOf(reading)}: ${sayReadValue(reading)}  (${at(reading.lines)})`, ...quoted(reading.text));
    if (reading.doubt !== null)
      lines.push(`    ? ${sayDoubt(reading.doubt)}${isOpen(reading) ? ' It is left out of the plan.' : ''}`);
    if (reading.note !== null) lines.push(`    ${NOTES[reading.note]}`);
  }
  if (report.asides.length > 0) lines.push('', 'Read, and not taken:');
  for (const { why, lines: numbers, text } of report.asides)
    lines.push(`  ${WHY_NOT[why]}  (${at(numbers)})`, ...quoted(text));
  if (report.left.length > 0) lines.push('', 'Not understood:');
  for (const { lines: numbers, text } of report.left) lines.push(`  ${at(numbers)}`, ...quoted(text));
  const open = openQuestions(plan);
  if (open.length > 0)
    lines.push('', 'Still to ask:', ...open.map((question) => `  - ${sayQuestion(question, report.units)}`));
  return lines;
}
