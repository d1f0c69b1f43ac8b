/** What becomes of one line of a batch: a line for programs. */
import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { threadId } from 'node:worker_threads';
import { draw, SPARE_ELSEWHERE, toSvg } from '../../draw/index.ts';
import { readPlanText, sayProblem, solve, type Solution } from '../../model/index.ts';
import { askedView } from '../askedView.ts';
import { Unwritable } from '../exits.ts';
import { whyNot } from '../whyNot.ts';
import { DRAFT } from '../writeOutput.ts';
import { planOfRow, type Column } from './csvPlan.ts';
import type { BatchRecord } from './recordsOf.ts';

export interface Asked {
  /** Null where each line is a plan in JSON. */
  readonly columns: readonly Column[] | null;
  /** The folder for pictures; null for none. */
  readonly pictures: string | null;
}

export interface Judged {
  readonly line: number;
  readonly result: object;
  readonly end: 'good' | 'danger' | 'unreadable' | 'ourFault';
  /** For a person, where the line is no plan. */
  readonly problem: string | null;
}

/** @throws Unwritable where a picture has nowhere to go */
export function judgeRecord(record: BatchRecord, asked: Asked): Judged {
  const { line } = record;
  try {
    const reading = 'problem' in record ? { problems: [record.problem] } : read(record.text, asked.columns);
    if ('problems' in reading) {
      const [first = 'no plan'] = reading.problems;
      return { line, result: { line, problems: reading.problems }, end: 'unreadable', problem: first };
    }
    const solution = solve(reading.plan);
    const picture = asked.pictures === null ? {} : { picture: drawInto(asked.pictures, line, solution) };
    const danger = solution.findings.some(({ severity }) => severity === 'danger');
    return { line, result: { ...report(line, solution), ...picture }, end: danger ? 'danger' : 'good', problem: null };
  } catch (fault) {
    if (fault instanceof Unwritable) throw fault;
    const problem = `a mistake of ours: ${fault instanceof Error ? fault.message : String(fault)}`;
    return { line, result: { line, problems: [problem] }, end: 'ourFault', problem };
  }
}

function read(text: string, columns: readonly Column[] | null) {
  const row = columns === null ? null : planOfRow(columns, text);
  if (row !== null && 'problem' in row) return { problems: [row.problem] };
  const reading = readPlanText(row === null ? text : JSON.stringify(row.json));
  if (reading.ok) return { plan: reading.plan };
  const more = reading.more > 0 ? [`and ${reading.more} more`] : [];
  return { problems: [...reading.problems.map(sayProblem), ...more] };
}

/** SI throughout, `null` for what cannot be known. */
function report(line: number, { findings, notJudged, facts, values }: Solution): object {
  const rulesOf = (severity: string) => findings.filter((each) => each.severity === severity).map(({ rule }) => rule);
  return {
    line,
    title: facts.title,
    danger: rulesOf('danger'),
    warning: rulesOf('warning'),
    note: rulesOf('note'),
    notChecked: notJudged.length,
    values,
  };
}

/** The picture is there whole, or not at all. */
function drawInto(folder: string, line: number, solution: Solution): string {
  const name = `${line}.svg`;
  const view = askedView(
    { view: 'all', theme: undefined, paper: undefined, landscape: false, signs: true },
    solution.facts.units,
  );
  const svg = `${toSvg(draw(solution, { ...view, spare: SPARE_ELSEWHERE }))}\n`;
  const draft = join(folder, `${DRAFT}${process.pid}-${threadId}-${line}`);
  try {
    writeFileSync(draft, svg, { flag: 'wx' });
    renameSync(draft, join(folder, name));
  } catch (fault) {
    rmSync(draft, { force: true });
    throw new Unwritable(`${join(folder, name)} cannot be written: ${whyNot(fault)}`);
  }
  return name;
}

/** @throws Unwritable */
export function makeFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (fault) {
    throw new Unwritable(`${folder} cannot hold pictures: ${whyNot(fault)}`);
  }
}
