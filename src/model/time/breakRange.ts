/** When the water is gone, from the earliest to the latest that it can be. */
import { pumpFromLevel } from '../figures/curves.ts';
import { lowestLevel, type LowestLevel } from '../figures/lowestLevel.ts';
import type { BandEnd } from '../figures/pumpBand.ts';
import { openYield } from '../rules/openFacts.ts';
import type { CubicMetresPerSecond, Ratio, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import type { TimeOptions } from './levelAgainstTime.ts';
import { poorWell } from './poorWell.ts';
import { pumpedStanding } from './standing.ts';

/** A time that has two ends [s]; the later one is null where it never comes so far. */
export interface TimeRange {
  readonly soonest: Seconds;
  readonly latest: Seconds | null;
}

export interface BreakRange {
  readonly lowest: LowestLevel;
  /** When the water is down at the intake or a cut-off, since the pump started; null: never, at either end. */
  readonly breaks: TimeRange | null;
  /** How long after a stop a share of the stored water is back; null where nobody can say. */
  readonly back: (share: Ratio) => TimeRange | null;
  /** A generic pump may be the stronger or the weaker of its name. */
  readonly byPump: boolean;
  /** Nobody pumped the well to find its yield: a part of it is sure, and it may be all. */
  readonly byYield: boolean;
  /** That part; null where a pump brought the yield up, or nobody said one. */
  readonly sure: CubicMetresPerSecond | null;
}

/**
 * A generic pump is a band, and of a yield that was blown with air a part is sure: the stronger pump over the sure part
 * draws the water down soonest, the weaker one over all of it last, or never.
 *
 * @returns  null where the pump's flow, the inflow or the water in the bore is unknown
 */
export function breakRange(solved: Solved, options: Pick<TimeOptions, 'start'> = {}): BreakRange | null {
  const { water } = solved.facts;
  const staticLevel = options.start === 'dry season' ? water.staticLowest : water.staticLevel;
  if (staticLevel === null) return null;
  const open = openYield(solved);
  const sure = open === null ? solved : withYield(solved, open.bad);
  const timeAt = (well: Solved, end: BandEnd): Seconds | null | 'unknown' => {
    const standing = pumpedStanding(well, staticLevel, end);
    if (standing.kind === 'falls') return standing.fall.time;
    return standing.kind === 'keepsUp' || standing.why === 'liftsNothing' ? null : 'unknown';
  };
  const soonest = timeAt(sure, 'most');
  const latest = timeAt(solved, 'least');
  if (soonest === 'unknown' || latest === 'unknown') return null;
  const backAt = (well: Solved, share: Ratio): Seconds | null => {
    const poor = poorWell(well, options);
    return 'reason' in poor ? null : (poor.comesBack(share)?.likely ?? null);
  };
  return {
    breaks: soonest === null ? null : { soonest, latest },
    back: (share) => {
      const slow = backAt(sure, share);
      const fast = open === null ? slow : (backAt(solved, share) ?? slow);
      return fast === null ? null : { soonest: fast, latest: slow };
    },
    lowest: lowestLevel(solved.facts),
    byPump: solved.curves.generic,
    byYield: open !== null,
    sure: open === null ? null : open.bad,
  };
}

/** The same well with another yield; its pump then works elsewhere at cut-in. */
function withYield(solved: Solved, given: CubicMetresPerSecond): Solved {
  const facts = { ...solved.facts, well: { ...solved.facts.well, yield: given } };
  const { staticLevel } = facts.water;
  if (staticLevel === null) return { ...solved, facts };
  const atCutInMost = pumpFromLevel(facts, { end: 'most', tank: 'cutIn' }, staticLevel);
  return { ...solved, facts, curves: { ...solved.curves, atCutInMost } };
}
