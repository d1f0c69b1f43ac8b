/** What is wrong in a moved plan and was not before, by how bad it is. */
import { standing, type Judged } from '../fixes/standing.ts';
import type { Finding, Solution } from '../solution.ts';
import type { Movable } from './movable.ts';

/** As `standing` counts. */
export const WARNING = 2;
export const DANGER = 3;
export type Level = typeof WARNING | typeof DANGER;

export interface Wrong {
  readonly rule: string;
  readonly finding: Finding;
  /** It stood as badly before, and now the pump hangs over the water at rest besides. */
  readonly overWater: boolean;
}

/** The most important rule that stands so badly now and did not before; null where none does. */
export function newlyWrong(before: Judged, after: Judged, level: Level): Wrong | null {
  return firstWrong(after, level, (rule) => standing(before, rule) < level);
}

/** The most important rule that stands so badly and meets a condition. */
export function firstWrong(judged: Judged, level: Level, counts: (rule: string) => boolean): Wrong | null {
  for (const finding of judged.findings) {
    for (const rule of rulesOf(finding)) {
      if (standing(judged, rule) >= level && counts(rule)) return { rule, finding, overWater: false };
    }
  }
  return null;
}

/** The rule that wants water over the intake. */
const COVER = 'PR-02';

/** Less than this is the last bits of a depth written in another unit [m]. */
const HAIR = 1e-6;

/**
 * A pump that comes to hang over the water at rest, or water that falls away from it: whatever was wrong before, this is
 * the worst that the cover can come to. Null for what moves neither.
 */
export function outOfWater({ of }: Pick<Movable, 'of'>, after: Solution): Wrong | null {
  if (of !== 'staticLevel' && of !== 'pumpSetting') return null;
  const { levels, facts } = after;
  if (levels.static === null || facts.pump.setting >= levels.static - HAIR) return null;
  const finding = findingOf(COVER, after);
  return finding === null ? null : { rule: COVER, finding, overWater: true };
}

/** Rules that are a danger. */
export function dangersOf(judged: Judged): readonly string[] {
  return Object.keys(judged.verdicts).filter((rule) => standing(judged, rule) >= DANGER);
}

/** The finding that tells of a rule, by itself or together with others. */
export function findingOf(rule: string, { findings }: Judged): Finding | null {
  return findings.find((finding) => rulesOf(finding).includes(rule)) ?? null;
}

/** Its own first. */
function rulesOf({ rule, together }: Finding): readonly string[] {
  return [rule, ...together.flatMap((each) => (each.rule === rule ? [] : [each.rule]))];
}
