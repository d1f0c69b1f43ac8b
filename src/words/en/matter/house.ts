/** Tank, switch and house. */
import type { CausesOf } from './causeWords.ts';

/**
 * Sources  a tank that is heavy and dull all the way up, its air read with the tank empty, dye in the toilet's tank, air set a
 *          little under cut-in: common practice, no source
 */
export const house: CausesOf<
  | 'afterTank'
  | 'switchLow'
  | 'tooMuchAsked'
  | 'cutOutHigh'
  | 'wornPump'
  | 'houseLeak'
  | 'waterlogged'
  | 'tankSmall'
  | 'precharge'
  | 'switchGap'
  | 'fastValve'
> = {
  afterTank: {
    title: 'A shut valve or a full filter',
    look: [
      'Read the gauge at the tank while a tap is open.',
      'Look at each valve after the tank, and at filter and softener.',
      'Where the filter has a bypass, open it and try again.',
    ],
    tells: [
      'Good pressure at the tank and none at the tap: well and pump are not the cause.',
      'Little at the tank as well: go on with the next.',
    ],
    then: ['Open the valve, or change the filter with its water shut off.'],
  },
  switchLow: {
    title: 'The switch is set low',
    look: ['Watch the gauge: note where the pump starts (cut-in) and where it stops (cut-out).'],
    tells: [
      'It starts and stops lower than the plan says: the switch was turned down, or has moved.',
      'As planned: leave the switch as it is.',
    ],
    then: [
      'An electrician sets it; the tank’s air goes with it.',
      'Never set the stop higher than the pump can reach.',
    ],
  },
  tooMuchAsked: {
    title: 'The house asks for more than the pump gives',
    look: [
      'Run one tap alone, then two, and watch the gauge.',
      'Let the tank’s drain run until the pump is on, then time a bucket: that is the flow.',
    ],
    tells: ['Good with one tap, weak with three: the pump gives what it can.'],
    then: ['Spread the use, or have a pump chosen that suits both house and well.'],
  },
  cutOutHigh: {
    title: 'The pump cannot reach cut-out',
    look: [
      'With all taps shut, watch where the gauge comes to stand.',
      'Do not wait long: switch off if it stands still for five minutes.',
    ],
    tells: ['It stands under the cut-out and does not rise: the switch can never open.'],
    then: ['An electrician sets cut-out and cut-in lower, or the pump is seen to.'],
  },
  wornPump: {
    title: 'The pump is worn',
    look: [
      'Time a bucket at the tank’s drain just as the pump has started.',
      'Hold the flow against what the plan expects.',
      'Have water level and amps measured at the same time.',
    ],
    tells: ['Level as ever, no leak, and far less flow: the wheels of the pump are worn.'],
    then: ['The pump is pulled and changed; ask first why it wore: sand, or short starts.'],
  },
  houseLeak: {
    title: 'Water runs off in the house',
    look: [
      'Shut the valve from the tank to the house, and see if the pump still starts.',
      'Put food dye in each toilet’s tank and wait: color in the bowl is a leak.',
      'Look at taps, hoses, sprinklers, the softener’s drain and the relief valve’s pipe.',
    ],
    tells: ['With the house shut off all is quiet: the leak is in the house.'],
    then: ['Mend the tap or the toilet; it is the cheapest cause of all.'],
  },
  waterlogged: {
    title: 'The tank has lost its air',
    look: [
      'Knock on the tank from top to bottom: air sounds hollow, water dull.',
      'Press the pin of the air valve on top for a moment.',
      'With a watch, time the pump from start to stop with one tap open.',
    ],
    tells: [
      'Dull up to the top, or water from the air valve: the bag inside has burst.',
      'Runs of a few seconds say the same.',
    ],
    then: ['A tank with a burst bag is changed. An old one without a bag is drained and filled with air.'],
  },
  tankSmall: {
    title: 'The tank is too small for the pump',
    look: ['Read the size on the tank’s plate.', 'Time the pump from start to stop with one tap open.'],
    tells: ['Air right, bag whole, and still short runs: the tank gives too little.'],
    then: ['A larger tank, or a second beside it, gives the motor longer runs.'],
  },
  precharge: {
    title: 'The tank’s air is set wrong',
    look: [
      'The pre-charge is the air in the tank while it has no water.',
      'Switch the pump off, and drain the tank until nothing comes.',
      'Read the air valve on top with a tire gauge.',
    ],
    tells: [
      'Right is a little under the cut-in.',
      'Over it: a gap without water before each start. Far under: little water at each start.',
    ],
    then: ['Add air with a hand pump, or let some out, and read again; then switch on.'],
  },
  switchGap: {
    title: 'Start and stop are too close',
    look: ['Watch the gauge: note where the pump starts (cut-in) and where it stops (cut-out).'],
    tells: ['With a small gap the tank gives little water, and the pump starts often.'],
    then: ['An electrician sets the gap; the tank’s air follows the cut-in.'],
  },
  fastValve: {
    title: 'Something shuts too fast',
    look: [
      'Note if the blow comes as a washer, a toilet or a lever tap shuts.',
      'Shut the same tap slowly, and listen.',
    ],
    tells: ['No blow when it shuts slowly: the water is stopped too fast.'],
    then: ['A plumber fits a small air cushion at that spot, or fastens the pipe.'],
  },
};
