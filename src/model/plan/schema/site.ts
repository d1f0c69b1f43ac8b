/** The place: frost, height above the sea, neighbours. */
import * as z from 'zod/mini';
import { DEFAULTS } from '../defaults.ts';
import { choice, fact, group, quantity, words } from '../field.ts';

const setback = (from: string, usual: string, metric: string) =>
  group(`Distance to the ${from}`, `How far the well is from the ${from}, and how far it has to be.`, {
    distance: z.optional(fact('length', `To the ${from}`, 'As measured from the well.')),
    required: z.optional(
      quantity(
        'length',
        `Required to the ${from}`,
        `The least distance that your local code asks for; ${usual} is common.`,
        { metricHelp: `The least distance that your local code asks for; ${metric} is common.` },
      ),
    ),
  });

export const site = group('Place', 'What the place gives: frost, floods, neighbours.', {
  frostDepth: z.optional(
    fact('length', 'Frost depth', 'How deep the ground freezes. The local building office knows the figure.', {
      to: '30 ft',
      example: '"4 ft" or "1.2 m"',
    }),
  ),
  frostFrom: z.optional(choice(['local code', 'estimate', 'adviser'], 'Frost depth from', 'Who gave the frost depth.')),
  freezing: z.optional(
    group('Freezing', 'For an estimate of the frost depth where nobody gives one.', {
      station: z.optional(words('Weather station', 'The nearest station in the list.')),
      index: z.optional(
        fact('freezingIndex', 'Air freezing index', 'Degree-days below freezing in a cold winter, if you know it.'),
      ),
      soil: z.optional(words('Soil', 'What the ground is near the surface.')),
      surface: z.optional(words('Surface', 'What covers the ground: lawn, snow, bare soil, pavement.')),
    }),
  ),
  waterTemperature: z.optional(
    quantity('temperature', 'Temperature of the water', 'Well water is about as warm as the year’s average air.', {
      default: DEFAULTS.waterTemperature,
    }),
  ),
  altitude: z.optional(
    quantity('length', 'Height above the sea', 'Thin air at height lifts less water.', {
      from: '-1500 ft',
      to: '20000 ft',
      default: DEFAULTS.altitude,
    }),
  ),
  floodHeight: z.optional(
    fact('length', 'Height of the flood', 'How high the highest flood stood above the ground at the well.', {
      from: '-100 ft',
      to: '100 ft',
    }),
  ),
  septicTank: z.optional(setback('septic tank', '50 ft', '15 m')),
  drainField: z.optional(setback('drain field', '100 ft', '30 m')),
  building: z.optional(setback('building', '5 ft', '1.5 m')),
  casingHeightRequired: z.optional(
    quantity('length', 'Casing height required', 'The least height of the casing above ground in your local code.', {
      to: '20 ft',
      default: DEFAULTS.casingHeightRequired,
      example: '"12 in" or "30 cm"',
    }),
  ),
  frostMargin: z.optional(
    quantity('length', 'Margin below frost', 'How much deeper than frost the pipe must lie; codes say 6 in or 12 in.', {
      metricHelp: 'How much deeper than frost the pipe must lie; codes say 15 cm or 30 cm.',
      to: '10 ft',
      default: DEFAULTS.frostMargin,
      example: '"6 in" or "15 cm"',
    }),
  ),
});
