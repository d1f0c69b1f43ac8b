import type { BoreName, clearanceRules } from '../../../model/rules/clearance.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { NAMES, widestPart, lowest } from '../brief/clearance.ts';

export const long: LongWords<typeof clearanceRules> = {
  'PR-17': {
    holds: 'The pump passes all that lines the hole',
    held: {
      passes: ({ measured }, show) => ({ amount: `${show.bore(measured)} free` }),
    },
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

/** Nobody said the pump. */
function motorWidth(
  { where, bore, slimmest, shroud }: { where: BoreName; bore: Metres; slimmest: Metres; shroud: boolean },
  show: Show,
): string {
  return `The ${NAMES[where]} is ${show.bore(bore)} wide inside, the ${lowest(shroud)} ${show.bore(slimmest)}.`;
}
