import type { tankRules } from '../../../model/rules/tank.ts';
import type { Pascals } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { PRESSURE_CAUTION } from '../cautions.ts';

export const short: ShortWords<typeof tankRules> = {
  'PR-44': {
    broken: 'The pump can burst the tank',
    holds: 'The tank holds what the pump can reach',
    says: {
      strongEnough: ({ margin }, show) => ({ amount: `${show.pressure(margin)} to spare` }),
      relieved: () => ({ amount: 'relief valve fitted' }),
      noRelief: ({ margin }, show) => ({ amount: `${show.pressure(-margin)} over` }),
    },
    limits: {},
  },
  'PR-46': {
    broken: 'The pump never reaches cut-out',
    holds: 'The pump reaches the cut-out pressure',
    says: {
      reaches: ({ spare }, show) => ({ amount: `${show.pressure(spare)} to spare` }),
      barelyReaches: ({ spare }, show) => ({
        title: 'The pump barely reaches cut-out',
        amount: `only ${show.pressure(spare)} to spare`,
      }),
      neverReaches: ({ spare }, show) => ({ amount: `${show.pressure(-spare)} short` }),
    },
    limits: {},
  },
};

export const long: LongWords<typeof tankRules> = {
  'PR-44': {
    source: 'common practice, no source; the rating is the one printed on the tank',
    why: 'If the switch sticks, only a relief valve keeps the pump from bursting the tank.',
    caution: PRESSURE_CAUTION,
    messages: {
      strongEnough: (numbers, show) => `${reachedAtTank(numbers, show)}.`,
      relieved: () => 'The relief valve must pass the whole flow of the pump; check its size.',
      noRelief: (numbers, show) => `${reachedAtTank(numbers, show)}, and no relief valve is planned.`,
    },
    fixes: { addReliefValve: () => 'Add a relief valve' },
  },
  'PR-46': {
    source: 'common practice, no source',
    why: 'A pump that cannot reach the switch’s cut-out runs on and on until it fails.',
    messages: {
      reaches: reachedForSwitch,
      barelyReaches: ({ reach, cutOut }, show) =>
        `At no flow the pump reaches ${show.pressure(reach)} at the tank, barely over the cut-out of ${show.pressure(cutOut)}.`,
      neverReaches: reachedForSwitch,
    },
    fixes: {
      strongerPumpOrLowerCutOut: () => 'Choose a stronger pump, or a lower cut-out pressure with its cut-in.',
      setSwitch: ({ cutIn, cutOut }) => `Set the switch to ${cutIn} / ${cutOut}`,
    },
  },
};

function reachedAtTank({ reach, rating }: { reach: Pascals; rating: Pascals }, show: Show): string {
  return `At no flow the pump reaches ${reached(reach, show)} at a tank rated ${show.pressure(rating)}`;
}

function reachedForSwitch({ reach, cutOut }: { reach: Pascals; cutOut: Pascals }, show: Show): string {
  return `At no flow the pump reaches ${reached(reach, show)} at the tank; cut-out is ${show.pressure(cutOut)}.`;
}

/** A pump too weak to lift water to the tank reaches nothing there. */
function reached(pressure: Pascals, show: Show): string {
  return pressure > 0 ? show.pressure(pressure) : 'no pressure';
}
