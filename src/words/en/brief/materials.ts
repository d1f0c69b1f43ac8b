import type { materialRules } from '../../../model/rules/materials.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof materialRules> = {
  'PR-52': {
    broken: 'Dissimilar metals touch under water',
    says: {
      barbsDoNotFit: ({ play }, show) => ({
        title: 'The fittings do not match the pipe',
        amount: `${show.bore(Math.abs(play))} ${play > 0 ? 'loose' : 'tight'}`,
      }),
      galvanizedOnStainless: ({ aggressive }) => ({
        title: 'Galvanized fittings meet stainless steel',
        amount: where(aggressive),
      }),
      stainlessOnGalvanized: ({ aggressive }) => ({
        title: 'Stainless fittings meet galvanized pipe',
        amount: where(aggressive),
      }),
      brassOnGalvanized: ({ aggressive }) => ({
        title: 'Brass fittings meet galvanized pipe',
        amount: where(aggressive),
      }),
      brassOnStainless: ({ aggressive }) => ({
        title: 'Brass meets the stainless pump in sour or salty water',
        amount: where(aggressive),
      }),
      motorInSteelCasing: ({ aggressive }) => ({
        title: 'A stainless motor in a steel casing, in sour or salty water',
        amount: where(aggressive),
      }),
    },
    limits: {},
  },
  'PR-65': {
    broken: 'Two thread systems meet',
    says: {
      twoSystems: ({ ends }) => ({
        title: `The thread of ${ENDS[ends.length > 1 ? 'both' : (ends[0] ?? 'pump')]} is not that of the pipe`,
        amount: 'two systems',
      }),
    },
    limits: {},
  },
};

const ENDS = { pump: 'the pump’s outlet', adapter: 'the adapter', both: 'adapter and pump' } as const;

function where(aggressive: boolean): string {
  return aggressive ? 'in this water' : 'dissimilar metals';
}
