/** Where the line arrives. */
import type { StepNumbers } from '../../../model/work/step.ts';
import { onBarbs, TAPE_AND_PASTE } from './phrases.ts';
import type { StepsOf } from './stepWords.ts';

/** Sources  no valve between pump and relief valve, charge with the tank empty and the rest: common practice, no source. */
export const house: StepsOf<'riser' | 'tankTee' | 'tank' | 'openTank' | 'boxes'> = {
  riser: ({ way }) => ({
    title: 'Bring the line in',
    does: [
      'Lead the line through the wall or the floor in a sleeve, and seal round it.',
      ...riserJoint[way],
      'Bring it up where it stays warm, not along an outer wall.',
    ],
    why: 'The last stretch is the one that freezes: frost comes in along the wall.',
    check: ['The pipe does not rest on the edge of the hole.', 'No stretch of it lies in frost.'],
    mistake: 'The pipe bends sharply at the wall, kinks, and lets half the water through.',
  }),
  tankTee: ({ relief, drive }) => ({
    title: 'Build the tank tee',
    does: [
      'The tank tee is a fitting with a port for each thing at the tank.',
      drive
        ? 'Screw in gauge, pressure sensor or switch, and the drain at the lowest port.'
        : 'Screw in gauge, pressure switch, and the drain at the lowest port.',
      relief
        ? 'Screw in the relief valve; its open pipe ends over the floor, where it is seen to run.'
        : 'No relief valve is planned: ask whether the pump can burst the tank before you go on.',
      'The shut-off to the house comes after all of these.',
      'Put no valve between the pump and this tee.',
    ],
    why: 'A pump against a shut pipe builds pressure until something bursts.',
    check: [
      relief
        ? 'Nothing that closes stands between the pump, the switch and the relief valve.'
        : 'Nothing that closes stands between the pump and the switch.',
      ...(relief ? ['The relief valve’s pipe is open, and nothing plugs it.'] : []),
    ],
    mistake: 'The shut-off sits before the switch: once it is closed, the pump runs on against it.',
  }),
  tank: ({ precharge, cutIn, stands }, show) => ({
    title: stands ? 'Check the tank’s air' : 'Charge the tank',
    does: [
      ...(stands ? [] : ['Set the tank level and screw it to the tee.']),
      'It has to be empty of water, its drain open, and the power still off.',
      `Set its air to ${show.pressure(precharge)} with an air gauge: that is the pre-charge.`,
      `The pump starts at ${show.pressure(cutIn)}, the cut-in: the air belongs a little under that.`,
      'Add air in short bursts, and never more than the tank’s plate allows.',
    ],
    why: 'The air gives the water back between starts; too little or too much wears the pump out.',
    check: ['The gauge reads the same again after some minutes.', 'The cap is back on the air valve.'],
    mistake: 'The air is read with water in the tank: the figure is wrong, and the pump starts too often.',
  }),
  openTank: () => ({
    title: 'Set the open tank',
    does: [
      'Set the tank on a level base that bears it full of water.',
      'Let the line end above the highest water, so that nothing is sucked back.',
      'Hang the float switch so that it moves freely: up it stops the pump, down it starts it.',
      'Put the shut-off at the tank’s outlet to the house, never in the line from the pump.',
      'Lead an overflow outside, with a screen, and cover the tank.',
    ],
    why: 'The float is all that stops the pump when the tank is full.',
    check: ['Moved by hand, the float swings free of wall and pipe.', 'Cover and screen are whole.'],
    mistake: 'The float hangs on its own cable and sticks, and the tank runs over.',
  }),
  boxes: ({ box, relay, phase }) => ({
    title: 'Have the boxes wired',
    does: [
      'A licensed electrician mounts and wires all of this, as the local code asks.',
      'The disconnect can be reached, and can be locked.',
      ...(box === null ? [] : [BOXES[box]]),
      ...(relay ? ['The relay for the probe is set by its own sheet.'] : []),
      phase === 3
        ? 'Three-phase motors need their overload protection set to the nameplate.'
        : 'Breaker and wire are chosen by the nameplate.',
      'Everything stays locked off until the first run.',
    ],
    why: 'A wrong wire here burns the motor or makes the casing live.',
    check: [
      'Nameplate, box and breaker belong together.',
      'The ground wire runs unbroken from the panel to the motor.',
    ],
    mistake: 'A motor for one voltage gets another, hums for a moment, and is gone.',
  }),
};

const riserJoint: Readonly<Record<StepNumbers['riser']['way'], readonly string[]>> = {
  barb: onBarbs(2),
  socket: ['Prime and cement the joints as the can says, in moving air, and let them set.'],
  thread: [TAPE_AND_PASTE],
};

const BOXES = {
  controlBox: 'The control box, which starts a three-wire motor, has to match the motor’s power.',
  drive: 'The drive, which turns the motor faster or slower, has to match motor and cable.',
} as const;
