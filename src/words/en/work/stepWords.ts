/** What is said of a step. A step or a number that is left out does not compile. */
import type { StepId, StepNumbers } from '../../../model/work/step.ts';
import type { Show } from '../../../model/units.ts';

export interface StepWords {
  /** "Lower the string" */
  readonly title: string;
  /** In order, a sentence each. */
  readonly does: readonly string[];
  readonly why: string;
  /** What to look at before the next step. */
  readonly check: readonly string[];
  /** The usual mistake, and what it costs. */
  readonly mistake: string;
}

export type StepsOf<Ids extends StepId> = {
  readonly [Id in Ids]: (numbers: StepNumbers[Id], show: Show) => StepWords;
};
