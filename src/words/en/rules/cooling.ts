import type { coolingRules } from '../../../model/rules/cooling.ts';
import type { Metres, MetresPerSecond, Watts } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { motorSize } from '../motorSizes.ts';
import { toSpare } from '../phrases.ts';

export const long: LongWords<typeof coolingRules> = {
  'PR-05': {
    holds: 'Water reaches the pump past its motor',
    held: {
      shroud: () => ({ amount: 'flow sleeve fitted' }),
      fromBelow: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      allFromBelow: () => ({ amount: 'all from below' }),
      smallMotor,
      smallMotorAnywhere: smallMotor,
    },
    asks: ({ from }, show) =>
      `From ${motorSize(from, show)} up, the water comes to the pump from below its motor, or through a flow sleeve.`,
    source: 'common practice, no source; the motor’s own instructions overrule it',
    why: 'A motor is cooled by the water that flows past it; water from above never gets there.',
    messages: {
      shroud: () => 'The flow sleeve leads all the water past the motor.',
      fromBelow: motorAndInflow,
      allFromBelow: ({ motor, first }, show) =>
        `The motor ends at ${show.depth(motor)}, and all water enters below ${show.depth(first)}.`,
      smallMotor: ({ inflow, under }, show) =>
        `The lowest inflow is above it, at ${show.depth(inflow)}; motors under ${motorSize(under, show)} usually do without a flow sleeve.`,
      smallMotorAnywhere: ({ under }, show) =>
        `Wherever the water comes in: motors under ${motorSize(under, show)} usually do without a flow sleeve.`,
      fromAbove: motorAndInflow,
    },
    fixes: { fitShroud: () => 'Fit a flow sleeve: it leads the water past the motor.' },
  },
  'PR-06': {
    holds: 'Water passes the motor fast enough',
    held: {
      fastEnough: ({ margin }, show) => ({ amount: `${show.slow(margin)} over the least` }),
      slowButSmall: slowIsEnough,
      smallMotorAnyway: slowIsEnough,
    },
    asks: ({ from, least, large, leastLarge }, show) =>
      `From ${motorSize(from, show)} up, water passes the motor at ${show.slow(least)} or faster, at ${show.slow(leastLarge)} where it is over ${show.bore(large)} wide.`,
    source: 'common practice, no source; the motor’s own instructions overrule it',
    why: 'Slow water carries little heat away, and a hot motor ages early.',
    messages: {
      fastEnough: velocity,
      slowButSmall: ({ measured, under }, show) =>
        `Water passes the motor at ${show.slow(measured)}; motors under ${motorSize(under, show)} usually do without a flow sleeve.`,
      smallMotorAnyway: ({ under }, show) =>
        `However slowly the water passes: motors under ${motorSize(under, show)} usually do without a flow sleeve.`,
      slow: velocity,
    },
    fixes: { shroudSpeedsUp: () => 'A flow sleeve round the pump makes the water pass faster.' },
  },
};

function smallMotor({ under }: { under: Watts }, show: Show) {
  return { title: 'A small motor usually needs no flow sleeve', amount: `under ${motorSize(under, show)}` };
}

function slowIsEnough({ under }: { under: Watts }, show: Show) {
  return { title: 'Slow water usually cools a small motor', amount: `under ${motorSize(under, show)}` };
}

function motorAndInflow({ motor, inflow }: { motor: Metres; inflow: Metres }, show: Show): string {
  return `The motor ends at ${show.depth(motor)}, the lowest inflow is at ${show.depth(inflow)}.`;
}

function velocity({ measured, least }: { measured: MetresPerSecond; least: MetresPerSecond }, show: Show): string {
  const [flows, asked] = [measured, least].map(show.slow);
  // Two figures that read the same tell nothing apart.
  if (flows === asked && measured < least)
    return `Water passes the motor just slower than the usual least of ${asked}.`;
  return `Water passes the motor at ${flows}; ${asked} is the usual least.`;
}
