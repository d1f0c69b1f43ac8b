/** The water: its levels and how they fall while pumping. */
import * as z from 'zod/mini';
import { DEFAULTS } from '../defaults.ts';
import { fact, flag, group, list, quantity } from '../field.ts';

const ABOVE_GROUND = { from: '-200 ft' } as const;

const step = {
  flow: fact('flow', 'Flow of the test', 'What was pumped.'),
  drawdown: fact('length', 'Drawdown of the test', 'How far the water fell below its level at rest.', {
    example: '"42 ft" or "12.8 m"',
  }),
  after: z.optional(quantity('time', 'Pumped for', 'How long the pump had run.')),
};

const pumping = z.discriminatedUnion('kind', [
  group('A test', 'A flow and the drawdown it made.', { kind: z.literal('test'), ...step }),
  group('A measured level', 'The level while a pump ran.', {
    kind: z.literal('level'),
    level: fact('length', 'Pumping level', 'Depth of the water while pumping.', {
      ...ABOVE_GROUND,
      example: '"104 ft" or "31.7 m"',
    }),
    flow: z.optional(fact('flow', 'Flow of the test', 'What was pumped.')),
  }),
  group('A step test', 'Several flows, each with its drawdown.', {
    kind: z.literal('steps'),
    steps: list('Steps', 'Smallest flow first.', group('Step', 'One flow.', step), { from: 1, to: 20 }),
  }),
  group('The aquifer', 'Its properties, from somebody who worked them out.', {
    kind: z.literal('aquifer'),
    transmissivity: fact('transmissivity', 'Transmissivity', 'How easily the layer passes water.'),
    storativity: fact('ratio', 'Storativity', 'How much water the layer lets go.', {
      above: true,
      example: '"0.0001"',
    }),
    radius: z.optional(
      quantity('length', 'Radius of the well', 'Half the hole, if you do not say.', {
        above: true,
        to: '30 ft',
        example: '"3 in" or "76 mm"',
      }),
    ),
    after: z.optional(
      quantity('time', 'After', 'How long the pump has run when the level is wanted.', {
        default: DEFAULTS.testDuration,
      }),
    ),
  }),
  group('Only a yield', 'The driller blew the well with air: no drawdown is known.', { kind: z.literal('yield only') }),
]);

export const water = group(
  'Water',
  'Levels of the water, from the report or a tape.',
  {
    staticLevel: fact(
      'length',
      'Static level',
      'Depth of the water at rest. Negative when it stands above the ground.',
      { ...ABOVE_GROUND, example: '"62 ft", "18.9 m" or "unknown"' },
    ),
    staticHighest: z.optional(
      fact('length', 'Highest static level', 'Of the year, such as after snow melt.', ABOVE_GROUND),
    ),
    staticLowest: z.optional(
      fact('length', 'Lowest static level', 'Of the year, such as late in a dry summer.', ABOVE_GROUND),
    ),
    dryFall: z.optional(
      fact('length', 'Fall in a dry season', 'How much lower than today the water stands in a dry season.'),
    ),
    pH: z.optional(fact('acidity', 'pH', 'Below 7 the water is acid and eats metal.')),
    conductivity: z.optional(fact('conductivity', 'Conductivity', 'How much salt is in the water.')),
    sand: z.optional(flag('Sand', 'Whether the well gives sand.')),
    gas: z.optional(flag('Gas', 'Whether gas comes with the water.')),
    pumping: z.optional(pumping),
  },
  { example: '{ "staticLevel": "62 ft" }' },
);
