import type { BoreName, clearanceRules } from '../../../model/rules/clearance.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';

const NAMES: Readonly<Record<BoreName, string>> = {
  casing: 'casing',
  liner: 'liner',
  screen: 'screen',
  blankPipe: 'blank pipe',
  hole: 'hole',
};

export const short: ShortWords<typeof clearanceRules> = {
  'PR-17': {
    broken: 'The pump is too wide for the well',
    holds: 'The pump passes all that lines the hole',
    says: {
      passes: ({ measured }, show) => ({ amount: `${show.bore(measured)} free` }),
      hardlyPasses: ({ where, sleeve, margin }, show) => ({
        title: `The ${widestPart(sleeve)} hardly passes the ${NAMES[where]}`,
        amount: `${show.bore(-margin)} too tight`,
      }),
      tooWide: ({ where, sleeve, margin }, show) => ({
        title: `The ${widestPart(sleeve)} is too wide for the ${NAMES[where]}`,
        amount: `${show.bore(-margin)} too tight`,
      }),
      motorHardlyPasses: ({ where, shroud, margin }, show) => ({
        title: `The ${lowest(shroud)} alone hardly passes the ${NAMES[where]}`,
        amount: `${show.bore(-margin)} too tight`,
      }),
      motorTooWide: ({ where, shroud, margin }, show) => ({
        title: `The ${lowest(shroud)} alone is too wide for the ${NAMES[where]}`,
        amount: `${show.bore(-margin)} too tight`,
      }),
    },
    limits: { aboveNarrowPart: ({ where }) => `above the narrow ${NAMES[where]}` },
  },
};

export const long: LongWords<typeof clearanceRules> = {
  'PR-17': {
    asks: ({ least }, show) =>
      `All that the pump passes on its way down is ${show.bore(least)} or more wider than the pump.`,
    source: 'common practice, no source; casing bores as their standards print them',
    why: 'Pump, cable, splice and clamps must pass every joint on the way down and up.',
    messages: {
      passes: widths,
      hardlyPasses: widths,
      tooWide: widths,
      motorHardlyPasses: motorWidth,
      motorTooWide: motorWidth,
    },
    fixes: {
      slimmerPump: () => 'Choose a slimmer pump, or measure the bore once more.',
      slimmerSleeve: () => 'Choose a slimmer flow sleeve, or measure the bore once more.',
    },
  },
};

function widths(
  { where, bore, widest, sleeve }: { where: BoreName; bore: Metres; widest: Metres; sleeve: boolean },
  show: Show,
): string {
  return `The ${NAMES[where]} is ${show.bore(bore)} wide inside, the ${widestPart(sleeve)} ${show.bore(widest)}${sleeve ? '' : ' over its cable guard'}.`;
}

function widestPart(sleeve: boolean): string {
  return sleeve ? 'flow sleeve' : 'pump';
}

/** Nobody said the pump. */
function motorWidth(
  { where, bore, slimmest, shroud }: { where: BoreName; bore: Metres; slimmest: Metres; shroud: boolean },
  show: Show,
): string {
  return `The ${NAMES[where]} is ${show.bore(bore)} wide inside, the ${lowest(shroud)} ${show.bore(slimmest)}.`;
}

function lowest(shroud: boolean): string {
  return shroud ? 'flow sleeve' : 'motor';
}
