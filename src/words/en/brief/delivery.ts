import type { deliveryRules } from '../../../model/rules/delivery.ts';
import type { CubicMetresPerSecond, Metres, Pascals } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof deliveryRules> = {
  'PR-54': {
    broken: 'The pump gives less than the house wants',
    says: {
      givesLess: (numbers, show) => less(numbers, show),
      givesLittle: (numbers, show) => less(numbers, show),
      givesNone: ({ strong }) => ({
        title: strong === null ? 'The pump lifts no water to the tank' : 'The pump may lift no water to the tank',
        amount: strong === null ? 'nothing' : 'a weak one nothing',
      }),
      dependsOnLevel: ({ turn, fillsTank }, show) => ({
        title: `Whether the pump gives what ${wants(fillsTank)}`,
        amount: `only above ${show.depth(turn)}`,
      }),
    },
    limits: {},
  },
  'PR-58': {
    broken: 'The pump works past its range',
    says: {
      pastRange: ({ flow, most }, show) => ({ amount: `${show.flow(flow - most)} past it` }),
    },
    limits: {},
  },
};

export const wants = (fillsTank: boolean): string => (fillsTank ? 'the open tank needs' : 'the house wants');

export interface Want {
  readonly wanted: CubicMetresPerSecond;
  /** An open tank carries the peak. */
  readonly fillsTank: boolean;
}

export interface TooLittle extends Want {
  readonly flow: CubicMetresPerSecond;
  readonly share: number;
  readonly level: Metres;
  /** Null with an open tank. */
  readonly cutIn: Pascals | null;
  /** What the stronger pump of that rating gives, where that would do. */
  readonly strong: CubicMetresPerSecond | null;
}

function less({ share, strong, fillsTank }: TooLittle, show: Show) {
  const amount = `${show.percent(share)} of it`;
  if (strong !== null) return { title: `The pump may give less than ${wants(fillsTank)}`, amount };
  return fillsTank ? { title: `The pump gives less than ${wants(fillsTank)}`, amount } : { amount };
}
