/** The frost line of a place, and whether a pipe lies below it. */
import type { Celsius, Metres, Ratio } from '../si.ts';
import { findColdestWinter } from '../tables/coldestWinters.ts';
import type { ColdestWinter } from '../tables/coldestWinters.ts';
import type { FreezingStation } from '../tables/freezingStations.ts';
import { findSoil, USUAL_SOIL } from '../tables/soils.ts';
import type { Soil } from '../tables/soils.ts';
import { findSurface, USUAL_SURFACE_FACTOR } from '../tables/surfaces.ts';
import { fahrenheit, inches } from '../units.ts';
import { berggrenDepth } from './berggren.ts';
import { fahrenheitDays, sineAmplitude, sineSeason } from './freezingIndex.ts';

/** The estimate is good to about 25 %: its band runs from 0.8 to 1.25 times the depth. */
export const ESTIMATE_BAND = { low: 0.8, high: 1.25 } as const;

/** Least cover of a pipe below the frost line by the International codes (IPC 305.4, IRC P2603.5; section texts from memory). */
export const USUAL_FROST_MARGIN: Metres = inches(6);
/** The same by the Uniform Plumbing Code, 609.1 (from memory). */
export const WIDE_FROST_MARGIN: Metres = inches(12);

export type FrostEstimate =
  { readonly depth: Metres; readonly low: Metres; readonly high: Metres } | { readonly reason: NoEstimate };

/** Why there is no estimate. */
export type NoEstimate =
  | 'permafrost possible'
  | 'no water in the soil'
  | 'soil not known'
  | 'surface not known'
  | 'station not known'
  | 'climate not known';

export interface FrostClimate {
  /** Air freezing index of the winter judged by [K·day]. */
  readonly index: number;
  /** Mean annual air temperature. */
  readonly meanAnnual: Celsius;
  /** Length of the freezing season [days]; null: that of the sine-wave year with this index and mean. */
  readonly season: number | null;
}

/**
 * Estimate of the frost depth of a place, with its band; the modified Berggren equation of `berggrenDepth`.
 *
 * An estimate only: the depth that the building or plumbing department requires overrules it.
 *
 * @param surfaceFactor  n, share of the air's freezing index that reaches the ground [-]
 * @returns              metres; 0 without frost; a reason where the equation has no meaning
 * Throws                RangeError for a negative index or factor and for a season that is not positive
 * Source                UFC 3-130-06 (TM 5-852-6), section 3; band: spread against adopted depths and measured frost
 */
export function frostDepthEstimate({
  index,
  meanAnnual,
  season,
  soil,
  surfaceFactor,
}: FrostClimate & {
  readonly soil: string | Soil;
  readonly surfaceFactor: Ratio;
}): FrostEstimate {
  const surfaceIndex = index * surfaceFactor;
  if (!(index >= 0 && surfaceFactor >= 0 && surfaceIndex < Infinity) || !Number.isFinite(meanAnnual)) {
    throw new RangeError(
      `frostDepthEstimate: index ${index} K day, surface factor ${surfaceFactor}, mean ${meanAnnual} degC; ` +
        'the first two must not be negative',
    );
  }
  const ground = typeof soil === 'string' ? findSoil(soil) : soil;
  if (ground === null) return { reason: 'soil not known' };
  if (meanAnnual <= 0) return { reason: 'permafrost possible' };
  if (!(ground.latentHeat > 0)) return { reason: 'no water in the soil' };
  if (surfaceIndex === 0) return { depth: 0, low: 0, high: 0 };
  const days = season ?? sineSeason({ meanAnnual, amplitude: sineAmplitude({ index, meanAnnual }) });
  const depth = berggrenDepth({ surfaceIndex, meanAnnual, season: days, soil: ground });
  return { depth, low: ESTIMATE_BAND.low * depth, high: ESTIMATE_BAND.high * depth };
}

export type Winter = 'normal' | 'cold 10' | 'cold 100';

