import { wanting } from '../phrases.ts';
import type { ropeRules } from '../../../model/rules/rope.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof ropeRules> = {
  'PR-16': {
    broken: 'The rope is tied in the wrong place',
    says: {
      throughCap: () => ({ title: 'The rope is led through the cap', amount: 'through the cap' }),
      loose: () => ({ title: 'The rope is tied to nothing', amount: 'loose' }),
      onCap: () => ({ amount: 'on the cap' }),
      weak: ({ margin }, show) => ({
        title: 'The rope is too weak for the string',
        amount: wanting(show.hook(-margin)),
      }),
    },
    limits: {},
  },
};
