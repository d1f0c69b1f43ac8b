import type { shortageRules } from '../../../model/rules/shortage.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { capital, tested } from '../phrases.ts';

export const short: ShortWords<typeof shortageRules> = {
  'PR-55': {
    broken: 'The house wants more than the well gives',
    holds: 'The well gives what the house wants',
    says: {
      givesEnough: ({ gives, wanted }, show) => ({ amount: `${show.flow(gives)} for ${show.flow(wanted)}` }),
      carried: ({ aDay }, show) => ({
        title: 'The well is carried by its store',
        amount: `${show.volume(aDay)} a day`,
      }),
      carriedUnguarded: () => ({ title: 'The well is carried by its store', amount: 'no dry-run protection' }),
      peakNotCarried: ({ gives, wanted }, show) => ({ amount: `${show.flow(gives)} of ${show.flow(wanted)}` }),
      peakUnsure: ({ gives, wanted }, show) => ({ amount: `${show.flow(gives)} of ${show.flow(wanted)}` }),
      dayNotMet: ({ aDay }, show) => ({
        title: 'The well gives too little for a day',
        amount: `${show.volume(aDay)} a day`,
      }),
      dependsOnYield: ({ turn }, show) => ({
        title: 'Whether the well gives what the house wants',
        amount: `only from ${show.flow(turn)} on`,
      }),
    },
    limits: {},
  },
};

export const long: LongWords<typeof shortageRules> = {
  'PR-55': {
    asks: () => 'The well gives the flow that the house wants, or its store carries the peak with dry-run protection.',
    source: 'balance of volumes; length of the peak and a day’s need: Missouri Extension G1801',
    why: 'A house that draws more than flows in lives on what the well has stored, until it is gone.',
    messages: {
      // What it gave for the hours of a test is no promise of the same all day.
      givesEnough: ({ wanted, gives }, show) =>
        `By the record the well gives ${show.flow(gives)}; ${show.flow(wanted)} is wanted.`,
      carried: ({ wanted, gives, stored, peak }, show) =>
        `It gives ${show.flow(gives)} of ${show.flow(wanted)}; ${show.volume(stored)} stored in it carry a peak of ${show.time(peak)}.`,
      carriedUnguarded: ({ wanted, gives, stored }, show) =>
        `It gives ${show.flow(gives)} of ${show.flow(wanted)}; ${show.volume(stored)} are stored, and nothing stops the pump when they are gone.`,
      peakNotCarried: ({ wanted, gives, peak }, show) =>
        `It gives ${show.flow(gives)} of ${show.flow(wanted)}, enough for a day but not for a peak of ${show.time(peak)}.`,
      peakUnsure: ({ wanted, gives, peak }, show) =>
        `It gives ${show.flow(gives)} of ${show.flow(wanted)}; whether its stored water carries a peak of ${show.time(peak)} is not known.`,
      dayNotMet: ({ gives, aDay, need }, show) =>
        `It gives ${show.flow(gives)}, ${show.volume(aDay)} a day; ${show.volume(need)} are needed.`,
      dependsOnYield: ({ wanted, gave, how }, show) =>
        `${capital(tested(how))} the well gave ${show.flow(gave)}, of which half is sure; ${show.flow(wanted)} is wanted.`,
    },
    fixes: {
      fillsAgain: () => 'Leave time between long draws; the well fills again by and by.',
      storage: () => 'Store water in the house for the peaks, or ask for less flow.',
      storageAndCutOff: () => 'Store water in the house for the peaks, and have dry-run protection.',
    },
  },
};
