import { readFileSync } from 'node:fs';
import { readPlanText, sayProblem, type Plan } from '../model/index.ts';
import { Unreadable } from './exits.ts';

/** The plan in a file, or on standard input for "-". Throws Unreadable with every fault, a line each. */
export function readInput(path: string): Plan {
  const name = path === '-' ? 'standard input' : path;
  let text: string;
  try {
    text = readFileSync(path === '-' ? 0 : path, 'utf8');
  } catch (fault) {
    throw new Unreadable(`${name} cannot be read: ${fault instanceof Error ? fault.message : String(fault)}`);
  }
  const reading = readPlanText(text);
  if (reading.ok) return reading.plan;
  throw new Unreadable(
    [`${name} is not a plan yet:`, ...reading.problems.map((problem) => `  ${sayProblem(problem)}`)].join('\n'),
  );
}
