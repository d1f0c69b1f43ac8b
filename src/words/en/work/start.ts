/** The first water, and what is read of it. */
import { round } from './phrases.ts';
import type { StepsOf } from './stepWords.ts';

/**
 * Sources  grout restored up to the ground: Wash. Admin. Code 173-160-291(6); soil packed tight: Minn. Rules 4725.4850; a
 *          quarter of an hour at cut-out, 30 minutes off, an hour before the tape, both rotations, water over the intake: common practice, no source
 */
export const start: StepsOf<'boxCheck' | 'firstRun' | 'pressureTest' | 'backfill' | 'readings'> = {
  boxCheck: ({ box, power }, show) => ({
    title: 'Check box and breaker',
    does: [
      'A licensed electrician does this, with the power locked off.',
      power === null
        ? 'Compare the new motor’s plate with what feeds it: power, volts, phases and wires.'
        : `Compare the new motor, ${show.power(power)}, with what feeds it: power, volts, phases and wires.`,
      ...(box === null
        ? []
        : [
            box === 'drive'
              ? 'The drive has to be set for the new motor’s amps.'
              : 'The control box has to be of the new motor’s power and kind: else fit a new one.',
          ]),
      'Breaker, overload and wire have to suit the new motor’s amps.',
    ],
    why: 'A new motor on the old one’s box hums, overheats and burns out in minutes.',
    check: ['Plate, box and breaker belong together, and it is written down.'],
    mistake: 'The old box is left because it looks the same, and the new motor burns.',
  }),
  firstRun: ({ open, phase }) => ({
    title: 'Run the first water',
    does: [
      'Nobody touches well, pipe or boxes when the power comes on.',
      open
        ? 'Lead the line’s end past the tank to waste, no lower than the tank’s inlet.'
        : 'Keep the house shut; open the drain a crack, with a hose that leads outside.',
      'Switch on: water should come within a few minutes.',
      'If none comes, switch off: the pump must not run dry.',
      open ? 'Run it to waste until it is clear.' : 'Open up slowly, and run it to waste until it is clear.',
      ...(phase === 3
        ? ['Have the electrician try both rotations: the one with more water is right.']
        : ['Have volts and amps read, and compare them with the nameplate.']),
    ],
    why: open
      ? 'The first water carries sand, which belongs neither in the tank nor in the house.'
      : 'A small opening loads the pump gently, and the first sand goes to waste.',
    check: [
      'The water has turned clear.',
      ...(open ? ['No joint that can still be seen is wet, at the well, in the trench or at the tank.'] : []),
      phase === 3
        ? 'Volts and amps of all three legs are within the nameplate.'
        : 'Volts and amps are within the nameplate.',
    ],
    mistake:
      phase === 3
        ? 'A pump that turns backward still gives some water, and is left so until it fails.'
        : 'The first muddy water goes into the house, and blocks valves and heater.',
  }),
  pressureTest: ({ cutOut, trench }, show) => ({
    title: 'Hold the pressure',
    does: [
      'Shut drain and house, and let the pump fill the tank.',
      `It should stop at ${show.pressure(cutOut)}, the cut-out: stay at the switch until it does.`,
      'Switch off at the breaker, and watch the gauge for 15 minutes.',
      ...(trench
        ? [
            'Look at adapter and line from the edge, with the trench still open, shored and fenced.',
            'Dry every joint with a cloth and look again.',
          ]
        : ['Look at every joint that can be seen, dry it with a cloth, and look again.']),
      'Let the pressure off before you mend anything.',
    ],
    why: trench
      ? 'A leak found now takes a wrench; found later it takes a digger.'
      : 'A leak drains the line, and the pump starts all night long.',
    check: ['The gauge has not fallen.', 'No joint is wet.'],
    mistake: trench
      ? 'The trench is filled first, and a drip at the adapter is found a year later.'
      : 'A slow fall is blamed on the gauge, and the pump wears out with short starts.',
  }),
  backfill: () => ({
    title: 'Fill the trench',
    does: [
      'Put back the grout that was cut away, up to the ground, as the code asks.',
      'Bed the line in fine soil, packed under its first stretch, with no stone on it.',
      'Lay warning tape over cable and line.',
      'Fill in layers, and pack each one round the casing.',
      'Take shoring out bit by bit as you fill, and nobody stands below.',
      'Slope the ground so that rain runs off from the well.',
    ],
    why: 'The ground round the casing must not let rain run down along it.',
    check: ['The casing still stands as high above the ground as planned.', 'A sketch shows where the line lies.'],
    mistake: 'Soil is pushed in at once: it sinks later, bends the line, and leaves a funnel at the casing.',
  }),
  readings: ({ cutIn, cutOut, level, open }, show) => ({
    title: 'Take the readings',
    does: [
      'Run the pump for an hour at the flow that the house will use, and stop when it spurts.',
      'Where cap or seal has a port for it, tape the water through that; open nothing else.',
      level === null
        ? 'Nobody knows how far the water falls: your reading is the first.'
        : `It should stand at about ${show.length(level)} below ground; the tape counts from the casing’s top.`,
      open
        ? 'See that the float stops the pump when the tank is full, and starts it again.'
        : `See that the pump starts at ${show.pressure(cutIn)} and stops at ${show.pressure(cutOut)}.`,
      'Leave the pump off for 30 minutes, with everything shut, and read again for leaks.',
      open
        ? 'Fill a bucket from the line’s end and time it: that is the pump’s flow.'
        : `With the pump on, throttle the drain to ${show.pressure(cutIn)}; time a bucket: that is its flow.`,
    ],
    why: 'A reading that differs from the plan today names its cause; in ten years it does not.',
    check: [
      'Each reading stands beside what was expected.',
      `The water stays well above the intake: ${round(show, '10 ft', '3 m')} or more is usual.`,
    ],
    mistake: 'Nothing is read because water comes, and the pump draws air in the first dry month.',
  }),
};
