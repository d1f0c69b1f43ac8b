import type { ropeRules } from '../../../model/rules/rope.ts';
import type { LongWords } from '../../ruleWords.ts';
import { LIFTING_CAUTION } from '../cautions.ts';

/** Under a seal an eye takes it: a hook would pierce the casing. */
interface At {
  readonly underSeal: boolean;
}

const place = ({ underSeal }: At): string => (underSeal ? 'the eye under the seal' : 'a hook on the casing');

const cover = ({ underSeal }: At): string => (underSeal ? 'seal' : 'cap');

export const long: LongWords<typeof ropeRules> = {
  'PR-16': {
    holds: 'The rope is tied inside the casing',
    held: {
      noRope: () => ({ title: 'No rope is planned', amount: 'no rope' }),
      tiedInside: () => ({ amount: 'tied inside' }),
      strong: ({ margin }, show) => ({ amount: `${show.hook(margin)} to spare` }),
    },
    asks: ({ times }) =>
      `A safety rope is tied inside, to a casing hook or a seal’s eye; its knot holds ${times} times what hangs dry.`,
    source:
      'Md. Code Regs. 26.04.04.22 C; strength: common practice with the knot loss of Cordage Institute CI 1401-06',
    why: 'A rope may catch a slipping string once; through the cap it lets dirt and insects in.',
    caution: `Never lift or lower by the rope. ${LIFTING_CAUTION}`,
    messages: {
      noRope: () => 'No rope is planned, and no code that was read asks for one.',
      throughCap: (at) => `The rope leaves the well through the ${cover(at)}; it must end inside, on ${place(at)}.`,
      loose: (at) => `A loose rope slides down and can jam the pump; tie it to ${place(at)}.`,
      onCap: (at) => `The rope hangs on the ${cover(at)} and comes off with it; tie it to ${place(at)}.`,
      tiedInside: (at) => `Tied to ${place(at)}, left slack; may catch a slip once, never for lifting.`,
      strong: ({ knotted }, show) =>
        `Knotted it holds ${show.hook(knotted)}; may catch a slip once, never for lifting.`,
      weak: ({ knotted, load, factor }, show) =>
        `Knotted it holds ${show.hook(knotted)}; ${factor} times the hanging ${show.hook(load)} is asked.`,
    },
    fixes: {
      tieInside: (at) => `Tie it to ${place(at)}`,
      strongerRope: ({ strength }, show) => `Take a rope with ${show.hook(strength)} breaking strength, or none.`,
    },
  },
};
