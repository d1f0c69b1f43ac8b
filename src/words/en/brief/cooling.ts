import type { coolingRules } from '../../../model/rules/cooling.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap, wanting } from '../phrases.ts';

export const short: ShortWords<typeof coolingRules> = {
  'PR-05': {
    broken: 'The water comes from above the motor',
    says: {
      fromAbove: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
    },
    limits: { aboveLowestInflow: () => 'motor above the lowest inflow' },
  },
  'PR-06': {
    broken: 'Water passes the motor slowly',
    says: {
      slow: ({ margin }, show) => ({ amount: wanting(show.slow(-margin)) }),
    },
    limits: {},
  },
};
