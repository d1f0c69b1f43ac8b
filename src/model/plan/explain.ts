/** Turns what the schema refuses into problems a person can mend. */
import type * as z from 'zod/mini';
import { examples, inBothUnits, isForeign, parseQuantity, withoutUnit } from '../units.ts';
import type { QuantityKind } from '../units.ts';
import { LONGEST_TEXT, quantityFault } from './field.ts';
import type { FieldMeta } from './field.ts';
import { nearestName } from './nearest.ts';
import { shortJson } from './problem.ts';
import type { Problem } from './problem.ts';
import { branchesOf, definition, bare, isRecord, joinPath, membersOf, metaOf, schemaAt } from './shape.ts';
import type { Path } from './shape.ts';

type Schema = z.core.$ZodType;

/**
 * @param most  problems that are explained
 * @returns     those, and how many there are in all
 */
export function explainIssues(
  issues: readonly z.core.$ZodIssue[],
  root: Schema,
  plan: unknown,
  most: number,
): { problems: Problem[]; count: number } {
  const units = isRecord(plan) && plan['units'] === 'metric' ? 'metric' : 'us';
  const problems: Problem[] = [];
  let count = 0;
  for (const issue of issues) {
    const path = issue.path.filter((key) => typeof key !== 'symbol');
    const left = Math.max(most - problems.length, 0);
    if (issue.code === 'unrecognized_keys') {
      count += issue.keys.length;
      problems.push(...issue.keys.slice(0, left).map((key) => unknownName([...path, key], key, root, plan)));
    } else if (left === 0) count++;
    else {
      const explained = explainValue(path, root, plan, units);
      count += explained.length;
      problems.push(...explained);
    }
  }
  return { problems, count };
}

function explainValue(path: Path, root: Schema, plan: unknown, units: 'us' | 'metric'): Problem[] {
  const schema = schemaAt(root, plan, path);
  const value = valueBeside(plan, path);
  const parentPath = path.slice(0, -1);
  const parent = path.at(-1) === 'kind' ? schemaAt(root, plan, parentPath) : null;
  const parentBranches = parent ? branchesOf(parent) : [];
  if (parentBranches.length > 0) return [wrongKind(parentPath, valueBeside(plan, parentPath), parentBranches)];
  const branches = schema ? branchesOf(schema) : [];
  if (schema && branches.length > 0 && isRecord(value)) return [wrongKind(path, value, branches)];
  const meta = schema && metaOf(schema);
  if (value === undefined) return [missing(path, meta, schema)];
  const { problem, write } = judge(value, meta, schema, units);
  return [{ path: joinPath(path), read: shortJson(value), problem, write, kind: 'value' }];
}

/** What is wrong with a value that stands in a field, and what to write there. */
export function judge(
  value: unknown,
  meta: FieldMeta | null,
  schema: Schema | null,
  units: 'us' | 'metric',
): { problem: string; write: string } {
  switch (meta?.kind) {
    case undefined:
    case 'group':
      return notA(
        schema && branchesOf(schema).length > 0 ? 'an object with a "kind"' : 'an object',
        `${meta?.example ?? exampleOf(schema)}`,
      );
    case 'list':
      if (meta.example !== undefined) return notA('a pair', `it as ${meta.example}`);
      return Array.isArray(value)
        ? { problem: `a list of ${value.length}`, write: `from ${meta.from ?? 0} to ${meta.to ?? 'many'} of them` }
        : notA('a list', `it in square brackets: [ ${shortJson(value)} ]`);
    case 'choice':
      return { problem: 'which is not one of the choices', write: orList(meta.options ?? []) };
    case 'flag':
      return notA('yes or no', 'true or false, without quotes');
    case 'count':
      return {
        problem: 'not a whole number that is possible here',
        write: `a bare number from ${meta.from} to ${meta.to}`,
      };
    case 'text':
      return typeof value === 'string'
        ? { problem: `text of ${value.length} letters`, write: `at most ${LONGEST_TEXT}` }
        : notA(
            'text',
            `it in quotes: ${meta.example ?? shortJson(typeof value === 'number' ? String(value) : meta.label)}`,
          );
    default:
      return judgeQuantity(value, meta as FieldMeta & { kind: QuantityKind }, units);
  }
}

/** JSON reads a number with too many noughts as one without end. */
const LARGEST = 1e12;

