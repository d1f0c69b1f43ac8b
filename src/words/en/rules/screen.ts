import { feet } from '../../../model/units.ts';
import type { screenRules } from '../../../model/rules/screen.ts';
import type { CubicMetresPerSecond, MetresPerSecond } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';

export const long: LongWords<typeof screenRules> = {
  'PR-37': {
    holds: 'Water enters the screen slowly',
    held: {
      slow: ({ margin, most }) => ({ amount: `${Math.round((margin / most) * 100)} % to spare` }),
    },
    asks: ({ most }, show) => `Water enters a screen at ${show.slow(most)} or slower.`,
    source: (show) =>
      `US Army TM 5-813-1, ch. 5; Mont. Admin. R. 36.21.652; 35 Ill. Adm. Code 604.240: ${show.slow(feet(0.1))}`,
    why: 'Fast water drags sand through the slots and clogs them.',
    messages: { slow: enters, fast: enters },
    fixes: { pumpLess: () => 'Pump less; the screen itself cannot be changed.' },
  },
};

function enters(
  { flow, measured, most }: { flow: CubicMetresPerSecond; measured: MetresPerSecond; most: MetresPerSecond },
  show: Show,
): string {
  return `With half of the slots blocked ${show.flow(flow)} enters at ${show.slow(measured)}; ${show.slow(most)} is the most.`;
}
