/** The lists one after another. Engines take several times as long to flatten a list of lists, and a sheet joins a hundred. */
export function joined<T>(lists: readonly (readonly T[])[]): T[] {
  const all: T[] = [];
  for (const list of lists) for (const each of list) all.push(each);
  return all;
}
