import { wanting } from '../phrases.ts';
import type { yieldTestRules } from '../../../model/rules/yieldTest.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof yieldTestRules> = {
  'PR-42': {
    broken: 'The pumping test was short',
    says: {
      short: ({ margin }, show) => ({ amount: wanting(show.time(-margin)) }),
    },
    limits: {},
  },
};
