import type { inflowRules } from '../../../model/rules/inflow.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap, level } from '../phrases.ts';

export const short: ShortWords<typeof inflowRules> = {
  'PR-04': {
    broken: 'Pumping uncovers where the water comes in',
    says: {
      screenUncovered: ({ margin }, show) => ({
        title: 'Pumping uncovers the screen',
        amount: `${gap(margin, show)} too deep`,
      }),
      screenAlmostUncovered: ({ margin }, show) => ({
        title: 'Pumping almost uncovers the screen',
        amount: `${gap(margin, show)} too deep`,
      }),
      screenAtRest: ({ margin }, show) => ({
        title: 'The water at rest hardly covers the screen',
        amount: `${gap(margin, show)} too deep`,
      }),
      screenDepends: ({ turn }, show) => ({
        title: 'Whether water covers the screen',
        amount: `only above ${level(turn, show)}`,
      }),
      inflowAtRest: ({ margin }, show) => ({
        title: 'An inflow is above the water at rest',
        amount: `${gap(margin, show)} uncovered`,
      }),
      inflowDepends: ({ turn }, show) => ({
        title: 'Whether water covers where it comes in',
        amount: `only above ${level(turn, show)}`,
      }),
      minorInflowUncovered: ({ margin }, show) => ({
        title: 'Pumping uncovers a minor inflow',
        amount: `${gap(margin, show)} uncovered`,
      }),
      inflowUncovered: ({ margin }, show) => ({ amount: `${gap(margin, show)} uncovered` }),
    },
    limits: {},
  },
};
