/** The plan's JSON Schema, for editors and other programs: labels, help, examples and defaults from the same metadata. */
import * as z from 'zod/mini';
import { examples } from '../units.ts';
import type { QuantityKind } from '../units.ts';
import { fieldMeta } from './field.ts';
import type { FieldMeta } from './field.ts';
import { FORMAT, planSchema } from './schema.ts';

export function jsonSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(planSchema, {
    target: 'draft-2020-12',
    // Our own metadata goes in below, under the standard's own names.
    metadata: z.registry(),
    override: ({ zodSchema, jsonSchema: json }) => {
      const meta = fieldMeta.get(zodSchema);
      if (meta) Object.assign(json, described(meta));
    },
  });
  return { $id: `${FORMAT}.schema.json`, ...schema, title: FORMAT };
}

function described(meta: FieldMeta): Record<string, unknown> {
  const quantity = !['text', 'choice', 'flag', 'count', 'group', 'list'].includes(meta.kind);
  return {
    title: meta.label,
    description: quantity ? `${meta.help} ${limits(meta)}`.trim() : meta.help,
    ...(quantity && { examples: exampleList(meta.example ?? examples(meta.kind as QuantityKind)) }),
    ...(meta.default !== undefined && { default: meta.default }),
  };
}

function limits({ from, to, above, options, unknown }: FieldMeta): string {
  const range = from === undefined || to === undefined ? '' : `${above ? 'Above' : 'From'} ${from} to ${to}.`;
  const also = [...(options ?? []), ...(unknown ? ['unknown'] : [])].map((option) => `"${option}"`);
  return also.length > 0 ? `${range} Or ${also.join(', ')}.` : range;
}

/** '"62 ft" or "18.9 m"' as a list. */
function exampleList(text: string): string[] {
  return [...text.matchAll(/"([^"]*)"/g)].map(([, example = '']) => example);
}
