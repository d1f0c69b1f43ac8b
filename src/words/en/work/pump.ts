/** On the ground beside the well: all that is joined to the pump before it is lifted. */
import { wireName } from '../../../model/units.ts';
import { gap } from '../phrases.ts';
import { arrow, clamps, onBarbs, PLASTIC_THREAD, TAPE_AND_PASTE } from './phrases.ts';
import type { StepsOf } from './stepWords.ts';

/**
 * Sources  splice made for under water, each wire by itself: NEC 110.14(B), 300.5(E), W. Va. Code of State Rules 64-46-7.7;
 *          joints staggered, tested in a bucket, hold at the flats and the rest: common practice, no source
 */
export const pump: StepsOf<
  'insulation' | 'sleeve' | 'outlet' | 'lowValve' | 'leads' | 'splice' | 'ropeOn' | 'pumpJoint'
> = {
  insulation: () => ({
    title: 'Test pump and motor',
    does: [
      'Compare the nameplate with the plan: power, volts, phases and number of wires.',
      'Join pump and motor on clean boards, as their sheet says.',
      'Turn the shaft by hand: it goes round without catching.',
      'Read the insulation from each lead to the shell with its tester: it shows whether current leaks.',
      'Read the ohms between the leads, and write all of it down.',
      'Never run a pump dry, not for a moment, not on the tailgate.',
    ],
    why: 'A fault found here costs minutes; found in the well it costs the day.',
    check: [
      'The readings agree with the motor’s sheet: a new one on the ground often has 20 megohms or more.',
      'The plate is written down or in a picture.',
    ],
    mistake: 'The pump is run dry to hear it: water is what cools and greases it, and it seizes.',
  }),
  sleeve: ({ diameter }, show) => ({
    title: 'Fit the flow sleeve',
    does: [
      `Slide the flow sleeve over motor and intake: a tube, ${show.bore(diameter)} inside, that guides the water.`,
      'Close it above the intake and leave it open below.',
      'Set the motor in its middle, and let the leads out where nothing rubs them.',
      'Tighten its band at the pump, not on the motor.',
    ],
    why: 'Water then has to pass along the motor, and that cools it.',
    check: ['The sleeve is closed above and open below.', 'It does not shift when you pull on it.'],
    mistake: 'The sleeve stays open above the intake, water takes the short way, and the motor runs hot.',
  }),
  outlet: ({ bushing, thread, limiter }) => ({
    title: 'Fit the pump’s outlet',
    does: [
      'Hold the pump at the flats of its outlet, never by its shell.',
      TAPE_AND_PASTE,
      ...(bushing === null ? [] : [`Screw in the bushing: it takes the outlet from ${bushing.from} to ${bushing.to}.`]),
      `Screw in the nipple, a short pipe with ${thread} threads, first by hand, then by wrench.`,
      ...(limiter ? ['Screw on the flow-limiting valve, its arrow up.'] : []),
      PLASTIC_THREAD,
    ],
    why: 'The pump hangs from this thread, and every start twists it.',
    check: ['It started straight, by hand, for several turns.', 'No tape hangs into the bore.'],
    mistake: 'The wrench is set on the pump’s shell: it bends, and the wheels inside rub.',
  }),
  lowValve: ({ arrow: points }) => ({
    title: 'Fit the check valve',
    does: [
      'A check valve lets water up and never back down: take one with a spring.',
      arrow(points),
      'Press into it with a clean finger: it opens upward, and not downward.',
      TAPE_AND_PASTE,
      'Hold the pump at its flats with one wrench, and turn the valve with the other.',
    ],
    why: 'It holds the water in the pipe, so that the pump does not spin backward.',
    check: ['The arrow points up, away from the pump.', 'It opens upward only.'],
    mistake: 'The valve is upside down: no water comes, and pump and pipe have to come up again.',
  }),
  leads: ({ strip, whole }) => ({
    title: 'Guide the leads past the pump',
    does: [
      'Clean the motor’s socket, push the lead’s plug in, and tighten it as the sheet says.',
      'Lay the wires flat along the pump, without a twist.',
      strip
        ? 'Fasten the guard strip, a thin metal cover, over them.'
        : 'No guard strip is planned: bind the wires flat, and ask the pump’s maker.',
      whole
        ? 'This cable reaches the top in one piece: lay it out beside the pipe.'
        : 'Leave its end free: that is where the splice comes.',
      'Never lift anything by these wires.',
    ],
    why: 'Between the pump and the wall a loose wire is soon rubbed through.',
    check: ['No wire is pinched under the strip.', 'The plug sits all the way in.'],
    mistake: 'A wire is pinched: it fails under water, and pump and pipe have to come up again.',
  }),
  splice: ({ height, joints, gauge, beforeLowering }, show) => ({
    title: 'Make the splice',
    does: [
      ...(beforeLowering ? [] : ['The pipe clamp holds the string while you work; the cable carries nothing.']),
      `Take a splice kit made for under water and for ${wireName(gauge, show.units)} wire.`,
      `Slide a sleeve on each of the ${joints} wires before it is joined.`,
      'Join each wire to its like, one joint above the other, and pull on each.',
      'Shrink each sleeve from the middle out, then tape all of it flat.',
      beforeLowering
        ? `It will lie ${gap(height, show)} above the pump’s outlet, with a tie above and one below.`
        : `It lies ${gap(height, show)} above the pump’s outlet: put a tie above it and one below.`,
      ...(beforeLowering ? ['Put it in a bucket of water, and read the insulation from each wire to the water.'] : []),
    ],
    why: 'The splice hangs under water for years, so each wire needs a seal of its own.',
    check: ['The insulation reads as high as before the splice.', 'Each wire meets its like, and ground meets ground.'],
    mistake: 'The sleeves are remembered when the wires are joined: cut it out and begin again, shorter.',
  }),
  ropeOn: ({ material }) => ({
    title: 'Tie the rope on',
    does: [
      `Tie the ${material === '' ? 'rope' : `${material} rope`} to the eye at the pump’s outlet, and tape the knot’s tail.`,
      'It runs up beside the pipe, slack, and not through every tie.',
      'Tie its upper end off beside the well, so that it cannot fall in.',
      'It may catch a slip once: never lift or lower by it.',
    ],
    why: 'If the pipe lets go, a rope may keep the pump from being lost.',
    check: ['The knot is pulled tight.', 'The rope is longer than the pipe.'],
    mistake: 'The pump is lifted by its rope, which stretches, slips and takes hands with it.',
  }),
  pumpJoint: ({ way, clamps: count, arrestor, guards, section }, show) => {
    const slideOn = [
      ...(arrestor === null ? [] : ['the torque arrestor, springy arms that take the twist of each start']),
      ...(guards ? ['one-piece cable guards'] : []),
    ];
    const first = slideOn.length === 0 ? [] : [`Slide on now: ${slideOn.join(', and ')}.`];
    const setArrestor =
      arrestor === null
        ? []
        : [
            `Set the arrestor ${gap(arrestor, show)} above the outlet, its arms just wide enough to pass an adapter’s body.`,
          ];
    return way === 'barb'
      ? {
          title: 'Join pipe and pump',
          does: [
            'Screw the insert fitting, a piece with barbs, on with tape and paste; hold the pump’s flats.',
            ...first,
            ...onBarbs(count),
            ...setArrestor,
          ],
          why: `The pump hangs from these barbs and ${clamps(count)}, and every start twists them.`,
          check: ['The pipe is up to the shoulder all round, without a kink.', 'A hard pull moves nothing.'],
          mistake:
            arrestor === null
              ? 'One clamp alone holds: the pipe creeps off under the twist of the starts, and the pump drops.'
              : 'The arrestor is remembered when the joint is made, and the joint has to be undone for it.',
        }
      : {
          title: 'Join pipe and pump',
          does: [
            section === null
              ? 'Lay the first length of pipe in line with the pump.'
              : `Lay the first length, ${show.length(section)}, in line with the pump.`,
            ...first,
            'Start the thread by hand, with tape and paste.',
            'Hold the pump at its flats and turn the pipe, not the pump.',
            PLASTIC_THREAD,
            ...setArrestor,
          ],
          why: 'The pump hangs from this thread, and every start twists it.',
          check: ['The thread went in straight, by hand first.', 'Pipe and pump stand in one line.'],
          mistake: 'A plastic thread is forced, splits along its length, and lets go in the well.',
        };
  },
};
