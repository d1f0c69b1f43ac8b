/**
 * Writes static/plan.schema.json, the plan's JSON Schema, from the schema that reads plans.
 *
 *     node scripts/plan-schema.mjs
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const root = fileURLToPath(new URL('..', import.meta.url));
const { module } = await runnerImport(`${root}src/model/plan/jsonSchema.ts`, {
  configFile: false,
  root,
  logLevel: 'error',
});
writeFileSync(`${root}static/plan.schema.json`, `${JSON.stringify(module.jsonSchema(), null, 2)}\n`);
