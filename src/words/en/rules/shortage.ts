import type { shortageRules } from '../../../model/rules/shortage.ts';
import type { CubicMetres, CubicMetresPerSecond } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { capital, span, tested } from '../phrases.ts';

export const short: ShortWords<typeof shortageRules> = {
  'PR-55': {
    broken: 'The house wants more than the well gives',
    holds: 'The well gives what the house wants',
    says: {
      givesEnough: (numbers, show) => ({
        amount: isRough(numbers)
          ? flowsIn(numbers, show)
          : `${show.flow(numbers.gives)} for ${show.flow(numbers.wanted)}`,
      }),
      carried: (numbers, show) => ({ title: byStore(numbers), amount: `${ofADay(numbers, show)} a day` }),
      carriedUnguarded: (numbers) => ({ title: byStore(numbers), amount: 'no dry-run protection' }),
      peakNotCarried: (numbers, show) => ({ amount: ofWanted(numbers, show) }),
      peakUnsure: (numbers, show) => ({ amount: ofWanted(numbers, show) }),
      dayNotMet: (numbers, show) => ({
        title: 'The well gives too little for a day',
        amount: `${ofADay(numbers, show)} a day`,
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
      givesEnough: ({ wanted, ...given }, show) =>
        `By the record the well gives ${flow(given, show)}; ${show.flow(wanted)} is wanted.`,
      carried: ({ wanted, stored, peak, surely, ...given }, show) =>
        surely
          ? `It gives ${flow(given, show)} of ${show.flow(wanted)}; ${show.volume(stored)} stored in well and tank carry ${show.time(peak)}.`
          : `It gives ${flow(given, show)} of ${show.flow(wanted)}; only with the most do ${show.volume(stored)} in well and tank carry ${show.time(peak)}.`,
      carriedUnguarded: ({ wanted, stored, ...given }, show) =>
        `It gives ${flow(given, show)} of ${show.flow(wanted)}; well and tank hold ${show.volume(stored)}, then nothing stops the pump.`,
      peakNotCarried: ({ wanted, peak, need, sureADay, ...given }, show) =>
        `It gives ${flow(given, show)} of ${show.flow(wanted)}, ${sureADay < need ? 'not enough' : 'enough for a day, not'} for a peak of ${show.time(peak)}.`,
      peakUnsure: ({ wanted, peak, ...given }, show) =>
        `It gives ${flow(given, show)} of ${show.flow(wanted)}; whether its store carries ${show.time(peak)} is not known.`,
      dayNotMet: ({ need, ...given }, show) =>
        `It gives ${flow(given, show)}, ${ofADay(given, show)} a day; ${show.volume(need)} are needed.`,
      dependsOnYield: ({ wanted, gave, sure, how }, show) =>
        `${capital(tested(how))} the well gave ${show.flow(gave)}, ${show.flow(sure)} sure; ${show.flow(wanted)} is wanted.`,
    },
    fixes: {
      fillsAgain: () => 'Leave time between long draws; the well fills again by and by.',
      storage: () => 'Store water in the house for the peaks, or ask for less flow.',
      storageAndCutOff: () => 'Store water in the house for the peaks, and have dry-run protection.',
    },
  },
};

/** What flows in: of a well that no pump tested, from the part that is sure to all that came. */
interface Gives {
  readonly gives: CubicMetresPerSecond;
  readonly sure: CubicMetresPerSecond;
}

function isRough({ gives, sure }: Gives): boolean {
  return sure < gives;
}

function byStore({ surely }: { readonly surely: boolean }): string {
  return surely ? 'The well is carried by its store' : 'The well may be carried by its store';
}

function flow({ gives, sure }: Gives, show: Show): string {
  return span(sure, gives, show.flow);
}

function flowsIn(given: Gives, show: Show): string {
  return `${flow(given, show)} flow in`;
}

function ofWanted({ wanted, ...given }: Gives & { readonly wanted: CubicMetresPerSecond }, show: Show): string {
  return isRough(given) ? flowsIn(given, show) : `${show.flow(given.gives)} of ${show.flow(wanted)}`;
}

function ofADay(
  { aDay, sureADay }: { readonly aDay: CubicMetres; readonly sureADay: CubicMetres },
  show: Show,
): string {
  return span(sureADay, aDay, show.volume);
}
