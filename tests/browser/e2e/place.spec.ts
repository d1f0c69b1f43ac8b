import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { chip, heard, openSample, undo } from './hands.ts';

test('placing is one step: it says what it set and why, and Undo takes it back', async ({ page }) => {
  await openSample(page);
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('End');
  const wrong = await heard(page, 'Pump intake');
  await page.getByRole('button', { name: 'Place it for me' }).click();
  const told = page.getByRole('region', { name: 'What was placed' });
  await expect(told.getByRole('heading', { name: /^Placed: \d+ changed/ })).toBeFocused();
  // The sample's water falls to 110.6 ft in a dry season; common practice keeps 10 ft over the intake.
  expect(await heard(page, 'Pump intake')).toContain('121 f');
  await expect(told.getByText(/shallowest that every rule allows/)).toBeVisible();
  await expect(page.getByRole('heading', { name: /^Danger:/ })).toHaveCount(0);
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  await undo(page).click();
  expect(await heard(page, 'Pump intake')).toBe(wrong);
  await expect(told).toBeHidden();
});
