/** What is said of a cause. A cause that is left out does not compile. */
import type { CauseId } from '../../../model/matter/cause.ts';

export interface CauseWords {
  /** "The tank has lost its air" */
  readonly title: string;
  /** What to look at or to measure, and how, in order. */
  readonly look: readonly string[];
  /** What the result tells. */
  readonly tells: readonly string[];
  /** What is then done, and by whom. */
  readonly then: readonly string[];
}

export type CausesOf<Ids extends CauseId> = Readonly<Record<Ids, CauseWords>>;
