import { feet } from '../../../model/units.ts';
import type { cableRules } from '../../../model/rules/cable.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { ELECTRIC_CAUTION } from '../cautions.ts';
import { motorSize } from '../motorSizes.ts';
import { gap } from '../phrases.ts';

export const long: LongWords<typeof cableRules> = {
  'PR-12': {
    holds: 'The torque arrestor is just above the pump',
    held: {
      smallPump: () => ({ title: 'A small pump goes without a torque arrestor', amount: 'none planned' }),
      justAbove: ({ height }, show) => ({ amount: `${gap(height, show)} above the pump` }),
      inOpenHole: ({ height }, show) => ({ amount: `${gap(height, show)} above the pump` }),
    },
    asks: ({ over, upTo, from }, show) =>
      `A torque arrestor is over ${gap(over, show)} and up to ${show.depth(upTo)} above the pump; on polyethylene, motors under ${motorSize(from, show)} need none.`,
    source: 'N.H. Admin. Rules We 702.05(l) asks for one; height: common practice, no source',
    why: 'Each start twists the pipe and rubs the cable; the arrestor’s arms take the twist.',
    messages: {
      none: ({ material }) => `Nothing takes the twist of each start off the ${material} pipe.`,
      smallPump: ({ below }, show) =>
        `None is planned; pumps under ${motorSize(below, show)} usually go without, though some codes ask for one.`,
      justAbove: ({ height }, show) => `It stands ${gap(height, show)} above the pump’s discharge.`,
      inOpenHole: ({ height }, show) =>
        `It stands ${gap(height, show)} above the pump; in rough rock its arms can hang up when pulled.`,
      tooHigh: wrongHeight,
      tooLow: wrongHeight,
      justTooLow: wrongHeight,
    },
    fixes: {
      addOne: ({ height }, show) => `Add one ${show.length(height)} above the pump`,
      add: () => 'Add a torque arrestor.',
      putIt: ({ height }, show) => `Put it ${show.length(height)} above the pump`,
      clearOfTheRest: () => 'Put it just above the pump, clear of splice and valve.',
    },
  },
  'PR-13': {
    holds: 'The cable is tied to the pipe',
    held: {
      tied: ({ ties }, show) => ({ amount: `every ${gap(ties, show)}` }),
    },
    asks: ({ least, most }, show) => `The cable is tied to the pipe every ${show.depth(least)} to ${show.depth(most)}.`,
    source: (show) => `N.H. Admin. Rules We 702.04(h): every ${show.depth(feet(5))} to ${show.depth(feet(20))}`,
    why: 'Loose cable rubs through, and bunches up and jams the pump when it is pulled.',
    caution: ELECTRIC_CAUTION,
    messages: {
      tied: ({ ties, least, most }, show) =>
        `One tie every ${gap(ties, show)}; ${show.depth(least)} to ${show.depth(most)} is asked.`,
      tooFar: ({ ties, most, usual }, show) =>
        `One tie every ${gap(ties, show)}; ${show.depth(most)} is the most, ${show.depth(usual)} is usual.`,
      tooClose: ({ ties }, show) => `One tie every ${gap(ties, show)}; the cable wants some slack between ties.`,
    },
    fixes: {
      tieEvery: ({ every }, show) => `Tie every ${show.length(every)}`,
      tieBetween: () => 'Tie the cable between the valves.',
    },
  },
  'PR-14': {
    holds: 'Guards keep the cable off the casing',
    held: {
      guarded: ({ guards }, show) => ({ amount: `every ${gap(guards, show)}` }),
    },
    asks: ({ from, most }, show) =>
      `On a string over ${show.depth(from)} long a cable guard sits every ${show.depth(most)} or closer.`,
    source: 'W. Va. Code of State Rules 64-46-7.6 asks for guards; spacing: common practice, no source',
    why: 'Guards keep pipe and cable off the casing wall, so that nothing rubs through.',
    messages: {
      guarded: ({ guards }, show) => `One guard every ${gap(guards, show)} of pipe.`,
      none: ({ length, from, most }, show) =>
        `${gap(length, show)} of pipe hangs without a guard; beyond ${show.depth(from)} one every ${show.depth(most)} is usual.`,
      tooFar: ({ guards, most }, show) =>
        `One guard every ${gap(guards, show)}; ${show.depth(most)} is the usual most.`,
    },
    fixes: { addOneEvery: ({ every }, show) => `Add one every ${show.length(every)}` },
  },
  'PR-15': {
    holds: 'The splice is where it belongs',
    held: {
      noSplice: () => ({ amount: 'no splice' }),
      justAbove: ({ height }, show) => ({ amount: `${gap(height, show)} above the pump` }),
    },
    asks: ({ within }, show) =>
      `The cable has one splice at the most, above the pump within ${show.depth(within)}, clear of the arrestor’s arms.`,
    source: 'W. Va. Code of State Rules 64-46-7.7.a asks for watertight splices; place: common practice, no source',
    why: 'Every splice in the well can leak; one, just above the pump, is easy to make and check.',
    caution: ELECTRIC_CAUTION,
    messages: {
      noSplice: () => 'The motor’s own lead reaches the top; there is no splice in the well.',
      justAbove: ({ height }, show) =>
        `One splice, ${gap(height, show)} above the pump and clear of the torque arrestor.`,
      inArms: () => 'The arrestor’s arms rub the splice; it belongs above or below them.',
      several: ({ count, within }, show) =>
        `${count} splices are planned; one within ${show.depth(within)} above the pump is right, or none.`,
      tooHigh: ({ height, within }, show) =>
        `The splice is ${gap(height, show)} above the pump; within ${show.depth(within)} is right.`,
      tooLow: ({ within }, show) =>
        `The splice is at the pump’s discharge; right is above it, within ${show.depth(within)}.`,
    },
    fixes: {
      oneSplice: ({ height }, show) => `One splice, ${show.length(height)} above the pump`,
      clearOfTheRest: () => 'Have one splice, just above the pump and clear of arrestor and valve.',
    },
  },
};

function wrongHeight({ height, over, upTo }: { height: Metres; over: Metres; upTo: Metres }, show: Show): string {
  return `It stands ${gap(height, show)} above the pump; right is over ${gap(over, show)} and up to ${show.depth(upTo)}.`;
}
