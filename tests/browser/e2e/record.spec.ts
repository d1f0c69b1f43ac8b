import { expect, test } from '@playwright/test';
import { chip, feetIn, heard, openSample, undo } from './hands.ts';

test.beforeEach(async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'The record' }).click();
});

test('a typed field moves the drawing and is one step back', async ({ page }) => {
  const field = page.getByRole('textbox', { name: 'Static level', exact: true }).last();
  await field.fill('71\' 6"');
  await field.press('Enter');
  expect(await heard(page, 'Static level')).toContain('71 ft 6 in');
  await undo(page).click();
  expect(await heard(page, 'Static level')).toContain('62 ft');
  await expect(field).toHaveValue('62 ft');
});

test('while a field is typed in nothing is applied, and what cannot be read stays with its reason', async ({
  page,
}) => {
  const field = page.getByRole('textbox', { name: 'Depth of the well' });
  await field.fill('1');
  expect(await heard(page, 'Well bottom')).toContain('220 ft');
  await field.fill('12 gpm');
  await field.blur();
  await expect(field).toHaveValue('12 gpm');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText(/^Not applied:/)).toBeVisible();
  expect(await heard(page, 'Well bottom')).toContain('220 ft');
});

test('"not known" is an answer: the level loses its handle and the figures their value', async ({ page }) => {
  const row = page.locator('.row', { has: page.getByRole('textbox', { name: 'Static level', exact: true }) });
  await row.getByRole('checkbox', { name: 'not known' }).check();
  await expect(page.getByRole('button', { name: /^Static level, not known/ })).toBeAttached();
  await page.getByRole('tab', { name: /^Findings/ }).click();
  const total = page.getByRole('rowheader', { name: /^Total dynamic head/ }).locator('xpath=following-sibling::td');
  await expect(total).toHaveText('not known');
});

test('the datum switch shifts what the record counted, by the height of the casing', async ({ page }) => {
  const before = feetIn(await heard(page, 'Pump intake'));
  await page.getByRole('combobox', { name: 'Depths counted from' }).selectOption('casing top');
  // The sample's casing stands 16 in above the ground: 180 ft from its top is 178 ft 8 in from the ground.
  expect(before - feetIn(await heard(page, 'Pump intake'))).toBeCloseTo(16 / 12, 2);
});

test('a layer can be taken out, added and taken back', async ({ page }) => {
  const layers = page.getByRole('textbox', { name: 'Material of the layer' });
  await expect(layers.first()).toBeVisible();
  const count = await layers.count();
  await page.getByRole('button', { name: 'Take out layer 1', exact: true }).click();
  await expect(layers).toHaveCount(count - 1);
  await page.getByRole('button', { name: 'Add: layer' }).click();
  await expect(layers).toHaveCount(count);
  await undo(page).click();
  await undo(page).click();
  await expect(layers.first()).toHaveValue('clay');
});

test('a seal on top takes the pitless adapter’s level off the drawing', async ({ page }) => {
  await page.getByText('Top of the well', { exact: true }).click();
  await page.getByRole('combobox', { name: 'How the pipe leaves' }).selectOption('seal');
  await expect(chip(page, 'Pitless adapter')).toHaveCount(0);
});
