/** Down the well, length by length. */
import { feet } from '../../../model/units.ts';
import { gap, span } from '../phrases.ts';
import { arrow, guards, insulationOnTheWay, onBarbs, PLASTIC_THREAD, TAPE_AND_PASTE, ties } from './phrases.ts';
import type { StepsOf } from './stepWords.ts';

/** A shorter way down needs no reading of its own. Common practice, no source. */
const READ_AGAIN = feet(50);

/** Sources  padded edge, clamp before every release, a person for the cable and the rest: common practice, no source. */
export const lowering: StepsOf<'lift' | 'lower' | 'sections' | 'valve' | 'probe'> = {
  lift: ({ hook: { threaded } }) => ({
    title: 'Lift the pump in',
    does: [
      'Pad the casing’s edge, and lay the pipe clamp ready: the jaw that holds the pipe there.',
      threaded
        ? 'Hang the first length on the hoist by its upper end, with a plug made for lifting.'
        : 'Raise the pipe in a wide bend, over a pipe wheel or by hands, the pump first.',
      'Never lift by the cable or the rope.',
      'Guide the pump into the casing, with fingers off its edge and the cable on one side.',
      'Close the pipe clamp on the pipe just above the pump, and rest it across the casing.',
    ],
    why: 'The edge of a casing cuts cable and hands, and what is let go here falls to the bottom.',
    check: ['The clamp holds when the grip is eased.', 'The cable is not under the clamp.'],
    mistake: 'The pump is lifted by its wires, and the plug at the motor leaks from the first day.',
  }),
  lower: ({ from, to, ties: tied, guards: guarded }, show) => ({
    title: 'Lower the string',
    does: [
      `Let the string (pump, pipe and cable) down ${show.length(to - from)} by the pipe, never by cable or rope.`,
      ...ties(tied, show),
      ...guards(guarded),
      'Go slowly past an adapter’s body; close the clamp before any grip is released.',
      ...(to - from >= READ_AGAIN ? [insulationOnTheWay(show)] : []),
      ...(to > 0 ? [`At the end the pump’s outlet is ${show.length(to)} below ground.`] : []),
    ],
    why: 'The pipe stretches more than the wire, so the cable needs slack and must carry nothing.',
    check: [
      'The cable lies on one side of the pipe, not wound round it.',
      ...(to - from >= READ_AGAIN ? ['The insulation reads as high as on the ground.'] : []),
    ],
    mistake: 'The cable is tied tight, the pipe stretches, and the wires carry the pump until they part.',
  }),
  sections: ({ from, to, count, longest, shortest, ties: tied, guards: guarded }, show) => ({
    title: count === 1 ? 'Add the next length' : `Add ${count} lengths of pipe`,
    does: [
      count === 1
        ? `Stand the next length, ${show.length(longest)}, in the coupling, and start it by hand.`
        : `Stand the next length in the coupling: ${count} of them, ${span(shortest, longest, show.length)} long.`,
      'Tape and paste; hold the pipe below with one wrench and turn the length above with another.',
      PLASTIC_THREAD,
      'Take the weight on the hoist, open the clamp, lower, and close it under the next coupling.',
      ...[...ties(tied, show), ...guards(guarded)].slice(0, 2),
      ...(to - from >= READ_AGAIN && (tied.count === 0 || guarded === 0) ? [insulationOnTheWay(show)] : []),
    ],
    why: 'Each joint carries all that hangs below it.',
    check: [
      'The clamp bears the string before the hook is let go.',
      'The lengths are counted and written down.',
      ...(to - from >= READ_AGAIN
        ? [
            `Every ${show.units === 'us' ? '50 to 100 ft' : '15 to 30 m'} the insulation reads as high as on the ground.`,
          ]
        : []),
    ],
    mistake: 'The clamp is opened before the hoist has the weight, and the string is gone.',
  }),
  valve: ({ height, arrow: points, clamps, next }, show) => ({
    title: 'Put the upper valve in',
    does: [
      'Stop with the pipe’s end over the casing, held by the pipe clamp.',
      `This check valve comes ${gap(height, show)} above the pump’s outlet.`,
      arrow(points),
      ...(clamps === null ? [TAPE_AND_PASTE] : onBarbs(clamps)),
      ...(next === null
        ? []
        : [`Screw it on, and the next length, ${show.length(next)}, into it; take the weight before the clamp opens.`]),
    ],
    why: 'It holds the water above it, so that less weight falls back on the valve below.',
    check: ['The arrow points up.', 'The cable passes the valve without a kink.'],
    mistake: 'The valve is upside down: no water comes, and the whole string has to come up again.',
  }),
  probe: ({ depth, overIntake }, show) => ({
    title: 'Fasten the probe',
    does: [
      'The probe is a bare end on a wire: when water leaves it, the pump is stopped.',
      `Fasten it where it will hang ${show.depth(depth)} below ground.`,
      overIntake < 0
        ? `That is ${gap(overIntake, show)} under the intake, too low to help: ask before you go on.`
        : `That is ${gap(overIntake, show)} above the intake, where the water goes in.`,
      'Keep its bare end free of tape, and off the metal of the pipe.',
      'Lead its wires up beside the cable, under the same ties.',
    ],
    why: 'A pump that draws air loses the water that cools it.',
    check: ['Its wires are marked at the top end.', 'The bare end touches nothing.'],
    mistake: 'The bare end touches wet metal, always reads water, and the pump runs dry.',
  }),
};
