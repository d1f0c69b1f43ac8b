import { feet } from '../../../model/units.ts';
import type { adapterCoverRules } from '../../../model/rules/adapterCover.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { DIGGING_CAUTION } from '../cautions.ts';
import { gap, toSpare } from '../phrases.ts';

export const long: LongWords<typeof adapterCoverRules> = {
  'PR-64': {
    holds: 'Ground covers the pitless adapter',
    held: {
      covered: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
    },
    asks: ({ least, most }, show) =>
      `The adapter’s outlet has ${gap(least[show.units], show)} of ground or more over it, and ${show.depth(most)} at the most.`,
    source: (show) =>
      `${show.small(feet(1))} of cover: common practice, and IPC 305.4 from memory; ${show.depth(feet(12))} of digging: common practice, no source`,
    why: 'A shallow line is cut by a spade or crushed by a wheel; a deep trench can bury a person.',
    caution: DIGGING_CAUTION,
    messages: {
      covered: ({ measured, least }, show) =>
        `The outlet’s top is ${gap(measured, show)} deep; ${gap(least, show)} of cover is the usual least.`,
      veryDeep: ({ measured, most }, show) =>
        `The outlet’s top is at ${show.depth(measured)}; adapters hardly ever stand under ${show.depth(most)}: ${slip(show)}, perhaps.`,
      shallow: ({ measured, least }, show) =>
        `The outlet’s top is ${gap(measured, show)} deep; ${gap(least, show)} of cover is the usual least, frost or not.`,
    },
    fixes: {
      smallerUnit: (_, show) =>
        `Look at the unit once more, of the frost too: ${otherUnits(show)}? Deeper trenches need a contractor.`,
      lowerIt: () => 'Lower the adapter and the line.',
    },
  },
};

/** What was typed for what. */
function slip({ units }: Show): string {
  return units === 'us' ? 'feet typed for inches' : 'metres typed for centimetres';
}

/** What is mistaken for each other. */
function otherUnits({ units }: Show): string {
  return units === 'us' ? 'feet or inches' : 'metres or centimetres';
}
