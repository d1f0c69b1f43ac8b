import { wanting } from '../phrases.ts';
import type { electricalRules } from '../../../model/rules/electrical.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof electricalRules> = {
  'PR-49': {
    broken: 'The wire is thin for its length',
    says: {
      doesNotStart: ({ share }, show) => ({
        title: 'The motor does not start on this wire',
        amount: `${show.percent(share)} of the voltage arrives`,
      }),
      tooThin: ({ margin, most }, show) => ({
        amount: `${show.percent(most - margin)} drop, limit ${show.percent(most)}`,
      }),
    },
    limits: {},
  },
  'PR-50': {
    broken: 'The wire is too thin for the current',
    says: {
      hotTerminalsOnly: ({ margin }, show) => ({
        title: 'The wire fits hot terminals only',
        amount: wanting(show.current(-margin)),
      }),
      tooThin: ({ margin }, show) => ({ amount: wanting(show.current(-margin)) }),
    },
    limits: {},
  },
};
