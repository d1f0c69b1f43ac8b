/** Two records say the same: every field of one is the other's. For records of plain values that are made anew in every frame. */
export function sameFields<T extends object>(one: T, other: T): boolean {
  if (one === other) return true;
  for (const field in one) if (one[field] !== other[field]) return false;
  for (const field in other) if (!(field in one)) return false;
  return true;
}
