import type { pitlessRules } from '../../../model/rules/pitless.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap, wanting } from '../phrases.ts';

export const short: ShortWords<typeof pitlessRules> = {
  'PR-19': {
    broken: 'The pitless adapter is in the frost zone',
    says: {
      dependsOnFrost: ({ turn }, show) => ({
        title: 'The pitless adapter may be in the frost zone',
        amount: `only down to ${gap(turn, show)}`,
      }),
      inFrost: ({ measured, asked }, show) => ({ amount: `${gap(asked - measured, show)} too high` }),
      closeToFrost: ({ margin }, show) => ({
        title: 'The pitless adapter is close to the frost',
        amount: wanting(gap(margin, show)),
      }),
    },
    limits: { belowFrost: ({ asked }, show) => `${gap(asked, show)} below frost` },
  },
  'PR-20': {
    broken: 'The pitless adapter is under water',
    says: {
      underWater: ({ margin }, show) => ({ amount: `${gap(margin, show)} too deep` }),
      madeForWater: ({ margin }, show) => ({ amount: `${gap(margin, show)} too deep` }),
    },
    limits: { aboveStaticLevel: () => 'above the static level' },
  },
  'PR-21': {
    broken: 'The pump does not pass the pitless adapter',
    says: {
      hardlyPasses: ({ margin }, show) => ({
        title: 'The pump hardly passes the pitless adapter',
        amount: `${show.bore(-margin)} too tight`,
      }),
      doesNotPass: ({ margin }, show) => ({ amount: `${show.bore(-margin)} too tight` }),
      dependsOnReach: ({ turn }, show) => ({
        title: 'The pump may not pass the pitless adapter',
        amount: `only up to ${show.bore(turn)}`,
      }),
    },
    limits: {},
  },
};
