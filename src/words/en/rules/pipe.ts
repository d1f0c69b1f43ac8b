import { psi } from '../../../model/units.ts';
import type { pipeRules } from '../../../model/rules/pipe.ts';
import type { CubicMetresPerSecond, MetresPerSecond, Pascals, Ratio } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { PRESSURE_CAUTION } from '../cautions.ts';
import { capital } from '../phrases.ts';

const strongerPipe = {
  strongerPipe: ({ rating }: { rating: Pascals }, show: Show) => `Use pipe rated ${show.pressure(rating)}`,
  strongerSchedule: ({ wallClass }: { wallClass: string }) => `Use ${wallClass} pipe`,
  higherRating: () => 'Take pipe with a higher rating, or a pump of less head.',
} as const;

export const long: LongWords<typeof pipeRules> = {
  'PR-18': {
    holds: 'The drop pipe holds the pump’s pressure',
    held: {
      metal: () => ({ amount: 'metal pipe' }),
      carriesPump: ({ margin }, show) => ({ amount: `${show.pressure(margin)} to spare` }),
      threadsCarryPump: ({ margin }, show) => ({ amount: `${show.pressure(margin)} to spare` }),
    },
    asks: ({ least, threaded, weakened, clamps }, show) =>
      `Plastic drop pipe bears ${show.pressure(least[show.units])} and all that the pump can reach, threaded ${weakened} at ${show.percent(threaded)}; each barb has ${clamps} clamps.`,
    source: (show) =>
      `${leastRating(show)}; N.H. Admin. Rules We 702.05(g), (h): clamps and fittings; threads: ASTM D1785, appendix, from memory`,
    why: 'A pipe or joint that gives way lets the whole string fall into the well.',
    caution: PRESSURE_CAUTION,
    messages: {
      weakerThanPump: ({ shutOff, rating }, show) =>
        `The pump can reach ${show.pressure(shutOff)} at no flow; this pipe is rated ${show.pressure(rating)} in this water.`,
      threadsWeakerThanPump: ({ material, shutOff, rating }, show) =>
        `The pump can reach ${show.pressure(shutOff)} at no flow; threads leave this ${material} half its rating, ${show.pressure(rating)} here.`,
      threadedSocketPipe: ({ material, standard }) =>
        `${material} drop pipe comes in threaded lengths; pipe of ${standard} has sockets, which do not carry a string.`,
      threadedSchedule40: ({ material }) =>
        `${material} drop pipe comes in threaded lengths, and threads cut schedule 40 through too far.`,
      weakFittings: ({ fittings }) =>
        `${capital(fittings)} insert fittings carry the whole string; metal barbs are asked for in a well.`,
      tooFewClamps: ({ clamps }) =>
        `Each joint has ${clamps === 0 ? 'no clamp' : 'one clamp'}; two all-stainless clamps a joint are asked for.`,
      rustingScrews: () => 'Carbon-steel screws rust away under water, and the clamp lets go.',
      metal: ({ material, shutOff, bears }, show) =>
        `The pump reaches ${show.pressure(shutOff)} at no flow; new threaded ${material} pipe bears over ${show.pressure(bears)}.`,
      belowUsualRating: ({ rating, least }, show) =>
        `This pipe is rated ${show.pressure(rating)}; ${show.pressure(least)} is the usual least, which some codes ask for.`,
      threadsBelowUsualRating: ({ rating, least }, show) =>
        `Threads leave this pipe ${show.pressure(rating)}; ${show.pressure(least)} is the usual least, which some codes ask for.`,
      carriesPump: ({ rating, shutOff }, show) =>
        `Rated ${show.pressure(rating)} in this water; the pump reaches at most ${show.pressure(shutOff)} at no flow.`,
      threadsCarryPump: ({ rating, shutOff }, show) =>
        `Threads leave it half its rating, ${show.pressure(rating)} here; the pump reaches at most ${show.pressure(shutOff)} at no flow.`,
    },
    fixes: {
      ...strongerPipe,
      unthreadedPipe: () => 'Take PE pipe over barbs, or threaded steel pipe, that bears this pump.',
      stainlessFittings: () => 'Use stainless steel fittings',
      twoClamps: () => 'Use two clamps a joint',
      stainlessClamps: () => 'Use all-stainless clamps',
    },
  },
  'PR-48': {
    holds: 'The running pressure leaves room for shocks',
    held: {
      roomForShocks: ({ margin }, show) => ({ amount: `${show.pressure(margin)} to spare` }),
    },
    asks: ({ share }, show) =>
      `Just before the switch opens, a plastic drop pipe carries no more than ${show.percent(share)} of its rating.`,
    source:
      'Missouri Livestock Watering Systems Handbook, ch. 5: 72 % of the rating without a study of shocks; threads: ASTM D1785, appendix, from memory',
    why: 'Each start and stop sends a shock through the pipe on top of the running pressure.',
    caution: PRESSURE_CAUTION,
    messages: { roomForShocks: atCutOut, nearRating: atCutOut },
    fixes: strongerPipe,
  },
  'PR-47': {
    holds: 'The pipe is wide enough for the flow',
    held: {
      dropPipeAloneWideEnough: ({ margin }, show) => ({
        title: 'The drop pipe is wide enough for the flow',
        amount: `${show.velocity(margin)} to spare`,
      }),
      lineWideEnough: ({ margin }, show) => ({ amount: `${show.velocity(margin)} to spare` }),
      dropPipeWideEnough: ({ margin }, show) => ({ amount: `${show.velocity(margin)} to spare` }),
    },
    asks: ({ most }, show) =>
      `At the flow that the house wants, water runs at ${show.velocity(most)} or slower through drop pipe and line to the house.`,
    source: 'common practice, no source',
    why: 'Fast water wastes the pump’s pressure and strikes harder when a valve shuts.',
    messages: {
      dropPipeAloneWideEnough: (numbers, show) => runs(numbers, ' in the drop pipe', show),
      lineWideEnough: (numbers, show) => runs(numbers, ' in the line', show),
      dropPipeWideEnough: (numbers, show) => runs(numbers, ' in the drop pipe', show),
      lineTooSmall: (numbers, show) => runs(numbers, '', show),
      dropPipeTooSmall: (numbers, show) => runs(numbers, '', show),
    },
    fixes: {
      widerPipe: ({ size }) => `Use ${size} pipe`,
      widerPipeRated: ({ size, rating }, show) => `Use ${size} pipe rated ${show.pressure(rating)}`,
      widerPipeOfClass: ({ size, wallClass }) => `Use ${size} ${wallClass} pipe`,
      widerOrLessFlow: () => 'Take wider pipe, or ask less flow of it.',
    },
  },
};

