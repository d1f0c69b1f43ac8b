/** One figure's account before its numbers are written out. */
import type { ExplainedRange, Missing } from './explanation.ts';
import type { Context } from './context.ts';
import type { MeasureName } from './measure.ts';
import type { Step, Term } from './sum.ts';

export interface Draft {
  readonly title: string;
  readonly symbol: string;
  readonly terms: readonly Term[];
  /** In the order one works through them; the last gives the figure. */
  readonly steps: readonly Step[];
  /** Measure of the result, in the reader's unit. */
  readonly as: MeasureName;
  /** In words, where there is no formula: "as the plan says". */
  readonly formula?: string;
  readonly range: ExplainedRange;
  readonly source: string;
  readonly notes?: readonly string[];
  /** Asked for only where the figure is null. */
  readonly missing: readonly (Missing | null)[];
}

export type Explainer = (context: Context) => Draft;

/** Arithmetic on lengths has no range to leave. */
export const everywhere: ExplainedRange = { holds: 'always; as good as the depths that go in', inside: true };

export const GEOMETRY = 'geometry';

export const within = (holds: string, inside: boolean | null): ExplainedRange => ({ holds, inside });
