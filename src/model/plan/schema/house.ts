/** The house: what it needs, at what pressure, how far away. */
import * as z from 'zod/mini';
import { DEFAULTS } from '../defaults.ts';
import { choice, count, fact, fieldMeta, flag, group, list, quantity, words } from '../field.ts';
import { line } from './pipe.ts';

/** How many of each, by name. */
function counts(label: string, help: string) {
  const schema = z.record(z.string(), count(0, 100000, 'Number', 'How many.'));
  fieldMeta.add(schema, { kind: 'group', label, help });
  return schema;
}

export const house = group(
  'House',
  'What the house needs.',
  {
    demand: z.optional(
      fact('flow', 'Peak flow needed', 'What the house draws at its busiest; 8 to 12 gpm suits most.', {
        default: DEFAULTS.demand,
        metricHelp: 'What the house draws at its busiest; 30 to 45 L/min suits most.',
        example: '"8 gpm", "30 L/min" or "unknown"',
      }),
    ),
    fixtures: z.optional(counts('Fixtures', 'How many of each: taps, showers, toilets.')),
    people: z.optional(count(0, 10000, 'People', 'How many live there.')),
    stock: z.optional(counts('Stock', 'How many animals of each kind.')),
    irrigation: z.optional(quantity('flow', 'Irrigation', 'Flow for watering.')),
    cutIn: z.optional(
      quantity('pressure', 'Cut-in', 'Pressure at which the switch starts the pump.', { default: DEFAULTS.cutIn }),
    ),
    cutOut: z.optional(
      quantity('pressure', 'Cut-out', 'Pressure at which the switch stops the pump.', { default: DEFAULTS.cutOut }),
    ),
    tank: z.optional(fact('volume', 'Tank', 'Total volume of the pressure tank, not the usable water.')),
    tankRating: z.optional(
      quantity('pressure', 'Rating of the tank', 'The highest pressure on its label.', {
        default: DEFAULTS.tankRating,
      }),
    ),
    precharge: z.optional(
      quantity('pressure', 'Pre-charge', 'Air pressure in the empty tank, usually 2 psi under cut-in.', {
        metricHelp: 'Air pressure in the empty tank, usually 0.15 bar under cut-in.',
        above: false,
      }),
    ),
    reliefValve: z.optional(
      flag('Relief valve', 'Whether a valve at the tank lets water out when the pressure is too high.'),
    ),
    distance: z.optional(fact('length', 'Well to house', 'Length of the line between them.')),
    rise: z.optional(
      fact(
        'length',
        'Rise to the tank',
        'How much higher the tank is than the ground at the well; negative if lower.',
        { from: '-1000 ft', to: '2000 ft' },
      ),
    ),
    line: z.optional(line),
    kind: z.optional(
      choice(['pressure tank', 'open tank'], 'Kind of tank', 'Whether the pump fills a pressure tank or an open one.', {
        default: DEFAULTS.houseKind,
      }),
    ),
    control: z.optional(
      choice(['switch', 'variable speed'], 'Control', 'What starts and stops the pump.', {
        default: DEFAULTS.control,
      }),
    ),
    branches: z.optional(
      list(
        'Branches',
        'Further places that the line feeds.',
        group('Branch', 'A place that the line feeds.', {
          name: z.optional(words('Name', 'What is there.')),
          demand: z.optional(quantity('flow', 'Flow wanted there', 'What it draws.')),
          distance: z.optional(quantity('length', 'Distance', 'Along the pipe.')),
          rise: z.optional(
            quantity('length', 'Rise', 'Above the ground at the well.', { from: '-1000 ft', to: '2000 ft' }),
          ),
          line: z.optional(line),
        }),
        { to: 20 },
      ),
    ),
  },
  { example: '{ "demand": "8 gpm" }' },
);
