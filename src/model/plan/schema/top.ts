/** How the pipe leaves the well. */
import * as z from 'zod/mini';
import { fact, flag, group, quantity, words } from '../field.ts';

export const top = z.discriminatedUnion('kind', [
  group('Pitless adapter', 'The pipe leaves through the side of the casing, below frost.', {
    kind: z.literal('pitless'),
    depth: z.optional(
      quantity(
        'length',
        'Depth of the pitless adapter',
        'From the ground down to the top of the outlet pipe, which freezes first.',
        { example: '"6 ft" or "1.8 m"' },
      ),
    ),
    protrusion: z.optional(
      fact(
        'length',
        'Reach into the casing',
        'How far the adapter’s fixed part stands into the casing. The pump must pass it.',
        { to: '12 in', example: '"1 in" or "25 mm"' },
      ),
    ),
    thread: z.optional(
      words(
        'Thread of the adapter',
        'Of the half that the string hangs on, as it is stamped. Empty: it is bought to suit the pipe.',
        { example: '"1-1/4 in NPT" or "Rp 1 1/4"' },
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