interface AtCutOut {
  readonly pressure: Pascals;
  readonly share: Ratio;
  readonly most: Pascals;
  readonly threaded: boolean;
  /** Whether a flow-limiting valve holds the pressure back. */
  readonly byValve: boolean;
  /** An open tank has no cut-out: the pressure is that of its filling. */
  readonly open: boolean;
}

function atCutOut({ pressure, share, most, threaded, byValve, open }: AtCutOut, show: Show): string {
  if (byValve)
    return `The flow-limiting valve holds ${show.pressure(pressure)} in the pipe; ${show.percent(share)} of its ${threaded ? 'threaded ' : ''}rating is ${show.pressure(most)}.`;
  const rating = threaded ? 'its rating, threads counted,' : 'its rating';
  return `${open ? 'As the tank fills' : 'At cut-out'} up to ${show.pressure(pressure)} press on the pipe; ${show.percent(share)} of ${rating} is ${show.pressure(most)}.`;
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

/** The code's own figure where it is read in its units; what is usual elsewhere. */
function leastRating(show: Show): string {
  return show.units === 'us'
    ? `10 N.Y. Codes R. & Regs. App. 5-B, 5-B.5(c): ${show.pressure(psi(160))}`
    : `${show.pressure(1e6)}: common practice, no source`;
}