/** Climate of a station in a usual winter, in the coldest of about 10 or of about 100. */
export function stationClimate(station: FreezingStation, winter: Winter): FrostClimate {
  const meanAnnual = fahrenheit(station.meanAnnualFahrenheit);
  switch (winter) {
    case 'normal':
      return { index: fahrenheitDays(station.normalIndex), meanAnnual, season: station.normalSeasonDays };
    case 'cold 10':
      return { index: fahrenheitDays(station.coldTenIndex), meanAnnual, season: station.coldTenSeasonDays };
    case 'cold 100':
      return coldestClimate(station);
  }
}

/** The same in the coldest of about 100 winters, which an estimate goes by. */
function coldestClimate({
  meanAnnualFahrenheit,
  coldHundredIndex,
  coldHundredSeasonDays,
}: ColdestWinter): FrostClimate {
  return {
    index: fahrenheitDays(coldHundredIndex),
    meanAnnual: fahrenheit(meanAnnualFahrenheit),
    season: coldHundredSeasonDays,
  };
}

/** What a plan says about freezing. */
export interface SiteFreezing {
  readonly station: string | null;
  /** K·day; goes before the station's own. */
  readonly index: number | null;
  readonly soil: string | null;
  readonly surface: string | null;
}

/**
 * Estimate for a site: the coldest of about 100 winters at its station, or its own index with the station's mean
 * temperature; sandy loam and bare soil where nobody named them.
 *
 * @returns  as `frostDepthEstimate`; a reason when the station, soil or surface is not in the tables
 */
export function siteFrostEstimate({ station, index, soil, surface }: SiteFreezing): FrostEstimate {
  if (station === null) return { reason: 'climate not known' };
  const found = findColdestWinter(station);
  if (found === null) return { reason: 'station not known' };
  const surfaceFactor = surface === null ? USUAL_SURFACE_FACTOR : findSurface(surface)?.factor;
  if (surfaceFactor === undefined) return { reason: 'surface not known' };
  const climate = coldestClimate(found);
  const own = index === null ? climate : { index, meanAnnual: climate.meanAnnual, season: null };
  return frostDepthEstimate({ ...own, soil: soil ?? USUAL_SOIL, surfaceFactor });
}

export interface FrostJudgement {
  readonly verdict: 'ok' | 'margin' | 'fail' | 'unknown';
  /** The estimate lies below the depth entered: the verdict stands, but it is worth saying. */
  readonly estimateDeeper: boolean;
}

/**
 * Whether the top of a pipe lies below the frost line. The depth entered by the user governs; the estimate steps in only
 * where there is none.
 *
 * @param pipeTop   depth to the top of the pipe or of the adapter's outlet
 * @param entered   frost depth as required locally; null when nobody said
 * @param estimate  depth of the estimate; null when there is none
 * @param margin    wanted below the frost line
 */
export function judgeFrost({
  pipeTop,
  entered,
  estimate,
  margin,
}: {
  readonly pipeTop: Metres;
  readonly entered: Metres | null;
  readonly estimate: Metres | null;
  readonly margin: Metres;
}): FrostJudgement {
  const governing = entered ?? estimate;
  const estimateDeeper = entered !== null && estimate !== null && estimate > entered;
  if (governing === null) return { verdict: 'unknown', estimateDeeper };
  if (pipeTop < governing) return { verdict: 'fail', estimateDeeper };
  return { verdict: pipeTop < governing + margin ? 'margin' : 'ok', estimateDeeper };
}

/**
 * Quick empirical frost depth, for a look at whether another figure is plausible.
 *
 *     d = 55.18 F^0.468 mm
 *
 * @param index  F, air freezing index [K·day]
 * @returns      metres
 * Throws        RangeError for a negative index
 * Source        Fair, Geyer & Okun, Water and Wastewater Engineering, eq. 5.41b
 */
export function empiricalFrostDepth(index: number): Metres {
  if (!(index >= 0 && index < Infinity))
    throw new RangeError(`empiricalFrostDepth: index is ${index} K day, must not be negative`);
  return (55.18 * index ** 0.468) / 1000;
}
