import type { pumpDepthRules } from '../../../model/rules/pumpDepth.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap } from '../phrases.ts';

export const short: ShortWords<typeof pumpDepthRules> = {
  'PR-01': {
    broken: 'The pump is too near the bottom',
    says: {
      belowBottom: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
      tooLow: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
    },
    limits: { offTheBottom: ({ least }, show) => `${show.depth(least)} off the bottom` },
  },
  'PR-02': {
    broken: 'Too little water covers the intake',
    says: {
      runsDry: () => ({ title: 'The pump runs dry', amount: 'no water over it' }),
      mayRunDry: () => ({ title: 'A strong pump of that rating runs dry', amount: 'no water over it' }),
      barelyCovered: ({ margin }, show) => ({ amount: `${gap(margin, show)} too little` }),
      aboveWater: ({ above }, show) => ({
        title: 'The pump hangs above the water',
        amount: `${gap(above, show)} too high`,
      }),
      neverStarts: ({ probe, rest }, show) => ({
        title: 'Dry-run protection never lets the pump start',
        amount: `probe ${gap(rest - probe, show)} too high`,
      }),
      wellDry: () => ({ title: 'The well is dry', amount: 'no water' }),
      dependsOnLevel: ({ turn }, show) => ({
        title: 'Whether the intake stays under water',
        amount: `only above ${show.depth(turn)}`,
      }),
      dependsOnCutOff: ({ turn }, show) => ({
        title: 'Whether dry-run protection acts in time',
        amount: `only above ${show.depth(turn)}`,
      }),
    },
    limits: {
      underCutOff: ({ least }, show) => `${show.depth(least)} under the probe`,
      underDryLevel: ({ least }, show) => `${show.depth(least)} under the dry level`,
      underLevel: ({ least }, show) => `${show.depth(least)} under the lowest pumping level`,
    },
  },
  'PR-03': {
    broken: 'The pump hangs in the screen',
    says: {
      inScreen: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
    },
    limits: { aboveScreen: () => 'motor above the screen' },
  },
};
