import type { flowingRules } from '../../../model/rules/flowing.ts';
import type { LongWords } from '../../ruleWords.ts';
import { FLOWING_CAUTION } from '../cautions.ts';
import { gap, toSpare } from '../phrases.ts';

export const long: LongWords<typeof flowingRules> = {
  'PR-38': {
    holds: 'The water stays below the ground',
    held: {
      belowGround: ({ level }, show) => ({ amount: toSpare(level, show) }),
      readBelowGround: ({ level }, show) => ({
        title: 'The water stood below the ground when it was read',
        amount: `${gap(level, show)} below ground`,
      }),
    },
    asks: () => 'At rest the water stays below the ground, at the highest that it is known to stand.',
    source: 'Mont. Admin. R. 36.21.658; Wash. Admin. Code 173-160-291; 15A N.C. Admin. Code 02C .0109(e)',
    why: 'A flowing well that is opened without control can wash itself out of the ground.',
    caution: FLOWING_CAUTION,
    messages: {
      belowGround: ({ level }, show) => `At its highest the water stands ${show.depth(level)} below the ground.`,
      readBelowGround: ({ level }, show) =>
        `It was read at ${show.depth(level)}; how high it comes in a wet season nobody said.`,
      aboveGround: ({ height, controlled }, show) =>
        `The water stands ${gap(height, show)} above the ground; ${reported(controlled)}.`,
      atGround: ({ controlled }) => `The water stands at the ground; ${reported(controlled)}.`,
    },
    fixes: { callContractor: () => 'Stop here: this is work for a licensed contractor.' },
  },
};

function reported(controlled: boolean): string {
  return controlled ? 'flow control is reported' : 'no flow control is reported';
}
