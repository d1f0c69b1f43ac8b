import type { inflowRules } from '../../../model/rules/inflow.ts';
import type { Metres, Ratio } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { gap, toSpare } from '../phrases.ts';

export const short: ShortWords<typeof inflowRules> = {
  'PR-04': {
    broken: 'Pumping uncovers where the water comes in',
    holds: 'Water covers the places where it comes in',
    says: {
      screenCovered: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      screenUncovered: ({ margin }, show) => ({
        title: 'Pumping uncovers the screen',
        amount: `${gap(margin, show)} too deep`,
      }),
      screenAlmostUncovered: ({ margin }, show) => ({
        title: 'Pumping almost uncovers the screen',
        amount: `${gap(margin, show)} too deep`,
      }),
      inflowsCovered: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      minorInflowUncovered: ({ margin }, show) => ({
        title: 'Pumping uncovers a minor inflow',
        amount: `${gap(margin, show)} uncovered`,
      }),
      inflowUncovered: ({ margin }, show) => ({ amount: `${gap(margin, show)} uncovered` }),
    },
    limits: {},
  },
};

export const long: LongWords<typeof inflowRules> = {
  'PR-04': {
    source:
      '35 Ill. Adm. Code 604.240(g)(4) for screens of public wells; margin and fractures: common practice, no source',
    why: 'Water that falls into the well carries air and sand and clogs the openings it came through.',
    messages: {
      screenCovered: aboveScreen,
      screenUncovered: ({ screen, measured }, show) =>
        `While pumping, water stands ${gap(measured, show)} below the top of the screen at ${show.depth(screen)}.`,
      screenAlmostUncovered: aboveScreen,
      inflowsCovered: ({ water, inflow }, show) =>
        `While pumping, water stands at ${show.depth(water)}; the first inflow is at ${show.depth(inflow)}.`,
      minorInflowUncovered: belowInflow,
      inflowUncovered: belowInflow,
    },
    fixes: {
      pumpLess: () => 'Pump less, or fit a flow-limiting valve: a deeper pump does not raise the water.',
    },
  },
};

function aboveScreen({ screen, measured }: { screen: Metres; measured: Metres }, show: Show): string {
  return `While pumping, water stands ${gap(measured, show)} above the top of the screen at ${show.depth(screen)}.`;
}

function belowInflow(
  { water, inflow, share }: { water: Metres; inflow: Metres; share: Ratio | null },
  show: Show,
): string {
  const part = share === null ? '' : ` (${show.percent(share)})`;
  return `While pumping, water falls to ${show.depth(water)}, below the inflow at ${show.depth(inflow)}${part}.`;
}
