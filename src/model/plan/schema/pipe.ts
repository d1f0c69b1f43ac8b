/** Drop pipe and buried line. */
import * as z from 'zod/mini';
import { PIPE_MATERIAL_NAMES } from '../../tables/pipeMaterials.ts';
import { PIPE_STANDARD_NAMES } from '../../tables/pipes.ts';
import { DEFAULTS } from '../defaults.ts';
import { choice, fact, group, quantity, words } from '../field.ts';

const material = (extra: { default?: string } = {}) =>
  choice(PIPE_MATERIAL_NAMES, 'Material of the pipe', 'What the pipe is made of.', extra);

const size = (extra: { default?: string } = {}) =>
  words('Size of the pipe', 'The nominal size printed on the pipe, such as 1 in or 1-1/4 in.', {
    metricHelp: 'The nominal size printed on the pipe, such as 40 mm, DN 32 or 1-1/4 in.',
    example: '"1 in"',
    ...extra,
  });

const pipe = {
  standard: z.optional(
    choice(
      PIPE_STANDARD_NAMES,
      'Standard',
      'Printed on the pipe. If you do not say, the size tells: PE is ASTM D2239, made for insert fittings, or ISO 4427-2 where its size is metric.',
    ),
  ),
  rating: z.optional(
    fact('pressure', 'Pressure rating', 'Printed on the pipe, such as 200 psi or PN 16.', {
      metricHelp: 'Printed on the pipe, such as PN 16 (16 bar).',
    }),
  ),
  resin: z.optional(
    choice(['PE4710', 'PE3608', 'PE3408', 'PE 100', 'PE 80'], 'Resin', 'Printed on PE pipe.', {
      default: DEFAULTS.resin,
    }),
  ),
  ratio: z.optional(
    words(
      'Wall ratio or schedule',
      'SIDR, SDR, schedule, PN or series printed on the pipe, such as "SIDR 9" or "SDR 11".',
    ),
  ),
};

export const line = group('Line to the house', 'The pipe from the well to the house.', {
  material: material(),
  size: size(),
  ...pipe,
});

export const dropPipe = group(
  'Drop pipe',
  'The pipe that the pump hangs on.',
  {
    material: z.optional(material({ default: DEFAULTS.pipeMaterial })),
    size: z.optional(size({ default: DEFAULTS.pipeSize })),
    ...pipe,
    sectionLength: z.optional(
      quantity('length', 'Length of one section', 'Of rigid pipe that comes in lengths.', {
        from: '1 ft',
        to: '100 ft',
      }),
    ),
  },
  { example: '{ "material": "PE", "size": "1 in" }' },
);
