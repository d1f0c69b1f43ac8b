/** Before anything is dug or lifted. */
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import { gap } from '../phrases.ts';
import { taped } from './phrases.ts';
import type { StepsOf } from './stepWords.ts';

/**
 * Sources  who may do it differs: Ark. and Wis. (Adm. Code NR 812) leave adapters and pumps to the licensed, Neb. (178 Neb.
 *          Admin. Code 12) lets owners open their own well; 811: from memory; four to five turns by hand: ASME B1.20.1;
 *          coil, order and the rest: common practice, no source
 */
export const before: StepsOf<'permits' | 'services' | 'breakerOff' | 'measure' | 'layOut'> = {
  permits: () => ({
    title: 'Get the permit',
    does: [
      'Ask the state or the county who may do this work, and get the permit.',
      'In some places only licensed people may open a well or hang a pump.',
      'Have a licensed electrician for the wiring, and agree on the day.',
      'Get the driller’s report and compare it with this plan.',
      'Read the makers’ sheets: what they say comes before what stands here.',
    ],
    why: 'The rules on who may open a well differ from place to place.',
    check: ['Permit and report are in hand.', 'Somebody licensed does what you may not do.'],
    mistake: 'The work is done first and asked about later, and the inspector has it dug up again.',
  }),
  services: ({ digs }) =>
    digs
      ? {
          title: 'Have buried lines marked',
          does: [
            'Have buried power, gas, phone and sewer lines marked, some days before you dig.',
            'In the United States call 811 for this.',
            'Ask the owner about private lines, the septic tank and its drain field: nobody else marks those.',
            'Stake out the way of the trench.',
            'Look up: pipe and hoist stay farther from power lines than they are tall.',
          ],
          why: 'A digger that meets a power line or a gas pipe can kill.',
          check: ['Whoever digs knows every mark.', 'No pipe that falls can reach a wire.'],
          mistake: 'Only the paint on the lawn is trusted, and the digger cuts a private line to a shed.',
        }
      : {
          title: 'Look for power lines overhead',
          does: [
            'Look up: pipe and hoist stay farther from power lines than they are tall.',
            'Choose where the hoist stands and where the pipe lies when it is out.',
            'Clear the ground of whatever people could trip over.',
          ],
          why: 'A pipe that is raised into a power line kills whoever holds it.',
          check: ['No pipe that falls can reach a wire.'],
          mistake: 'The wires are seen only when the pipe swings, and it is too late to let go.',
        },
  breakerOff: ({ voltage, wired }, show) => ({
    title: 'Lock the breaker off',
    does: [
      'Switch the pump’s breaker off, lock it, and keep the key on you.',
      'Lock the pump’s disconnect too: the switch that cuts the power near the tank or the well.',
      'Hang your name on both.',
      'Have somebody who may do so test that the wires are dead.',
      `Between wires, and from each to ground, the tester shows zero and not ${show.voltage(voltage)}.`,
      ...(wired ? [] : ['Where nothing is wired yet, it stays unwired until the boxes are done.']),
    ],
    why: 'Wet hands on a metal casing give the current a way through you.',
    check: ['The tester was tried on a live wire before and after.', 'Nobody else has the key.'],
    mistake: 'The breaker is off but not locked, and somebody in the house switches it on again.',
  }),
  measure: ({ depth, staticLevel, casingHeight, widest }, show) => ({
    title: 'Measure the well',
    does: [
      'Take the cap off, and keep every loose thing away from the open well.',
      `Count from the casing’s top: it ${casingEnds(casingHeight, show)} the ground.`,
      `Let a weight down on a clean tape: the bottom should be at ${taped(depth + casingHeight, show)}.`,
      staticLevel === null
        ? 'Nobody said where the water stands: tape it now.'
        : `The water should stand at ${taped(staticLevel + casingHeight, show)}.`,
      `Measure the casing inside: the widest part of what goes in is ${show.bore(widest)}.`,
      'Write down each reading with its date.',
    ],
    why: 'Reports grow old: silt fills the bottom, and the water moves with the seasons.',
    check: ['Bottom and water agree with the plan, or the plan is changed first.', 'The weight came up with the tape.'],
    mistake: 'Ground and casing’s top are mixed up, and the pump hangs too deep or too high by what lies between.',
  }),
  layOut: ({ coil, pipe, odd }, show) =>
    coil
      ? {
          title: 'Tame the coil',
          does: [
            'Begin the day before: leave the coil in the sun, where it turns softer.',
            'Hold it down and cut its ties one at a time, from the outside in.',
            'Weight the free end, unroll the pipe on clean ground, and weight it there overnight.',
            `Measure twice, then cut ${taped(pipe, show)}, square, once the pipe has cooled: warm pipe is longer.`,
            'Cut out any kink, or take another pipe: a kink that is bent back breaks later.',
            'Tape both ends shut against dirt.',
          ],
          why: 'A coil is a spring: cut loose at once, it strikes whoever stands near.',
          check: [
            'The pipe lies straight, clean and without a kink.',
            'Its print names drinking water and the pressure.',
          ],
          mistake: 'All ties are cut at once, and the coil springs open into somebody’s face.',
        }
      : {
          title: 'Lay out the lengths',
          does: [
            `Lay the lengths on clean boards: ${taped(pipe, show)} of pipe in all.`,
            ...(odd === null
              ? []
              : [`The shortest is ${show.length(odd)}: have what you cut threaded again, on a machine.`]),
            'Number them in the order in which they go down; short ones go beside a valve or on top.',
            'Brush every thread clean and look for cracks.',
            'Try each coupling by hand: a good thread takes four to five turns.',
          ],
          why: 'A bad thread found on the ground is changed in a minute.',
          check: ['The lengths are numbered, and their sum is what the plan asks.', 'No soil is on or in the pipe.'],
          mistake: 'Nobody counts the lengths, and the pump hangs one length too high or too deep.',
        },
};

function casingEnds(height: Metres, show: Show): string {
  if (gap(height, show) === gap(0, show)) return 'ends level with';
  return `stands ${gap(height, show)} ${height < 0 ? 'under' : 'over'}`;
}
