/** What is known once the well is drawn: for dimensions, marks and labels that lie over it. */
import type { Finding, Solution } from '../../model/solution.ts';
import type { Box } from '../hatch/clip.ts';
import type { Pen } from '../parts/pen.ts';
import type { DetailFrame } from './contract.ts';
import type { Placed } from '../well/stage.ts';

export interface DetailContext {
  readonly solution: Solution;
  readonly frame: DetailFrame;
  readonly pen: Pen;
  /** The window right of the rail [px]. */
  readonly window: Box;
  /** The same as far as the labels. */
  readonly box: Box;
  readonly placed: readonly Placed[];
  /** The worst that is wrong with each part, by its key. */
  readonly faults: ReadonlyMap<string, Fault>;
}

export interface Fault {
  readonly finding: Finding;
  readonly number: number;
}
