/** What was put in and measured, beside what was planned: no figure and no rule reads it, the plan stays the plan. */
import * as z from 'zod/mini';
import { group, quantity, words } from '../field.ts';

const LEVEL = { from: '-200 ft' } as const;

const measured = group('At the first start', 'Readings, beside what was expected.', {
  staticLevel: z.optional(quantity('length', 'Water at rest', 'Before the pump ran, from the ground.', LEVEL)),
  voltage: z.optional(quantity('voltage', 'Voltage while running', 'A licensed person reads it.')),
  current: z.optional(quantity('current', 'Amps while running', 'A licensed person reads it with a clamp meter.')),
  flow: z.optional(quantity('flow', 'Flow into a bucket', 'With the gauge at the pressure that starts the pump.')),
  precharge: z.optional(quantity('pressure', 'Air in the empty tank', 'With the tank empty and the power off.')),
  cutIn: z.optional(quantity('pressure', 'Pump starts at', 'As the gauge reads.')),
  cutOut: z.optional(quantity('pressure', 'Pump stops at', 'As the gauge reads.')),
  pumpingLevel: z.optional(
    quantity('length', 'Water after an hour of running', 'From the ground, while the pump ran.', LEVEL),
  ),
  run: z.optional(quantity('time', 'Shortest run at each start', 'From start to stop while little water is drawn.')),
  insulation: z.optional(words('Insulation', 'In megohms, from the motor’s leads to its ground wire.')),
});

const pulled = group('The old pump', 'Short, for whoever asks one day why the new one hangs as it does.', {
  date: z.optional(words('Date', 'Of the day when it was pulled.')),
  intake: z.optional(quantity('length', 'It hung at', 'Its intake, from the ground.', { above: true })),
  pump: z.optional(words('Pump and motor', 'What their plates say.')),
  pipe: z.optional(words('Drop pipe', 'Material, size and how many lengths came out.')),
  soundedDepth: z.optional(
    quantity('length', 'Bottom as sounded', 'From the ground down to what has gathered in the well.', { above: true }),
  ),
  found: z.optional(words('What was wrong', 'Worn, leaking, chafed, stuck: what was seen as it came out.')),
});

export const asBuilt = group('As it was built', 'What was put in and measured, beside what was planned.', {
  date: z.optional(words('Date', 'Of the day when the pump was hung.')),
  by: z.optional(words('Done by', 'Who to ask in ten years.')),
  installed: z.optional(z.record(z.string(), z.union([z.string(), z.number(), z.boolean()]))),
  /** What had been planned, where what was put in became the plan. */
  planned: z.optional(z.record(z.string(), z.union([z.string(), z.number(), z.boolean()]))),
  measured: z.optional(measured),
  pulled: z.optional(pulled),
});
