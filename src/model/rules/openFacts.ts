/**
 * Facts that nobody said and that physics holds between two ends. A rule that reads one of them is judged at both.
 *
 * Only these: were every unknown held between ends, every well would be warned about.
 */
import { lowestLevel } from '../figures/lowestLevel.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { siteFrostEstimate } from '../formulas/frost.ts';
import type { Metres, Ratio } from '../si.ts';
import type { OpenFact, Solved } from '../solution.ts';
import { feet, inches } from '../units.ts';

export type { OpenFact } from '../solution.ts';

export interface Open {
  readonly fact: OpenFact;
  /** The field of the plan that takes it. */
  readonly field: string;
  /** The end at which things are best, and the one at which they are worst, SI. */
  readonly good: number;
  readonly bad: number;
}

/** Facts that one measurement decides are told together. */
export type Measurement = 'pumpingTest' | 'frostDepth' | 'protrusion' | 'cutOffDepth';

export const DECIDED_TOGETHER: Readonly<Record<OpenFact, Measurement>> = {
  pumpingLevel: 'pumpingTest',
  yield: 'pumpingTest',
  frostDepth: 'frostDepth',
  protrusion: 'protrusion',
  cutOffDepth: 'cutOffDepth',
};

/** How far adapters stand into their casing. Common practice, no source. */
export const REACHES: readonly [Metres, Metres] = [inches(0.5), inches(1.25)];
/**
 * A well that was blown with air or bailed gives at least this share of what came out, and no more is counted on where
 * nobody said how it was tested. Common practice, no source.
 */
export const BLOWN_SHARE: Ratio = 0.5;

/**
 * Where nobody knows how far the water falls: from the lowest level at rest to the intake, or a cut-off above it. Nowhere
 * does a pump draw it below where it lifts none.
 */
export function openPumpingLevel({ facts, lowest, curves }: Solved): Open | null {
  const rest = lowestStatic(facts);
  if (rest === null || lowest !== null) return null;
  const bad = Math.max(Math.min(lowestLevel(facts).depth, curves.liftsFromMost ?? Infinity), rest);
  return { fact: 'pumpingLevel', field: 'water.pumping', good: rest, bad };
}

/** What a well gives that was not tested with a pump. What a pump brought up, the well gave. */
export function openYield(solved: Solved): Open | null {
  const { facts } = solved;
  const { pumping } = facts.water;
  const { yieldFrom, yield: all } = facts.well;
  const rough = pumping?.kind === 'yield only' ? yieldFrom !== 'pump' : pumping === null && yieldFrom === 'air lift';
  if (!rough || all === null) return null;
  return { fact: 'yield', field: 'water.pumping', good: all, bad: BLOWN_SHARE * all * drawnShare(solved) };
}

/**
 * Air empties a hole nearly to its bottom, and the more a well is drawn down, the more flows in. A pump that hangs high
 * draws it down less: in proportion, where it reaches less than this part of the water. Common practice, no source.
 */
export const DRAWN_PART: Ratio = 2 / 3;

function drawnShare({ facts, curves }: Solved): Ratio {
  const rest = lowestStatic(facts);
  if (rest === null) return 1;
  const drawn = Math.min(lowestLevel(facts).depth, curves.liftsFromMost ?? Infinity) - rest;
  const all = DRAWN_PART * (facts.well.bottom - rest);
  return all > 0 ? Math.min(Math.max(drawn / all, 0), 1) : 1;
}

/** Frost that nobody entered, at a place whose climate is said: from none to the deepest that its estimate allows. */
export function openFrost({ facts: { site } }: Solved): Open | null {
  if (site.frostDepth !== null || site.freezing === null) return null;
  const estimate = siteFrostEstimate(site.freezing);
  return 'reason' in estimate ? null : { fact: 'frostDepth', field: 'site.frostDepth', good: 0, bad: estimate.high };
}

export function openProtrusion({ facts: { top } }: Solved): Open | null {
  if (top.kind !== 'pitless' || top.protrusion !== null) return null;
  return { fact: 'protrusion', field: 'top.protrusion', good: REACHES[0], bad: REACHES[1] };
}

/** How deep a cut-off acts of which only is said that one is planned. */
export function openCutOffDepth({ facts: { pump } }: Pick<Solved, 'facts'>): Open {
  return { fact: 'cutOffDepth', field: 'pump.lowLevelCutOff', good: pump.setting - CUT_OFF_SPAN, bad: pump.setting };
}

/** A cut-off by current or by a probe acts no higher than this over the intake. Common practice, no source. */
export const CUT_OFF_SPAN = feet(10);
