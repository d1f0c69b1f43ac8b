/** Text of a field to a value of the plan and back. The reader judges it; nothing is clamped or rounded here. */
import type { FieldInfo } from '../../model/plan/fields.ts';
import { parseQuantity } from '../../model/units.ts';

export const NOT_KNOWN = 'unknown';

export function textOf(value: unknown): string {
  if (value === undefined || value === NOT_KNOWN) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(value);
}

/** Undefined takes the field out of the plan. */
export function valueOf(field: FieldInfo, text: string, before: unknown): unknown {
  const trimmed = text.trim();
  if (trimmed === '') return field.required && field.unknownAllowed ? NOT_KNOWN : undefined;
  if (field.kind === 'text') return text;
  if (field.kind === 'count') return /^\d+$/.test(trimmed) ? Number(trimmed) : trimmed;
  if (field.orFlag && /^(yes|no)$/i.test(trimmed)) return trimmed.toLowerCase() === 'yes';
  return withUnitOf(trimmed, before, field);
}

const BARE_NUMBER = /^[-+]?[\d.,]+$/;

/** A bare number takes the unit of what stood there; where nothing stood, the reader asks for one. */
function withUnitOf(text: string, before: unknown, { kind }: FieldInfo): string {
  if (
    !BARE_NUMBER.test(text) ||
    typeof before !== 'string' ||
    kind === 'choice' ||
    kind === 'flag' ||
    kind === 'text' ||
    kind === 'count'
  )
    return text;
  // What is assumed may have a word behind it: "44 in (estimate)".
  const read = parseQuantity(before.replace(/ \(.*\)$/, ''), kind);
  return read.ok && read.unit !== '' ? `${text} ${read.unit}` : text;
}
