/** What is said of every case today, as `npm run said` keeps it in said.json. */
import { CASES } from './cases.ts';
import { nameOf, saidOfCase } from './said.ts';

export function everyCaseNow(): Readonly<Record<string, readonly string[]>> {
  return Object.fromEntries(CASES.map((each) => [nameOf(each), saidOfCase(each)]));
}
