import type { yieldRules } from '../../../model/rules/yield.ts';
import type { CubicMetresPerSecond } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap, span } from '../phrases.ts';

export const short: ShortWords<typeof yieldRules> = {
  'PR-07': {
    broken: 'The pump takes more than the well gives',
    says: {
      takesTooMuch: ({ margin, drawn, ...given }, show) => ({
        amount: isRough(given)
          ? `${flowIn(given, show)} flow in`
          : drawn === null
            ? `${show.flow(-margin)} too much`
            : `${show.flow(drawn.atRest)} of ${show.flow(given.gives)}`,
      }),
      dependsOnYield: ({ turn }, show) => ({ amount: `only from ${show.flow(turn)} on` }),
      dependsOnLevel: ({ turn }, show) => ({ amount: `above ${show.depth(turn)}` }),
    },
    limits: {},
  },
  'PR-08': {
    broken: 'Nothing stops the pump at low water',
    says: {
      probeTooLow: ({ margin }, show) => ({
        title: 'The dry-run protection acts too low',
        amount: `${gap(margin, show)} too low`,
      }),
      littleWater: () => ({ amount: 'no dry-run protection' }),
      fallsToIntake: () => ({ amount: 'no dry-run protection' }),
      takesTooMuch: () => ({ amount: 'no dry-run protection' }),
      dependsOnLevel: ({ turn }, show) => ({ amount: `only above ${show.depth(turn)}` }),
      dependsOnCutOff: ({ turn }, show) => ({ amount: `only above ${show.depth(turn)}` }),
    },
    limits: {},
  },
  'PR-53': {
    broken: 'The pumping level is not known',
    says: {
      notTested: () => ({ amount: 'not measured' }),
      yieldAlone: () => ({ amount: 'not measured' }),
    },
    limits: {},
  },
};

/** What the well gave, and the part of it that is sure: all, where a pump brought it up. */
export interface Gives {
  readonly gives: CubicMetresPerSecond;
  readonly sure: CubicMetresPerSecond;
  readonly open?: true;
}

export function isRough({ gives, sure }: Gives): boolean {
  return sure < gives;
}

export function flowIn({ gives, sure }: Gives, show: Show): string {
  return span(sure, gives, show.flow);
}
