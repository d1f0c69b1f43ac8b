import { poundsForce, type Show } from '../../../model/units.ts';
import type { liftingRules } from '../../../model/rules/lifting.ts';
import type { LongWords } from '../../ruleWords.ts';
import { LIFTING_CAUTION, OVERHEAD_CAUTION } from '../cautions.ts';

export const long: LongWords<typeof liftingRules> = {
  'PR-51': {
    holds: 'Two people can hold the string',
    held: {
      twoCanHold: ({ margin }, show) => ({ amount: `${show.hook(Math.max(margin, 0))} to spare` }),
    },
    asks: ({ two, hoist, machine }, show) =>
      `Over ${show.hook(two)} at rest a wheel or hoist lifts the string, over ${show.hook(hoist)} or threaded a hoist, over ${show.hook(machine)} a machine.`,
    source: (show) =>
      `${show.hook(poundsForce(51))} a person: NIOSH Applications Manual, DHHS 94-110; team of two: from memory; ${show.hook(poundsForce(150))} and ${show.hook(poundsForce(300))}: common practice, no source`,
    why: 'A wet string pulled hand over hand hurts backs and hands, and one slip drops it.',
    caution: `${LIFTING_CAUTION} ${OVERHEAD_CAUTION}`,
    messages: {
      threaded: () => 'Threaded pipe comes up length by length: a hoist and two pipe holders at any depth.',
      needsMachine: ({ load, most }, show) =>
        `At rest ${show.hook(load)} hangs on the hook; over ${show.hook(most)} no team of people holds it.`,
      needsHoist: ({ load, most }, show) =>
        `At rest ${show.hook(load)} hangs on the hook; over ${show.hook(most)} it takes a hoist and two pipe holders.`,
      needsWheel: ({ load, most }, show) =>
        `At rest ${show.hook(load)} hangs on the hook; two people hold about ${show.hook(most)}.`,
      twoCanHold: ({ load, most }, show) =>
        `At rest ${show.hook(load)} hangs on the hook; two people hold about ${show.hook(most)}.`,
    },
    fixes: {
      hoistAndHolders: ({ rated: most }, show) => `Have a hoist ${rated(most, show)}, and two pipe holders.`,
      machine: ({ rated: most }, show) => `Have a rig or a hoist ${rated(most, show)}, with people who know it.`,
      wheelOrHoist: ({ rated: most }, show) => `Use a pipe wheel or a hoist ${rated(most, show)}.`,
    },
  },
};

function rated(most: number | null, show: Show): string {
  return most === null ? 'rated for twice that load' : `rated for ${show.hook(most)} or more`;
}
