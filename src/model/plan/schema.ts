/**
 * The plan: what the user knows, as typed.
 *
 * This is the single definition. The type, the JSON Schema, the form's limits and its help come from it. Quantities are
 * text with their unit; a field left out was not said. The schema does not rename, default or convert: what was typed stays.
 */
import * as z from 'zod/mini';
import { DEFAULTS } from './defaults.ts';
import { choice, count, fact, flag, group, list, quantity, words } from './field.ts';
import { house } from './schema/house.ts';
import { dropPipe } from './schema/pipe.ts';
import { pump } from './schema/pump.ts';
import { site } from './schema/site.ts';
import { water } from './schema/water.ts';
import { well } from './schema/well.ts';

// Pages with a strict content policy forbid the compiled parsers.
z.config({ jitless: true });

export const FORMAT = 'wellcut-plan/1';

const top = z.discriminatedUnion('kind', [
  group('Pitless adapter', 'The pipe leaves through the side of the casing, below frost.', {
    kind: z.literal('pitless'),
    depth: quantity(
      'length',
      'Depth of the pitless adapter',
      'From the ground down to the top of the outlet pipe, which freezes first.',
      { to: '50 ft', example: '"6 ft" or "1.8 m"' },
    ),
    protrusion: z.optional(
      fact(
        'length',
        'Reach into the casing',
        'How far the adapter’s fixed part stands into the casing. The pump must pass it.',
        { to: '12 in' },
      ),
    ),
    submergedUse: z.optional(
      flag('Made to sit under water', 'Whether the maker allows the adapter below the water level.'),
    ),
  }),
  group('Sanitary seal', 'The pipe leaves through a seal on top of the casing.', {
    kind: z.literal('seal'),
    heated: z.optional(flag('Heated', 'Whether pipe and seal above ground are kept warm.')),
    housed: z.optional(flag('In a well house', 'Whether the well head stands in an insulated, heated house.')),
  }),
]);

const string = group('On the pipe', 'What is fitted along the drop pipe. Heights are above the pump’s discharge.', {
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
      { options: ['none'], default: DEFAULTS.torqueArrestor },
    ),
  ),
  guards: z.optional(
    quantity(
      'length',
      'Spacing of cable guards',
      'How far apart the spacers are that keep pipe and cable off the casing.',
      { above: true },
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
});

const wire = group(
  'Wire',
  'The cable from the electric panel to the pump.',
  {
    size: quantity(
      'gauge',
      'Size of the wire',
      'The number printed on the cable; a smaller number is a thicker wire.',
      { example: '"12 AWG"' },
    ),
    run: z.optional(fact('length', 'Panel to well', 'Length of cable from the electric panel to the well.')),
    conduitDepth: z.optional(
      quantity('length', 'Depth of the conduit', 'How far the conduit outside the casing goes down.', { to: '50 ft' }),
    ),
  },
  { example: '{ "size": "12 AWG" }' },
);

const rope = group('Safety rope', 'Leave it out if there is none.', {
  material: words('Material of the rope', 'Such as polypropylene, polyester or stainless steel.', {
    example: '"polypropylene"',
  }),
  diameter: z.optional(quantity('length', 'Thickness of the rope', 'Its diameter.', { above: true, to: '4 in' })),
  breakingStrength: z.optional(
    fact('force', 'Breaking strength', 'The pull at which a new rope breaks, from its label.'),
  ),
  tied: z.optional(
    choice(['casing hook', 'cap', 'through cap', 'loose'], 'Tied to', 'What the upper end is tied to.', {
      default: DEFAULTS.tied,
    }),
  ),
});

const disinfection = group('Disinfection', 'Chlorine for the first cleaning of the well.', {
  strength: z.optional(
    quantity('ratio', 'Strength of the product', 'Share of available chlorine, from the label.', {
      above: true,
      default: DEFAULTS.strength,
    }),
  ),
  target: z.optional(
    quantity('concentration', 'Chlorine wanted in the well', 'Follow the local rule where there is one.', {
      default: DEFAULTS.target,
    }),
  ),
});

export const planSchema = group('Plan', 'A drilled well and what hangs in it.', {
  format: choice([FORMAT], 'Format', 'Which form of plan this is.', { example: `"${FORMAT}"` }),
  title: z.optional(words('Title', 'A name for this well.')),
  notes: z.optional(words('Notes', 'Anything worth keeping with the plan.')),
  date: z.optional(words('Date', 'Printed on the drawing if it is here.')),
  units: z.optional(
    choice(['us', 'metric'], 'Units', 'Feet and gallons, or metres and litres, for what the program shows.', {
      default: DEFAULTS.units,
    }),
  ),
  site: z.optional(site),
  well,
  water,
  house,
  top,
  pump,
  dropPipe,
  string: z.optional(string),
  wire,
  rope: z.optional(rope),
  disinfection: z.optional(disinfection),
  status: z.optional(
    z.record(
      z.string(),
      choice(
        ['reported', 'installed', 'to choose'],
        'Status',
        'Reported and installed things are not moved by a mend.',
      ),
    ),
  ),
});

export type Plan = z.infer<typeof planSchema>;
