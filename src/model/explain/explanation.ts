/** A figure opened up: its formula, the numbers put in, what it rests on. Text throughout, for page, sheet and command. */
import type { ValueName } from '../solution.ts';

export interface Explanation {
  readonly name: ValueName;
  /** In plain words: "Total dynamic head". */
  readonly title: string;
  /** "H" */
  readonly symbol: string;
  /** In symbols, one line: "H = z + r + h_p + h_d + h_l + h_f". */
  readonly formula: string;
  readonly symbols: readonly ExplainedSymbol[];
  /** The formula with numbers and units put in, one line; null where the figure is unknown. */
  readonly worked: string | null;
  /** "250.2 ft"; null where the figure is unknown. */
  readonly result: string | null;
  readonly range: ExplainedRange;
  /** Publication and section, or that there is none. */
  readonly source: string;
  readonly notes: readonly string[];
  /** What keeps the figure from being known; empty when it is. */
  readonly unknown: readonly Missing[];
}

export interface ExplainedSymbol {
  readonly symbol: string;
  readonly meaning: string;
  /** In the reader's units, without the unit; "unknown" where nobody said. */
  readonly value: string;
  /** "ft"; empty for a plain number. */
  readonly unit: string;
}

export interface ExplainedRange {
  /** Where the formula holds. */
  readonly holds: string;
  /** Whether this case lies there; null where that cannot be told. */
  readonly inside: boolean | null;
}

export interface Missing {
  /** Path in the plan; null when it is not a field that is missing. */
  readonly path: string | null;
  readonly words: string;
}
