import type { adapterCoverRules } from '../../../model/rules/adapterCover.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap, wanting } from '../phrases.ts';

export const short: ShortWords<typeof adapterCoverRules> = {
  'PR-64': {
    broken: 'Little ground covers the pitless adapter',
    says: {
      veryDeep: ({ measured }, show) => ({ title: 'Is the adapter really that deep?', amount: show.depth(measured) }),
      shallow: ({ margin }, show) => ({ amount: wanting(gap(margin, show)) }),
    },
    limits: {
      cover: ({ least }, show) => `${gap(least, show)} of cover`,
      dig: () => 'as deep as one digs',
    },
  },
};
