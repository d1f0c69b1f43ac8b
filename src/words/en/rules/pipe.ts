import type { pipeRules } from '../../../model/rules/pipe.ts';
import type { CubicMetresPerSecond, MetresPerSecond, Pascals, Ratio } from '../../../model/si.ts';
import { toPsi } from '../../../model/units.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { PRESSURE_CAUTION } from '../cautions.ts';
import { capital } from '../phrases.ts';

export const short: ShortWords<typeof pipeRules> = {
  'PR-18': {
    broken: 'The drop pipe is too weak for the pump',
    holds: 'The drop pipe holds the pump’s pressure',
    says: {
      weakerThanPump: ({ margin }, show) => ({ amount: `${show.pressure(-margin)} short` }),
      weakFittings: ({ fittings }) => ({ title: 'Plastic fittings carry the string', amount: fittings }),
      tooFewClamps: ({ clamps, asked }) => ({
        title: 'A single clamp holds each joint',
        amount: `${clamps} of ${asked}`,
      }),
      rustingScrews: () => ({ title: 'The clamp screws will rust', amount: 'carbon steel' }),
      metal: () => ({ amount: 'metal pipe' }),
      belowUsualRating: ({ margin }, show) => ({
        title: 'The drop pipe is below the usual rating',
        amount: `${show.pressure(-margin)} short`,
      }),
      carriesPump: ({ margin }, show) => ({ amount: `${show.pressure(margin)} to spare` }),
    },
    limits: {},
  },
  'PR-48': {
    broken: 'The pipe runs too near its rating',
    holds: 'The running pressure leaves room for shocks',
    says: {
      roomForShocks: ({ margin }, show) => ({ amount: `${show.pressure(margin)} to spare` }),
      nearRating: ({ margin }, show) => ({ amount: `${show.pressure(-margin)} over` }),
    },
    limits: {},
  },
  'PR-47': {
    broken: 'The pipe is too small for the flow',
    holds: 'The pipe is wide enough for the flow',
    says: {
      lineWideEnough: ({ margin }, show) => ({ amount: `${show.velocity(margin)} to spare` }),
      dropPipeWideEnough: ({ margin }, show) => ({ amount: `${show.velocity(margin)} to spare` }),
      lineTooSmall: ({ margin }, show) => ({
        title: 'The line is too small for the flow',
        amount: `${show.velocity(-margin)} too fast`,
      }),
      dropPipeTooSmall: ({ margin }, show) => ({
        title: 'The drop pipe is too small for the flow',
        amount: `${show.velocity(-margin)} too fast`,
      }),
    },
    limits: {},
  },
};

/** Plastic pipe is sold by its rating in psi, in whatever units a plan is written. */
const strongerPipe = {
  strongerPipe: ({ rating }: { rating: Pascals }) => `Use ${Math.round(toPsi(rating))} psi pipe`,
  higherRating: () => 'Take pipe with a higher rating.',
} as const;

export const long: LongWords<typeof pipeRules> = {
  'PR-18': {
    source:
      '10 N.Y. Codes R. & Regs. App. 5-B, 5-B.5(c): 160 psi; N.H. Admin. Rules We 702.05(g), (h): clamps and fittings',
    why: 'A pipe or joint that gives way lets the whole string fall into the well.',
    caution: PRESSURE_CAUTION,
    messages: {
      weakerThanPump: ({ shutOff, rating }, show) =>
        `The pump can reach ${show.pressure(shutOff)} at no flow; this pipe is rated ${show.pressure(rating)} in this water.`,
      weakFittings: ({ fittings }) =>
        `${capital(fittings)} insert fittings carry the whole string; metal barbs are asked for in a well.`,
      tooFewClamps: ({ clamps }) =>
        `Each joint has ${clamps === 0 ? 'no clamp' : 'one clamp'}; two all-stainless clamps a joint are asked for.`,
      rustingScrews: () => 'Carbon-steel screws rust away under water, and the clamp lets go.',
      metal: ({ material }) => `${capital(material)} pipe carries far more than this pump can reach.`,
      belowUsualRating: ({ rating, least }, show) =>
        `This pipe is rated ${show.pressure(rating)}; New York asks for ${show.pressure(least)}, and many follow.`,
      carriesPump: ({ rating, shutOff }, show) =>
        `Rated ${show.pressure(rating)} in this water; the pump reaches ${show.pressure(shutOff)} at no flow.`,
    },
    fixes: {
      ...strongerPipe,
      stainlessFittings: () => 'Use stainless steel fittings',
      twoClamps: () => 'Use two clamps a joint',
      stainlessClamps: () => 'Use all-stainless clamps',
    },
  },
  'PR-48': {
    source: 'Missouri Livestock Watering Systems Handbook, ch. 5: 72 % of the rating without a study of shocks',
    why: 'Each start and stop sends a shock through the pipe on top of the running pressure.',
    caution: PRESSURE_CAUTION,
    messages: { roomForShocks: atCutOut, nearRating: atCutOut },
    fixes: strongerPipe,
  },
  'PR-47': {
    source: 'common practice, no source; about 15 gpm in 1 in and 25 gpm in 1-1/4 in',
    why: 'Fast water wastes the pump’s pressure and strikes harder when a valve shuts.',
    messages: {
      lineWideEnough: (numbers, show) => runs(numbers, ' in the buried line', show),
      dropPipeWideEnough: (numbers, show) => runs(numbers, ' in the drop pipe', show),
      lineTooSmall: (numbers, show) => runs(numbers, '', show),
      dropPipeTooSmall: (numbers, show) => runs(numbers, '', show),
    },
    fixes: {
      widerPipe: ({ size }) => `Use ${size} pipe`,
      widerOrLessFlow: () => 'Take wider pipe, or ask less flow of it.',
    },
  },
};

function atCutOut({ pressure, share, most }: { pressure: Pascals; share: Ratio; most: Pascals }, show: Show): string {
  return `At cut-out ${show.pressure(pressure)} press on the pipe; ${show.percent(share)} of its rating is ${show.pressure(most)}.`;
}

interface Flowing {
  readonly flow: CubicMetresPerSecond;
  readonly velocity: MetresPerSecond;
  readonly inOneInch: CubicMetresPerSecond;
  readonly inOneAndAQuarter: CubicMetresPerSecond;
}

function runs({ flow, velocity, inOneInch, inOneAndAQuarter }: Flowing, where: string, show: Show): string {
  const usual = `about ${show.flow(inOneInch)} suit 1 in, ${show.flow(inOneAndAQuarter)} 1-1/4 in`;
  return `${show.flow(flow)} runs at ${show.velocity(velocity)}${where}; ${usual}.`;
}
