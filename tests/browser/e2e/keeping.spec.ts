import { readFile } from 'node:fs/promises';
import { expect, test, type Page } from '@playwright/test';
import { chip, heard, openSample, savedPicture, undo } from './hands.ts';

const menu = (page: Page) => page.getByRole('button', { name: /^Wells/ });

/** On a phone the file buttons are in the menu. */
async function savedPlan(page: Page): Promise<{ text: string; name: string }> {
  const button = page.getByRole('button', { name: 'Save file' });
  if (!(await button.isVisible())) await menu(page).click();
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  if (await page.getByRole('heading', { name: 'Samples' }).isVisible()) await page.keyboard.press('Escape');
  return { text: await readFile(await download.path(), 'utf8'), name: download.suggestedFilename() };
}

/** In the browser: how often each kept well was saved. */
function keptRevisions(): number[] {
  return Object.keys(localStorage)
    .filter((key) => key.startsWith('wellcut/well/'))
    .map((key) => (JSON.parse(localStorage.getItem(key) ?? '{}') as { revision: number }).revision);
}

test('a well survives a closed tab, with the last change', async ({ page, context }) => {
  await openSample(page);
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('PageUp');
  const moved = await heard(page, 'Pump intake');
  await page.close({ runBeforeUnload: true });
  const again = await context.newPage();
  // The browser writes what a closing page keeps in its own time: a page opened too soon starts empty, and is asked again.
  await expect(async () => {
    await again.goto('/');
    await expect(chip(again, 'Pump intake')).toHaveAttribute('aria-valuetext', moved, { timeout: 3000 });
  }).toPass({ timeout: 30_000 });
});

test('a saved file opens again as it was, and opening it is a step that can be taken back', async ({ page }) => {
  await openSample(page);
  const { text, name } = await savedPlan(page);
  expect(name).toBe('tamarack-ridge-cabin.json');
  const plan = JSON.parse(text) as { title: string; pump: { setting: string } };
  expect(plan.pump.setting).toBe('180 ft');
  const other = JSON.stringify({ ...plan, title: 'Cedar Bend', pump: { ...plan.pump, setting: '140\' 6"' } });
  await menu(page).click();
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'cedar.json', mimeType: 'application/json', buffer: Buffer.from(other) });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Cedar Bend');
  expect(await heard(page, 'Pump intake')).toContain('140 ft 6 in');
  await undo(page).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin');
});

test('a file that cannot be read says where and what to write, and the well on the page stays', async ({ page }) => {
  await openSample(page);
  const { text } = await savedPlan(page);
  await menu(page).click();
  await page.locator('input[type=file]').setInputFiles({
    name: 'broken.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text.replace('"180 ft"', '180')),
  });
  const said = page.getByRole('alert');
  await expect(said).toContainText('broken.json could not be opened');
  await expect(said).toContainText('pump.setting is 180, without a unit');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin');
});

test('twenty switches of units change nothing in the plan', async ({ page }) => {
  await openSample(page);
  const before = await savedPlan(page);
  if (!(await page.getByRole('group', { name: 'Units' }).isVisible())) await menu(page).click();
  for (let i = 0; i < 10; i++) {
    await page.getByRole('button', { name: /^metres/ }).click();
    await page.getByRole('button', { name: /^feet/ }).click();
  }
  await page.getByRole('button', { name: /^metres/ }).click();
  expect(await heard(page, 'Pump intake')).toContain('54.9 m');
  await page.getByRole('button', { name: /^feet/ }).click();
  await page.keyboard.press('Escape');
  expect((await savedPlan(page)).text).toBe(before.text);
});

test('two tabs never overwrite each other: the choice is asked, and both can be kept', async ({ page, context }) => {
  await openSample(page);
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('PageUp');
  // The well is kept as it was opened, and again with the moved pump.
  await expect.poll(() => page.evaluate(keptRevisions)).toEqual([2]);
  const mine = await heard(page, 'Pump intake');
  const other = await context.newPage();
  await other.goto('/');
  await expect(chip(other, 'Pump intake')).toBeAttached();
  await chip(other, 'Pump intake').focus();
  await other.keyboard.press('PageUp');
  await expect(page.getByRole('alert')).toContainText('changed in another tab');
  await page.getByRole('button', { name: 'Keep both' }).click();
  expect(await heard(page, 'Pump intake')).toBe(mine);
  await expect.poll(async () => (await page.evaluate(keptRevisions)).length).toBe(2);
});

test('the page works where the browser keeps nothing, and says so', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get() {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  });
  await openSample(page);
  await expect(page.getByText('This browser keeps nothing.')).toBeVisible();
});

test('opening another well keeps the first on this device', async ({ page }) => {
  await openSample(page);
  await menu(page).click();
  await page.getByRole('button', { name: 'Palo Amargo guest house' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Palo Amargo guest house');
  await menu(page).click();
  const kept = page.getByRole('listitem');
  await expect(kept.filter({ hasText: 'Tamarack Ridge cabin' })).toHaveCount(1);
  await kept.getByRole('button', { name: 'Tamarack Ridge cabin', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin');
});

test('the drawing leaves the page as an SVG without ids, styles or scripts', async ({ page }) => {
  await openSample(page);
  const download = await savedPicture(page, 'SVG');
  expect(download.suggestedFilename()).toBe('tamarack-ridge-cabin.svg');
  const svg = await readFile(await download.path(), 'utf8');
  expect(svg).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg"/);
  expect(svg).toContain('<title>');
  expect(svg).not.toMatch(/\sid=|<style|\sstyle=|<script|foreignObject/);
});

test('a plan file that is dropped on the page opens', async ({ page }) => {
  await openSample(page);
  const { text } = await savedPlan(page);
  const dropped = await page.evaluateHandle(
    (content) => {
      const data = new DataTransfer();
      data.items.add(new File([content], 'dropped.json', { type: 'application/json' }));
      return data;
    },
    text.replace('Tamarack Ridge cabin', 'Dropped well'),
  );
  await page.dispatchEvent('main', 'drop', { dataTransfer: dropped });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Dropped well');
});
