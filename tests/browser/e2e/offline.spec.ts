/** After one visit the page works without a network; a newer version waits; a part that cannot be had says so. */
import { appendFile, cp, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { preview } from 'vite';
import { chip, openSample, savedPicture } from './hands.ts';

test.use({ serviceWorkers: 'allow' });

async function visited(page: Page, address = '/'): Promise<void> {
  await page.goto(address);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller !== null) return;
    await new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }));
  });
}

test('everything works without a network after one visit', async ({ page, context }) => {
  await visited(page);
  await context.setOffline(true);
  await page.reload();
  await page.getByRole('main').getByRole('button', { name: 'Tamarack Ridge cabin' }).click();
  await expect(chip(page, 'Pump intake')).toBeAttached();
  for (const name of ['Figures', 'Pump', 'The record', 'Depths', 'Parts', 'Build', 'Trouble', 'Findings']) {
    await page.getByRole('tab', { name }).click();
    await expect(page.getByRole('tabpanel')).not.toBeEmpty();
  }
  const png = await readFile(await (await savedPicture(page, 'PNG')).path());
  expect(png.length).toBeGreaterThan(10_000);
  await page.reload();
  await expect(chip(page, 'Pump intake')).toBeAttached();
});

test('is installable: a manifest with a name, a start and an icon that are there', async ({ page }) => {
  await page.goto('/');
  // Web Application Manifest (W3C), sections 1.5, 1.8 and 1.9.
  const address = await page.locator('link[rel=manifest]').getAttribute('href');
  const manifest = (await (await page.request.get(address ?? '')).json()) as {
    name: string;
    start_url: string;
    icons: { src: string }[];
  };
  expect(manifest.name).toBe('Wellcut');
  for (const part of [manifest.start_url, ...manifest.icons.map(({ src }) => src)])
    expect((await page.request.get(part)).ok()).toBe(true);
});

test('a newer version waits for a word, and takes nothing with it', async ({ page }) => {
  const folder = await mkdtemp(join(tmpdir(), 'wellcut-versions-'));
  await cp(fileURLToPath(new URL('../../../dist/app', import.meta.url)), folder, { recursive: true });
  const server = await preview({
    configFile: false,
    logLevel: 'error',
    preview: { port: 0 },
    build: { outDir: folder },
  });
  try {
    const address = server.resolvedUrls?.local[0] ?? '';
    await visited(page, address);
    await page.getByRole('main').getByRole('button', { name: 'Tamarack Ridge cabin' }).click();
    await expect(chip(page, 'Pump intake')).toBeAttached();
    // A worker that differs by a byte is another version.
    await appendFile(join(folder, 'sw.js'), '\n// newer');
    await page.reload();
    const offer = page.getByRole('button', { name: 'Take it now' });
    await expect(offer).toBeVisible();
    await expect(chip(page, 'Pump intake')).toBeAttached();
    await Promise.all([page.waitForEvent('load'), offer.click()]);
    await expect(chip(page, 'Pump intake')).toBeAttached();
    await expect(offer).toBeHidden();
  } finally {
    await server.close();
    await rm(folder, { recursive: true, force: true });
  }
});

test.describe('a part that cannot be fetched', () => {
  test.use({ serviceWorkers: 'block' });

  test('says so, and comes with the next try', async ({ page }) => {
    await openSample(page);
    await page.route('**/Figures-*.js', (route) => route.abort());
    await page.getByRole('tab', { name: 'Figures' }).click();
    await expect(page.getByText('A part of the page could not be fetched.')).toBeVisible();
    await page.unroute('**/Figures-*.js');
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.getByRole('tab', { name: 'Figures' }).click();
    await expect(page.getByRole('tabpanel')).not.toBeEmpty();
    await expect(page.getByText('A part of the page could not be fetched.')).toBeHidden();
  });
});
