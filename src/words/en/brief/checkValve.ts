import type { checkValveRules } from '../../../model/rules/checkValve.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap, level } from '../phrases.ts';

export const short: ShortWords<typeof checkValveRules> = {
  'PR-09': {
    broken: 'No check valve near the pump',
    says: {
      none: () => ({ title: 'No check valve holds the water up', amount: 'none fitted' }),
      lowestTooHigh: ({ margin }, show) => ({ amount: `${gap(margin, show)} too high` }),
      upperTooHigh: upperValve,
      upperTooHighAtRest: upperValve,
      dependsOnLevel: ({ turn }, show) => ({
        title: 'Whether the upper check valve is low enough',
        amount: `only above ${level(turn, show)}`,
      }),
      longStretch: ({ margin }, show) => ({
        title: 'A long pipe hangs on one check valve',
        amount: `${gap(margin, show)} over`,
      }),
    },
    limits: { upperNearWater: () => 'upper check valve near the water' },
  },
  'PR-10': {
    broken: 'A check valve stands between well and tank',
    says: {
      oneInLine: () => ({ amount: 'one too many' }),
    },
    limits: {},
  },
  'PR-11': {
    broken: 'The check valve is upside down',
    says: {
      down: () => ({ amount: 'wrong way round' }),
    },
    limits: {},
  },
};

function upperValve({ margin }: { margin: Metres }, show: Show) {
  return { title: 'The upper check valve is too high', amount: `${gap(margin, show)} too high` };
}
