import type { shortageRules } from '../../../model/rules/shortage.ts';
import type { CubicMetres, CubicMetresPerSecond } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { capital, tested } from '../phrases.ts';
import { type Gives, isRough, flow, flowsIn, ofADay } from '../brief/shortage.ts';

export const long: LongWords<typeof shortageRules> = {
  'PR-55': {
    holds: 'The well gives what the house wants',
    held: {
      givesEnough: (numbers, show) => ({
        amount: isRough(numbers)
          ? flowsIn(numbers, show)
          : `${show.flow(numbers.gives)} for ${show.flow(numbers.wanted)}`,
      }),
    },
    asks: () =>
      'The well gives the flow that the house wants, or its store or an open tank carries the peak, with dry-run protection.',
    source: 'balance of volumes; length of the peak and a day’s need: Missouri Extension G1801',
    why: 'A house that draws more than flows in lives on what the well has stored, until it is gone.',
    messages: {
      // What it gave for the hours of a test is no promise of the same all day.
      givesEnough: ({ wanted, ...given }, show) =>
        `By the record the well gives ${flow(given, show)}; ${show.flow(wanted)} is wanted.`,
      carried: ({ stored, peak, surely, peakSure, uncounted, ...given }, show) => {
        const text = `${show.volume(stored)} ${surely || peakSure ? 'stored in' : 'in'} ${stores(uncounted)} carry ${show.time(peak)}`;
        return surely || peakSure
          ? `${ofWhat(given, show)}; ${text}.${surely ? '' : dayUnsure(given, show)}${notCounted(uncounted)}`
          : `${ofWhat(given, show)}; only with the most do ${text}.${notCounted(uncounted)}`;
      },
      tankCarries: ({ tank, peak, daySure, ...given }, show) =>
        `${ofWhat(given, show)}; the ${show.volume(tank)} of the open tank carry ${show.time(peak)}.${daySure ? '' : dayUnsure(given, show)}`,
      carriedUnguarded: ({ stored, uncounted, ...given }, show) =>
        `${ofWhat(given, show)}; ${stores(uncounted)} ${uncounted ? 'holds' : 'hold'} ${show.volume(stored)}, then nothing stops the pump.${notCounted(uncounted)}`,
      peakNotCarried: ({ peak, need, sureADay, uncounted, ...given }, show) =>
        `${ofWhat(given, show)}, ${sureADay < need ? 'not enough' : 'enough for a day, not'} for a peak of ${show.time(peak)}.${notCounted(uncounted)}`,
      peakUnsure: ({ peak, uncounted, ...given }, show) =>
        `${ofWhat(given, show)}; whether its store carries ${show.time(peak)} is not known.${notCounted(uncounted)}`,
      dayNotMet: ({ need, ...given }, show) =>
        `It gives ${flow(given, show)}, ${ofADay(given, show)} a day; ${show.volume(need)} are needed.`,
      dependsOnYield: ({ wanted, gave, sure, how }, show) =>
        `${capital(tested(how))} the well gave ${show.flow(gave)}, ${show.flow(sure)} sure; ${show.flow(wanted)} is wanted.`,
    },
    fixes: {
      fillsAgain: () => 'Leave time between long draws; the well fills again by and by.',
      lessADay: () => 'Use less water a day: no tank makes up for what it lacks.',
      sayTank: () => 'Say the size of the open tank.',
      largerOpenTank: ({ volume }, show) => `Take an open tank of ${show.volume(volume)}, which carries the peak`,
      storage: () => 'Store water in the house for the peaks, or ask for less flow.',
      storageAndCutOff: () => 'Store water in the house for the peaks, and have dry-run protection.',
    },
  },
};

function ofWhat({ wanted, ...given }: Gives & { readonly wanted: CubicMetresPerSecond }, show: Show): string {
  return `It gives ${flow(given, show)} of ${show.flow(wanted)}`;
}

const stores = (uncounted: boolean): string => (uncounted ? 'the well' : 'well and tank');

/** The label of the field that would tell it. */
function notCounted(uncounted: boolean): string {
  return uncounted ? ' The open tank is not counted: “Size of the tank” is not filled in.' : '';
}

/** The peak is carried, whatever flows in; whether the day is, nobody knows. */
function dayUnsure({ need, sureADay }: { readonly need: CubicMetres; readonly sureADay: CubicMetres }, show: Show) {
  return ` A day needs ${show.volume(need)}, and only ${show.volume(sureADay)} of that are sure.`;
}
