import type { gasAndSandRules } from '../../../model/rules/gasAndSand.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap } from '../phrases.ts';

export const short: ShortWords<typeof gasAndSandRules> = {
  'PR-60': {
    broken: 'The water carries gas or sand',
    says: {
      gasUnderRoof: ({ inPit }) => ({
        title: 'Gas can gather at the well',
        amount: inPit ? 'gas in a pit' : 'gas in the well house',
      }),
      gas: () => ({ title: 'The water carries gas', amount: 'vent it' }),
      sandInScreen: () => ({ title: 'The pump draws sand', amount: 'in the screen' }),
      sandNearBottom: ({ measured }, show) => ({
        title: 'The pump draws sand',
        amount: measured > 0 ? `${gap(measured, show)} off the bottom` : 'on the bottom',
      }),
      sand: () => ({ title: 'The water carries sand', amount: 'reported' }),
    },
    limits: {},
  },
};
