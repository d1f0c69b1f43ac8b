import type { SourceOfDirt, wellheadRules } from '../../../model/rules/wellhead.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap } from '../phrases.ts';

export const short: ShortWords<typeof wellheadRules> = {
  'PR-23': {
    broken: 'The casing stands too low',
    says: {
      tooLow: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
    },
    limits: {},
  },
  'PR-24': {
    broken: 'A flood reaches the casing top',
    says: {
      closeToFlood: ({ margin }, show) => ({
        title: 'The casing top is close to the flood',
        amount: `${gap(margin, show)} too low`,
      }),
      underFlood: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
    },
    limits: {},
  },
  'PR-26': {
    broken: 'The well top is in a pit',
    says: {
      inPit: () => ({ amount: 'in a pit' }),
    },
    limits: {},
  },
  'PR-40': {
    broken: 'The well is too near a source of dirt',
    says: {
      tooNear: ({ source, margin }, show) => ({
        title: `The ${SOURCES[source]} is too near the well`,
        amount: `${gap(margin, show)} too near`,
      }),
    },
    limits: {},
  },
  'PR-43': {
    broken: 'The well top freezes',
    says: {
      heated: ({ frost }, show) => ({ title: 'The well top depends on shelter', amount: ofFrost(frost, show) }),
      housed: ({ frost }, show) => ({ title: 'The well top depends on shelter', amount: ofFrost(frost, show) }),
      bare: ({ frost }, show) => ({ amount: ofFrost(frost, show) }),
      dependsOnFrost: () => ({ title: 'The well top may freeze', amount: 'with any frost' }),
    },
    limits: {},
  },
};

export const SOURCES: Readonly<Record<SourceOfDirt, string>> = {
  septicTank: 'septic tank',
  drainField: 'drain field',
  building: 'building',
};

function ofFrost(frost: Metres, show: Show): string {
  return `${gap(frost, show)} of frost`;
}
