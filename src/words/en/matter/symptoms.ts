/** What somebody notices, and what is done before anything else. */
import type { SymptomId } from '../../../model/matter/symptom.ts';

export interface SymptomWords {
  /** On its button: "No water at all" */
  readonly title: string;
  /** How it shows, in one sentence. */
  readonly shows: string;
  /** Before the causes are gone through. */
  readonly first: readonly string[];
}

/** Source  common practice, no source; the glass: from memory */
export const symptoms: Readonly<Record<SymptomId, SymptomWords>> = {
  'no-water': {
    title: 'No water at all',
    shows: 'No tap in the house gives water.',
    first: [
      'Read the gauge at the tank, and write it down.',
      'Listen: does the pump hum or does the switch click when a tap is open?',
    ],
  },
  'weak-flow': {
    title: 'Weak flow, low pressure',
    shows: 'Water comes, but too little of it, or it soon gets weak.',
    first: [
      'Open one tap and watch the gauge at the tank: does it fall, and where does it stop?',
      'Try a tap before any filter or softener as well, if there is one.',
    ],
  },
  air: {
    title: 'Taps spit air',
    shows: 'A tap coughs, and air comes with the water.',
    first: [
      'Note when: at the first tap of the day, or after long use.',
      'After long use points to low water; at the first tap points to a leak or a valve.',
    ],
  },
  'short-cycles': {
    title: 'Starts and stops all the time',
    shows: 'While water runs, the pump goes on and off every few seconds or every minute.',
    first: [
      'Open one tap and time the pump with a watch, from start to stop.',
      'Watch the gauge: a needle that jumps from one end to the other points to the tank.',
    ],
  },
  'never-stops': {
    title: 'Runs and never stops',
    shows: 'The pump runs on, even with every tap shut.',
    first: [
      'Shut the valve from the tank to the house, and watch the gauge for some minutes.',
      'If it still does not stop, switch the pump off at its breaker before you go on.',
    ],
  },
  'meter-runs': {
    title: 'Runs when no water is used',
    shows: 'The electric meter turns, or the pump starts by itself, with no tap open.',
    first: [
      'With every tap shut, write down how long it is from one start to the next.',
      'Then shut the valve to the house and time it again: a change points to the house.',
    ],
  },
  bangs: {
    title: 'Bangs and knocks',
    shows: 'A blow goes through the pipes: water hammer.',
    first: [
      'Note when: as a tap or a machine shuts, as the pump starts, or as it stops.',
      'Put a hand on the pipes to find where the blow is strongest.',
    ],
  },
  trips: {
    title: 'Trips the breaker',
    shows: 'The breaker goes off, at the start or after a while.',
    first: [
      'Note when it goes: at once, or after minutes of running.',
      'Do not switch it on again and again: each try can burn the motor.',
    ],
  },
  hot: {
    title: 'Hot cable, or a burnt smell',
    shows: 'Cable, switch, box or panel is hot, brown, or smells.',
    first: [
      'Switch the pump’s breaker off now, and leave it off.',
      'If it smokes or burns, leave the house and call the fire service.',
      'If the panel itself is hot, wet or buzzing, do not touch it: call the power company.',
      'Touch nothing that is hot or brown, and open nothing.',
    ],
  },
  sand: {
    title: 'Sand or grit',
    shows: 'Grains lie in the sink, in the tank of a toilet, or in the filter.',
    first: [
      'Fill a white bucket at the tap nearest to the tank, and let it stand for an hour.',
      'Note if the grit comes at each start of the pump, or all the time.',
    ],
  },
  milky: {
    title: 'Milky water',
    shows: 'The water is white or cloudy.',
    first: [
      'Fill a clear glass and watch it for some minutes.',
      'Clear from the bottom up: it was air or gas, in small bubbles.',
      'Clear from the top down, with mud at the bottom: it is silt or clay.',
      'Still cloudy after an hour: very fine clay, or something for a lab.',
    ],
  },
  taste: {
    title: 'Bad taste, smell or color',
    shows: 'The water smells, tastes, or has a color that it had not.',
    first: [
      'Drink other water until a test says more: not all that hurts can be tasted.',
      'Try cold and warm apart: a smell in the warm alone points to the water heater.',
      'Rotten eggs point to gas or bacteria; rust to iron; mud to rain that gets in.',
    ],
  },
  freezes: {
    title: 'Freezes in winter',
    shows: 'In hard cold no water comes, and it comes back with the thaw.',
    first: [
      'Switch the pump off at its breaker: behind ice it runs against a shut pipe.',
      'Open one tap a little, so that what thaws has a way out.',
    ],
  },
};
