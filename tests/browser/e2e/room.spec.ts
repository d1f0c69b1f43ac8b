/** However small the window is, the drawing can be seen in it and every control can be reached. */
import { expect, test } from './onePage.ts';
import { chip, openSample } from './hands.ts';
import { unreachable } from './reach.ts';

/** A phone both ways, a small one and a tablet both ways, which are for fingers as well. */
const HELD = [
  [390, 844],
  [844, 390],
  [320, 640],
  [1024, 768],
  [820, 1180],
] as const;

/** A laptop at 200 %, another, and a page at 400 %. */
const ON_A_DESK = [
  [911, 512],
  [960, 540],
  [320, 256],
  [1440, 1000],
] as const;

for (const size of [...HELD, ...ON_A_DESK]) {
  const [width, height] = size;
  const tag = HELD.some((held) => held === size) ? ['@both'] : [];
  test(
    `in a window of ${width} by ${height} the drawing is seen whole and every control is reached`,
    { tag },
    async ({ page }) => {
      await page.setViewportSize({ width, height });
      await openSample(page);
      await expect(page.getByRole('heading', { name: 'What the drawing says' })).toBeAttached();
      expect(await unreachable(page)).toEqual([]);

      const drawn = await page.evaluate(() => {
        const sheet = document.querySelector('.section .window');
        const header = document.querySelector('header');
        if (sheet === null || header === null) throw new Error('no drawing');
        const stays = getComputedStyle(header).position === 'sticky' ? header.getBoundingClientRect().height : 0;
        return { height: sheet.getBoundingClientRect().height, room: window.innerHeight - stays };
      });
      // Eight labels one above the other need more than a page at 400 % has: there the drawing is as low as it can be.
      expect(drawn.height).toBeLessThanOrEqual(Math.max(drawn.room, 345));

      // A level's own field, over the drawing.
      await chip(page, 'Well bottom').focus();
      await expect(page.getByRole('textbox', { name: /Well bottom/ })).toBeVisible();
      expect(await unreachable(page, '.sheet > .beside', 3)).toEqual([]);

      await page.getByRole('tab', { name: 'The record' }).click();
      await expect(page.getByRole('textbox', { name: /title|name/i }).first()).toBeVisible();
      expect(await unreachable(page)).toEqual([]);

      await page.evaluate(() => window.scrollTo(0, 0));
      await page.getByRole('button', { name: /^Wells/ }).click();
      expect(await unreachable(page, 'header', 10)).toEqual([]);
    },
  );
}
