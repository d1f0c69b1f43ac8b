import { svelte } from '@sveltejs/vite-plugin-svelte';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { launchOptions } from './scripts/browser.mjs';

/** Laws over hundreds of random plans take their time on a busy machine. Projects do not take it over from the whole. */
const testTimeout = 60_000;

/**
 * Model, words and drawing are functions of their arguments: their tests share one room, in which everything is loaded
 * once. What writes files, or to a database that it puts in the browser's place, has a room for each file of tests.
 */
const node = (name: string, isolate: boolean, folders: readonly string[]) => ({
  test: {
    name,
    environment: 'node' as const,
    isolate,
    include: folders.map((folder) => `tests/${folder}/**/*.test.ts`),
    testTimeout,
  },
});

export default defineConfig({
  test: {
    projects: [
      node('node', false, ['model', 'words', 'reference', 'draw', 'sheet', 'link', 'reading', 'wells']),
      node('apart', true, ['cli', 'keeping']),
      {
        plugins: [svelte()],
        // Named here so that vite does not find them midway and reload the page under a running test.
        optimizeDeps: { include: ['zod/mini', 'd3-scale', 'd3-shape', 'vitest-browser-svelte'] },
        test: {
          name: 'browser',
          testTimeout,
          include: ['tests/browser/*.test.ts'],
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({ launchOptions: launchOptions() }),
            instances: [{ browser: 'chromium' as const }],
          },
        },
      },
    ],
  },
});
