import { svelte } from '@sveltejs/vite-plugin-svelte';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { launchOptions } from './scripts/browser.mjs';

/** Laws over hundreds of random plans take their time on a busy machine. Projects do not take it over from the whole. */
const testTimeout = 60_000;

const node = (name: string, include: string[]) => ({
  test: { name, environment: 'node' as const, include, testTimeout },
});

export default defineConfig({
  test: {
    projects: [
      node('node', [
        'tests/model/**/*.test.ts',
        'tests/words/**/*.test.ts',
        'tests/reference/**/*.test.ts',
        'tests/draw/**/*.test.ts',
        'tests/cli/**/*.test.ts',
        'tests/house/**/*.test.ts',
        'tests/wells/**/*.test.ts',
        'tests/keeping/**/*.test.ts',
      ]),
      {
        plugins: [svelte()],
        // Named here so that vite does not find them midway and reload the page under a running test.
        optimizeDeps: { include: ['zod/mini', 'd3-array', 'd3-scale', 'd3-shape', 'vitest-browser-svelte'] },
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
