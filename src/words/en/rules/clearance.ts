import type { clearanceRules } from '../../../model/rules/clearance.ts';
import type { Metres } from '../../../model/si.ts';
import type { BoreStretch } from '../../../model/solution.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof clearanceRules> = {
  'PR-17': {
    broken: 'The pump is too wide for the casing',
    holds: 'The pump passes the casing',
    says: {
      passes: ({ measured }, show) => ({ amount: `${show.bore(measured)} free` }),
      hardlyPasses: ({ where, margin }, show) => ({
        title: `The pump hardly passes the ${nameOf(where)}`,
        amount: `${show.bore(-margin)} too tight`,
      }),
      tooWide: ({ margin }, show) => ({ amount: `${show.bore(-margin)} too tight` }),
    },
    limits: { aboveNarrowPart: () => 'above the narrow part' },
  },
};

export const long: LongWords<typeof clearanceRules> = {
  'PR-17': {
    source: 'common practice, no source; casing bores as their standards print them',
    why: 'Pump, cable, splice and clamps must pass every joint on the way down and up.',
    messages: {
      passes: widths,
      hardlyPasses: widths,
      tooWide: widths,
    },
    fixes: { slimmerPump: () => 'Choose a slimmer pump, or measure the bore once more.' },
  },
};

function widths(
  { where, bore, widest }: { where: BoreStretch['kind']; bore: Metres; widest: Metres },
  show: Show,
): string {
  return `The ${nameOf(where)} is ${show.bore(bore)} wide inside, the pump ${show.bore(widest)} over its cable guard.`;
}

function nameOf(where: BoreStretch['kind']): string {
  return where === 'openHole' ? 'hole' : where;
}
