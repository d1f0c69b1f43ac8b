/** A sheet: what an adviser is asked about one side of the job, each figure with its account. Made on demand. */
import type { Explanation, Missing } from '../explain/explanation.ts';

/** The account of a figure; its name is the figure's key, which no table of `values` need hold. */
export type SheetExplanation = Omit<Explanation, 'name'> & { readonly name: string };

export interface SheetFigure {
  /** Stable within its sheet: "shaftPower". */
  readonly key: string;
  readonly title: string;
  /** SI; null where it cannot be known. */
  readonly value: number | null;
  /** For the reader: "1.2 hp", or "unknown". */
  readonly text: string;
  /** Formula, numbers put in, range, source: worked out when it is opened. */
  readonly explanation: () => SheetExplanation;
  /** What is missing, in words; empty when the figure is known. */
  readonly unknown: readonly string[];
}

export interface SheetColumn {
  readonly key: string;
  readonly title: string;
}

export interface SheetRow {
  /** One text a column. */
  readonly cells: readonly string[];
  /** The same in SI, null for words and for what is unknown. */
  readonly numbers: readonly (number | null)[];
  /** The row of this plan, or one that does not do. */
  readonly mark: 'this plan' | 'does not do' | null;
}

export interface SheetTable {
  readonly key: string;
  readonly title: string;
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly SheetRow[];
  readonly source: string;
  readonly note: string;
}

export interface Sheet {
  readonly key: SheetKey;
  readonly title: string;
  readonly figures: readonly SheetFigure[];
  readonly tables: readonly SheetTable[];
  readonly notes: readonly string[];
  /** Where the work can hurt someone. */
  readonly cautions: readonly string[];
}

export type SheetKey = 'pump' | 'pipe' | 'wire' | 'weight' | 'rope' | 'frost' | 'materials' | 'house' | 'disinfection';

export type { Missing };
