/**
 * `npm run renderers`: draws kept pictures in three renderers, prints how far they agree and writes docs/renderers.md.
 * Without rsvg-convert (Debian: librsvg2-bin) its columns say that it is not there.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import './ensure-packages.mjs';

await import('./ensure-browser.mjs');
const { createServer } = await import('vite');
const { chromium } = await import('@playwright/test');
const { launchOptions } = await import('./browser.mjs');

const root = fileURLToPath(new URL('..', import.meta.url));
const server = await createServer({
  configFile: false,
  root,
  logLevel: 'error',
  optimizeDeps: { noDiscovery: true },
  server: { middlewareMode: true, ws: false, hmr: false, watch: null },
});
const browser = await chromium.launch(launchOptions());
try {
  const table = await server.ssrLoadModule('/tests/renderers/table.ts');
  const rows = await table.everyRow(browser);
  console.log(table.rowsText(rows));
  const resvg = JSON.parse(readFileSync(`${root}node_modules/@resvg/resvg-js/package.json`, 'utf8')).version;
  const versions = {
    Chromium: browser.version().split('.')[0],
    resvg: `(resvg-js ${resvg})`,
    librsvg: table.librsvgWords(),
  };
  mkdirSync(`${root}docs`, { recursive: true });
  writeFileSync(`${root}docs/renderers.md`, table.rowsPage(rows, versions));
} finally {
  await browser.close();
  await server.close();
}
