/** Choices that nobody made, and what rests on them. */
import type { Solved } from '../solution.ts';
import type { Rule } from './rule.ts';

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
export function restsOn(rule: Pick<Rule, 'restsOn'>, assumed: ReadonlySet<string>): readonly string[] {
  return rule.restsOn.filter((path) => assumed.has(path));
}

/** The same of a verdict that holds, by the variant that it holds in. */
export function holdsOn(
  rule: Pick<Rule, 'restsOn' | 'holdsOn' | 'onlyHelps'>,
  variant: string,
  assumed: ReadonlySet<string>,
): readonly string[] {
  const paths = rule.holdsOn[variant];
  if (paths !== undefined) return paths.filter((path) => assumed.has(path));
  return restsOn(rule, assumed).filter((path) => !rule.onlyHelps.includes(path));
}

/** Whether a rule would hold one assumed value against another. */
export function comparesAssumed({ compares }: Pick<Rule, 'compares'>, assumed: ReadonlySet<string>): boolean {
  return compares.some((group) => group.every((path) => assumed.has(path)));
}
