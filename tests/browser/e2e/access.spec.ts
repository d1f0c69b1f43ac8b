import { axeFinds } from './axe.ts';
import { expect, test } from './onePage.ts';
import { chip, openSample } from './hands.ts';

/** The device's own width, and one between. */
const WIDTHS = { desktop: [1440, 1024], phone: [390] } as const;

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing on the empty page, ${colorScheme}`, { tag: '@both' }, async ({ page }, { project }) => {
    await page.emulateMedia({ colorScheme });
    for (const width of WIDTHS[project.name === 'phone' ? 'phone' : 'desktop']) {
      await page.setViewportSize({ width, height: 844 });
      await page.goto('/');
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      expect(await axeFinds(page)).toEqual([]);
    }
  });

  test(
    `axe finds nothing with a well on the desk, its field open, its record and its table, ${colorScheme}`,
    { tag: '@both' },
    async ({ page }, { project }) => {
      test.slow();
      await page.emulateMedia({ colorScheme });
      await openSample(page);
      for (const width of WIDTHS[project.name === 'phone' ? 'phone' : 'desktop']) {
        await page.setViewportSize({ width, height: 844 });
        await page.getByRole('tab', { name: 'Findings' }).click();
        await chip(page, 'Pump intake').focus();
        expect(await axeFinds(page)).toEqual([]);
        for (const tab of ['The record', 'Depths']) {
          await page.getByRole('tab', { name: tab }).click();
          await page.waitForLoadState('networkidle');
          expect(await axeFinds(page)).toEqual([]);
        }
      }
    },
  );
}

test('nothing reaches over the edge of the page', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  for (const width of [1440, 1024, 760, 390, 320]) {
    await page.setViewportSize({ width, height: 844 });
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth))
      .toBeLessThanOrEqual(0);
  }
});

test('a strict content policy is never broken', async ({ page }) => {
  const policy =
    "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self'; connect-src 'self'";
  await page.route('**/*', async (route) => {
    if (route.request().resourceType() !== 'document') return route.fallback();
    const response = await route.fetch();
    return route.fulfill({ response, headers: { ...response.headers(), 'content-security-policy': policy } });
  });
  const broken: string[] = [];
  page.on('console', (message) => {
    if (/Content Security Policy/.test(message.text())) broken.push(message.text());
  });
  await openSample(page);
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('PageUp');
  await page.getByRole('tab', { name: 'The record' }).click();
  await expect(page.getByRole('textbox', { name: 'Depth of the well' })).toBeVisible();
  expect(broken).toEqual([]);
});

test('every target is at least 24 px, and 44 px for a finger', { tag: '@both' }, async ({ page, hasTouch }) => {
  await openSample(page);
  const least = hasTouch === true ? 44 : 24;
  const heights = await page
    .locator('[data-handle]')
    .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().height));
  expect(heights.length).toBeGreaterThan(6);
  // A place between two pixels is a hair off in single precision.
  for (const height of heights) expect(height).toBeGreaterThanOrEqual(least - 0.001);
});
