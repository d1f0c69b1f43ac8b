import type { warmWaterRules } from '../../../model/rules/warmWater.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof warmWaterRules> = {
  'PR-63': {
    broken: 'The water is warm for the motor',
    says: {
      warm: ({ temperature }, show) => ({ amount: show.temperature(temperature) }),
    },
    limits: {},
  },
};
