import { defineConfig, devices } from '@playwright/test';
import { launchOptions } from './scripts/browser.mjs';

/** Another one where something stands at this. */
const PORT = Number(process.env['PORT'] ?? 4173);

export default defineConfig({
  testDir: 'tests/browser/e2e',
  fullyParallel: true,
  workers: 2,
  retries: 0,
  timeout: 60_000,
  // Two browsers share a machine of which nothing is known: what is awaited may take its time, and costs none when it is there.
  expect: { timeout: 15_000 },
  forbidOnly: Boolean(process.env['CI']),
  reporter: [['list'], ['json', { outputFile: 'reports/e2e.json' }]],
  outputDir: 'reports/e2e',
  snapshotPathTemplate: '{testDir}/pictures/{arg}{ext}',
  // What keeps the page for later is tried on its own, and would fetch all of it in every other test.
  use: {
    serviceWorkers: 'block',
    baseURL: `http://localhost:${PORT}`,
    launchOptions: launchOptions(),
    locale: 'en-US',
    timezoneId: 'UTC',
  },
  // A page test runs on the desktop. One that rests on width, layout or touch is tagged `@both`, and one for a finger
  // alone `@phone`.
  projects: [
    {
      name: 'desktop',
      grepInvert: /@phone\b/,
      use: { ...devices['Desktop Chrome'], viewport: { width: 1440, height: 1000 } },
    },
    {
      name: 'phone',
      grep: /@(phone|both)\b/,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 },
    },
  ],
  webServer: {
    // `npm test` has built it just before.
    command: `${process.env['PAGE_IS_BUILT'] ? '' : 'npm run build:app && '}npx vite preview --outDir dist/app --port ${PORT} --strictPort`,
    url: `http://localhost:${PORT}`,
    reuseExistingServer: !process.env['CI'],
    timeout: 120_000,
  },
});
