import type { recordRules } from '../../../model/rules/record.ts';
import type { LongWords } from '../../ruleWords.ts';

export const long: LongWords<typeof recordRules> = {
  'PR-62': {
    holds: 'The record agrees with itself',
    held: {
      agrees: () => ({ amount: 'no contradiction' }),
    },
    asks: () => 'What is told of levels, casing, screen, pump and depth can all be true at once.',
    source: 'what cannot be at once; it needs no publication',
    why: 'Where two depths cannot both be true, what is worked out from them is wrong too.',
    messages: {
      agrees: () => 'What is told of levels, casing, pump and depth can all be true at once.',
      dryAboveToday: ({ above, below }, show) =>
        `The dry-season level, ${show.depth(below)}, stands above today’s, ${show.depth(above)}.`,
      highBelowToday: ({ above, below }, show) =>
        `The highest level, ${show.depth(above)}, stands below today’s, ${show.depth(below)}.`,
      pumpingAboveStatic: ({ above, below }, show) =>
        `The pumping level, ${show.depth(below)}, stands above the static level, ${show.depth(above)}.`,
      casingBelowBottom: ({ above, below }, show) =>
        `The casing ends at ${show.depth(above)}, deeper than the well, ${show.depth(below)}.`,
      soundedInCasing: ({ above, below }, show) =>
        `The well was sounded to ${show.depth(below)}, above the casing’s end at ${show.depth(above)}: misread, or filled up.`,
      screenBelowBottom: ({ above, below }, show) =>
        `The screen ends at ${show.depth(above)}, deeper than the well, ${show.depth(below)}.`,
      pumpBelowBottom: ({ above, below }, show) =>
        `The pump is set at ${show.depth(above)}, deeper than the well, ${show.depth(below)}.`,
    },
    fixes: { askAgain: () => 'Ask the driller or measure again, and mind from where each depth is counted.' },
  },
};
