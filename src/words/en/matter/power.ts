/** From the breaker to the motor. */
import type { CausesOf } from './causeWords.ts';

/**
 * Sources  electrical work by licensed people: local codes; one reset of a breaker, amps that tell jammed from idle, megohms
 *          of a motor in its well: common practice, no source
 */
export const power: CausesOf<
  | 'power'
  | 'switch'
  | 'float'
  | 'drive'
  | 'dryRunStop'
  | 'controlBox'
  | 'wireThin'
  | 'wireHot'
  | 'supplyFit'
  | 'rotation'
  | 'cooling'
  | 'cable'
  | 'motor'
  | 'jammed'
  | 'terminal'
  | 'otherLoad'
> = {
  power: {
    title: 'The breaker has gone off',
    look: [
      'Look at the pump’s breaker, and at the switch near the tank: both have to be on.',
      'A breaker that went off by itself stands in the middle: push it off, then on, once.',
      'See if lights and plugs in the house have power.',
    ],
    tells: [
      'It stays on and the pump runs: watch it for a day.',
      'It goes off again at once: cable or motor leaks current to ground.',
      'It goes off after minutes: the motor draws too much, or starts too often.',
    ],
    then: ['If it goes off a second time, leave it off, and have an electrician measure.'],
  },
  switch: {
    title: 'The pressure switch sticks',
    look: [
      'The pressure switch starts the pump at its cut-in and stops it at its cut-out.',
      'Read the gauge: under cut-in it should run, over cut-out it should stand.',
      'Tap the gauge: a needle that does not move at all may be stuck itself.',
      'Listen for the click of the switch; leave its cover on.',
    ],
    tells: [
      'Under cut-in and no sound from the pump: no power, or the switch does not close.',
      'Over cut-out and it still runs: the switch does not open, or its thin pipe is blocked.',
    ],
    then: ['An electrician cleans the thin pipe to the switch or fits a new switch, with the power off.'],
  },
  float: {
    title: 'The float hangs or sticks',
    look: [
      'Look into the open tank from above, without reaching in.',
      'See if the float moves free, and if its cord is caught on a pipe.',
    ],
    tells: [
      'Low water, float down, pump silent: the float switch or its cable has failed.',
      'Full tank, float up, pump on: the switch does not open.',
    ],
    then: ['Free a caught cord with the breaker off; a failed float is for an electrician.'],
  },
  drive: {
    title: 'The drive has stopped it',
    look: [
      'A drive is the box that makes the pump run faster or slower.',
      'Read the sign or number on its front, and write it down.',
      'Look it up in the drive’s own book.',
    ],
    tells: ['The number names the cause: no water, too much current, or a bad pressure sensor.'],
    then: [
      'Switch off, wait five minutes, and switch on once.',
      'If the sign comes back, call whoever set the drive up.',
    ],
  },
  dryRunStop: {
    title: 'Dry-run protection has stopped it',
    look: [
      'It stops the pump when the water is too low, and lets it start again later.',
      'Look for a lamp or a sign on its box that says so.',
      'Draw no water for an hour or two, and see if it starts by itself.',
    ],
    tells: [
      'It starts after the rest: the well was drawn down, and the device did its work.',
      'It never starts: the water stays low, or the device has failed.',
    ],
    then: ['Draw less at a time, and have the water level measured. Never bridge the device.'],
  },
  controlBox: {
    title: 'The control box has failed',
    look: [
      'The control box is the grey box near the tank that helps the motor start.',
      'Listen at it from outside: a hum without a start, or clicks, are signs.',
      'Look for brown marks or a burnt smell, from outside.',
    ],
    tells: ['A hum and then a trip: the start part of the box is often worn.'],
    then: ['A licensed electrician measures its parts, and fits a new box of the motor’s own power.'],
  },
  wireThin: {
    title: 'Too little voltage gets to the motor',
    look: [
      'See if the lights go dim when the pump starts.',
      'A licensed electrician measures the volts at the box, at rest and as the pump starts.',
    ],
    tells: ['Low at rest: the supply is weak. Low only as it starts: wire too thin, or a loose joint.'],
    then: ['Ask the power company for a weak supply; a thin wire is changed for a thicker one.'],
  },
  wireHot: {
    title: 'The wire is too thin for the current',
    look: [
      'From outside, look for cable that is brown, soft or shiny.',
      'A licensed electrician compares wire, breaker and the amps that are drawn.',
    ],
    tells: ['Wire that carries more than it may gets hot in the wall, where nobody sees it.'],
    then: ['The breaker stays off until the wire has been changed.'],
  },
  supplyFit: {
    title: 'Motor and supply do not match',
    look: [
      'Compare the papers of the motor with the supply: volts, phases and wires.',
      'Ask if pump, box or panel was changed shortly before.',
    ],
    tells: ['A motor on the wrong volts or the wrong box hums, runs hot and trips.'],
    then: ['A licensed electrician puts it on the right supply, or fits the right box.'],
  },
  rotation: {
    title: 'The motor turns backward',
    look: [
      'A three-phase motor runs backward when two of its wires are swapped.',
      'Ask if anyone worked on the panel or the power line shortly before.',
    ],
    tells: ['A pump that turns backward gives some water, and never enough pressure.'],
    then: ['A licensed electrician tries both ways round: the one with more water is right.'],
  },
  cooling: {
    title: 'The motor gets too hot in the well',
    look: [
      'Note how long it runs before it trips, and if it runs again after an hour.',
      'Count how often it starts in an hour.',
    ],
    tells: ['Off after long runs, and fine when it has cooled: the water does not cool it enough.'],
    then: ['When the pump is next pulled, a sleeve round the motor leads the water past it.'],
  },
  cable: {
    title: 'The cable in the well is hurt',
    look: [
      'Note if the breaker goes off at once, each time.',
      'A licensed electrician measures the cable against ground, with the breaker off.',
    ],
    tells: [
      'A low reading: a rubbed cable, a wet splice or the motor. A splice joins two cables.',
      'The three cannot be told apart from above: the string has to come up.',
    ],
    then: ['The pump is pulled, and cable and splice are looked at all the way down.'],
  },
  motor: {
    title: 'The motor has failed',
    look: [
      'A licensed electrician measures amps while it runs, and ohms with the breaker off.',
      'The readings are held against the motor’s plate or papers.',
    ],
    tells: [
      'Far more amps than the plate: it is jammed, or worn, or its volts are low.',
      'Far fewer amps: it turns, and lifts no water.',
      'No amps at all: a wire is broken, or the box gives none.',
    ],
    then: ['Motor and pump are pulled and changed together, by people with a hoist.'],
  },
  jammed: {
    title: 'The pump is jammed with sand',
    look: [
      'Think back: did sand come with the water, or was the pump off for long?',
      'A licensed electrician reads the amps as it tries to start.',
    ],
    tells: ['Amps that stay high and no water: the pump does not turn.'],
    then: ['Do not start it again and again. The pump is pulled, and the sand’s way in is closed.'],
  },
  terminal: {
    title: 'A loose wire in box or panel',
    look: [
      'With the breaker off, look from outside for brown marks and smell at the boxes.',
      'A licensed electrician opens them, and checks each screw and wire end.',
    ],
    tells: ['A loose end gets hot at a current that a tight one carries with ease.'],
    then: ['Burnt ends and parts are cut off and replaced, not just made tight.'],
  },
  otherLoad: {
    title: 'Something else is on the meter',
    look: [
      'Switch the pump’s breaker off for ten minutes, and watch the meter.',
      'Think of a heat tape, a heater in the well house, or a light that is on.',
    ],
    tells: ['The meter runs on with the pump off: it is not the pump.'],
    then: ['Switch off one breaker after the other to find what draws the current.'],
  },
};
