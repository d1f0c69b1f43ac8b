/** A pump that draws more than its well gives: when it breaks suction, and how long the water takes to come back. */
import type { CubicMetres, CubicMetresPerSecond, Metres, Ratio, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { provenYield } from '../figures/provenYield.ts';
import { accountOf } from './account.ts';
import { fallAt, storedWater } from './standing.ts';
import { waterBetween } from './freeSurface.ts';
import { LAST_DAY } from './lastDay.ts';
import { levelAgainstTime, type TimeOptions } from './levelAgainstTime.ts';
import type { LevelCurve } from './levelCurve.ts';
import { lowestLevel, type LowestLevel } from '../figures/lowestLevel.ts';
import type { Unknown } from './unknown.ts';

export interface PoorWell {
  /** With the water at rest, where it falls as the water does. */
  readonly flow: CubicMetresPerSecond;
  readonly flowWords: string;
  readonly lowest: LowestLevel;
  /** Water in the bore, the drop pipe taken off, that the pump can lift into the tank. */
  readonly storage: CubicMetres;
  /** As reported, else the flow of the test, else the largest of its steps; null when none is known. */
  readonly wellYield: CubicMetresPerSecond | null;
  readonly yieldFrom: 'report' | 'test' | null;
  /** By the balance of what is stored, flows in and is pumped; null while the well keeps up or that is unknown. */
  readonly byYield: Seconds | null;
  /** By the level against time; null while the level stays above for thirty days, or nothing is known of the drawdown. */
  readonly byLevel: Seconds | null;
  /**
   * When to expect air, or the cut-off: the sooner of the two, which for the pump's own flow are one, the figure
   * `timeToBreakSuction`. Null: the well keeps up by all that is known.
   */
  readonly breaksSuction: Seconds | null;
  /**
   * How long after the pump stopped a share of that storage is back; null when the pump never empties it, or when it
   * takes longer than thirty days.
   */
  readonly comesBack: (share: Ratio) => ComingBack | null;
}

export interface ComingBack {
  /** With the whole yield all the while; null where the yield is unknown. */
  readonly soonest: Seconds | null;
  /** With the inflow falling off as the level rises. */
  readonly likely: Seconds;
}

/**
 * Whether and when the water in the well is drawn down to the intake or a cut-off.
 *
 * For the pump's own flow there is one account, that of the figure. For a given flow that does not change two stand side
 * by side, the balance of stored water, inflow and pump, and the level against time: they differ, as the level then
 * follows the ground from the first minute.
 */
export function poorWell(solved: Solved, options: Omit<TimeOptions, 'pumpFor'> = {}): PoorWell | Unknown {
  const { facts } = solved;
  const staticLevel = options.start === 'dry season' ? facts.water.staticLowest : facts.water.staticLevel;
  if (staticLevel === null) return { reason: 'The static level is not known.' };
  const account = accountOf(solved, staticLevel, options.flow);
  if ('reason' in account) return account;
  const lowest = lowestLevel(facts);
  const storage = storedWater(solved, staticLevel);
  if (storage === null) return { reason: 'The width of the bore is not known.' };
  const wellYield = provenYield(facts);
  const { flow, words } = account;
  const byYield =
    account.kind === 'followed'
      ? (fallAt(solved, staticLevel, flow)?.time ?? null)
      : account.kind === 'falls'
        ? (account.fall?.time ?? null)
        : null;
  const curve = levelAgainstTime(solved, { ...options, pumpFor: null });
  const byLevel = 'reason' in curve ? null : curve.breaksSuction;
  const yieldFrom = wellYield === null ? null : facts.well.yield === null ? 'test' : 'report';
  const times = [byYield, byLevel].filter((time) => time !== null);
  const breaksSuction = times.length > 0 ? Math.min(...times) : null;
  const comesBack = (share: Ratio): ComingBack | null => {
    if (!(share > 0 && share < 1)) throw new RangeError(`comesBack: share is ${share}, must lie between 0 and 1`);
    if (breaksSuction === null) return null;
    const soonest = wellYield !== null && wellYield > 0 ? (storage * share) / wellYield : null;
    const risen = byLevel === null ? null : timeToRise(solved, staticLevel, share * storage, byLevel, options);
    const fading = wellYield !== null && wellYield > 0 ? (storage / wellYield) * Math.log(1 / (1 - share)) : null;
    const likely = byLevel === null ? fading : risen;
    return likely === null || likely > LAST_DAY ? null : { soonest, likely };
  };
  return {
    flow,
    flowWords: words,
    lowest,
    storage,
    wellYield,
    yieldFrom,
    byYield,
    byLevel,
    breaksSuction,
    comesBack,
  };
}

/** Time after a stop at the lowest level until so much water stands above it again. */
function timeToRise(
  solved: Solved,
  staticLevel: Metres,
  wanted: CubicMetres,
  stop: Seconds,
  options: Omit<TimeOptions, 'pumpFor'>,
): Seconds | null {
  const curve = levelAgainstTime(solved, { ...options, pumpFor: stop });
  if ('reason' in curve) return null;
  const back = (since: Seconds) => waterBack(solved, curve, stop + since) >= wanted;
  if (staticLevel >= curve.lowest.depth || !back(LAST_DAY)) return null;
  let [low, high] = [0, Math.log(LAST_DAY)];
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2;
    if (back(Math.exp(middle))) high = middle;
    else low = middle;
  }
  return Math.exp(high);
}

function waterBack(solved: Solved, curve: LevelCurve, time: Seconds): CubicMetres {
  return waterBetween(solved, curve.levelAt(time), curve.lowest.depth);
}
