/** A step of the work in words. */
import type { OnTheHook, Step, Work } from '../model/work/step.ts';
import { nameOfPath } from './en/plan/paths.ts';
import type { Show } from '../model/units.ts';
import type { StepWords } from './en/work/stepWords.ts';
import type { work } from './en/work.ts';

/** Fetched apart from the rest of a language: a page asks for them when the steps are opened. */
export type WorkWords = typeof work;

export interface SaidStep extends StepWords {
  readonly key: string;
  readonly phase: string;
  /** What hangs on the hook, and what holds it; empty where nothing hangs. */
  readonly onTheHook: readonly string[];
  readonly cautions: readonly string[];
  /** Which choices that nobody made its figures rest on; empty where none. */
  readonly assumed: string;
}

export function sayStep(step: Step, words: WorkWords, show: Show): SaidStep {
  // A step and its numbers belong together by their types, which a look-up cannot follow.
  const say = words.steps[step.id] as (numbers: object, show: Show) => StepWords;
  return {
    key: step.key,
    phase: words.phases[step.phase],
    ...say(step.numbers, show),
    onTheHook: 'hook' in step.numbers ? sayHook(step.id, step.numbers.hook, words, show) : [],
    cautions: step.cautions.map((caution) => words.cautions[caution]),
    assumed: step.assumed.length === 0 ? '' : words.assumed(step.assumed.map(nameOfPath)),
  };
}

/** Why a well is told no steps. */
export function sayStop({ why }: Extract<Work, { readonly kind: 'stop' }>, words: WorkWords): readonly string[] {
  return words.stop[why];
}

function sayHook(id: Step['id'], load: OnTheHook, { hook }: WorkWords, show: Show): readonly string[] {
  const { from, to, gear } = load;
  const holder = hook.holders[load.holder](load, show);
  if (from === null || to === null || gear === null)
    return load.holder === 'unknown' || load.holder === 'oldUnknown'
      ? [holder]
      : [hook.holders.unknown(load, show), holder];
  if (id === 'unseat' || id === 'pull') return [hook.pulling(to, show), holder];
  return [
    hook.change(from, to, show),
    ...(show.hook(gear) === show.hook(Math.max(from, to)) ? [] : [hook.gear(gear, show)]),
    holder,
  ];
}
