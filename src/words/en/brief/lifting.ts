import type { liftingRules } from '../../../model/rules/lifting.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof liftingRules> = {
  'PR-51': {
    broken: 'The string is heavy for hands',
    says: {
      threaded: ({ load }, show) => ({
        title: 'Threaded pipe needs a hoist',
        amount: load === null ? 'hoist' : show.hook(load),
      }),
      needsMachine: ({ load }, show) => ({
        title: 'The string is too heavy for any team of people',
        amount: show.hook(load),
      }),
      needsHoist: ({ load }, show) => ({ title: 'The string needs a hoist', amount: show.hook(load) }),
      needsWheel: ({ load }, show) => ({ title: 'The string wants a wheel or a hoist', amount: show.hook(load) }),
    },
    limits: {},
  },
};
