import type { BoreName, clearanceRules } from '../../../model/rules/clearance.ts';
import type { ShortWords } from '../../ruleWords.ts';

export const short: ShortWords<typeof clearanceRules> = {
  'PR-17': {
    broken: 'The pump is too wide for the well',
    says: {
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

export const NAMES: Readonly<Record<BoreName, string>> = {
  casing: 'casing',
  liner: 'liner',
  screen: 'screen',
  blankPipe: 'blank pipe',
  hole: 'hole',
};

export function widestPart(sleeve: boolean): string {
  return sleeve ? 'flow sleeve' : 'pump';
}

export function lowest(shroud: boolean): string {
  return shroud ? 'flow sleeve' : 'motor';
}
