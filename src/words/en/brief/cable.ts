import type { cableRules } from '../../../model/rules/cable.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap } from '../phrases.ts';

export const short: ShortWords<typeof cableRules> = {
  'PR-12': {
    broken: 'The torque arrestor is at the wrong height',
    says: {
      none: () => ({ title: 'No torque arrestor is planned', amount: 'none fitted' }),
      tooHigh: ({ margin }, show) => ({ amount: `${gap(margin, show)} too high` }),
      tooLow: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
      justTooLow: () => ({ amount: 'too low' }),
    },
    limits: {},
  },
  'PR-13': {
    broken: 'The cable ties are too far apart',
    says: {
      tooFar: ({ margin }, show) => ({ amount: `${gap(margin, show)} too far` }),
      tooClose: ({ margin }, show) => ({
        title: 'The cable ties are closer than needed',
        amount: `${gap(margin, show)} too close`,
      }),
    },
    limits: {},
  },
  'PR-14': {
    broken: 'The cable guards are too far apart',
    says: {
      none: () => ({ title: 'No cable guards are planned', amount: 'none planned' }),
      tooFar: ({ margin }, show) => ({ amount: `${gap(margin, show)} too far` }),
    },
    limits: {},
  },
  'PR-15': {
    broken: 'A splice is in the wrong place',
    says: {
      inArms: () => ({ title: 'The splice sits in the arrestor’s arms', amount: 'inside the arms' }),
      several: ({ count }) => ({ title: 'There is more than one splice', amount: `${count} splices` }),
      tooHigh: ({ margin }, show) => ({ amount: `${gap(margin, show)} too high` }),
      tooLow: () => ({ amount: 'too low' }),
    },
    limits: {},
  },
};
