import type { ropeRules } from '../../../model/rules/rope.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { LIFTING_CAUTION } from '../cautions.ts';

export const short: ShortWords<typeof ropeRules> = {
  'PR-16': {
    broken: 'The rope is tied in the wrong place',
    holds: 'The rope is tied inside the casing',
    says: {
      noRope: () => ({ title: 'No rope is planned', amount: 'no rope' }),
      throughCap: () => ({ title: 'The rope is led through the cap', amount: 'through the cap' }),
      loose: () => ({ title: 'The rope is tied to nothing', amount: 'loose' }),
      onCap: () => ({ amount: 'on the cap' }),
      tiedInside: () => ({ amount: 'tied inside' }),
      strong: ({ margin }, show) => ({ amount: `${show.hook(margin)} to spare` }),
      weak: ({ margin }, show) => ({
        title: 'The rope is too weak for the string',
        amount: `${show.hook(-margin)} short`,
      }),
    },
    limits: {},
  },
};

export const long: LongWords<typeof ropeRules> = {
  'PR-16': {
    asks: ({ times }) =>
      `A safety rope is tied to a hook on the casing’s inside, and its knot holds ${times} times what hangs dry.`,
    source:
      'Md. Code Regs. 26.04.04.22 C; strength: common practice with the knot loss of Cordage Institute CI 1401-06',
    why: 'A rope may catch a slipping string once; through the cap it lets dirt and insects in.',
    caution: `Never lift or lower by the rope. ${LIFTING_CAUTION}`,
    messages: {
      noRope: () => 'No rope is planned, and no code that was read asks for one.',
      throughCap: () => 'The rope leaves the well through the cap; it must end inside, on a hook.',
      loose: () => 'A loose rope slides down and can jam the pump; tie it to a hook on the casing.',
      onCap: () => 'The rope hangs on the cap and comes off with it; tie it to a hook on the casing.',
      tiedInside: () => 'Tied to a casing hook, left slack; may catch a slip once, never for lifting.',
      strong: ({ knotted }, show) =>
        `Knotted it holds ${show.hook(knotted)}; may catch a slip once, never for lifting.`,
      weak: ({ knotted, load, factor }, show) =>
        `Knotted it holds ${show.hook(knotted)}; ${factor} times the hanging ${show.hook(load)} is asked.`,
    },
    fixes: {
      tieInside: () => 'Tie it to a casing hook',
      strongerRope: ({ strength }, show) => `Take a rope with ${show.hook(strength)} breaking strength, or none.`,
    },
  },
};
