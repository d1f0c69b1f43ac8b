import type { recordRules } from '../../../model/rules/record.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap } from '../phrases.ts';

export const short: ShortWords<typeof recordRules> = {
  'PR-62': {
    broken: 'The record contradicts itself',
    says: {
      dryAboveToday: ({ margin }, show) => ({ amount: `${gap(margin, show)} apart` }),
      highBelowToday: ({ margin }, show) => ({ amount: `${gap(margin, show)} apart` }),
      pumpingAboveStatic: ({ margin }, show) => ({ amount: `${gap(margin, show)} apart` }),
      casingBelowBottom: ({ margin }, show) => ({ amount: `${gap(margin, show)} apart` }),
      soundedInCasing: ({ margin }, show) => ({
        title: 'The well is sounded above its casing’s end',
        amount: `${gap(margin, show)} apart`,
      }),
      screenBelowBottom: ({ margin }, show) => ({ amount: `${gap(margin, show)} apart` }),
      pumpBelowBottom: ({ margin }, show) => ({ amount: `${gap(margin, show)} apart` }),
    },
    limits: {},
  },
};
