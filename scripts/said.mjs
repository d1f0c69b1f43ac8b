/** `npm run said`: writes tests/model/rules/said.json, what the rules say of each of their cases. Read what changed before you keep it. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import './ensure-packages.mjs';

const { runnerImport } = await import('vite');

const root = fileURLToPath(new URL('..', import.meta.url));
const { module } = await runnerImport(`${root}tests/model/rules/saidNow.ts`, {
  configFile: false,
  root,
  logLevel: 'error',
});
writeFileSync(`${root}tests/model/rules/said.json`, `${JSON.stringify(module.everyCaseNow(), null, 1)}\n`);
