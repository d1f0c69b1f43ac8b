import { axeFinds } from './axe.ts';
import { expect, test } from './onePage.ts';
import { openFaulty, openSample } from './hands.ts';

test.beforeEach(async ({ page }) => openSample(page));

test('a figure opens by keyboard into formula, numbers, result, range and source', async ({ page }) => {
  const figure = page.getByRole('button', { name: 'Total dynamic head' });
  await figure.focus();
  await page.keyboard.press('Enter');
  await expect(figure).toHaveAttribute('aria-expanded', 'true');
  const opened = page.locator('.account').first();
  await expect(opened).toContainText('H = ');
  await expect(opened).toContainText('Source');
  await expect(opened).toContainText('Holds');
  // The sample's head, as the line itself says it.
  await expect(opened.getByText(/^H = 255\.2 ft$/)).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(opened).toBeHidden();
});

test(
  'the tab holds nine sheets; a table is reached by keyboard; the units follow the switch',
  { tag: '@both' },
  async ({ page, isMobile }) => {
    await page.getByRole('tab', { name: 'Figures' }).click();
    const sheets = page.locator('details');
    await expect(sheets).toHaveCount(10);
    await page.locator('summary', { hasText: /wire/i }).first().click();
    const table = page.getByRole('region', { name: /gauge/i }).first();
    await table.focus();
    await expect(table).toBeFocused();
    await page.getByText('What the drawing rests on').click();
    await expect(
      page.getByRole('rowheader', { name: 'Total dynamic head' }).locator('xpath=following-sibling::td'),
    ).toHaveText('255.2 ft');
    if (isMobile !== true) {
      await page.getByText('m · L/min · bar').first().click();
      await expect(
        page.getByRole('rowheader', { name: 'Total dynamic head' }).locator('xpath=following-sibling::td'),
      ).toHaveText(/^77\.[78]\d* m$/);
    }
    for (const summary of await page.locator('summary').all())
      if (await summary.evaluate((each) => !(each.parentElement as HTMLDetailsElement).open)) await summary.click();
    expect(await axeFinds(page)).toEqual([]);
  },
);

test('a finding opens into the figure that was weighed, with the same number', async ({ page }) => {
  await openFaulty(page);
  const finding = page.getByRole('article', { name: /wire is thin/ });
  await finding.getByText('How it is worked out').click();
  const account = finding.getByRole('region', { name: /^How .* comes about$/ });
  await expect(account).toContainText('Source');
  const result = Number(/u = ([\d.]+) %$/.exec((await account.getByText(/^u = [\d.]+ %$/).textContent()) ?? '')?.[1]);
  await expect(
    finding
      .locator('p')
      .filter({ hasText: `${result.toFixed(1)} %` })
      .first(),
  ).toBeVisible();
  await finding.getByText('How it is worked out').click();
  await expect(account).toBeHidden();
});
