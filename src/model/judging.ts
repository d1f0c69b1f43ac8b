/** What judging itself rests on, as data: for a page that tells how it is done. Made on demand, never inside `solve`. */
import { END_SHARE, LEAST_SHARE, MOST_SHARE } from './formulas/genericBand.ts';
import { ESTIMATE_BAND } from './formulas/frost.ts';
import { assumable } from './plan/assumable.ts';
import type { Assumable } from './plan/assumable.ts';
import { ADVICE_NUMBERS } from './rules/advice.ts';
import type { AdviceNumber } from './rules/advice.ts';
import { RULES } from './rules/list.ts';
import { BLOWN_SHARE, CUT_OFF_SPAN, DRAWN_PART, REACHES } from './rules/openFacts.ts';
import type { Rule } from './rules/rule.ts';
import type { Metres, Ratio, Watts } from './si.ts';
import { RATED_POWERS, serviceFactor } from './tables/motors.ts';

export interface Judging {
  /** The most important first. */
  readonly rules: readonly Pick<Rule, 'number' | 'asks'>[];
  /** Rules that no plan can decide. */
  readonly advice: readonly AdviceNumber[];
  /** What is taken where nobody chose. */
  readonly assumable: readonly Assumable[];
  readonly ends: OpenEnds;
  readonly band: GenericPump;
}

/** Between which ends a fact may lie that nobody said. */
export interface OpenEnds {
  /** Share of what a test without a pump brought up that a well gives at the least. */
  readonly blownShare: Ratio;
  /** Of the water in the hole, drawn down by less than which a well gives less in proportion. */
  readonly drawnPart: Ratio;
  /** Share of the estimate that frost may reach at the most. */
  readonly frostShare: Ratio;
  /** How far adapters reach into the casing. */
  readonly reaches: readonly [Metres, Metres];
  /** How far above the intake dry-run protection may act at the most. */
  readonly cutOffAbove: Metres;
}

/** Between what a pump may lie of which only the rated flow and power are known. */
export interface GenericPump {
  /** Shares of the rated power times the service factor. */
  readonly least: Ratio;
  readonly most: Ratio;
  /** Share of the rated flow beyond which the weaker one is not counted on. */
  readonly end: Ratio;
  /** At 60 Hz, by rated power. */
  readonly serviceFactors: readonly { readonly power: Watts; readonly factor: Ratio }[];
}

/** @param units  of the reader: defaults of the build are rounded in each */
export function judgingIn(units: 'us' | 'metric'): Judging {
  return {
    rules: RULES,
    advice: ADVICE_NUMBERS,
    assumable: assumable(units),
    ends: {
      blownShare: BLOWN_SHARE,
      drawnPart: DRAWN_PART,
      frostShare: ESTIMATE_BAND.high,
      reaches: REACHES,
      cutOffAbove: CUT_OFF_SPAN,
    },
    band: {
      least: LEAST_SHARE,
      most: MOST_SHARE,
      end: END_SHARE,
      serviceFactors: RATED_POWERS.map((power) => ({ power, factor: serviceFactor(power, 60) })),
    },
  };
}
