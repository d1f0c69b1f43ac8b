import type { warmWaterRules } from '../../../model/rules/warmWater.ts';
import type { LongWords } from '../../ruleWords.ts';

export const long: LongWords<typeof warmWaterRules> = {
  'PR-63': {
    holds: 'The water is cool enough for the motor',
    held: {
      cool: ({ temperature }, show) => ({ amount: show.temperature(temperature) }),
    },
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
