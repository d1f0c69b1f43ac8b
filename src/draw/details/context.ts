/** What is known once the well is drawn: for dimensions, marks and labels that lie over it. */
import type { Finding, Solution } from '../../model/solution.ts';
import type { Pen } from '../parts/pen.ts';
import type { DetailFrame } from './contract.ts';
import type { Placed } from '../well/stage.ts';

/** The window right of the rail [px]. */
export interface WindowBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface DetailContext {
  readonly solution: Solution;
  readonly frame: DetailFrame;
  readonly pen: Pen;
  /** The window as far as the labels. */
  readonly box: WindowBox;
  /** All of it. */
  readonly window: WindowBox;
  readonly placed: readonly Placed[];
  /** The worst that is wrong with each part, by its key. */
  readonly faults: ReadonlyMap<string, Fault>;
}

export interface Fault {
  readonly finding: Finding;
  readonly number: number;
}
