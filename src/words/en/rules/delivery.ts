import type { deliveryRules } from '../../../model/rules/delivery.ts';
import type { CubicMetresPerSecond, Metres, Pascals } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { wants, type Want, type TooLittle } from '../brief/delivery.ts';

export const long: LongWords<typeof deliveryRules> = {
  'PR-54': {
    holds: 'The pump gives what the house wants',
    held: {
      givesEnough: ({ flow, wanted, share, fillsTank }, show) =>
        share < 1
          ? {
              title: `The pump gives most of what ${wants(fillsTank)}`,
              amount: `${show.flow(flow)} of ${show.flow(wanted)}`,
            }
          : { ...(fillsTank && { title: `The pump gives what ${wants(fillsTank)}` }), amount: show.flow(flow) },
      givesEnoughAtFirst: ({ flow, later, fillsTank }, show) => ({
        title: `At first the pump gives what ${wants(fillsTank)}`,
        amount: `${show.flow(flow)}, later ${show.flow(later)}`,
      }),
    },
    asks: ({ share }, show) =>
      `At cut-in, from the lowest water at rest, the pump gives ${show.percent(share)} or more of what the house or its open tank needs.`,
    source: 'common practice, no source; the pump’s own curve overrules it',
    why: 'A pump too weak for its well leaves the taps dry, however long it runs.',
    messages: {
      givesEnough: gives,
      givesEnoughAtFirst: ({ flow, later, drawn }, show) =>
        drawn === null
          ? `At first it gives ${show.flow(flow)}; once the water is drawn down, the ${show.flow(later)} that flow in.`
          : `At first it gives ${show.flow(flow)}; with the water drawn down to ${show.depth(drawn)}, ${show.flow(later)}.`,
      givesLess: givesTooLittle,
      givesLittle: givesTooLittle,
      givesNone: ({ level, cutIn, strong, ...want }, show) =>
        strong !== null
          ? `From ${show.depth(level)} a weak pump of that rating gives nothing, a strong one ${show.flow(strong)} of ${show.flow(want.wanted)}.`
          : `With the water at ${show.depth(level)} the pump lifts nothing ${against(cutIn, show)}${isWanted(want, show)}`,
      dependsOnLevel: ({ wanted, turn, cutIn, fillsTank }, show) =>
        fillsTank
          ? `It fills the open tank in about 8 hours a day only while the water stands above ${show.depth(turn)}.`
          : `It gives most of ${show.flow(wanted)}${cutIn === null ? '' : ` at ${show.pressure(cutIn)}`} only while the water stands above ${show.depth(turn)}.`,
    },
    fixes: {
      readItsSheet: () => 'Read the flow at this depth off the pump’s own sheet, or choose a stronger pump.',
      strongerPump: () => 'Choose a stronger pump for this depth; the one planned cannot lift the water.',
      wellGivesNoMore: () => 'Store water in the house for the peaks, or plan for less flow: the well gives no more.',
      tankGetsNoMore: () => 'Let the pump run longer, or use less water a day: the well gives no more.',
      largerLimiter: () => 'Choose a flow-limiting valve for more, or plan for less flow: it holds the pump back.',
      strongerOrLess: () => 'Choose a stronger pump, or plan for less flow; wider pipe helps a little.',
    },
  },
  'PR-58': {
    holds: 'The pump works within its range',
    held: {
      inRange: ({ flow }, show) => ({ amount: show.flow(flow) }),
    },
    asks: ({ times }) =>
      `At cut-in the pump gives at most ${times} times its rated flow, or as much as the last of its own points.`,
    source: 'common practice, no source; the range on the pump’s sheet overrules it',
    why: 'Past its range a pump is pushed up against its bearings and wears them out.',
    messages: {
      inRange: ({ flow, most, own, open }, show) =>
        `${into(open)} it gives ${show.flow(flow)}; ${own ? 'its curve ends at' : 'its range ends near'} ${show.flow(most)}.`,
      pastRange: ({ flow, most, own, open }, show) =>
        `${into(open)} it would give ${show.flow(flow)}; ${own ? 'its curve ends at' : 'its range ends near'} ${show.flow(most)}.`,
    },
    fixes: { holdItBack: () => 'Fit a flow-limiting valve, or take a pump made for more flow and less head.' },
  },
};

const into = (open: boolean): string => (open ? 'Into the open tank' : 'At cut-in');

/** An open tank has no pressure. */
const against = (cutIn: Pascals | null, show: Show): string =>
  cutIn === null ? 'into the open tank' : `against ${show.pressure(cutIn)}`;

function isWanted({ wanted, fillsTank }: Want, show: Show): string {
  return fillsTank
    ? `. To fill the open tank in 8 hours a day takes ${show.flow(wanted)}.`
    : `; ${show.flow(wanted)} is wanted.`;
}

function givesTooLittle(numbers: TooLittle, show: Show): string {
  const { flow, wanted, level, strong } = numbers;
  return strong === null
    ? gives(numbers, show)
    : `From ${show.depth(level)} a weak pump of that rating gives ${show.flow(flow)}, a strong one ${show.flow(strong)} of ${show.flow(wanted)}.`;
}

function gives(
  { flow, level, cutIn, ...want }: Want & { flow: CubicMetresPerSecond; level: Metres; cutIn: Pascals | null },
  show: Show,
): string {
  const where = cutIn === null ? '' : ` at ${show.pressure(cutIn)}`;
  return `With the water at ${show.depth(level)} it gives ${show.flow(flow)}${where}${isWanted(want, show)}`;
}
