import { wanting } from '../phrases.ts';
import type { buriedLineRules } from '../../../model/rules/buriedLine.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof buriedLineRules> = {
  'PR-61': {
    broken: 'The line to the house is weak',
    says: {
      weak: ({ rating, least }, show) => ({ amount: wanting(show.pressure(least - rating)) }),
      weakForSwitch: ({ rating, asked }, show) => ({ amount: wanting(show.pressure(asked - rating)) }),
      bursts: ({ rating, reach }, show) => ({
        title: 'The pump can burst the line to the house',
        amount: wanting(show.pressure(reach - rating)),
      }),
    },
    limits: {},
  },
};
