/** Keys of parts and handles name a kind first, then which one: "checkValve/2". */
export function kindOfKey(key: string): string {
  const end = key.indexOf('/');
  return end < 0 ? key : key.slice(0, end);
}
