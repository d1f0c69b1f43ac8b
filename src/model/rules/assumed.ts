/** Choices that nobody made, and what rests on them. */
import type { Solved } from '../solution.ts';
import { COMPARES, HOLDS_ON, ONLY_HELPS, RESTS_ON } from './restsOn.ts';

export function isAssumed({ assumed }: Pick<Solved, 'assumed'>, path: string): boolean {
  return assumed.some((each) => each.path === path);
}

/** The paths of all that was assumed, the first casing under one name wherever it was typed. */
export function assumedPaths({ assumed }: Pick<Solved, 'assumed'>): ReadonlySet<string> {
  const known = KNOWN.get(assumed);
  if (known !== undefined) return known;
  const paths = new Set(assumed.map(({ path }) => plainPath(path)));
  KNOWN.set(assumed, paths);
  return paths;
}

/** Asked for by rules, handles and drawing alike: found once for each list. */
const KNOWN = new WeakMap<Solved['assumed'], ReadonlySet<string>>();

const FIRST_CASING = 'well.casings.0.';

/** The first casing has one name, wherever it was typed. */
export function plainPath(path: string): string {
  return path.startsWith(FIRST_CASING) ? `well.casing.${path.slice(FIRST_CASING.length)}` : path;
}

/** What of the assumed a rule's verdict may rest on. */
export function restsOn(rule: string, assumed: ReadonlySet<string>): readonly string[] {
  const paths = RESTS_ON[rule];
  return paths === undefined ? NOTHING : paths.filter((path) => assumed.has(path));
}

const NOTHING: readonly string[] = [];

/** The same of a verdict that holds, by the variant that it holds in. */
export function holdsOn(rule: string, variant: string, assumed: ReadonlySet<string>): readonly string[] {
  const paths = HOLDS_ON[rule]?.[variant];
  if (paths !== undefined) return paths.filter((path) => assumed.has(path));
  const helps = ONLY_HELPS[rule];
  const rests = restsOn(rule, assumed);
  return helps === undefined ? rests : rests.filter((path) => !helps.includes(path));
}

/** Whether a rule would hold one assumed value against another. */
export function comparesAssumed(rule: string, assumed: ReadonlySet<string>): boolean {
  const groups = COMPARES[rule];
  return groups !== undefined && groups.some((group) => group.every((path) => assumed.has(path)));
}
