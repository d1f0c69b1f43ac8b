import type { yieldRules } from '../../../model/rules/yield.ts';
import type { CubicMetresPerSecond } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { gap } from '../phrases.ts';

export const short: ShortWords<typeof yieldRules> = {
  'PR-07': {
    broken: 'The pump takes more than the well gives',
    holds: 'The well gives what the pump takes',
    says: {
      givesEnough: ({ margin }, show) => ({ amount: `${show.flow(margin)} to spare` }),
      takesTooMuch: ({ margin }, show) => ({ amount: `${show.flow(-margin)} too much` }),
    },
    limits: {},
  },
  'PR-08': {
    broken: 'Nothing stops the pump at low water',
    holds: 'The pump is guarded against low water',
    says: {
      fitted: () => ({ amount: 'cut-off fitted' }),
      enoughWater: ({ submergence }, show) => ({ amount: `${gap(submergence, show)} of water` }),
      probeTooLow: ({ margin }, show) => ({
        title: 'The low-level cut-off hangs too low',
        amount: `${gap(margin, show)} too low`,
      }),
      littleWater: () => ({ amount: 'no cut-off' }),
      fallsBelowIntake: () => ({ amount: 'no cut-off' }),
      takesTooMuch: () => ({ amount: 'no cut-off' }),
    },
    limits: {},
  },
  'PR-53': {
    broken: 'The pumping level is unknown',
    holds: 'The drawdown comes from a test',
    says: {
      fromAquifer: () => ({ amount: 'from the aquifer' }),
      measured: () => ({ amount: 'measured' }),
      noDrawdown: () => ({ amount: 'not measured' }),
      noDrawdownButYield: () => ({ amount: 'not measured' }),
    },
    limits: {},
  },
};

export const long: LongWords<typeof yieldRules> = {
  'PR-07': {
    source: '15A N.C. Admin. Code 02C .0109(a); W. Va. Code of State Rules 64-46-7; Wis. Adm. Code NR 812.32',
    why: 'A pump that takes more than flows in empties the well and then draws air.',
    messages: { givesEnough: takesAndGives, takesTooMuch: takesAndGives },
    fixes: {
      checkTheGuard: () => 'The cut-off or the flow-limiting valve guards the pump; check its setting.',
      addCutOff: () => 'Add a low-level cut-off',
      addFlowLimiter: ({ to }) => `Add a ${to} flow-limiting valve`,
    },
  },
  'PR-08': {
    source: 'common practice, no source',
    why: 'A pump that runs dry can be ruined in minutes.',
    messages: {
      fitted: () => 'A low-level cut-off stops the pump before the intake runs dry.',
      enoughWater: ({ submergence, advisedBelow }, show) =>
        `Pumping leaves ${gap(submergence, show)} over the intake; below ${show.depth(advisedBelow)} a cut-off is advised.`,
      probeTooLow: ({ probe, usual }, show) =>
        `The cut-off acts ${gap(probe, show)} ${probe < 0 ? 'below' : 'above'} the intake; ${show.depth(usual)} above it is usual.`,
      littleWater: ({ submergence }, show) =>
        `Only ${gap(submergence, show)} of water covers the intake, and no low-level cut-off is planned.`,
      fallsBelowIntake: () => 'The water falls below the intake, and no low-level cut-off is planned.',
      takesTooMuch: ({ flow, gives }, show) =>
        `The pump takes ${show.flow(flow)} of ${show.flow(gives)}, and no low-level cut-off is planned.`,
    },
    fixes: {
      addCutOff: () => 'Add a low-level cut-off',
      setProbe: ({ to }) => `Set it to ${to}`,
      hangProbeHigher: () => 'Hang the probe higher than the intake.',
    },
  },
  'PR-53': {
    source: 'common practice, no source',
    why: 'Blowing the well with air tells how much it gives, not how far the water falls.',
    messages: {
      fromAquifer: () => 'The drawdown is computed from what was told of the aquifer.',
      measured: () => 'The driller measured how far the water falls while pumping.',
      noDrawdown: () => 'The report gives a yield and no drawdown: the water’s depth while pumping is unknown.',
      noDrawdownButYield: ({ gives }, show) =>
        `The report gives a yield of ${show.flow(gives)} and no drawdown: the water’s depth while pumping is unknown.`,
    },
    fixes: {
      runTest: () => 'Run a pumping test, and write flow, level and hours down.',
      addCutOff: () => 'Add a low-level cut-off',
      runTestAndGuard: () => 'Run a pumping test; until then a low-level cut-off is advised.',
    },
  },
};

function takesAndGives(
  { flow, gives }: { flow: CubicMetresPerSecond; gives: CubicMetresPerSecond },
  show: Show,
): string {
  return `At cut-in the pump takes ${show.flow(flow)}; the proven yield is ${show.flow(gives)}.`;
}
