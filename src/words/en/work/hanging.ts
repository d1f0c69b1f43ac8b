/** The string hangs: its top joint, what bears it, and what leaves the well there. */
import type { StepNumbers } from '../../../model/work/step.ts';
import { wireName } from '../../../model/units.ts';
import { clamps, onBarbs, PLASTIC_THREAD, round, taped } from './phrases.ts';
import type { StepsOf } from './stepWords.ts';

/**
 * Sources  rope ends inside: Md. Code Regs. 26.04.04.22 C; casing bonded: NEC 250.112(M); conduit closed, vent screened, the
 *          mark on the lift-out pipe, hand-tight and counted, the loop of cable: common practice, no source
 */
export const hanging: StepsOf<'topJoint' | 'seat' | 'seal' | 'aboveSeal' | 'ropeTied' | 'capSplice' | 'cap'> = {
  topJoint: ({ way, clamps: count, bushing }) => ({
    title: 'Make the top joint',
    does: [
      'Stop with the pipe’s end a hand above the casing, held by the pipe clamp.',
      ...(bushing === null
        ? []
        : [`Screw the bushing into the adapter’s sliding half: it takes it from ${bushing.from} to ${bushing.to}.`]),
      ...(way === 'barb'
        ? ['Screw the insert fitting into the adapter’s sliding half first, with tape and paste.', ...onBarbs(count)]
        : ['Screw the adapter’s sliding half on, with tape and paste; start it by hand.', PLASTIC_THREAD]),
      'Lead the cable past on the far side, and grease the rubber ring with grease for drinking water.',
    ],
    why: 'This joint carries the whole string for as long as it hangs.',
    check: ['The clamp of the string held while the joint was made.', 'No cable can come between the halves.'],
    mistake: 'The cable lies between the two halves and is crushed when the adapter seats.',
  }),
  seat: ({ liftPipe, thread }, show) => ({
    title: 'Seat the adapter',
    does: [
      liftPipe === null
        ? 'Nobody said how long the lift-out pipe must be: measure down to the adapter.'
        : `Screw the lift-out pipe in, ${taped(liftPipe, show)}, often with ${thread} threads: hand-tight, turns counted.`,
      'Its mark was made with the sliding half seated: there it meets the casing’s top.',
      'Take the weight, open the clamp, and lower with the sliding half turned to the body.',
      'Push down until the mark is there, with the string still on the hoist.',
      'Ease the hoist slowly: nothing may sink or rock.',
      'Turn the lift-out pipe out by the counted turns, and keep it for the next time.',
    ],
    why: 'Half seated, the adapter leaks in the ground and can let the string go.',
    check: ['The mark was at the casing’s top.', 'With the hoist slack, nothing moved.'],
    mistake: 'The lift-out pipe goes in with a wrench, and turning it out undoes a joint below.',
  }),
  seal: ({ way, clamps: count }) => ({
    title: 'Set the sanitary seal',
    does: [
      'Slide the seal, two plates with rubber between, on the pipe before the joint above is made.',
      ...(way === 'barb'
        ? [`The rigid nipple goes through it; an insert fitting under it takes the pipe, with ${clamps(count)}.`]
        : []),
      'Lead the cable and any probe wires through their own holes.',
      'Screw the coupling on above it: resting on the plate, it carries the whole string.',
      'Screw a lift-out pipe in, take the weight, open the clamp, and lower onto the casing.',
      'Turn it until the line faces the house, then tighten its bolts a little each in turn.',
    ],
    why: 'The seal carries the string, and keeps rain, insects and dirt out of the well.',
    check: [
      'The coupling rested on the plate before the hook was let go.',
      'The vent’s screen is whole and looks down.',
      ...(way === 'barb' ? ['The clamps sit side by side, screws on opposite sides.'] : []),
    ],
    mistake: 'The seal is remembered when the coupling is on, and the joint is undone over the open well.',
  }),
  aboveSeal: ({ rejoins }) => ({
    title: 'Fit tee and plug',
    does: [
      'Screw on the short nipple and the tee, its branch to the house.',
      'Hold the coupling with a second wrench, so that nothing below turns.',
      'Close the upright end with the plug, with tape: it has to come out again.',
      ...(rejoins ? ['Set the line back on its support, and close the union with a clean ring.'] : []),
      PLASTIC_THREAD,
    ],
    why: 'The plug makes room for the lift-out pipe when the string is pulled.',
    check: ['The coupling did not turn.', 'Room is left above the plug for a hoist.'],
    mistake: 'One wrench alone is used, and a joint down the well comes loose.',
  }),
  ropeTied: ({ tied, kind }) => ({
    title: kind === 'pitless' ? 'Tie the rope inside' : 'Tie rope to seal',
    does: [
      ropePlan[tied](kind === 'pitless' ? 'the hook inside the casing' : 'the eye under the seal'),
      kind === 'pitless'
        ? 'Leave it slack, with no end that could reach the pump’s intake.'
        : 'Do it now, while the seal can be reached from below; leave the rope slack.',
      'The pipe carries the string: the rope carries nothing.',
    ],
    why: 'A tight rope becomes the hanger, and a loose one falls down the well.',
    check: ['The rope ends inside, and hangs slack.'],
    mistake:
      kind === 'pitless'
        ? 'The rope goes out under the cap, and dirt and insects go in along it.'
        : 'The rope is remembered when the seal is set, and all of it has to be lifted again.',
  }),
  capSplice: ({ joints, gauge, cap }, show) => ({
    title: cap ? 'Join wires under the cap' : 'Join wires in the box',
    does: [
      'Read the insulation once more, from each wire to ground, before anything is joined.',
      cap
        ? `Lead the cable to the conduit, with a loop of ${round(show, 'some 3 ft', 'about 1 m')} so that the string can be lifted.`
        : 'Leave some cable to spare in the box.',
      'A licensed electrician joins the wires, with the breaker locked off.',
      `It takes ${joints} joints of a kind for wet places and ${wireName(gauge, show.units)} wire.`,
      'Close the mouth of the conduit, so that no gas or insect goes through it.',
    ],
    why: 'After the splice a bad cable in the well can no longer be told from a bad one outside.',
    check: ['The insulation reads as high as on the ground.', 'A metal casing has its bond.'],
    mistake: 'Two wires are crossed, and the motor hums, starts backward or burns.',
  }),
  cap: () => ({
    title: 'Close the well',
    does: [
      'Look first: the bond of a metal casing, rope tied, cable looped in, nothing left inside.',
      'Wipe the gasket and set the cap on it, no wire under its edge.',
      'Tighten the bolts a little each in turn.',
      'See that the vent’s screen is whole and looks down.',
    ],
    why: 'The vent lets air in as the water falls, and the gasket keeps the rest out.',
    check: ['The cap does not turn or rock.', 'No wire is pinched.'],
    mistake: 'The vent is blocked, the falling water sucks, and dirt is drawn in past the gasket.',
  }),
};

/** A plan may have it where it should not be. */
const ropePlan: Readonly<Record<StepNumbers['ropeTied']['tied'], (to: string) => string>> = {
  'casing hook': (to) => `Tie the rope to ${to}.`,
  cap: (to) => `The plan ties the rope to what comes off the well: tie it to ${to}.`,
  'through cap': (to) => `The plan leads the rope out of the well: it must end inside, on ${to}.`,
  loose: (to) => `The plan leaves the rope loose, and it would slide down: tie it to ${to}.`,
};
