/** Wire, rope and disinfection. */
import * as z from 'zod/mini';
import { DEFAULTS } from '../defaults.ts';
import { choice, fact, group, quantity, words } from '../field.ts';

export const wire = group(
  'Wire',
  'The cable from the electric panel to the pump.',
  {
    size: z.optional(
      quantity('gauge', 'Size of the wire', 'The number printed on the cable; a smaller number is a thicker wire.', {
        example: '"12 AWG"',
        default: DEFAULTS.wireSize,
      }),
    ),
    run: z.optional(fact('length', 'Panel to well', 'Length of cable from the electric panel to the well.')),
    conduitDepth: z.optional(
      quantity('length', 'Depth of the conduit', 'How far the conduit outside the casing goes down.', {
        to: '50 ft',
        example: '"24 in" or "60 cm"',
      }),
    ),
  },
  { example: '{ "size": "12 AWG" }' },
);

export const rope = group('Safety rope', 'Leave it out if there is none.', {
  material: words('Material of the rope', 'Such as polypropylene, polyester or stainless steel.', {
    example: '"polypropylene"',
  }),
  diameter: z.optional(
    quantity('length', 'Thickness of the rope', 'Its diameter.', {
      above: true,
      to: '4 in',
      example: '"3/8 in" or "10 mm"',
    }),
  ),
  breakingStrength: z.optional(
    fact('force', 'Breaking strength', 'The pull at which a new rope breaks, from its label.'),
  ),
  tied: z.optional(
    choice(['casing hook', 'cap', 'through cap', 'loose'], 'Tied to', 'What the upper end is tied to.', {
      default: DEFAULTS.tied,
    }),
  ),
});

export const disinfection = group('Disinfection', 'Chlorine for the first cleaning of the well.', {
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
