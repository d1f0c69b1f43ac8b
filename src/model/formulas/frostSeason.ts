/**
 * How frost goes into the ground in the course of a winter and out of it again, as a share of the depth that it reaches. A
 * picture of how frost advances, and no forecast: it knows nothing of the weather, the snow or the ground of a place.
 */
import type { Ratio } from '../si.ts';

/**
 * Share of the season's freezing index that has gathered by a time in it, for cold that comes and goes as half a sine.
 *
 *     F(t)/F = (1 − cos(π t/d)) / 2
 *
 * @param season  t/d [-]: time since the first frost over the length of the freezing season
 * @returns       [-]
 * Throws         RangeError outside 0 to 1
 * Source         integral of sin(π t/d); the sine-wave year of `sineFreezingIndex` whose mean is at freezing
 */
export function freezingIndexShare(season: Ratio): Ratio {
  requireShare('freezingIndexShare', 'season', season);
  return (1 - Math.cos(Math.PI * season)) / 2;
}

/**
 * Share of the frost depth that a share of the freezing index has brought about.
 *
 *     X(t)/X = √(F(t)/F)
 *
 * @param indexShare  F(t)/F [-]
 * @returns           [-]
 * Range              one ground, with the λ of the whole season held throughout; in truth λ is a little smaller early on
 * Throws             RangeError outside 0 to 1
 * Source             UFC 3-130-06 (TM 5-852-6), section 3: X = λ √(48 k nF / L)
 */
export function frostDepthShare(indexShare: Ratio): Ratio {
  requireShare('frostDepthShare', 'index share', indexShare);
  return Math.sqrt(indexShare);
}

/** Share of the frost depth reached at a time in the freezing season, which is sin(π t/2d). Throws as `freezingIndexShare`. */
export function frostShareAt(season: Ratio): Ratio {
  return frostDepthShare(freezingIndexShare(season));
}

/**
 * Share of the frozen depth that has thawed from the surface down, at a time in the half-year that thaws it.
 *
 *     X(t)/X = √(I(t)/I) = sin(π t/2d)
 *
 * @param season  t/d [-]: time since the last frost over the length of the thawing season
 * @returns       [-]
 * Range          a year whose mean is at freezing: its warm half gathers the thawing index as its cold half gathered the
 *                other. That is the slowest thaw; a warmer year ends it sooner, and some of it comes from below
 * Throws         as `freezingIndexShare`
 * Source         UFC 3-130-06 (TM 5-852-6), section 3: one equation for frost and for thaw, each with its own index
 */
export function thawShareAt(season: Ratio): Ratio {
  return frostDepthShare(freezingIndexShare(season));
}

function requireShare(name: string, what: string, share: number): void {
  if (!(share >= 0 && share <= 1)) throw new RangeError(`${name}: ${what} is ${share}, must lie between 0 and 1`);
}
