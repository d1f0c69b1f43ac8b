import type { tankCycleRules } from '../../../model/rules/tankCycle.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof tankCycleRules> = {
  'PR-56': {
    broken: 'The pump starts too often',
    says: {
      shortCycles: ({ run }, show) => ({ amount: `${show.time(run)} a start` }),
    },
    limits: {},
  },
  'PR-57': {
    broken: 'The tank’s air does not fit the switch',
    says: {
      besideSpeed: ({ precharge, high }, show) => ({
        title: 'The tank’s air does not fit the drive',
        amount: `${show.pressure(precharge)}, ${high ? 'high' : 'low'}`,
      }),
      takesNothing: ({ over }, show) => ({
        title: 'The tank takes no water',
        amount: `${show.pressure(over)} too high`,
      }),
      overCutIn: ({ over }, show) => ({
        title: 'The tank runs empty before the pump starts',
        amount: `${show.pressure(over)} too high`,
      }),
      lowAir: ({ under }, show) => ({
        title: 'The tank has little air',
        amount: `${show.pressure(under)} under cut-in`,
      }),
    },
    limits: {},
  },
};
