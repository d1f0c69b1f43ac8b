/** What is wrong in a moved plan and was not before, by how bad it is. */
import { standing, type Judged } from '../fixes/standing.ts';
import type { Finding } from '../solution.ts';

/** As `standing` counts. */
export const WARNING = 2;
export const DANGER = 3;
export type Level = typeof WARNING | typeof DANGER;

export interface Wrong {
  readonly rule: string;
  readonly finding: Finding;
}

/** The most important rule that stands so badly now and did not before; null where none does. */
export function newlyWrong(before: Judged, after: Judged, level: Level): Wrong | null {
  return firstWrong(after, level, (rule) => standing(before, rule) < level);
}

/** The most important rule that stands so badly and meets a condition. */
export function firstWrong(judged: Judged, level: Level, counts: (rule: string) => boolean): Wrong | null {
  for (const finding of judged.findings) {
    for (const rule of rulesOf(finding)) {
      if (standing(judged, rule) >= level && counts(rule)) return { rule, finding };
    }
  }
  return null;
}

/** The finding that tells of a rule, by itself or together with others. */
export function findingOf(rule: string, { findings }: Judged): Finding | null {
  return findings.find((finding) => rulesOf(finding).includes(rule)) ?? null;
}

/** Its own first. */
function rulesOf({ rule, together }: Finding): readonly string[] {
  return [rule, ...together.flatMap((each) => (each.rule === rule ? [] : [each.rule]))];
}
