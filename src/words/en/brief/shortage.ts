import type { shortageRules } from '../../../model/rules/shortage.ts';
import type { CubicMetres, CubicMetresPerSecond } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { span } from '../phrases.ts';

export const short: ShortWords<typeof shortageRules> = {
  'PR-55': {
    broken: 'The house wants more than the well gives',
    says: {
      carried: (numbers, show) => ({ title: byStore(numbers), amount: `${ofADay(numbers, show)} a day` }),
      tankCarries: (numbers, show) => ({
        title: numbers.daySure ? 'The open tank carries the peak' : 'The well may give too little for a day',
        amount: `${ofADay(numbers, show)} a day`,
      }),
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

/** What flows in: of a well that no pump tested, from the part that is sure to all that came. */
export interface Gives {
  readonly gives: CubicMetresPerSecond;
  readonly sure: CubicMetresPerSecond;
}

export function isRough({ gives, sure }: Gives): boolean {
  return sure < gives;
}

function byStore({ surely }: { readonly surely: boolean }): string {
  return surely ? 'The well is carried by its store' : 'The well may be carried by its store';
}

export function flow({ gives, sure }: Gives, show: Show): string {
  return span(sure, gives, show.flow);
}

export function flowsIn(given: Gives, show: Show): string {
  return `${flow(given, show)} flow in`;
}

function ofWanted({ wanted, ...given }: Gives & { readonly wanted: CubicMetresPerSecond }, show: Show): string {
  return isRough(given) ? flowsIn(given, show) : `${show.flow(given.gives)} of ${show.flow(wanted)}`;
}

export function ofADay(
  { aDay, sureADay }: { readonly aDay: CubicMetres; readonly sureADay: CubicMetres },
  show: Show,
): string {
  return span(sureADay, aDay, show.volume);
}
