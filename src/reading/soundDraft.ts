/** A plan of what was read, without what no plan can take: each such value is told beside it. */
import type { Problem } from '../model/plan/problem.ts';
import { readPlan } from '../model/plan/readPlan.ts';
import { draftPlan } from './draftPlan.ts';
import type { Doubt, Reading, ReadReport } from './reading.ts';

/** Doubts that a person has to settle: before that the value stands in no plan. The others tell how it was understood. */
const OPEN: ReadonlySet<Doubt['kind']> = new Set([
  ...(['two', 'less', 'plus', 'comma', 'standing', 'unlike', 'unit', 'fromCasingTop'] as const),
]);

export function isOpen({ doubt }: Reading): boolean {
  return doubt !== null && OPEN.has(doubt.kind);
}

export interface SoundDraft {
  /** As it is written into a file. */
  readonly plan: Record<string, unknown>;
  /** Read, and left out of the plan, with what is wrong with it there. */
  readonly leftOut: readonly { readonly reading: Reading; readonly problem: Problem }[];
  /** What still keeps it from being a plan: a depth that nobody told. */
  readonly problems: readonly Problem[];
}

/** @param readings  those with an open doubt stay out of it */
export function soundDraft(report: Pick<ReadReport, 'units'>, readings: readonly Reading[]): SoundDraft {
  const leftOut: { reading: Reading; problem: Problem }[] = [];
  let kept = readings.filter((reading) => !isOpen(reading));
  for (;;) {
    const plan = draftPlan(report, kept);
    const read = readPlan(plan);
    if (read.ok) return { plan, leftOut, problems: [] };
    const faulty = kept.flatMap((reading) => {
      const problem = read.problems.find(({ path }) => path === reading.path || path.startsWith(`${reading.path}.`));
      return problem === undefined ? [] : [{ reading, problem }];
    });
    if (faulty.length === 0) return { plan, leftOut, problems: read.problems };
    leftOut.push(...faulty);
    kept = kept.filter((reading) => faulty.every((each) => each.reading !== reading));
  }
}
