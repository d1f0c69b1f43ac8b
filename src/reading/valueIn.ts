/** @returns what stands at "well.casing.size" of a plan as it is written, undefined where nothing does */
export function valueIn(plan: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (at, key) => (typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[key] : undefined),
      plan,
    );
}
