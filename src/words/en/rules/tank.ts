import type { tankRules } from '../../../model/rules/tank.ts';
import type { Metres, Pascals } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { PRESSURE_CAUTION } from '../cautions.ts';
import { span } from '../phrases.ts';

export const long: LongWords<typeof tankRules> = {
  'PR-44': {
    holds: 'The tank holds what the pump can reach',
    held: {
      strongEnough: ({ margin }, show) => ({ amount: `${show.pressure(margin)} to spare` }),
      relieved: () => ({ amount: 'relief valve fitted' }),
    },
    asks: () => 'The tank is rated for all that the pump can reach, or a relief valve guards it.',
    source: 'common practice, no source; the rating is the one printed on the tank',
    why: 'If the switch sticks, only a relief valve keeps the pump from bursting the tank.',
    caution: PRESSURE_CAUTION,
    messages: {
      strongEnough: (numbers, show) => `${reachedAtTank(numbers, show)}.`,
      relieved: () => 'The relief valve must pass the whole flow of the pump; check its size.',
      noRelief: (numbers, show) => `${reachedAtTank(numbers, show)}, and no relief valve is planned.`,
      reliefUnknown: ({ reach, rating }, show) =>
        `The pump can reach ${show.pressure(reach)} at a tank rated ${show.pressure(rating)}; nobody said whether it is relieved.`,
    },
    fixes: { addReliefValve: () => 'Add a relief valve' },
  },
  'PR-46': {
    holds: 'The pump reaches the cut-out pressure',
    held: {
      reaches: ({ spare }, show) => ({ amount: `${show.pressure(spare)} to spare` }),
      reachesWhileHigh: ({ turn }, show) => ({ amount: `above ${show.depth(turn)}` }),
    },
    asks: ({ spare, soon }, show) =>
      `With the water lowest the pump reaches cut-out with ${show.pressure(spare)} to spare, or after ${show.time(soon)} of inflow where dry-run protection stops it.`,
    source: 'common practice, no source',
    why: 'A pump that cannot reach the switch’s cut-out runs on and on until it fails.',
    messages: {
      reaches: reachedForSwitch,
      reachesWhileHigh: ({ cutOut, turn, level }, show) =>
        `It reaches ${show.pressure(cutOut)} while the water stands above ${show.depth(turn)}; at ${show.depth(level)} dry-run protection stops it.`,
      barelyReaches: ({ reach, cutOut, level }, show) =>
        `With the water at ${show.depth(level)} the pump reaches ${show.pressure(reach)}, barely over the cut-out of ${show.pressure(cutOut)}.`,
      reachesLate: ({ reach, cutOut, level }, show) =>
        `Drawn down to ${show.depth(level)} it reaches ${reached(reach, show)}; ${show.pressure(cutOut)} only as the water comes back.`,
      opensLate: ({ reach, cutOut, turn, level }, show) =>
        `Drawn down to ${show.depth(level)} it reaches ${reached(reach, show)}; ${show.pressure(cutOut)} only once the water is above ${show.depth(turn)}.`,
      neverReaches: reachedForSwitch,
      mayNeverReach: ({ reach, cutOut, level }, show) =>
        `From ${show.depth(level)} a weak pump of that rating reaches ${reached(reach, show)}, a strong one the ${show.pressure(cutOut)}.`,
      hangsBelowItsLift: ({ lifts, weak, intake }, show) =>
        `It lifts from at most ${span(weak, lifts, show.depth)}, hangs at ${show.depth(intake)}: drawn down, it gives nothing.`,
      probeBelowItsLift: ({ lifts, weak, intake, probe }, show) =>
        `It lifts from at most ${span(weak, lifts, show.depth)}, hangs at ${show.depth(intake)}; its probe at ${show.depth(probe)} stops nothing.`,
      dependsOnLevel: ({ turn, cutOut, spare }, show) =>
        `The pump reaches ${show.pressure(cutOut)} with ${show.pressure(spare)} to spare only while the water stands above ${show.depth(turn)}.`,
    },
    fixes: {
      strongerPumpOrLowerCutOut: () => 'Choose a stronger pump, or a lower cut-out pressure with its cut-in.',
      setSwitch: ({ cutIn, cutOut, air }, show) =>
        `Set the switch to ${show.pressure(cutIn)} / ${show.pressure(cutOut)}, the tank’s air to ${show.pressure(air)}`,
      strongerPump: () => 'Choose a stronger pump, or a lower cut-out pressure with its cut-in.',
    },
  },
};

function reachedAtTank({ reach, rating }: { reach: Pascals; rating: Pascals }, show: Show): string {
  return `At no flow the pump reaches ${reached(reach, show)} at a tank rated ${show.pressure(rating)}`;
}

function reachedForSwitch(
  { reach, cutOut, level }: { reach: Pascals; cutOut: Pascals; level: Metres },
  show: Show,
): string {
  return `With the water at ${show.depth(level)} the pump reaches ${reached(reach, show)} at the tank; cut-out is ${show.pressure(cutOut)}.`;
}

/** A pump too weak to lift water to the tank reaches nothing there. */
function reached(pressure: Pascals, show: Show): string {
  return pressure > 0 ? show.pressure(pressure) : 'no pressure';
}
