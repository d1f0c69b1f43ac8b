/** Makes something when it is first asked for, and once. */
export function late<T>(make: () => T): () => T {
  let made: { readonly it: T } | null = null;
  return () => (made ??= { it: make() }).it;
}
