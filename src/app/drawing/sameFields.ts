/**
 * Two records say the same: every field of one is the other's. For records of plain values, and of such records, that are
 * made anew in every frame.
 */
export function sameFields<T extends object>(one: T, other: T): boolean {
  if (one === other) return true;
  for (const field in one) if (!sameValue(one[field], other[field])) return false;
  for (const field in other) if (!(field in one)) return false;
  return true;
}

function sameValue(one: unknown, other: unknown): boolean {
  return one === other || (isRecord(one) && isRecord(other) && sameFields(one, other));
}

function isRecord(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}
