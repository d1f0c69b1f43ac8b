import type { casingDepthRules } from '../../../model/rules/casingDepth.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { ShortWords } from '../../ruleWords.ts';
import { gap, level, wanting } from '../phrases.ts';

export const short: ShortWords<typeof casingDepthRules> = {
  'PR-35': {
    broken: 'Casing and seal are shallow',
    says: {
      shallow: ({ by, margin }, show) => ({
        title: by === 'grout' ? 'The seal round the casing is shallow' : 'The casing is shallow',
        amount: wanting(gap(margin, show)),
      }),
    },
    limits: {},
  },
  'PR-36': {
    broken: 'The casing ends too high',
    says: {
      barelySeated: ({ margin }, show) => ({
        title: 'The casing is barely seated in rock',
        amount: wanting(gap(margin, show)),
      }),
      notInRock: () => ({ title: 'The casing does not reach firm rock', amount: 'not in rock' }),
      nearLevel: shortOfLevel,
      aboveLevel: shortOfLevel,
      nearRest: ({ margin }, show) => ({
        title: 'The casing ends too near the water at rest',
        amount: wanting(gap(margin, show)),
      }),
      dependsOnLevel: ({ turn }, show) => ({
        title: 'Whether the casing ends low enough',
        amount: `only above ${level(turn, show)}`,
      }),
    },
    limits: {},
  },
};

function shortOfLevel({ margin }: { margin: Metres }, show: Show) {
  return { title: 'The casing ends too near the pumping level', amount: wanting(gap(margin, show)) };
}
