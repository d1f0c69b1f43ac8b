/**
 * Facts that nobody said and that physics holds between two ends. A rule that reads one of them is judged at both.
 *
 * Only these four: were every unknown held between ends, every well would be warned about.
 */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { inches } from '../units.ts';

export type OpenFact = 'pumpingLevel' | 'yield' | 'frostDepth' | 'protrusion';

export interface Open {
  readonly fact: OpenFact;
  /** The field of the plan that takes it. */
  readonly field: string;
  /** The end at which things are best, and the one at which they are worst, SI. */
  readonly good: number;
  readonly bad: number;
}

/** How far adapters stand into their casing. Common practice, no source. */
export const REACHES: readonly [Metres, Metres] = [inches(0.5), inches(1.25)];

/** What is told together, since one measurement decides it: a pumping test tells level and yield. */
export const DECIDED_TOGETHER: Readonly<Record<OpenFact, 'pumpingTest' | 'frostDepth' | 'protrusion'>> = {
  pumpingLevel: 'pumpingTest',
  yield: 'pumpingTest',
  frostDepth: 'frostDepth',
  protrusion: 'protrusion',
};

export function openProtrusion({ facts: { top } }: Solved): Open | null {
  if (top.kind !== 'pitless' || top.protrusion !== null) return null;
  return { fact: 'protrusion', field: 'top.protrusion', good: REACHES[0], bad: REACHES[1] };
}
