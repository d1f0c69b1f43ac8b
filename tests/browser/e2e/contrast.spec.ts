/** Those who need strong contrast get it from their system's wish, from its forced colours, or by hand. */
import { axeFinds } from './axe.ts';
import { expect, test, type Page } from './onePage.ts';
import { openSample } from './hands.ts';

async function inksOf(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const shapes = [...document.querySelectorAll('.section svg [fill], .section svg [stroke]')];
    const inks = shapes.flatMap((shape) => [shape.getAttribute('fill'), shape.getAttribute('stroke')]);
    const full = (ink: string): string => ink.toLowerCase().replace(/^#(.)(.)(.)$/, '#$1$1$2$2$3$3');
    return [...new Set(inks.flatMap((ink) => (ink === null || ink === 'none' ? [] : [full(ink)])))].sort();
  });
}
const paperOf = (page: Page) => page.locator('.section svg rect').first();

for (const colorScheme of ['light', 'dark'] as const) {
  const paper = colorScheme === 'light' ? '#fff' : '#000';
  for (const wish of [{ contrast: 'more' }, { forcedColors: 'active' }] as const) {
    test(`the drawing is black and white where the system says ${JSON.stringify(wish)}, ${colorScheme}`, async ({
      page,
    }) => {
      await page.emulateMedia({ colorScheme, ...wish });
      await openSample(page);
      await expect(paperOf(page)).toHaveAttribute('fill', paper);
      expect(await inksOf(page)).toEqual(['#000000', '#ffffff']);
    });
  }

  // W3C, Web Content Accessibility Guidelines 2.2, criterion 1.4.6: 7:1.
  test(
    `high contrast chosen by hand is kept, and axe finds no text under 7:1, ${colorScheme}`,
    { tag: '@both' },
    async ({ page }) => {
      await page.emulateMedia({ colorScheme });
      await openSample(page);
      const theme = page.getByLabel('Theme', { exact: true });
      if (!(await theme.isVisible())) await page.getByRole('button', { name: /^(?:Theme|Look:)/ }).click();
      await theme.selectOption('High contrast');
      await page.reload();
      await expect(paperOf(page)).toHaveAttribute('fill', paper);
      expect(await axeFinds(page, { rules: ['color-contrast-enhanced'] })).toEqual([]);
    },
  );
}

test('forced colours are the system’s, whatever was chosen here', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  const theme = page.getByLabel('Theme', { exact: true });
  if (!(await theme.isVisible())) await page.getByRole('button', { name: /^(?:Theme|Look:)/ }).click();
  await theme.selectOption('Light');
  await page.emulateMedia({ colorScheme: 'dark', forcedColors: 'active' });
  await expect(paperOf(page)).toHaveAttribute('fill', '#000');
});

test('in forced colours what is switched on, and what has the focus, can be told', async ({ page }) => {
  await page.emulateMedia({ forcedColors: 'active' });
  await openSample(page);
  const [on, off] = [page.getByRole('tab', { selected: true }), page.getByRole('tab', { selected: false }).first()];
  const background = (of: typeof on) => of.evaluate((element) => getComputedStyle(element).backgroundColor);
  expect(await background(on)).not.toBe(await background(off));
  expect(await axeFinds(page, { rules: ['color-contrast'] })).toEqual([]);
  await on.focus();
  await page.keyboard.press('ArrowRight');
  const focused = page.getByRole('tab', { selected: true });
  await expect(focused).toBeFocused();
  await expect(focused).toHaveCSS('outline-width', '3px');
});
