/** `npm run judging`: writes docs/how-wellcut-judges.md, how the program judges, from its rules and their words. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import './ensure-packages.mjs';

const { runnerImport } = await import('vite');

const root = fileURLToPath(new URL('..', import.meta.url));
const { module } = await runnerImport(`${root}tests/words/judgingNow.ts`, {
  configFile: false,
  root,
  logLevel: 'error',
});
mkdirSync(`${root}docs`, { recursive: true });
writeFileSync(`${root}docs/how-wellcut-judges.md`, module.documentNow());
