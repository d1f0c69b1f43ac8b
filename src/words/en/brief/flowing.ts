import type { flowingRules } from '../../../model/rules/flowing.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap } from '../phrases.ts';

export const short: ShortWords<typeof flowingRules> = {
  'PR-38': {
    broken: 'Water rises above the ground',
    says: {
      aboveGround: ({ height }, show) => ({ amount: `${gap(height, show)} above ground` }),
      atGround: () => ({ amount: 'at the ground' }),
    },
    limits: {},
  },
};
