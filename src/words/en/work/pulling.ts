/** The old string comes out, and the well is looked at while it is empty. */
import type { OldString } from '../../../model/work/step.ts';
import { gap } from '../phrases.ts';
import { taped } from './phrases.ts';
import type { StepsOf } from './stepWords.ts';

/** Threaded pipe comes up length by length, pipe that bends in one: nobody learns on the hook which it is. */
const pulls: Readonly<Record<OldString, readonly string[]>> = {
  threaded: [
    'The string is the pump with its pipe and cable: lift it by the pipe, never by cable or rope.',
    'Lift one length, close the pipe clamp under the next coupling, then unscrew the length above.',
    'Hold the pipe below with a second wrench, so that nothing under it turns.',
    'Cut the ties as they come; one person leads the cable away.',
    'Measure and write down each length as it comes out.',
  ],
  bends: [
    'The string is the pump with its pipe and cable: lift it by the pipe, never by cable or rope.',
    'Lift straight up over a padded edge, and walk the pipe away in a wide bend.',
    'Close the pipe clamp before any grip is released.',
    'Cut the ties as they come; one person leads the cable away.',
    'Mark and write down how much pipe comes out.',
  ],
  'not told': [
    'Look at the pipe under the cap first: steel or rigid plastic, or coiled plastic that bends.',
    'The string is the pump with its pipe and cable: lift it by the pipe, never by cable or rope.',
    'Rigid: one length at a time, the pipe clamp closed under each coupling before it is unscrewed.',
    'Bending: over a padded edge and away in a wide bend, the clamp closed before a grip is released.',
    'Cut the ties as they come, and write down how much pipe comes out.',
  ],
};

/** Sources  the wires are proved dead where one works: common practice, no source; so are the turns, the clamp and the rest. */
export const pulling: StepsOf<'houseShut' | 'openTop' | 'unseat' | 'pull' | 'sound'> = {
  houseShut: ({ open }) =>
    open
      ? {
          title: 'Shut the water off',
          does: [
            'Shut the valve between the tank and the house.',
            'The line ends open over the tank: let it run empty as far as it does.',
            'Put a bucket where the line will be opened.',
          ],
          why: 'The line stays full of water, and the tank could run back through an opened joint.',
          check: ['Nothing runs into the tank, and nothing out of it.'],
          mistake: 'The tank’s valve is left open, and the house runs dry or the floor gets wet.',
        }
      : {
          title: 'Let the pressure off',
          does: [
            'Shut the valve to the house.',
            'Open the drain at the tank tee, the fitting under the gauge.',
            'Let it run until the gauge shows zero and no more water comes.',
            'Leave the drain open as long as you work at the well.',
          ],
          why: 'A joint that is undone under pressure throws parts and water at you.',
          check: ['The gauge shows zero, and the drain has stopped running.'],
          mistake: 'Only the gauge is trusted: it sticks at zero, and the joint lets go under pressure.',
        },
  openTop: ({ kind }) =>
    kind === 'pitless'
      ? {
          title: 'Open the well cap',
          does: [
            'Brush dirt off the cap, undo its bolts, and lift it aside without pulling on the wires.',
            'Treat every wire as live until it has been tested right there.',
            'Have each wire tested at the splice: to the others and to the casing, zero.',
            'Mark the wires, take a picture, then open the splice and tape the ends.',
            'Leave the house’s cable in the conduit, its end tied so that it cannot slip back.',
            'Free the rope, where there is one, and tie its end off outside.',
          ],
          why: 'The locked breaker may be the wrong one: only a test at the splice tells.',
          check: ['The wires were tested at the splice itself.', 'Nothing loose lies near the open well.'],
          mistake: 'A bolt or a tool falls in and wedges the pump on its way up.',
        }
      : {
          title: 'Free the well top',
          does: [
            'Treat every wire as live until it has been tested right there.',
            'Have each wire tested in its box: to the others and to the casing, zero.',
            'Mark the wires, take a picture, and take them apart.',
            'Open the union, the joint in the line that needs no turning of the pipe.',
            'Swing the line aside, its support with it.',
            'Leave the seal’s bolts tight until the hoist has the weight.',
          ],
          why: 'The locked breaker may be the wrong one: only a test at the wires tells.',
          check: ['The wires were tested in the box itself.', 'Nothing holds the seal but its own bolts.'],
          mistake: 'The bolts are loosened first, and a tool or a nut falls down past the rubber.',
        },
  unseat: ({ kind, liftPipe }, show) =>
    kind === 'pitless'
      ? {
          title: 'Lift the adapter off',
          does: [
            liftPipe === null
              ? 'Nobody said how long the lift-out pipe must be: measure down to the adapter first.'
              : `Take a lift-out pipe of ${taped(liftPipe, show)} with a handle across its top.`,
            'Screw it into the adapter’s upper thread by hand; count the turns and write them down.',
            'Mark it at the casing’s top, hang it on the hoist, and take up the weight.',
            'Pull straight up: the sliding half leaves the body, which stays in the wall.',
            'If it sits fast, stop: never hammer or pry.',
            'When bare pipe shows below, close the pipe clamp on it: a jaw that rests across the padded casing.',
          ],
          why: 'From now on pump, pipe and cable hang from what you hold them with.',
          check: ['The turns are written down.', 'The pipe clamp bears the string before the hook is eased.'],
          mistake: 'The lift-out pipe is in by two turns only, its thread strips, and the pump drops.',
        }
      : {
          title: 'Lift the seal out',
          does: [
            'Take the plug out of the tee and screw a lift-out pipe in by hand; count the turns.',
            'Hang it on the hoist and take up the weight.',
            'Loosen the seal’s bolts in turn until the rubber is free, then lift straight up.',
            'When bare pipe shows below, close the pipe clamp on it: a jaw that rests across the padded casing.',
            'Untie the rope, where there is one, from the eye under the seal.',
            'Screw tee and coupling off, and draw pipe and cable out of the seal.',
          ],
          why: 'From now on pump, pipe and cable hang from what you hold them with.',
          check: ['The turns are written down.', 'The pipe clamp bears the string before the hook is eased.'],
          mistake: 'The lift-out pipe is in by two turns only, its thread strips, and the pump drops.',
        },
  pull: ({ old }) => ({
    title: 'Pull the old string',
    does: [...pulls[old], 'Lay the pump down by its outlet, never by its shell.'],
    why: 'The length of the old pipe tells how deep the old pump hung, better than a report.',
    check: ['The pump is out whole, and every part of it is on the ground.', 'The lengths are written down.'],
    mistake: 'Hands shift their grip with the clamp open, and the string slips back down the well.',
  }),
  sound: ({ depth, motorBottom, casingHeight }, show) => ({
    title: 'Sound the empty well',
    does: [
      'Let a weight down on a clean tape to the bottom.',
      `It should read ${taped(depth + casingHeight, show)} from the casing’s top.`,
      motorBottom < depth
        ? `The new motor is to end ${gap(depth - motorBottom, show)} above that bottom.`
        : `The new motor would end ${gap(motorBottom - depth, show)} under that bottom: change the plan first.`,
      'Tape the water too, when it has come to rest.',
      'Shine a lamp down: look for rust, roots, and water that runs in from the side.',
    ],
    why: 'Wells fill with silt over the years, and a motor that stands in silt burns out.',
    check: ['There is room under the motor, or the plan is changed.', 'No water runs down inside the casing.'],
    mistake: 'The new pump goes as deep as the old one did, and draws mud from a risen bottom.',
  }),
};
