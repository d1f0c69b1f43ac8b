/** What flow is asked of the pump: the house's peak, or where an open tank carries that, only what keeps the tank filled. */
import { openYield } from '../rules/openFacts.ts';
import type { CubicMetres, CubicMetresPerSecond, Seconds } from '../si.ts';
import type { Solved } from '../solution.ts';
import { dayNeed } from './dayNeed.ts';
import { provenYield } from './provenYield.ts';

/** In so long the pump brings the need of a day into an open tank. Common practice, no source. */
export const FILLING: Seconds = 8 * 3600;

export interface WantedOfPump {
  readonly flow: CubicMetresPerSecond;
  /** An open tank carries the peak, and the pump only fills it. */
  readonly fillsTank: boolean;
}

/**
 * With a pressure tank, or an open one that is too small or of unknown size, the pump has to give the peak itself; else
 * the need of a day in eight hours, and never more than the peak.
 *
 * @returns  null while nobody can tell what the house wants at its busiest
 *
 * Source  New York State Department of Health, Individual Water Supply Wells, Fact Sheet 2, "Well Yield, Water Demand, and
 *         Storage": a well that meets the day serves the peak from stored water. Eight hours: common practice, no source
 */
export function wantedOfPump(solved: Solved): WantedOfPump | null {
  const { demand } = solved.facts.house;
  if (demand === null) return null;
  return carriesPeak(solved)
    ? { flow: fillingFlow(solved, demand), fillsTank: true }
    : { flow: demand, fillsTank: false };
}

/** Whether an open tank of known size carries the peak. */
export function carriesPeak(solved: Solved, gives?: CubicMetresPerSecond): boolean {
  const { kind, tank } = solved.facts.house;
  if (kind !== 'open tank' || tank === null) return false;
  const least = tankForPeak(solved, gives);
  return least !== null && tank >= least * (1 - ROUNDING);
}

/**
 * The smallest open tank that carries the peak: all that is wanted then, but for what the pump brings meanwhile. Of that
 * no more is counted than the well surely gives.
 */
export function tankForPeak(
  solved: Solved,
  gives: CubicMetresPerSecond = openYield(solved)?.bad ?? provenYield(solved.facts) ?? 0,
): CubicMetres | null {
  const { demand } = solved.facts.house;
  if (demand === null) return null;
  return (demand - Math.min(gives, fillingFlow(solved, demand))) * dayNeed(solved).peak;
}

/** A volume that was written and read again is the same. */
const ROUNDING = 1e-9;

function fillingFlow(solved: Solved, demand: CubicMetresPerSecond): CubicMetresPerSecond {
  return Math.min(dayNeed(solved).need / FILLING, demand);
}
