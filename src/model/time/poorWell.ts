/** A pump that draws more than its well gives: when it breaks suction, and how long the water takes to come back. */
import { timeToBreakSuction } from '../formulas/wellStorage.ts';
import type { CubicMetres, CubicMetresPerSecond, Metres, Ratio, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { waterBetween } from './freeSurface.ts';
import { LAST_DAY } from './lastDay.ts';
import { levelAgainstTime, type TimeOptions } from './levelAgainstTime.ts';
import type { LevelCurve } from './levelCurve.ts';
import { lowestLevel, type LowestLevel } from './lowestLevel.ts';
import { pumpedFlow } from './pumpedFlow.ts';
import type { Unknown } from './unknown.ts';

export interface PoorWell {
  readonly flow: CubicMetresPerSecond;
  readonly flowWords: string;
  readonly lowest: LowestLevel;
  /** Water in the bore from rest to the lowest level, the drop pipe taken off. */
  readonly storage: CubicMetres;
  /** As reported, else the flow of the test; null when neither is known. */
  readonly wellYield: CubicMetresPerSecond | null;
  readonly yieldFrom: 'report' | 'test' | null;
  /** Storage over what the pump draws beyond the yield; null while the yield keeps up or is unknown. */
  readonly byYield: Seconds | null;
  /** By the level against time; null while the level stays above for thirty days, or nothing is known of the drawdown. */
  readonly byLevel: Seconds | null;
  /**
   * When to expect air, or the cut-off: the sooner of the two; but the flow of a test is no bound of what the well
   * gives, so it counts only where no level can be told. Null: the well keeps up by all that is known.
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
 * Two accounts stand side by side, since reports give one or the other: the balance of stored water and yield, and the
 * level against time. They differ where the reported yield and the drawdown of the test disagree.
 */
export function poorWell(solved: Solved, options: Omit<TimeOptions, 'pumpFor'> = {}): PoorWell | Unknown {
  const { facts } = solved;
  const staticLevel = options.start === 'dry season' ? facts.water.staticLowest : facts.water.staticLevel;
  if (staticLevel === null) return { reason: 'The static level is not known.' };
  const pumped = pumpedFlow(solved, options.flow);
  if (pumped === null) return { reason: 'The flow is not known, or the pump gives none.' };
  const lowest = lowestLevel(facts);
  const storage = waterBetween(solved, staticLevel, lowest.depth);
  if (!(storage > 0)) return { reason: `The ${lowest.by} hangs above the water at rest.` };

  const wellYield = reportedYield(solved);
  const byYield = wellYield === null ? null : timeToBreakSuction({ storage, pumpFlow: pumped.flow, wellYield });
  const curve = levelAgainstTime(solved, { ...options, pumpFor: null });
  const byLevel = 'reason' in curve ? null : curve.breaksSuction;
  const yieldFrom = wellYield === null ? null : facts.well.yield === null ? 'test' : 'report';
  const yieldCounts = yieldFrom === 'report' || 'reason' in curve;
  const times = [yieldCounts ? byYield : null, byLevel].filter((time) => time !== null);
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
  const { flow, words } = pumped;
  return { flow, flowWords: words, lowest, storage, wellYield, yieldFrom, byYield, byLevel, breaksSuction, comesBack };
}

/** What the figures hold the well to give: the reported yield, else what it gave in its test. */
export function reportedYield({ facts }: Solved): CubicMetresPerSecond | null {
  const { pumping } = facts.water;
  return facts.well.yield ?? (pumping?.kind === 'test' ? pumping.flow : null);
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
