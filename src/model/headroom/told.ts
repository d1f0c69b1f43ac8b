/** What is told of how far the well may go. No words: `src/words` has them. */
import type { Finding, Severity } from '../solution.ts';

/** In which a reader reads it. */
export type Units = 'us' | 'metric';

export type HeadroomOf = 'staticLevel' | 'yield' | 'demand' | 'switch' | 'pumpSetting' | 'frostDepth';

/** Whether the value grows (a depth goes down) or falls. */
export type Direction = 'more' | 'less';

/** Where something begins to be wrong that was not before. */
export interface Step {
  /** The last value tried without it, and the first with it, SI: a reader's step apart, and the turn between them. */
  readonly last: number;
  readonly at: number;
  /** The rule that begins to be broken. */
  readonly rule: string;
  readonly severity: Severity;
  /** As it is found there; of what is wrong already, as it is found now. */
  readonly finding: Finding;
  /** What is found of the rule as the well stands now: a note that comes to matter, a warning that becomes a danger. */
  readonly before: Finding | null;
  /** It is wrong as the well stands now, and would not be with the value moved the other way: `at` is the value now. */
  readonly already: boolean;
  /** Its danger may stand already; past here the pump hangs over the water at rest besides. */
  readonly overWater: boolean;
}

export interface Headroom {
  readonly of: HeadroomOf;
  readonly direction: Direction;
  /** SI; null: nobody said it, and then no step is known. */
  readonly now: number | null;
  /** The field that would tell it, where nobody said it; else null. */
  readonly missing: string | null;
  /** The last value that was tried, SI; null where none was. */
  readonly end: number | null;
  /** The first that is a warning or worse; null where none comes up to the end. */
  readonly warning: Step | null;
  /** The first that is a danger; null where none comes up to the end. */
  readonly danger: Step | null;
  /** Rules that are a danger as the well stands now, whatever of: what is found up to the end is found besides these. */
  readonly standing: readonly string[];
  /** Paths of what was assumed and what this rests on. */
  readonly assumed: readonly string[];
}

/** In a flowing well and in a dry one something else comes first. */
export type NoHeadroom = 'flowing' | 'dry';

export interface HeadroomReport {
  readonly refused: NoHeadroom | null;
  readonly lines: readonly Headroom[];
}
