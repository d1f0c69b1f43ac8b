/** Whether a fragment is meant as a link of a well, whatever has become of it. It is asked of every page that opens. */
export function isLink(fragment: string): boolean {
  return /^#?w\d+\./.test(fragment);
}
