import type { tankRules } from '../../../model/rules/tank.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { wanting } from '../phrases.ts';

export const short: ShortWords<typeof tankRules> = {
  'PR-44': {
    broken: 'The pump can burst the tank',
    says: {
      noRelief: ({ margin }, show) => ({ amount: `${show.pressure(-margin)} over its rating` }),
      reliefUnknown: ({ margin }, show) => ({
        title: 'Does a relief valve guard the tank?',
        amount: `${show.pressure(-margin)} over its rating`,
      }),
    },
    limits: {},
  },
  'PR-46': {
    broken: 'The pump never reaches cut-out',
    says: {
      barelyReaches: ({ spare }, show) => ({
        title: 'The pump barely reaches cut-out',
        amount: `only ${show.pressure(spare)} to spare`,
      }),
      reachesLate: ({ spare }, show) => ({
        title: 'The pump reaches cut-out late',
        amount: wanting(show.pressure(-spare)),
      }),
      opensLate: ({ turn }, show) => ({
        title: 'The pump reaches cut-out late',
        amount: `only above ${show.depth(turn)}`,
      }),
      neverReaches: ({ spare }, show) => ({ amount: wanting(show.pressure(-spare)) }),
      mayNeverReach: ({ spare }, show) => ({
        title: 'The pump may never reach cut-out',
        amount: `a weak one ${wanting(show.pressure(-spare))}`,
      }),
      hangsBelowItsLift: belowItsLift,
      probeBelowItsLift: belowItsLift,
      dependsOnLevel: ({ turn }, show) => ({
        title: 'Whether the pump reaches cut-out',
        amount: `only above ${show.depth(turn)}`,
      }),
    },
    limits: { pumpLifts: () => 'as deep as the pump lifts' },
  },
};

function belowItsLift({ lifts, intake }: { lifts: Metres; intake: Metres }, show: Show) {
  return {
    title: 'The pump hangs deeper than it lifts from',
    amount: `${show.depth(lifts)}, not ${show.depth(intake)}`,
  };
}
