/** Looks into a raw plan, passing over whatever is missing or unreadable. */
import { parseQuantity } from '../../units.ts';
import type { QuantityKind } from '../../units.ts';
import { shortJson } from '../problem.ts';
import type { Problem } from '../problem.ts';
import { isRecord } from '../shape.ts';

export type Fields = Readonly<Record<string, unknown>>;

/** Typed in different units, equal lengths differ in the last bits; nothing in a well is set finer than this [m]. */
export const GRACE = 1e-4;

/** The casings with the path each was typed at. */
export function casingsOf(well: Fields): { path: string; fields: Fields }[] {
  if (isRecord(well['casing'])) return [{ path: 'well.casing', fields: well['casing'] }];
  return list(well['casings']).map((fields, index) => ({ path: `well.casings.${index}`, fields }));
}

/** Null where it is not a depth: everything else would seem to lie below it. */
export function wellDepth(well: Fields): number | null {
  const depth = length(well['depth']);
  return depth !== null && depth > 0 ? depth : null;
}

export function value(path: string, typed: unknown, problem: string, write: string): Problem {
  return { path, read: shortJson(typed), problem, write, kind: 'value' };
}

export function record(typed: unknown): Fields {
  return isRecord(typed) ? typed : {};
}

export function list(typed: unknown): Fields[] {
  return Array.isArray(typed) ? typed.map(record) : [];
}

export function length(typed: unknown): number | null {
  return number(typed, 'length');
}

export function number(typed: unknown, kind: QuantityKind): number | null {
  if (typeof typed !== 'string') return null;
  const parsed = parseQuantity(typed, kind);
  return parsed.ok ? parsed.si : null;
}
