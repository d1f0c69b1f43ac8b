/** The sheets beside the drawing, or under it: one after the other under the same tabs. */
import { expect, test, type Page } from './onePage.ts';
import { openSample } from './hands.ts';

const beginsAt = (page: Page): Promise<number> =>
  page.getByRole('tabpanel').evaluate((sheet) => Math.round(sheet.getBoundingClientRect().top));
const tabsEndAt = (page: Page): Promise<number> =>
  page
    .getByRole('tablist', { name: 'What to see beside the drawing' })
    .evaluate((tabs) => Math.round(tabs.getBoundingClientRect().bottom));

test('a sheet begins under the tabs, however far down the one before was read', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'The record' }).click();
  await expect(page.getByRole('heading', { name: 'The record' })).toBeVisible();
  for (const name of ['Depths', 'Findings', 'The record']) {
    // A sheet may still be growing: to its end is then farther than it was.
    await expect
      .poll(async () => {
        await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
        return beginsAt(page);
      })
      .toBeLessThan(0);
    await page.getByRole('tab', { name }).click();
    await expect.poll(() => beginsAt(page)).toBe(await tabsEndAt(page));
  }
  await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
  await page.getByRole('tab', { name: 'The record' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Depths' })).toBeFocused();
  await expect.poll(() => beginsAt(page)).toBe(await tabsEndAt(page));
});

test('where the tabs stand free of the top, another sheet moves nothing', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'Pump' }).scrollIntoViewIfNeeded();
  const before = await beginsAt(page);
  await page.getByRole('tab', { name: 'Pump' }).click();
  await expect(page.getByRole('heading', { name: 'Which pump' })).toBeVisible();
  expect(await beginsAt(page)).toBe(before);
});
