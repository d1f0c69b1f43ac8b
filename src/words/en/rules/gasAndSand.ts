import type { gasAndSandRules } from '../../../model/rules/gasAndSand.ts';
import type { LongWords } from '../../ruleWords.ts';
import { gap } from '../phrases.ts';

export const long: LongWords<typeof gasAndSandRules> = {
  'PR-60': {
    holds: 'No sand or gas is reported',
    held: {
      neither: () => ({ amount: 'none reported' }),
    },
    asks: ({ clear }, show) =>
      `The water carries neither gas nor sand; with sand, the motor ends above the screen or ${show.depth(clear)} off the bottom.`,
    source: 'common practice, no source; the health department or the gas office decides what is done',
    why: 'Gas from a well can choke or explode where it gathers; sand wears a pump out within months.',
    // Told of sand as well, so it says when it counts.
    caution:
      'Where gas comes with the water it can choke and explode: no flame, no spark, never lean into a pit or well house.',
    messages: {
      neither: () => 'Neither sand nor gas is reported in this water.',
      gasUnderRoof: ({ inPit }) =>
        `The water carries gas, and the well top is in a ${inPit ? 'pit' : 'well house'}, where it gathers.`,
      gas: () => 'The water carries gas: the well needs an open vent outdoors, and a tank that lets gas out.',
      sandInScreen: ({ motor, screen }, show) =>
        `Sand is reported; the motor ends at ${show.depth(motor)}, inside the screen that begins at ${show.depth(screen)}.`,
      sandNearBottom: ({ measured, usual }, show) =>
        `Sand is reported, and the motor ends ${gap(measured, show)} ${measured < 0 ? 'below' : 'above'} the bottom; ${show.depth(usual)} is usual.`,
      sand: () => 'Sand is reported: the screen may be coarse, the well not cleaned out, or the flow too strong.',
    },
    fixes: {
      outdoors: () =>
        'Stop: keep flames and switches away, and have a licensed contractor bring the well top into the open.',
      ventIt: () => 'Vent the casing outdoors, and ask about a venting tank; have the gas named by a test.',
      findSand: () =>
        'Pump less, have the well cleaned out, and look where the sand comes from before a new pump goes in.',
      raiseIt: () => 'Hang the pump higher, clear of screen and bottom.',
    },
  },
};
