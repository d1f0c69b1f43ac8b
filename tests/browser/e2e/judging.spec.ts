/** The page on how the program judges: opened from the findings, read in one's own units, closed by key. */
import { axeFinds } from './axe.ts';
import { expect, test } from './onePage.ts';
import { openSample } from './hands.ts';

test('one reads how a well is judged, and Escape leads back to where one was', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  const door = page.getByRole('button', { name: 'How Wellcut judges' });
  await door.click();
  const dialog = page.getByRole('dialog', { name: 'How Wellcut judges' });
  await expect(dialog.getByText('The motor ends 10 ft or more above the bottom.')).toBeVisible();
  await expect(dialog.getByText(/PR-\d/)).toHaveCount(0);
  expect(await axeFinds(page, { within: 'dialog' })).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(door).toBeFocused();
});

test('of a well in metres one reads metres', async ({ page }) => {
  await openSample(page, 'Heron Flats farmhouse');
  await page.getByRole('button', { name: 'How Wellcut judges' }).click();
  await expect(page.getByRole('dialog').getByText('The motor ends 3 m or more above the bottom.')).toBeVisible();
});

test('on paper it stands alone', async ({ page }) => {
  await openSample(page);
  await page.getByRole('button', { name: 'How Wellcut judges' }).click();
  const dialog = page.getByRole('dialog', { name: 'How Wellcut judges' });
  await expect(dialog).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(dialog.getByRole('heading', { name: 'What each rule asks' })).toBeVisible();
  await expect(dialog.getByRole('button', { name: 'Close' })).toBeHidden();
  await expect(page.locator('main')).toBeHidden();
});
