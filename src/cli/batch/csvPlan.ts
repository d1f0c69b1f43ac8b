/** A plan from a row of a table. The heading names fields of the plan, with the unit behind: "well.depth (ft)". */
import { fieldAt, fields, type FieldInfo } from '../../model/plan/fields.ts';
import { FORMAT } from '../../model/plan/schema.ts';
import { Unreadable } from '../exits.ts';
import { nearest } from '../help.ts';

export interface Column {
  readonly path: string;
  readonly kind: FieldInfo['kind'];
  /** Of a choice. */
  readonly options: FieldInfo['options'];
  /** Put behind each number; null where each cell says its own. */
  readonly unit: string | null;
}

/** @throws Unreadable, naming the column that is no field of a plan */
export function columnsOf(heading: string): readonly Column[] {
  const names = cellsOf(heading.replace(/^\uFEFF/, ''));
  const columns = names.map((name, i) => columnOf(name, i + 1));
  const twice = columns.find(({ path }, i) => columns.findIndex((each) => each.path === path) !== i);
  if (twice !== undefined) throw new Unreadable(`the heading has "${twice.path}" twice; leave one of them out`);
  return columns;
}

function columnOf(typed: string, number: number): Column {
  const parts = /^\s*([\w.]+)\s*(?:\(([^()]+)\))?\s*$/.exec(typed);
  const [, path = '', unit = null] = parts ?? [];
  const field = path === 'format' ? null : fieldAt(path);
  if (field === null) {
    const meant = nearest(
      path,
      fields.map((each) => each.path),
    );
    throw new Unreadable(
      `column ${number} of the heading, "${typed}", is no field of a plan; ${meant === null ? 'write it as "well.depth (ft)"' : `did you mean "${meant}"?`}`,
    );
  }
  return { path, kind: field.kind, options: field.options, unit };
}

/** @returns what goes through the same reading as any plan; or why the row is none */
export function planOfRow(
  columns: readonly Column[],
  row: string,
): { readonly json: unknown } | { readonly problem: string } {
  const cells = cellsOf(row);
  if (cells.length !== columns.length)
    return { problem: `the row has ${cells.length} cells and the heading ${columns.length}` };
  const plan: Box = { format: FORMAT };
  columns.forEach((column, i) => {
    const cell = (cells[i] ?? '').trim();
    if (cell !== '') put(plan, column.path.split('.'), valueOf(cell, column));
  });
  return { json: packed(plan) };
}

function valueOf(cell: string, { kind, options, unit }: Column): unknown {
  const isNumber = /^[-+]?(?:\d+\.?\d*|\.\d+)$/.test(cell);
  // Also where the field takes none: a unit that somebody wrote is never dropped, and the reading refuses it.
  if (isNumber && unit !== null) return `${cell} ${unit}`;
  if (kind === 'text' || options?.includes(cell) === true) return cell;
  if (/^(?:true|yes)$/i.test(cell)) return true;
  if (/^(?:false|no)$/i.test(cell)) return false;
  return isNumber && (kind === 'count' || kind === 'choice') ? Number(cell) : cell;
}

interface Box {
  [key: string]: unknown;
}

function put(box: Box, [key = '', ...rest]: readonly string[], value: unknown): void {
  if (rest.length === 0) {
    box[key] = value;
    return;
  }
  box[key] ??= {};
  put(box[key] as Box, rest, value);
}

/** What has numbers for names is a list; an item of which every cell is empty is none. */
function packed(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, each]) => [key, packed(each)] as const);
  return entries.length > 0 && entries.every(([key]) => /^\d+$/.test(key))
    ? entries.map(([, each]) => each)
    : Object.fromEntries(entries);
}

/** Source: RFC 4180, section 2, rules 4 to 7. */
export function cellsOf(row: string): string[] {
  const cells = [''];
  let quoted = false;
  for (let i = 0; i < row.length; i++) {
    const sign = row[i] ?? '';
    const last = cells.length - 1;
    if (sign === '"' && quoted && row[i + 1] === '"') {
      cells[last] += '"';
      i++;
    } else if (sign === '"') quoted = !quoted;
    else if (sign === ',' && !quoted) cells.push('');
    else cells[last] += sign;
  }
  return cells;
}