function judgeQuantity(value: unknown, meta: FieldMeta & { kind: QuantityKind }, units: 'us' | 'metric') {
  const usual = readersFirst(meta.example ?? examples(meta.kind), meta.kind, units);
  if (typeof value === 'number' && !(Math.abs(value) <= LARGEST)) {
    return { problem: 'larger than anything measured', write: `it as ${usual}` };
  }
  if (typeof value === 'number') {
    const { fault } = withoutUnit(value, meta.kind);
    if (meta.kind === 'acidity') return { problem: 'not text', write: `it in quotes, as ${usual}` };
    if (meta.kind === 'ratio')
      return { problem: 'not text', write: `it as "${value}" or "${Number((value * 100).toPrecision(12))} %"` };
    return { problem: fault, write: suggested(value, meta, units) ?? usual };
  }
  if (typeof value !== 'string') return notA('text with a unit', `it as ${usual}`);
  const wrong = quantityFault(value, meta, units);
  if (!wrong) return { problem: 'not as expected', write: `it as ${usual}` };
  const also = meta.options ? ` or ${orList(meta.options)}` : '';
  if (wrong.bare !== null) return { problem: wrong.fault, write: suggested(wrong.bare, meta, units) ?? usual };
  const write = wrong.write === examples(meta.kind) ? usual : wrong.write;
  return { problem: wrong.fault, write: `${write}${also}` };
}

/**
 * A bare number with the units that the field is usually written in; null where that would be no value that can be, so
 * that nobody is told to write one.
 */
function suggested(value: number, meta: FieldMeta & { kind: QuantityKind }, units: 'us' | 'metric'): string | null {
  const usual = quotedIn(meta.example ?? '').map((text) => parseQuantity(text, meta.kind));
  const pair = usual.flatMap((each) => (each.ok && each.unit !== 'ft in' ? [each.unit] : []));
  const both = inBothUnits(value, meta.kind, units, pair.length === 2 ? pair : undefined);
  return quotedIn(both).every((text) => quantityFault(text, meta, units) === null) ? `it as ${both}` : null;
}

/** An example in customary and metric units, the reader's first. */
function readersFirst(example: string, kind: QuantityKind, units: 'us' | 'metric'): string {
  const [first = '', second = ''] = quotedIn(example);
  const parsed = parseQuantity(first, kind);
  const isPair = example === `"${first}" or "${second}"`;
  return isPair && parsed.ok && isForeign(parsed.unit, units) ? `"${second}" or "${first}"` : example;
}

function quotedIn(text: string): string[] {
  return [...text.matchAll(/"([^"]*)"/g)].map(([, inside = '']) => inside);
}

function missing(path: Path, meta: FieldMeta | null, schema: Schema | null): Problem {
  const write =
    meta?.example ??
    (meta?.kind === 'choice' ? orList(meta.options ?? []) : null) ??
    (meta && isQuantity(meta.kind) ? examples(meta.kind) : null) ??
    exampleOf(schema);
  return { path: joinPath(path), read: '', problem: 'missing', write, kind: 'missing' };
}

function wrongKind(path: Path, value: unknown, branches: readonly { kind: string }[]): Problem {
  const kinds = branches.map((branch) => branch.kind);
  const at = joinPath([...path, 'kind']);
  const kind = isRecord(value) ? value['kind'] : undefined;
  if (kind === undefined) return { path: at, read: '', problem: 'missing', write: orList(kinds), kind: 'missing' };
  return {
    path: at,
    read: shortJson(kind),
    problem: 'which is not one of the choices',
    write: orList(kinds),
    kind: 'value',
  };
}

function unknownName(path: Path, key: string, root: Schema, plan: unknown): Problem {
  const ownerPath = path.slice(0, -1);
  const owner = schemaAt(root, plan, ownerPath);
  const names = Object.keys((owner && membersOf(owner, valueBeside(plan, ownerPath))) ?? {});
  const near = nearestName(key, names);
  const elsewhere = near === null ? groupWith(root, key) : null;
  const write =
    near !== null
      ? `did you mean "${near}"?`
      : elsewhere !== null
        ? `it belongs in "${elsewhere}"`
        : `it may have ${names.map((name) => `"${name}"`).join(', ')}`;
  const shown = shortJson(key);
  return { path: joinPath(path), read: shown, problem: `has no ${shown}`, write, kind: 'unknown name' };
}

/** The part of the plan that has a field of that name. */
function groupWith(root: Schema, key: string): string | null {
  for (const [name, schema] of Object.entries(membersOf(root, null) ?? {})) {
    if (Object.hasOwn(membersOf(schema, null) ?? {}, key)) return name;
  }
  return null;
}

function notA(what: string, write: string): { problem: string; write: string } {
  return { problem: `not ${what}`, write };
}

function exampleOf(schema: Schema | null): string {
  const branches = schema ? branchesOf(schema) : [];
  if (branches.length > 0) return `{ "kind": ${orList(branches.map((branch) => branch.kind))}, … }`;
  const def = schema && definition(bare(schema));
  return def?.type === 'array' ? '[ … ]' : '{ … }';
}

function orList(options: readonly (string | number)[]): string {
  const shown = options.map((option) => JSON.stringify(option));
  const last = shown.pop() ?? '';
  return shown.length === 0 ? last : `${shown.join(', ')} or ${last}`;
}

function isQuantity(kind: FieldMeta['kind']): kind is QuantityKind {
  return !['text', 'choice', 'flag', 'count', 'group', 'list'].includes(kind);
}

function valueBeside(plan: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? (value as Record<string | number, unknown>)[key] : undefined,
    plan,
  );
}
