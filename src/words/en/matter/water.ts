/** The water in the well. */
import type { CausesOf } from './causeWords.ts';

/**
 * Sources  cap, vent, low casing and rain: CDC and state pamphlets on private wells, from memory; nitrate and coliform tests:
 *          EPA, Private Drinking Water Wells, from memory; the rest: common practice, no source
 */
export const water: CausesOf<
  | 'waterLow'
  | 'outpumped'
  | 'gas'
  | 'nearBottom'
  | 'inScreen'
  | 'screenFast'
  | 'brokenWall'
  | 'newWork'
  | 'surfaceWater'
  | 'nearWaste'
  | 'corrosion'
  | 'bacteria'
> = {
  waterLow: {
    title: 'The water in the well has fallen',
    look: [
      'Ask the neighbors if their wells are low too, and think of the last dry months.',
      'Have the water level measured with the pump off, by someone with a tape for wells.',
      'Hold it against the level that the plan has.',
    ],
    tells: [
      'As high as ever: the fault is in pump, pipe or power.',
      'Much lower: the pump has to lift more, or hangs in air.',
    ],
    then: [
      'Use less water at a time, and let the well rest.',
      'A contractor can hang the pump lower where the well has room.',
    ],
  },
  outpumped: {
    title: 'The pump takes more than the well gives',
    look: [
      'Leave all taps shut for some hours, then run one tap and time it.',
      'Note how long it runs well before it gets weak or spits.',
      'Rest the well for as long again, and see if it comes back.',
    ],
    tells: [
      'Good at first, then weak or air, and good again after a rest: the well is drawn down.',
      'The same all the time: look for another cause.',
    ],
    then: [
      'Use the water over more of the day, and have dry-run protection fitted.',
      'A valve that limits the flow, or a store for water, helps for good.',
    ],
  },
  gas: {
    title: 'Gas comes with the water',
    look: [
      'Fill a glass: gas makes it milky, and it clears from the bottom up.',
      'Smell it: rotten eggs are one gas, but others have no smell.',
      'Let a lab test the water for gas, in the lab’s own bottle.',
    ],
    tells: ['Bubbles at every hour, and not just after long use, point to gas from the ground.'],
    then: ['A contractor vents the well outdoors and takes the gas out before the house.'],
  },
  nearBottom: {
    title: 'The pump hangs too near the bottom',
    look: [
      'Look in the papers for the depth of the well and of the pump.',
      'When the pump is next out, have the bottom sounded: mud fills a well up over the years.',
    ],
    tells: ['Mud and sand that come at each start are stirred up from the bottom.'],
    then: ['The pump is hung higher, or the well is cleaned out, by a contractor.'],
  },
  inScreen: {
    title: 'The pump hangs in the screen',
    look: [
      'The screen is the pipe with slots that lets water in and keeps sand out.',
      'Look in the papers for where it begins, and how deep the pump hangs.',
    ],
    tells: ['A pump in the screen pulls hard at one spot, and draws sand through the slots.'],
    then: ['The pump is raised over the screen where the water allows it.'],
  },
  screenFast: {
    title: 'Water runs too fast through the screen',
    look: [
      'Open one tap only a little for an hour, and look for sand again.',
      'Look in the papers for the slots of the screen.',
    ],
    tells: ['Less sand at a small flow: the screen is drawn too hard, or half of it is blocked.'],
    then: ['Pump less at a time, or have a contractor clean the screen.'],
  },
  brokenWall: {
    title: 'A hole in casing or screen',
    look: [
      'Note if the sand came all at once, and does not get less.',
      'Have a contractor put a camera down when the pump is out.',
    ],
    tells: ['Sand from one day to the next, and more each week, points to a hole.'],
    then: ['A contractor lines the well, or says that a new one is due.'],
  },
  newWork: {
    title: 'Something was worked on shortly before',
    look: [
      'Think back: a new pump, a new well, a pipe opened, a power cut, or long away.',
      'Run an outside tap until the water is clear and free of air.',
    ],
    tells: ['It clears and stays clear: it was air, rust or mud from the work.'],
    then: ['If it comes back the next day, go on with the next cause.'],
  },
  surfaceWater: {
    title: 'Rain gets in at the top',
    look: [
      'Note if it is worse some hours after rain or snow melt.',
      'Look at the cap: is it tight, bolted and whole, and its vent screened?',
      'Look at the ground: it should fall away from the casing on all sides.',
    ],
    tells: ['Mud after rain means that water from the ground’s surface finds a way in.'],
    then: ['Have cap, seal and ground put right; then the well is disinfected and tested.'],
  },
  nearWaste: {
    title: 'Waste water is too near',
    look: [
      'Look for septic tank, drain field, stable and fuel tank, and pace the way to the well.',
      'Have a lab test for coliform bacteria and nitrate.',
    ],
    tells: ['Bacteria or nitrate mean that waste may reach the well.'],
    then: ['Ask the health department what is to be done; a filter alone may not do.'],
  },
  corrosion: {
    title: 'The water eats metal',
    look: ['Look for blue or green stains under taps, or for rust.', 'Have a lab test pH, iron, copper and lead.'],
    tells: ['Low pH eats copper, brass and steel; the pipe or a fitting goes through in time.'],
    then: ['Ask who treats water near you; in the well, metals that do not suit are changed.'],
  },
  bacteria: {
    title: 'Bacteria live in the well',
    look: [
      'Look into the tank of a toilet for slime, red or black.',
      'Have a lab test for coliform bacteria, in the lab’s own bottle.',
    ],
    tells: [
      'Red slime comes from iron bacteria; the smell of rotten eggs often from others.',
      'Neither is told from what can make you ill without a test.',
    ],
    then: ['Well and pipes are disinfected, flushed and tested again; slime often takes more than once.'],
  },
};
