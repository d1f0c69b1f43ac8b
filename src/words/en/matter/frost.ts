/** What freezes. */
import type { CausesOf } from './causeWords.ts';

/** Source  common practice, no source */
export const frost: CausesOf<'frostAtTop' | 'frostInLine' | 'frostInHouse'> = {
  frostAtTop: {
    title: 'The top of the well is frozen',
    look: [
      'Think of how long the cold has lasted, and if snow was cleared from round the well.',
      'Read the gauge at the tank: does it move when the pump starts?',
    ],
    tells: ['The pump hums and the gauge stays: ice may shut the pipe at the well.'],
    then: [
      'Switch the pump off. Wait for the thaw, or ask a contractor who thaws pipes.',
      'For next winter the outlet goes deeper, or the top is kept warm.',
    ],
  },
  frostInLine: {
    title: 'The buried line is frozen',
    look: [
      'Find where the line lies shallow: under a cleared drive, in a ditch, at the house wall.',
      'Read the gauge at the tank: does it move when the pump starts?',
    ],
    tells: ['Frost goes deepest where cars drive and snow is cleared.'],
    then: [
      'Switch the pump off. Who thaws pipes by trade can thaw the line from the house.',
      'In summer that stretch is laid deeper, or covered with insulation.',
    ],
  },
  frostInHouse: {
    title: 'A pipe in the house or the well house is frozen',
    look: [
      'Feel the pipes by the tank, and the thin one to gauge and switch: is one icy?',
      'See if a heater or a heat tape there has gone off.',
    ],
    tells: [
      'With the thin pipe frozen, switch and gauge stay where they were.',
      'The pump then never starts, or never stops.',
    ],
    then: ['Warm the room slowly, with a tap open, and look for cracks as it thaws.'],
  },
};
