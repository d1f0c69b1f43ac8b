/** Text of a field to a value of the plan and back. The reader judges it; nothing is clamped or rounded here. */
import type { FieldInfo } from '../../model/plan/fields.ts';
import { isForeign, parseQuantity } from '../../model/units.ts';
import type { QuantityKind } from '../../model/units.ts';
import { frostDoubt } from './frostDoubt.ts';

export const NOT_KNOWN = 'unknown';

export function textOf(value: unknown): string {
  if (value === undefined || value === NOT_KNOWN) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(value);
}

/**
 * Undefined takes the field out of the plan.
 *
 * @param before  what stands in the field, said or assumed
 * @param units  of the reader: a bare number beside a hint in bar is never psi
 */
export function valueOf(field: FieldInfo, text: string, before: unknown, units: 'us' | 'metric' = 'us'): unknown {
  const trimmed = text.trim();
  if (trimmed === '') return field.required && field.unknownAllowed ? NOT_KNOWN : undefined;
  if (field.kind === 'text') return text;
  if (field.kind === 'count') return /^\d+$/.test(trimmed) ? Number(trimmed) : trimmed;
  if (field.orFlag && /^(yes|no)$/i.test(trimmed)) return trimmed.toLowerCase() === 'yes';
  return withUnitOf(trimmed, before, field, units);
}

const BARE_NUMBER = /^[-+]?[\d.,]+$/;

/**
 * A bare number takes the unit of what stood there; where that is the other system's, the reader's own of the kind. Where
 * nothing stood, or a length has no own, it stays bare and a unit is asked for.
 */
function withUnitOf(text: string, before: unknown, { kind, path }: FieldInfo, units: 'us' | 'metric'): string {
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
  if (!read.ok || read.unit === '') return text;
  const unit = isForeign(read.unit, units) ? OWN[units][kind] : read.unit;
  if (unit === undefined) return text;
  // Frost is told in feet here and in inches there: 4 beside 42 in is asked back.
  if (path === 'site.frostDepth' && frostDoubt(text, unit) !== null) return text;
  return `${text} ${unit}`;
}

/** Of the kinds that a reader has one usual unit for. */
const OWN: Readonly<Record<'us' | 'metric', Readonly<Partial<Record<QuantityKind, string>>>>> = {
  us: { flow: 'gpm', pressure: 'psi', volume: 'gal', temperature: 'degF', mass: 'lb', force: 'lbf', power: 'hp' },
  metric: { flow: 'L/min', pressure: 'bar', volume: 'L', temperature: 'degC', mass: 'kg', force: 'N', power: 'kW' },
};
