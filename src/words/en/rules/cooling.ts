import type { coolingRules } from '../../../model/rules/cooling.ts';
import type { Metres, MetresPerSecond } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { gap, toSpare } from '../phrases.ts';

export const short: ShortWords<typeof coolingRules> = {
  'PR-05': {
    broken: 'The water comes from above the motor',
    holds: 'Water reaches the pump past its motor',
    says: {
      shroud: () => ({ amount: 'shroud fitted' }),
      fromBelow: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      fromAbove: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
    },
    limits: { aboveLowestInflow: () => 'motor above the lowest inflow' },
  },
  'PR-06': {
    broken: 'Water passes the motor slowly',
    holds: 'Water passes the motor fast enough',
    says: {
      fastEnough: ({ margin }, show) => ({ amount: `${show.slow(margin)} over the least` }),
      slow: ({ margin }, show) => ({ amount: `${show.slow(-margin)} short` }),
    },
    limits: {},
  },
};

export const long: LongWords<typeof coolingRules> = {
  'PR-05': {
    source: 'common practice, no source',
    why: 'A motor is cooled by the water that flows past it; water from above never gets there.',
    messages: {
      shroud: () => 'The shroud leads all the water past the motor.',
      fromBelow: motorAndInflow,
      fromAbove: motorAndInflow,
    },
    fixes: {
      shroudLeads: () => 'A shroud round the pump leads the water past the motor.',
      fitShroud: () => 'Fit a shroud: it leads the water past the motor.',
    },
  },
  'PR-06': {
    source: 'common practice, no source; the motor’s own instructions overrule it',
    why: 'Slow water carries little heat away, and a hot motor ages early.',
    messages: {
      fastEnough: velocity,
      slow: velocity,
    },
    fixes: {
      shroudSpeedsUp: () => 'A shroud makes the water pass faster; motors under 3 hp usually do without.',
    },
  },
};

function motorAndInflow({ motor, inflow }: { motor: Metres; inflow: Metres }, show: Show): string {
  return `The motor ends at ${show.depth(motor)}, the lowest inflow is at ${show.depth(inflow)}.`;
}

function velocity({ measured, least }: { measured: MetresPerSecond; least: MetresPerSecond }, show: Show): string {
  return `Water passes the motor at ${show.slow(measured)}; ${show.slow(least)} is the usual least.`;
}
