/** What hangs on the hook, and what holds it: in agreement with the rule of the hanging load. */
import type { Newtons } from '../../../model/si.ts';
import type { Holder, OnTheHook } from '../../../model/work/step.ts';
import type { Show } from '../../../model/units.ts';

const holders: Readonly<Record<Holder, (load: Pick<OnTheHook, 'two'>, show: Show) => string>> = {
  unknown: () => 'Nobody said what the pump weighs: take a hoist.',
  oldUnknown: () =>
    'Nobody said what hangs there: steel pipe is far heavier than coiled plastic. Take a hoist, or a rig.',
  twoPeople: ({ two }, { hook: say }) => `That is for two people, who hold about ${say(two)}, and not for one.`,
  wheel: () => 'That is too much for two people: use a pipe wheel or a hoist, rated as the parts list says.',
  hoist: () => 'That takes a hoist, rated as the parts list says, and two pipe holders.',
  machine: () => 'No team of people holds that: use a rig or a hoist, rated as the parts list says.',
  threaded: () => 'Threaded pipe takes a hoist and two pipe holders, however light it is.',
};

export const hook = {
  /** As the scale in the hook reads it: what is less than it shows is no change. */
  change: (from: Newtons, to: Newtons, { hook: say }: Show) =>
    say(Math.abs(to - from)) === say(0) || say(from) === say(to)
      ? `${say(to)} on the hook.`
      : `${say(from)} on the hook, and ${say(Math.abs(to - from))} ${to > from ? 'more' : 'less'} at the end.`,
  /** Said where that is more than hangs at the step itself. */
  gear: (gear: Newtons, { hook: say }: Show) =>
    `Hanging in the water with a full pipe, the whole string comes to ${say(gear)}.`,
  /** Pulling counts the pipe as full, and half as much again. */
  pulling: (load: Newtons, { hook: say }: Show) =>
    `Count on up to ${say(load)} on the hook: a full pipe out of the water, and half for sticking.`,
  holders,
};
