/**
 * The plan: what the user knows, as typed.
 *
 * This is the single definition. The type, the JSON Schema, the form's limits and its help come from it. Quantities are
 * text with their unit; a field left out was not said. The schema does not rename, default or convert: what was typed stays.
 */
import * as z from 'zod/mini';
import { DEFAULTS } from './defaults.ts';
import { choice, group, words } from './field.ts';
import { asBuilt } from './schema/asBuilt.ts';
import { disinfection, rope, wire } from './schema/gear.ts';
import { house } from './schema/house.ts';
import { dropPipe } from './schema/pipe.ts';
import { ownPumps, pump } from './schema/pump.ts';
import { site } from './schema/site.ts';
import { string } from './schema/string.ts';
import { top } from './schema/top.ts';
import { water } from './schema/water.ts';
import { well } from './schema/well.ts';

// Pages with a strict content policy forbid the compiled parsers.
z.config({ jitless: true });

export const FORMAT = 'wellcut-plan/1';

export const planSchema = group(
  'Plan',
  'A drilled well and what hangs in it. What is left out was not said: it is unknown, or assumed where that shows.',
  {
    format: choice([FORMAT], 'Format', 'Which form of plan this is.', { example: `"${FORMAT}"` }),
    title: z.optional(words('Title', 'A name for this well.')),
    place: z.optional(
      words('Where it is', 'Road, village or lot, to know it again. It stays with the plan and its printed sheet.'),
    ),
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
    house: z.optional(house),
    top: z.optional(top),
    pump: z.optional(pump),
    ownPumps: z.optional(ownPumps),
    dropPipe: z.optional(dropPipe),
    string: z.optional(string),
    wire: z.optional(wire),
    rope: z.optional(rope),
    disinfection: z.optional(disinfection),
    status: z.optional(
      z.record(
        z.string(),
        choice(
          ['reported', 'measured', 'installed', 'to choose'],
          'Status',
          'What is reported, measured or installed is not moved by a fix.',
        ),
      ),
    ),
    asBuilt: z.optional(asBuilt),
  },
);

export type Plan = z.infer<typeof planSchema>;
