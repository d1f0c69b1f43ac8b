/** Whether two values of one field say the same: "180 ft" and "54.9 m" do. */
import { fieldAt } from '../plan/fields.ts';
import { inches, parseQuantity } from '../units.ts';
import type { QuantityKind } from '../units.ts';

/** What a tape and a gauge tell apart: half a percent, and of a length an inch. Common practice, no source. */
const SHARE = 0.005;
const LEAST: Partial<Record<QuantityKind, number>> = { length: inches(1) };

/** @param path  of the plan's field that both are of */
export function sameValue(path: string, one: string | number | boolean, other: string | number | boolean): boolean {
  if (one === other) return true;
  const kind = fieldAt(path)?.kind ?? 'text';
  if (typeof one !== 'string' || typeof other !== 'string') return String(one) === String(other);
  if (kind === 'text' || kind === 'choice' || kind === 'flag' || kind === 'count')
    return one.trim().toLowerCase() === other.trim().toLowerCase();
  // What is assumed may have a word behind it: "44 in (estimate)".
  const [a, b] = [one.replace(/ \(.*\)$/, ''), other].map((text) => parseQuantity(text, kind));
  if (a?.ok !== true || b?.ok !== true) return false;
  // A gauge counts backward and in steps: the next one is another wire.
  if (kind === 'gauge') return a.si === b.si && a.unit === b.unit;
  return Math.abs(a.si - b.si) <= Math.max(SHARE * Math.abs(a.si), LEAST[kind] ?? 0) + 1e-12;
}
