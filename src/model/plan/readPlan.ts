/** Reads a plan: all that is wrong with it at once, or the plan as typed. */
import { explainIssues } from './explain.ts';
import { impossible } from './impossible.ts';
import { jsonFault } from './jsonFault.ts';
import { MOST_PROBLEMS, tooLong, tooMuch } from './limits.ts';
import { shortJson } from './problem.ts';
import type { Problem } from './problem.ts';
import { repeatedName } from './repeatedName.ts';
import { FORMAT, planSchema } from './schema.ts';
import type { Plan } from './schema.ts';
import { isRecord } from './shape.ts';
import { unlisted } from './unlisted.ts';

export { sayProblem } from './problem.ts';
export type { Problem } from './problem.ts';

export type PlanReading =
  | { readonly ok: true; readonly plan: Plan }
  | {
      readonly ok: false;
      readonly problems: readonly Problem[];
      /** How many there are besides those. */
      readonly more: number;
    };

/** Reads JSON text. What cannot be parsed is reported with its line and column. */
export function readPlanText(text: string): PlanReading {
  const long = tooLong(text.length);
  if (long !== null) return refused([long]);
  const plain = text.replace(/^\uFEFF/, '');
  let json: unknown;
  try {
    json = JSON.parse(plain);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return refused([brokenText(plain)]);
  }
  const twice = repeatedName(plain);
  return twice === null ? readPlan(json) : refused([twice]);
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
  const large = tooMuch(json);
  if (large !== null) return refused([large]);
  const parsed = planSchema.safeParse(json, { reportInput: true });
  const { problems, count } = parsed.success
    ? NONE
    : explainIssues(parsed.error.issues, planSchema, json, MOST_PROBLEMS);
  const all = [...problems, ...impossible(json), ...unlisted(json)];
  return all.length > 0 ? refused(all, count - problems.length) : { ok: true, plan: json as Plan };
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

const NONE = { problems: [], count: 0 } as const;

/** @param more  that were counted and not told */
function refused(problems: readonly Problem[], more = 0): PlanReading {
  return {
    ok: false,
    problems: problems.slice(0, MOST_PROBLEMS),
    more: more + Math.max(problems.length - MOST_PROBLEMS, 0),
  };
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
