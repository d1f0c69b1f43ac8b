/** What is fitted along the drop pipe. */
import * as z from 'zod/mini';
import { DEFAULTS } from '../defaults.ts';
import { choice, count, flag, group, list, quantity } from '../field.ts';

export const string = group(
  'On the pipe',
  'What is fitted along the drop pipe. Heights are above the pump’s discharge.',
  {
    checkValves: z.optional(
      list(
        'Check valves',
        'Heights of the check valves in the pipe. The lowest sits on the pump.',
        quantity('length', 'Check valve', 'Height above the pump’s discharge.'),
        { default: DEFAULTS.checkValves, to: 10 },
      ),
    ),
    arrow: z.optional(
      choice(
        ['up', 'down'],
        'Arrow on the check valve',
        'Which way the arrow cast on the valve points. Water must go up.',
        { default: DEFAULTS.arrow },
      ),
    ),
    valveBetweenTopAndTank: z.optional(
      flag('Check valve towards the tank', 'Whether a check valve sits between the well head and the tank.'),
    ),
    torqueArrestor: z.optional(
      quantity(
        'length',
        'Torque arrestor',
        'Height of its lower end; it keeps the starting pump from twisting the pipe. Write "none" if there is none.',
        { options: ['none'], default: DEFAULTS.torqueArrestor, example: '"2 ft" or "0.6 m"' },
      ),
    ),
    guards: z.optional(
      quantity(
        'length',
        'Spacing of cable guards',
        'How far apart the spacers are that keep pipe and cable off the casing.',
        { from: '1 ft' },
      ),
    ),
    ties: z.optional(
      quantity('length', 'Spacing of cable ties', 'How far apart the cable is taped or tied to the pipe.', {
        from: '0.5 ft',
        default: DEFAULTS.ties,
      }),
    ),
    splices: z.optional(
      list(
        'Splices',
        'Heights of the cable joints. An empty list: the pump’s own lead reaches the top.',
        quantity('length', 'Splice', 'Height above the pump’s discharge.'),
        { default: DEFAULTS.splices, to: 10 },
      ),
    ),
    fittings: z.optional(
      choice(
        ['stainless steel', 'brass', 'bronze', 'galvanized steel', 'plastic', 'nylon'],
        'Fittings in the well',
        'What the insert fittings on the drop pipe are made of.',
        { default: DEFAULTS.fittings },
      ),
    ),
    clampsPerJoint: z.optional(
      count(0, 6, 'Clamps on each joint', 'How many clamps hold the pipe on each barb.', {
        default: DEFAULTS.clampsPerJoint,
      }),
    ),
    clampScrew: z.optional(
      choice(
        ['stainless steel', 'carbon steel'],
        'Screws of the clamps',
        'What the screws are made of; carbon steel rusts away under water.',
      ),
    ),
  },
);
