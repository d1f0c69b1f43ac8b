/** In the casing’s wall and in the trench; and over a seal. */
import type { StepNumbers } from '../../../model/work/step.ts';
import { gap } from '../phrases.ts';
import { onBarbs, round, TAPE_AND_PASTE, taped } from './phrases.ts';
import type { StepsOf } from './stepWords.ts';

/**
 * Sources  protection from 5 ft on: 29 CFR 1926.652(a); soil 2 ft back: 29 CFR 1926.651(j); hole by a guide or template:
 *          Minn. Rules 4725.4850; wire in the ground: the local code; bedding, first 5 ft of the line and the rest: common
 *          practice, no source
 */
export const top: StepsOf<'trench' | 'hole' | 'adapterBody' | 'line' | 'conduit'> = {
  trench: ({ outlet }, show) => ({
    title: 'Dig the trench',
    does: [
      `The pipe leaves the casing ${gap(outlet, show)} down: dig a little deeper, from there to the house.`,
      `From ${round(show, '5 ft', '1.5 m')} on, and sooner in loose soil, shore it or slope its walls.`,
      `Heap the soil at least ${round(show, '2 ft', '0.6 m')} back from the edge.`,
      'Nobody works in it alone, and a ladder stands in it.',
      'Dig by hand beside the casing, and leave its grout, the filling round it, whole.',
      'Fence it off, also overnight.',
    ],
    why: 'The line has to lie below frost all the way, and a wall that caves in buries a person.',
    check: ['Shoring, ladder and fence stand.', 'It is deep enough everywhere, also under the drive and at the house.'],
    mistake: 'The trench is shallower under the cleared drive, and the line freezes there.',
  }),
  hole: ({ fromCasingTop }, show) => ({
    title: 'Cut the hole',
    does: [
      `Measure ${taped(fromCasingTop, show)} down from the casing’s top: there the outlet pipe has its upper edge.`,
      'Turn the hole to face the trench, clear of any weld or joint of the casing.',
      'Hang a clean cloth inside, under the hole, to catch the chips.',
      'Cut from outside with the adapter maker’s template and hole saw, square to the wall.',
      'Smooth both edges, and lift out cloth and chips.',
      'Write down how much grout was cut away: it has to be put back.',
    ],
    why: 'A ragged hole leaks under the ground, where nobody sees it.',
    check: ['The hole is round and smooth, and above the water.', 'The chips are out of the well.'],
    mistake: 'The hole is measured from ground that is levelled later, and ends up in the frost.',
  }),
  adapterBody: () => ({
    title: 'Fix the adapter’s body',
    does: [
      'A pitless adapter has two halves: the body in the wall, and one that slides on it.',
      'Let the body down inside the casing and bring its outlet through the hole.',
      'One gasket lies inside the wall, one outside, both along the curve.',
      'Hold the body upright and tighten the nut as the maker says.',
      'Seat the empty sliding half with the lift-out pipe, mark that at the casing’s top, and take both out.',
    ],
    why: 'The body bears the pump and its pipe, and its gaskets keep dirty water out.',
    check: ['The body stands upright.', 'The sliding half goes on and comes off without force.'],
    mistake: 'The body leans a little, the sliding half never seats, and it leaks in the ground.',
  }),
  line: ({ length, way, clamps, above }, show) => ({
    title: above ? 'Run the line' : 'Lay the line',
    does: [
      length === null
        ? 'Nobody said how long the way to the house is: measure it before you cut.'
        : above
          ? `It takes about ${show.length(length)} of pipe to the house.`
          : `It takes about ${show.length(length)} of pipe to the house, bedded on firm, even soil.`,
      ...(above
        ? ['Beside the tee come the union, which opens again, and the tap for samples; under them a support.']
        : []),
      ...lineJoint[way](clamps, above),
      'Leave every joint open to the eye until it has been under pressure.',
    ],
    why: above
      ? 'The seal must not carry the line, and the union lets the seal come off again.'
      : 'Soil that sinks under the line pulls on the adapter and breaks it.',
    check: [
      above
        ? 'The support carries the line, not the tee.'
        : `Its first ${round(show, '5 ft', '1.5 m')} lie on packed soil, and no stone touches it.`,
      'No dirt got into the pipe.',
    ],
    mistake: lineMistake[way],
  }),
  conduit: ({ run, depth, bonded }, show) => ({
    title: bonded === true ? 'Lay conduit, cable and bond' : 'Lay conduit and cable',
    does: [
      depth > 0
        ? `Set the conduit, the tube for the cable, from the casing’s top to ${gap(depth, show)} below ground.`
        : 'Set the conduit, the tube for the cable, at the casing’s top.',
      run === null
        ? 'Nobody said how far the cable runs: measure from the panel to the well.'
        : `Draw in the cable from the house: about ${show.length(run)}, and what it takes to the panel.`,
      'Take cable that its print allows in wet conduit or in the ground.',
      ...(bonded === null
        ? ['Nobody said what the casing is made of: a metal one needs the ground wire, a bond.']
        : []),
      ...(bonded === true ? ['Have the electrician join the ground wire to the metal casing: that is the bond.'] : []),
      'Leave both ends taped: a licensed electrician joins them, with the power locked off.',
    ],
    why:
      bonded === true
        ? 'With the bond a fault trips the breaker; without it the casing can turn live.'
        : 'The conduit keeps spade, sun and mice off the cable.',
    check: [
      ...(bonded === true ? ['The bond is on before the well is closed.'] : []),
      'The cable slides freely in the conduit, and its ends are dry.',
    ],
    mistake: 'Cable is laid bare and shallow, and years later a spade finds it live.',
  }),
};

const lineJoint: Readonly<Record<StepNumbers['line']['way'], (clamps: number, above: boolean) => readonly string[]>> = {
  barb: (clamps, above) => [
    ...(above ? [] : ['Screw the insert fitting, a piece with barbs, into the adapter’s outlet, with tape and paste.']),
    ...onBarbs(clamps),
  ],
  socket: () => [
    'Cut the pipe square, smooth it, and dry-fit it.',
    'Prime and cement as the can says, in moving air, and push it home with a quarter turn.',
    'Let it set as long as the can says before water comes.',
  ],
  thread: () => [
    TAPE_AND_PASTE,
    'Start each thread by hand, then tighten it with two wrenches, one to hold and one to turn.',
  ],
};

const lineMistake: Readonly<Record<StepNumbers['line']['way'], string>> = {
  barb: 'The clamps are remembered when the pipe is on: cut it off and begin again, shorter.',
  socket: 'The joint is put under pressure before it has set, and it creeps apart.',
  thread: 'One wrench alone is used, and the joint behind it turns and leaks.',
};
