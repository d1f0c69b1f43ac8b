/** The way of the water from the pump to the tank. */
import type { CausesOf } from './causeWords.ts';

/**
 * Sources  a hiss at the casing, pressure held with valves shut, a column that drains and strikes at the next start: common
 *          practice, no source
 */
export const way: CausesOf<
  | 'adapterLeak'
  | 'sealLeak'
  | 'brokenPipe'
  | 'valveDown'
  | 'checkValve'
  | 'secondValve'
  | 'narrowPipe'
  | 'lineLeak'
  | 'twist'
> = {
  adapterLeak: {
    title: 'The pitless adapter leaks',
    look: [
      'The pitless adapter is the elbow in the casing wall where the water leaves the well.',
      'With the pump running, listen close to the casing, without touching it: is there a hiss?',
      'Look at the ground beside the well for a wet or sunken spot.',
    ],
    tells: [
      'A splash inside the casing: the seal ring leaks, or the elbow has lifted off its seat.',
      'Wet ground outside: the joint to the buried line leaks.',
    ],
    then: ['A contractor lifts the string a little, changes the ring, and seats it again.'],
  },
  sealLeak: {
    title: 'A joint above the well leaks',
    look: [
      'Look at tee, plug and union on top of the well while the pump runs.',
      'Dry each joint with a cloth, and look again after ten minutes.',
    ],
    tells: ['A drop while it runs, or a hiss of air when it stops, is the leak.'],
    then: ['With the pump off and the gauge at zero, the joint is opened and sealed anew.'],
  },
  brokenPipe: {
    title: 'The pipe in the well has a hole',
    look: [
      'With the pump running, listen close to the casing, without touching it: is there a splash?',
      'Shut the valve to the house, let it fill, switch off, and watch the gauge.',
      'A contractor reads amps while it runs, and the pressure that it makes.',
    ],
    tells: [
      'A splash, and a gauge that falls: water runs back through a hole or a split joint.',
      'Air at the first tap after each rest fits this too.',
    ],
    then: ['The string is pulled, and the pipe is changed, not patched.'],
  },
  valveDown: {
    title: 'The check valve is the wrong way round',
    look: [
      'A check valve lets water up and never back down; its arrow points up.',
      'Ask if the trouble began with a new pump or a new pipe.',
    ],
    tells: ['No water at all from the first start on, and a pump that runs: it may be this.'],
    then: ['Switch off. The string is pulled, and the valve is turned.'],
  },
  checkValve: {
    title: 'The check valve leaks or is missing',
    look: [
      'A check valve lets water up and never back down. It sits at the pump.',
      'Shut the valve to the house, let the tank fill, switch off, and watch the gauge.',
      'Right after it stops, listen close to the casing, without touching it.',
    ],
    tells: [
      'The gauge falls with the house shut: the water goes back down, or out of the line.',
      'Water heard running down after each stop has passed the valve.',
      'A blow or air at each start: the pipe has drained, and fills with a rush.',
    ],
    then: ['The string is pulled, and a new valve is put in at the pump.'],
  },
  secondValve: {
    title: 'A second check valve near the house',
    look: [
      'Follow the pipe from the wall to the tank, and look for a valve with an arrow on it.',
      'Note if the blow comes as the pump starts.',
    ],
    tells: ['Between two valves the pipe can drain a little and hold a gap; water slams into it.'],
    then: ['A plumber takes it out, if the valve at the pump holds.'],
  },
  narrowPipe: {
    title: 'The pipe is too thin, or grown shut',
    look: [
      'With the pump on, time a bucket at the tank’s drain, then one at the house.',
      'Think back: did it get weak over years, or was it so from the start?',
    ],
    tells: [
      'Weak from the first day: the pipe is thin for the flow.',
      'Weaker year by year: scale or rust grows in it.',
    ],
    then: ['Draw less at once; a new line or pipe is made one size wider.'],
  },
  lineLeak: {
    title: 'The buried line leaks',
    look: [
      'Shut the valve to the house and watch the gauge with the pump off for half an hour.',
      'Walk the line’s way: look for wet, green or sunken ground.',
      'Run no tap and note how often the pump starts.',
    ],
    tells: [
      'The gauge falls and no tap drips: line, adapter, valve or pipe in the well leak.',
      'A wet spot on the way tells where.',
    ],
    then: ['The line is dug up at that spot, and the joint is made new.'],
  },
  twist: {
    title: 'The string knocks on the wall',
    look: [
      'At each start the pump twists its pipe; a torque arrestor takes that up.',
      'Listen close to the casing as the pump starts, without touching it: does it knock once?',
    ],
    tells: ['A knock at the casing at each start, and none in the house, points to this.'],
    then: ['At the next pull an arrestor is fitted, and the cable is looked at for rubbed spots.'],
  },
};
