/** The first screen of the desk: what matters is in it, and nothing that is switched on moves the drawing. */
import { chip, handOn, heard, openFaulty, openSample } from './hands.ts';
import { expect, test, type Page } from './onePage.ts';

const SIZES = [
  [1440, 1000],
  [1024, 768],
  [390, 844],
] as const;

const drawnAt = (page: Page) => page.locator('.section svg').first().boundingBox();

for (const [width, height] of SIZES) {
  test(`the worst finding and the way to have the depths set are in the first screen, ${width} by ${height}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await openFaulty(page);
    const phone = width < 760;
    const set = page.getByRole('button', { name: phone ? 'Set depths' : 'Set the depths for me', exact: true });
    const worst = phone
      ? page.getByRole('group', { name: 'How the well stands' }).getByRole('button').first()
      : page.getByRole('heading', { name: /^Danger:/ }).first();
    for (const seen of [set, worst]) {
      const box = (await seen.boundingBox())!;
      expect(box.y).toBeGreaterThanOrEqual(0);
      expect(box.y + box.height).toBeLessThanOrEqual(height);
    }
    await expect(worst).toContainText(phone ? /\d dangers?/ : /Danger/);
    const section = (await drawnAt(page))!;
    expect(section.y + section.height).toBeLessThanOrEqual(height);
  });

  test(`pump, season and time leave the drawing where it is and as large, ${width} by ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openSample(page);
    const before = await drawnAt(page);
    await page.getByRole('button', { name: 'Pump on' }).evaluate((button: HTMLElement) => button.click());
    await expect(page.getByText(/^Drawn: /)).toBeVisible();
    expect(await drawnAt(page)).toEqual(before);
    await page
      .getByRole('button', { name: 'Watch the water over time' })
      .evaluate((button: HTMLElement) => button.click());
    const range = page.getByRole('slider', { name: 'Time since the pump started' });
    await expect(range).toBeFocused();
    expect(await drawnAt(page)).toEqual(before);
    // Range and plot are in the window with the well, and not over its levels.
    const box = (await range.boundingBox())!;
    expect(box.y + box.height).toBeLessThanOrEqual(height);
    const water = (await chip(page, 'Pumping level').boundingBox())!;
    const covers = box.x < water.x + water.width && box.y < water.y + water.height;
    expect(covers).toBe(false);
  });

  test(`units, theme, saving and printing are found beside the wells, ${width} by ${height}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openSample(page);
    const reach = async (name: string, menu: RegExp): Promise<void> => {
      const wanted = page.getByRole('banner').getByText(name, { exact: true });
      if (!(await wanted.isVisible())) await page.getByRole('button', { name: menu }).click();
      await expect(wanted).toBeVisible();
      await page.keyboard.press('Escape');
    };
    await reach('m · L/min · bar', /^Look:/);
    await reach('Save file', /^Save/);
    await reach('Print', /^Save/);
    const theme = page.getByLabel('Theme', { exact: true });
    if (!(await theme.isVisible())) await page.getByRole('button', { name: /^(?:Theme|Look:)/ }).click();
    await expect(theme).toBeVisible();
  });
}

test('on a phone the strip over the drawing leads to the findings, and sets the depths', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openFaulty(page);
  await page.getByRole('group', { name: 'How the well stands' }).getByRole('button').first().click();
  await expect(page.getByRole('heading', { name: 'What the drawing says' })).toBeInViewport();
  await page.evaluate(() => window.scrollTo(0, 0));
  await page.getByRole('button', { name: 'Set depths' }).click();
  await expect(page.getByRole('heading', { name: /^(?:Set: \d+ changed|Nothing was changed)/ })).toBeFocused();
});

test('a level that is chosen takes figures at once', { tag: '@both' }, async ({ page, hasTouch }) => {
  await openSample(page);
  const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch === true);
  await hand.press();
  await hand.release();
  await page.keyboard.type('171 ft');
  await page.keyboard.press('Enter');
  expect(await heard(page, 'Pump intake')).toMatch(/171/);
});
