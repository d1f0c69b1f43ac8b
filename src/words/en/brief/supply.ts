import type { supplyRules } from '../../../model/rules/supply.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof supplyRules> = {
  'PR-59': {
    broken: 'The motor does not fit its supply',
    says: {
      threePhaseOnTwo: ({ wires }) => ({ title: 'A three-phase motor on two wires', amount: `${wires} of 3 wires` }),
      tooLargeForTwo: ({ power }, show) => ({ title: 'No 2-wire motor is that strong', amount: show.power(power) }),
      tooLargeFor115: ({ power, voltage }, show) => ({
        title: 'The motor is large for its voltage',
        amount: `${show.power(power)} on ${show.voltage(voltage)}`,
      }),
    },
    limits: {},
  },
};
