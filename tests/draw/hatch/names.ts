import type { PatternName } from '../../../src/draw/hatch/patterns.ts';

/** Every pattern there is: the compiler asks for one that is new. */
const ALL: Readonly<Record<PatternName, true>> = {
  soil: true,
  clay: true,
  silt: true,
  sandyClay: true,
  fineSand: true,
  sand: true,
  coarseSand: true,
  gravel: true,
  sandAndGravel: true,
  till: true,
  conglomerate: true,
  sandstone: true,
  limestone: true,
  dolomite: true,
  shale: true,
  weatheredShale: true,
  granite: true,
  basalt: true,
  schist: true,
  weatheredRock: true,
  rock: true,
  unknown: true,
};

export const PATTERN_NAMES = Object.keys(ALL) as PatternName[];
