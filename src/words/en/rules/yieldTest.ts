import type { yieldTestRules } from '../../../model/rules/yieldTest.ts';
import type { Seconds } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';

export const long: LongWords<typeof yieldTestRules> = {
  'PR-42': {
    holds: 'The well was tested for some hours',
    held: {
      longEnough: ({ measured }, show) => ({ amount: show.time(measured) }),
    },
    asks: ({ least }, show) => `The well was pumped for ${show.time(least)} or longer before its level was read.`,
    source:
      '10 N.Y. Codes R. & Regs. App. 5-B, 5-B.4 and Ariz. Rev. Stat. 45-600: 4 h; Md. Code Regs. 26.04.04.26: 6 h',
    why: 'Water goes on falling for hours; a short test makes a well look better than it is.',
    messages: { longEnough: readAfter, short: readAfter },
    fixes: { pumpSteadily: () => 'Have it pumped at a steady flow for four hours, and write level and time down.' },
  },
};

function readAfter({ measured, least }: { measured: Seconds; least: Seconds }, show: Show): string {
  return `The level was read after ${show.time(measured)} of pumping; ${show.time(least)} is the usual least.`;
}
