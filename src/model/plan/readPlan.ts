/** Reads a plan: all that is wrong with it at once, or the plan as typed. */
import { explainIssues } from './explain.ts';
import { impossible } from './impossible.ts';
import { jsonFault } from './jsonFault.ts';
import { shortJson } from './problem.ts';
import type { Problem } from './problem.ts';
import { FORMAT, planSchema } from './schema.ts';
import type { Plan } from './schema.ts';
import { isRecord } from './shape.ts';
import { unlisted } from './unlisted.ts';

export { sayProblem } from './problem.ts';
export type { Problem } from './problem.ts';

export type PlanReading =
  { readonly ok: true; readonly plan: Plan } | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads JSON text. What cannot be parsed is reported with its line and column. */
export function readPlanText(text: string): PlanReading {
  const plain = text.replace(/^\uFEFF/, '');
  let json: unknown;
  try {
    json = JSON.parse(plain);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return refused([brokenText(plain)]);
  }
  return readPlan(json);
}

/** Reads a value that came from JSON. The plan that comes back is the same object: nothing is renamed, added or rounded. */
export function readPlan(json: unknown): PlanReading {
  if (!isRecord(json)) {
    return refused([
      {
        path: '',
        read: shortJson(json),
        problem: 'not an object',
        write: `{ "format": "${FORMAT}", … }`,
        kind: 'value',
      },
    ]);
  }
  const newer = newerFormat(json['format']);
  if (newer) return refused([newer]);
  const parsed = planSchema.safeParse(json, { reportInput: true });
  const problems = [
    ...(parsed.success ? [] : explainIssues(parsed.error.issues, planSchema, json)),
    ...impossible(json),
    ...unlisted(json),
  ];
  return problems.length > 0 ? refused(problems) : { ok: true, plan: json as Plan };
}

/** A plan of a later form may say things that this program would silently get wrong. */
function newerFormat(format: unknown): Problem | null {
  const number = typeof format === 'string' ? /^wellcut-plan\/(\d+)$/.exec(format)?.[1] : undefined;
  const ours = FORMAT.slice(FORMAT.indexOf('/') + 1);
  if (number === undefined || Number(number) <= Number(ours)) return null;
  return {
    path: 'format',
    read: shortJson(format),
    problem: `the plan is of form ${number}, newer than this program, which reads up to form ${ours}`,
    write: 'open it with a newer program; it was left as it is',
    kind: 'text',
  };
}

function refused(problems: readonly Problem[]): PlanReading {
  return { ok: false, problems };
}

function brokenText(text: string): Problem {
  const at = jsonFault(text);
  const before = text.slice(0, at);
  const line = before.split('\n').length;
  const column = at - before.lastIndexOf('\n');
  const ended = text.slice(at).trim() === '';
  const found = ended
    ? 'the text ends too early'
    : text[at] === '\n'
      ? 'a quote is not closed'
      : `${shortJson(text[at])} is not expected here`;
  return {
    path: '',
    read: text.slice(Math.max(0, at - 10), at + 10),
    problem: `the plan is not JSON: line ${line}, column ${column}: ${found}`,
    write: 'check the quotes, commas and brackets there',
    kind: 'text',
  };
}
