import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fields } from '../../../src/model/plan/fields.ts';
import { jsonSchema } from '../../../src/model/plan/jsonSchema.ts';

test('the shipped JSON Schema is the one that the definition gives; scripts/plan-schema.mjs writes it', () => {
  const shipped: unknown = JSON.parse(
    readFileSync(new URL('../../../static/plan.schema.json', import.meta.url), 'utf8'),
  );
  expect(shipped).toEqual(JSON.parse(JSON.stringify(jsonSchema())));
});

test('it names every field’s label, and lets no other name in', () => {
  const text = JSON.stringify(jsonSchema());
  expect(
    fields.filter(({ label }) => label !== 'Kind' && !text.includes(JSON.stringify(label))).map(({ path }) => path),
  ).toEqual([]);
  const open: string[] = [];
  JSON.stringify(jsonSchema(), (key, value: unknown) => {
    if (
      typeof value === 'object' &&
      value !== null &&
      'properties' in value &&
      'type' in value &&
      !('additionalProperties' in value)
    )
      open.push(key);
    return value;
  });
  expect(open).toEqual([]);
});
