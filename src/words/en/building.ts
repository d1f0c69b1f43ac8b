/** Round the steps of the work: the list of them, one of them, and how one goes from one to the next. */
import type { Kind } from '../../model/work/step.ts';

export const building = {
  title: 'Order of the work',
  about: (steps: number, done: number): string =>
    `${steps} steps, from the permit to the first drink. ${done === 0 ? 'None is' : done === 1 ? 'One is' : `${done} are`} ticked.`,
  /** What was found in the plan: "1 danger, 2 warnings". */
  settle: (found: string): string => `The plan still has ${found}. Settle them under Findings before you buy or dig.`,
  kind: {
    title: 'What is done',
    names: { new: 'A new well', replace: 'In place of an old pump' } satisfies Readonly<Record<Kind, string>>,
  },
  begin: 'Begin with step 1',
  goOn: (step: number): string => `Go on with step ${step}`,
  done: 'Done',
  isDone: (title: string): string => `Done: ${title}`,
  of: (step: number, steps: number): string => `${step} of ${steps}`,
  back: 'Back',
  next: 'Next',
  all: 'All steps',
  caution: 'Caution.',
  does: 'What to do',
  hook: 'On the hook',
  check: 'Check before you go on',
  mistake: 'The usual mistake',
  why: 'Why',
  lost: 'The picture of the house could not be fetched. Try again when you are online.',
};
