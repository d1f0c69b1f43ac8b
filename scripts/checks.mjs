/**
 * `npm run checks`: prints every check of the model against the outside world and writes docs/checks.md. Leaves with 1
 * when one does not agree.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import './ensure-packages.mjs';

const { runnerImport } = await import('vite');

const root = fileURLToPath(new URL('..', import.meta.url));
const { module } = await runnerImport(`${root}tests/reference/table.ts`, {
  configFile: false,
  root,
  logLevel: 'error',
});

const checked = module.everyCheck();
const wells = module.everyWell();
console.log(module.checksText(checked));
console.log(module.wellsText(wells));
mkdirSync(`${root}docs`, { recursive: true });
writeFileSync(`${root}docs/checks.md`, module.checksPage(checked, wells));
const good = checked.every(({ rows }) => rows.every(({ agrees }) => agrees)) && wells.every(({ agrees }) => agrees);
process.exit(good ? 0 : 1);
