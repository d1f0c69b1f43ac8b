import { axeFinds } from './axe.ts';
import { expect, test } from './onePage.ts';
import { chip, heard, openSample, undo } from './hands.ts';

test('placing is one step: it says what it set and why, and Undo takes it back', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('End');
  const wrong = await heard(page, 'Pump intake');
  await page.getByRole('button', { name: 'Set the depths for me' }).click();
  const told = page.getByRole('region', { name: 'What was set' });
  await expect(told.getByRole('heading', { name: /^Set: \d+ changed/ })).toBeFocused();
  expect(await heard(page, 'Pump intake')).not.toBe(wrong);
  // 20 to 40 ft is common practice, no source.
  await expect(told.getByText(/30(?:\.\d)? ft under the lowest water while pumping/)).toBeVisible();
  await expect(page.getByRole('heading', { name: /^Danger:/ })).toHaveCount(0);
  expect(await axeFinds(page)).toEqual([]);
  await undo(page).click();
  expect(await heard(page, 'Pump intake')).toBe(wrong);
  await expect(told).toBeHidden();
});
