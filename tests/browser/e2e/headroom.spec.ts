import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { chip, heard, openChanged, openSample } from './hands.ts';

test.beforeEach(async ({ page }) => openSample(page));

const list = (page: Page): Locator => page.locator('details', { has: page.getByText('How far may it go') });
const signs = (page: Page): Locator => page.locator('[data-tick]');

/** The number in a line of the list: "Deeper than 208.5 ft: …" is 208.5. */
async function told(page: Page, line: RegExp): Promise<number> {
  const text = await list(page).getByRole('definition').filter({ hasText: line }).first().innerText();
  return Number(/([\d.]+) (?:ft|in|m|cm)/.exec(text)?.[1]);
}

async function type(page: Page, label: RegExp, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label });
  await field.fill(text);
  await field.press('Enter');
}

test('each of the six is told with what begins to be wrong, and axe finds nothing', async ({ page }) => {
  await expect(list(page).getByRole('term')).toHaveText([
    /^Water at rest\s+62 ft$/,
    /^Yield of the well\s+10 gpm$/,
    /^Peak flow needed\s+8 gpm$/,
    /^Pressure switch\s+stops the pump at 60 psi$/,
    /^Pump\s+intake at 180 ft$/,
    /^Frost\s+48 in$/,
  ]);
  await expect(list(page).getByText(/^Danger: Falls more than [\d.]+ ft further: /)).toBeVisible();
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
});

test('as deep as is told nothing is wrong, and a foot deeper the warning stands on the list', async ({ page }) => {
  await expect(list(page).getByText(/Deeper than [\d.]+ ft: the pump is too near the bottom/)).toBeVisible();
  const deepest = await told(page, /Deeper than [\d.]+ ft: the pump/);
  const wrong = page.getByRole('article', { name: /pump is too near the bottom/ });
  await chip(page, 'Pump intake').focus();
  await type(page, /^Pump intake/, `${deepest} ft`);
  await expect.poll(() => heard(page, 'Pump intake')).toContain(`${Math.floor(deepest)} ft`);
  await expect(wrong).toHaveCount(0);
  await type(page, /^Pump intake/, `${deepest + 1} ft`);
  await expect(wrong).toBeVisible();
  // It is so now, and no way is left.
  await expect(list(page).getByText(/^Warning: Already now: the pump is too near the bottom/)).toBeVisible();
});

test('the signs of a level show while it is chosen, and no others', async ({ page }) => {
  await expect(list(page).getByRole('term').first()).toBeVisible();
  await expect(signs(page)).toHaveCount(0);
  await chip(page, 'Static level').focus();
  await expect(signs(page)).toHaveCount(2);
  const [warning, danger] = await signs(page).evaluateAll((all) => all.map((each) => each.getBoundingClientRect().y));
  expect(warning).toBeLessThan(danger!);
  await chip(page, 'Pump intake').focus();
  await expect(signs(page)).toHaveCount(4);
  await chip(page, 'Well bottom').focus();
  await expect(signs(page)).toHaveCount(0);
});

test('a screen reader hears how far a level may go, and what the bar beside the hole says', async ({ page }) => {
  await expect(list(page).getByRole('term').first()).toBeVisible();
  const pump = chip(page, 'Pump intake');
  await expect(pump).toHaveAccessibleDescription(
    /^The rules for depth hold from \d+ ft \(10 ft under the dry level\) to \d+ ft \(10 ft off the bottom\)\. Deeper than/,
  );
  await expect(chip(page, 'Frost line')).toHaveAccessibleDescription(/^Deeper than \d+ in: the pitless adapter is/);
  // And the same is read beside it.
  await pump.focus();
  await expect(page.locator('.beside').getByText(/^The rules for depth hold from/)).toBeVisible();
  await expect(page.locator('.beside').getByText(/^Higher than [\d.]+ ft: too little water/)).toBeVisible();
});

test('for a metric reader all of it is metric', async ({ page }) => {
  await expect(list(page).getByRole('term').first()).toBeVisible();
  const metric = page.getByRole('button', { name: /^metres, litres a minute/ });
  if (!(await metric.isVisible())) await page.getByRole('button', { name: /^Wells/ }).click();
  await metric.click();
  await expect(
    list(page)
      .getByText(/Falls more than [\d.]+ m further/)
      .first(),
  ).toBeVisible();
  await expect(list(page)).not.toContainText(/\d (?:ft|in|gpm|psi)\b/);
});

test('what nobody said leads to the field that takes it', async ({ page }) => {
  await openChanged(page, { water: { staticLevel: 'unknown' } });
  await expect(list(page).getByText('Not known: nobody said where the water stands at rest.')).toBeVisible();
  await list(page).getByRole('link', { name: 'Water at rest' }).click();
  await expect(page.getByRole('tab', { name: 'The record' })).toHaveAttribute('aria-selected', 'true');
});
