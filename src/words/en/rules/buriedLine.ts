import { either, psi } from '../../../model/units.ts';
import type { buriedLineRules } from '../../../model/rules/buriedLine.ts';
import type { LongWords } from '../../ruleWords.ts';
import { PRESSURE_CAUTION } from '../cautions.ts';

export const long: LongWords<typeof buriedLineRules> = {
  'PR-61': {
    holds: 'The line to the house is strong enough',
    held: {
      metal: () => ({ amount: 'metal pipe' }),
      usualRating: ({ rating }, show) => ({
        title: 'The line to the house has the usual rating',
        amount: show.pressure(rating),
      }),
      bearsPump: ({ rating, reach }, show) => ({ amount: `${show.pressure(rating - reach)} to spare` }),
      relieved: () => ({ amount: 'with its relief valve' }),
    },
    asks: ({ least, times }, show) =>
      `A plastic line is rated ${show.pressure(least[show.units])} and ${times} times cut-out, and bears the pump’s utmost unless a relief valve guards it.`,
    source: (show) =>
      `${show.pressure(either(show.units, psi(160), 1e6))}, 1.5 times cut-out: common practice, no source; the local code decides`,
    why: 'A line that bursts underground washes out the trench, and nobody sees it.',
    caution: PRESSURE_CAUTION,
    messages: {
      metal: ({ material, bears }, show) =>
        `New ${material} pipe bears over ${show.pressure(bears)}, more than this pump can put on it.`,
      usualRating: ({ rating, least }, show) =>
        `The line is rated ${show.pressure(rating)}; ${show.pressure(least)} is the usual least.`,
      bearsPump: ({ rating, reach }, show) =>
        `Every outlet shut, the pump puts at most ${show.pressure(reach)} on a line that bears ${show.pressure(rating)}.`,
      relieved: ({ rating, reach }, show) =>
        `Only the relief valve keeps ${show.pressure(reach)} from a line that bears ${show.pressure(rating)}; check its size.`,
      weak: ({ rating, least }, show) =>
        `The line is rated ${show.pressure(rating)}; ${show.pressure(least)} is the usual least.`,
      weakForSwitch: ({ rating, asked, cutOut }, show) =>
        `The line bears ${show.pressure(rating)} in this water; 1.5 times the cut-out of ${show.pressure(cutOut)} is ${show.pressure(asked)}.`,
      bursts: ({ rating, reach }, show) =>
        `Every outlet shut, the pump puts up to ${show.pressure(reach)} on a line that bears ${show.pressure(rating)}; nothing relieves it.`,
    },
    fixes: {
      strongerPipe: ({ rating }, show) => `Use line pipe rated ${show.pressure(rating)}`,
      strongerSchedule: ({ wallClass }) => `Use ${wallClass} line pipe`,
      higherRating: () =>
        'Take line pipe with a higher rating, and have a relief valve that passes the pump’s whole flow.',
    },
  },
};
