/** The well as built: casing, intake, layers. */
import * as z from 'zod/mini';
import { DEFAULTS } from '../defaults.ts';
import { choice, fact, flag, group, list, quantity, words } from '../field.ts';

const casing = group(
  'Casing',
  'The pipe that lines the hole.',
  {
    material: z.optional(
      choice(
        ['steel', 'PVC', 'stainless steel', 'concrete', 'other'],
        'Material of the casing',
        'What the casing is made of.',
      ),
    ),
    size: z.optional(words('Size of the casing', 'The nominal size in the report, such as 6 in.')),
    schedule: z.optional(
      words('Wall of the casing', 'Schedule, SDR or wall thickness, such as "schedule 40" or "SDR 21".'),
    ),
    insideDiameter: z.optional(
      fact('length', 'Inside diameter', 'The true bore, if somebody measured it.', {
        from: '1 in',
        to: '20 ft',
        example: '"6.1 in" or "154 mm"',
      }),
    ),
    top: z.optional(
      quantity(
        'length',
        'Top of the liner',
        'Only for a casing that hangs inside another: the depth of its upper end.',
        { from: '-20 ft' },
      ),
    ),
    bottom: z.optional(
      fact('length', 'Bottom of the casing', 'How deep the casing goes.', { from: '-20 ft', to: '5000 ft' }),
    ),
    height: z.optional(
      quantity('length', 'Height above ground', 'How far the casing stands above the ground.', {
        from: '-10 ft',
        to: '20 ft',
        default: DEFAULTS.casingHeight,
        example: '"12 in" or "30 cm"',
      }),
    ),
  },
  { example: '{ "material": "steel", "size": "6 in", "bottom": "90 ft" }' },
);

const screenTop = (label: string) => fact('length', label, 'Depth of its upper end.', { from: '-20 ft' });
const screenBottom = (label: string) => fact('length', label, 'Depth of its lower end.', { from: '-20 ft' });

const screen = group('Screen', 'Slotted pipe that lets water in and keeps sand out.', {
  top: fact('length', 'Top of the screen', 'Depth of its upper end.', { from: '-20 ft' }),
  bottom: fact('length', 'Bottom of the screen', 'Depth of its lower end.', { from: '-20 ft' }),
  slot: z.optional(
    fact('length', 'Slot', 'Width of the slots.', { above: true, to: '1 in', example: '"0.02 in" or "0.5 mm"' }),
  ),
  openArea: z.optional(fact('ratio', 'Open share', 'Share of the screen’s surface that is open.')),
});

const intake = group(
  'Where water enters',
  'Open rock, a screen, a driven point or a dug well.',
  {
    kind: z.optional(
      choice(['open hole', 'screen', 'driven point', 'dug'], 'How water enters', 'Through open rock or a screen.', {
        example: '"open hole" or "screen"',
      }),
    ),
    diameter: z.optional(
      fact('length', 'Diameter of the hole', 'The drilled hole below the casing, or the screen’s inside.', {
        from: '1 in',
        to: '30 ft',
        example: '"6 in" or "152 mm"',
      }),
    ),
    screens: z.optional(list('Screens', 'From the top down.', screen, { to: 20 })),
    top: z.optional(screenTop('Top of the screen')),
    bottom: z.optional(screenBottom('Bottom of the screen')),
  },
  { example: '{ "kind": "open hole", "diameter": "6 in" }' },
);

export const well = group(
  'Well',
  'The hole and what lines it, from the driller’s report.',
  {
    depth: quantity('length', 'Depth of the well', 'From the ground to the bottom, as drilled.', {
      above: true,
      example: '"220 ft" or "67 m"',
    }),
    soundedDepth: z.optional(
      fact(
        'length',
        'Depth measured today',
        'With a weighted line. Sand settles, so wells get shallower; this figure wins.',
        { above: true },
      ),
    ),
    depthsFrom: z.optional(
      choice(
        ['ground', 'casing top'],
        'Depths counted from',
        'Whether the depths of well, water and pump were measured from the ground or from the top of the casing.',
        { default: DEFAULTS.depthsFrom },
      ),
    ),
    casing: z.optional(casing),
    casings: z.optional(list('Casings', 'Outermost first; a liner is the last of them.', casing, { from: 1, to: 6 })),
    grout: z.optional(
      group('Grout', 'The seal between casing and ground.', {
        bottom: fact('length', 'Bottom of the grout', 'How deep the grout goes.', { from: '-20 ft' }),
      }),
    ),
    intake,
    inflows: z.optional(
      list(
        'Inflows',
        'Depths at which water enters: fractures or zones in the report.',
        group('Inflow', 'A fracture or zone.', {
          depth: fact('length', 'Depth of the inflow', 'Where water enters.', { from: '-20 ft' }),
          share: z.optional(fact('ratio', 'Share of the water', 'How much of all the water enters here.')),
        }),
        { to: 40 },
      ),
    ),
    yield: z.optional(fact('flow', 'Yield', 'What the well gave when it was tested.')),
    yieldFrom: z.optional(
      choice(
        ['air lift', 'bailer', 'pump'],
        'Yield found by',
        'How the driller tested it. Blowing with air says nothing of the pumping level.',
      ),
    ),
    layers: z.optional(
      list(
        'Layers',
        'What the driller went through, from the top down.',
        group('Layer', 'One kind of ground.', {
          material: words('Material of the layer', 'As the report says: clay, sand, granite.', { example: '"clay"' }),
          bottom: quantity('length', 'Bottom of the layer', 'Depth of its lower end.', { from: '-20 ft' }),
        }),
        { to: 60 },
      ),
    ),
    flowControl: z.optional(flag('Flow control', 'Whether a flowing well has a valve that can stop it.')),
    inPit: z.optional(flag('In a pit', 'Whether the well head is in a pit.')),
    tested: z.optional(words('Date of the test', 'When the well was tested.', { later: true })),
  },
  { example: '{ "depth": "220 ft", "casing": { … }, "intake": { … } }' },
);
