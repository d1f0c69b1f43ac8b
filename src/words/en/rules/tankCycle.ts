import { horsepower, psi } from '../../../model/units.ts';
import type { tankCycleRules } from '../../../model/rules/tankCycle.ts';
import type { LongWords } from '../../ruleWords.ts';
import { PRESSURE_CAUTION } from '../cautions.ts';
import { motorSize } from '../motorSizes.ts';

export const long: LongWords<typeof tankCycleRules> = {
  'PR-56': {
    holds: 'The tank lets the pump run long enough',
    held: {
      runsLong: ({ run }, show) => ({ amount: `${show.time(run)} a start` }),
    },
    asks: ({ least, upTo, leastLarge, short }, show) =>
      `Each start lets the pump run ${show.time(least)} or longer, over ${motorSize(upTo, show)} ${show.time(leastLarge)}; a ${show.percent(short)} shortfall is let pass.`,
    source: (show) =>
      `a minute up to ${motorSize(horsepower(1), show)}, two above: common practice, no source; water by Boyle’s law`,
    caution: PRESSURE_CAUTION,
    why: 'Each start heats the motor and strikes the pipe; a small tank makes many of them.',
    messages: {
      runsLong: ({ run, least, water, flow }, show) =>
        `The tank takes ${show.volume(water)}: ${show.time(run)} of running at ${show.flow(flow)}; ${show.time(least)} is the usual least.`,
      shortCycles: ({ run, least, water, flow }, show) =>
        `The tank takes ${show.volume(water)}: ${show.time(run)} of running at ${show.flow(flow)}; ${show.time(least)} is the usual least.`,
    },
    fixes: {
      largerTank: ({ volume }, show) => `Use a tank of ${show.volume(volume)}`,
      airFirst: () => 'Set the tank’s air right first, then count the starts again.',
      tanksInParallel: () => 'Use several tanks side by side, or a pump of less flow.',
    },
  },
  'PR-57': {
    holds: 'The tank’s air fits the switch',
    held: {
      fits: ({ precharge }, show) => ({ amount: show.pressure(precharge) }),
      fitsSpeed: ({ precharge }, show) => ({ amount: show.pressure(precharge) }),
    },
    asks: ({ under, share }, show) =>
      `The tank’s air is set at cut-in or up to ${show.pressure(under)} below; with variable speed at about ${show.percent(share)} of the set pressure.`,
    source: (show) =>
      `${show.pressure(psi(2))} under cut-in, about 70 % of the set pressure with variable speed: common practice, no source`,
    why: 'Too much air leaves no water when the pump should start; too little wears the tank’s bladder.',
    caution: PRESSURE_CAUTION,
    messages: {
      fits: ({ precharge, cutIn }, show) =>
        `Air is set to ${show.pressure(precharge)} with the tank empty; the pump starts at ${show.pressure(cutIn)}.`,
      fitsSpeed: ({ precharge, usual }, show) =>
        `Air is set to ${show.pressure(precharge)} with the tank empty; about ${show.pressure(usual)} is usual with variable speed.`,
      besideSpeed: ({ precharge, usual, cutOut }, show) =>
        `Air is set to ${show.pressure(precharge)}; about ${show.pressure(usual)} suits a drive that holds ${show.pressure(cutOut)}.`,
      takesNothing: ({ precharge, cutOut }, show) =>
        `Air is set to ${show.pressure(precharge)}, and the pump stops at ${show.pressure(cutOut)}: no water enters the tank.`,
      overCutIn: ({ precharge, cutIn }, show) =>
        `Air is set to ${show.pressure(precharge)}; the tank is empty before the pump starts at ${show.pressure(cutIn)}.`,
      lowAir: ({ precharge, cutIn }, show) =>
        `Air is set to ${show.pressure(precharge)}, and the pump starts at ${show.pressure(cutIn)}: the tank gives less than it could.`,
    },
    fixes: { setPrecharge: ({ precharge }, show) => `Set the air to ${show.pressure(precharge)}, tank empty` },
  },
};
