import type { liftingRules } from '../../../model/rules/lifting.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { LIFTING_CAUTION } from '../cautions.ts';
import { gap } from '../phrases.ts';

export const short: ShortWords<typeof liftingRules> = {
  'PR-51': {
    broken: 'The string is too heavy for two people',
    holds: 'Two people can hold the string',
    says: {
      threaded: ({ load }, show) => ({
        title: 'Threaded pipe needs a hoist',
        amount: load === null ? 'hoist' : show.force(load),
      }),
      needsHoist: ({ load }, show) => ({ title: 'The string needs a hoist', amount: show.force(load) }),
      tooHeavyForTwo: ({ load }, show) => ({ amount: show.force(load) }),
      deepByHand: ({ margin }, show) => ({
        title: 'The pump hangs deep for pulling by hand',
        amount: `${gap(margin, show)} deeper`,
      }),
      twoCanHold: ({ margin }, show) => ({ amount: `${show.force(margin)} to spare` }),
    },
    limits: { twoPeople: ({ most }, show) => `${show.force(most)} for two people` },
  },
};

export const long: LongWords<typeof liftingRules> = {
  'PR-51': {
    source:
      '51 lb a person: NIOSH Applications Manual, DHHS 94-110; team of two: from memory; 150 lb and 300 ft: common practice, no source',
    why: 'A wet string pulled hand over hand hurts backs and hands, and one slip drops it.',
    caution: `${LIFTING_CAUTION} Keep pipe and hoist away from power lines.`,
    messages: {
      threaded: () => 'Threaded pipe comes up length by length: a hoist and two pipe holders at any depth.',
      needsHoist: ({ load, most }, show) =>
        `Up to ${show.force(load)} hangs on the hook; over ${show.force(most)} take a hoist.`,
      tooHeavyForTwo: ({ load, most }, show) =>
        `Up to ${show.force(load)} hangs on the hook; two people hold about ${show.force(most)}.`,
      deepByHand: ({ setting, most }, show) =>
        `The pump hangs at ${show.depth(setting)}; by hand few pull from below ${show.depth(most)}.`,
      twoCanHold: ({ load }, show) =>
        `Up to ${show.force(load)} hangs on the hook, full of water and with none round it.`,
    },
    fixes: {
      hoistAndHolders: () => 'Have a hoist and two pipe holders at hand.',
      ratedHoist: () => 'Use a hoist rated for twice that load.',
      morePeople: () => 'Have more than two people, or a hoist.',
      hoistIsEasier: () => 'A hoist is the easier way at this depth.',
    },
  },
};
