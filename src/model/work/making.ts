/** How steps are written: numbers and pieces by name, the rest of a step only where it is not the usual. */
import type { Solved } from '../solution.ts';
import { assumedPaths } from '../rules/assumed.ts';
import { STEP_RESTS_ON } from './restsOn.ts';
import type { PieceSets } from './pieceSets.ts';
import type { Caution, Phase, Step, StepId, StepNumbers, StepView } from './step.ts';

export interface Job {
  readonly solved: Solved;
  readonly pieces: PieceSets;
}

interface More {
  readonly puts?: readonly string[];
  readonly about?: readonly string[];
  readonly view?: StepView;
  readonly cautions?: readonly Caution[];
}

export type Draft = Omit<Step, 'key' | 'phase' | 'assumed'>;

export function step<Id extends StepId>(id: Id, numbers: StepNumbers[Id], more: More = {}): Draft {
  const { puts = [], about = [], view = 'section', cautions = [] } = more;
  return { id, numbers, puts, about, view, cautions } as Draft;
}

export type InPhase = Omit<Step, 'key' | 'assumed'>;

export function inPhase(phase: Phase, drafts: readonly Draft[]): readonly InPhase[] {
  return drafts.map((draft) => ({ ...draft, phase }) as InPhase);
}

/** A step that comes again is counted. */
export function withKeys(all: readonly InPhase[], solved: Solved): readonly Step[] {
  const assumed = assumedPaths(solved);
  const times = new Map<StepId, number>();
  return all.map((each) => {
    const n = (times.get(each.id) ?? 0) + 1;
    times.set(each.id, n);
    const rests = (STEP_RESTS_ON[each.id] ?? []).filter((path) => assumed.has(path));
    return { ...each, key: n === 1 ? each.id : `${each.id}/${n}`, assumed: rests } as Step;
  });
}
