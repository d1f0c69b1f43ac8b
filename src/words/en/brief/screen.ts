import type { screenRules } from '../../../model/rules/screen.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof screenRules> = {
  'PR-37': {
    broken: 'Water enters the screen too fast',
    says: {
      fast: ({ margin }, show) => ({ amount: `${show.slow(-margin)} too fast` }),
    },
    limits: {},
  },
};
