import type { pipeRules } from '../../../model/rules/pipe.ts';
import type { Pascals } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { Short, ShortWords } from '../../ruleWords.ts';
import { wanting } from '../phrases.ts';

export const short: ShortWords<typeof pipeRules> = {
  'PR-18': {
    broken: 'The drop pipe is too weak for the pump',
    says: {
      weakerThanPump: ({ margin }, show) => ({ amount: wanting(show.pressure(-margin)) }),
      threadsWeakerThanPump: ({ margin }, show) => ({
        title: 'The threaded drop pipe is too weak for the pump',
        amount: wanting(show.pressure(-margin)),
      }),
      threadedSocketPipe: ({ material }) => ({
        title: `This ${material} is made for sockets`,
        amount: 'wall too thin for threads',
      }),
      threadedSchedule40: ({ material }) => ({
        title: `Schedule 40 ${material} is not to be threaded`,
        amount: 'wall too thin',
      }),
      weakFittings: ({ fittings }) => ({ title: 'Plastic fittings carry the string', amount: fittings }),
      tooFewClamps: ({ clamps, asked }) => ({
        title: clamps === 0 ? 'No clamp holds the joints' : 'A single clamp holds each joint',
        amount: `${clamps} of ${asked}`,
      }),
      rustingScrews: () => ({ title: 'The clamp screws will rust', amount: 'carbon steel' }),
      belowUsualRating: below,
      threadsBelowUsualRating: below,
    },
    limits: {},
  },
  'PR-48': {
    broken: 'The pipe runs too near its rating',
    says: {
      nearRating: ({ margin }, show) => ({ amount: `${show.pressure(-margin)} over` }),
    },
    limits: {},
  },
  'PR-47': {
    broken: 'The pipe is too small for the flow',
    says: {
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

function below({ margin }: { margin: Pascals }, show: Show): Short {
  return { title: 'The drop pipe is below the usual rating', amount: wanting(show.pressure(-margin)) };
}
