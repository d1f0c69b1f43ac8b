import type { warmWaterRules } from '../../../model/rules/warmWater.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof warmWaterRules> = {
  'PR-63': {
    broken: 'The water is warm for the motor',
    holds: 'The water is cool enough for the motor',
    says: {
      cool: ({ temperature }, show) => ({ amount: show.temperature(temperature) }),
      warm: ({ temperature }, show) => ({ amount: show.temperature(temperature) }),
    },
    limits: {},
  },
};

export const long: LongWords<typeof warmWaterRules> = {
  'PR-63': {
    asks: ({ most }, show) => `The water is no warmer than ${show.temperature(most)}.`,
    source: (show) => `${show.temperature(30)}: common practice, no source; the motor’s own sheet overrules it`,
    why: 'The motor gives its heat to the water; warm water takes less of it.',
    messages: {
      cool: ({ temperature, most }, show) =>
        `The water has ${show.temperature(temperature)}; most motors are rated in up to ${show.temperature(most)}.`,
      warm: ({ temperature, most }, show) =>
        `The water has ${show.temperature(temperature)}; most motors are rated in up to ${show.temperature(most)}.`,
    },
    fixes: {
      motorForWarmth: () => 'Take a motor rated for water this warm, or a larger one loaded less, by its sheet.',
    },
  },
};
