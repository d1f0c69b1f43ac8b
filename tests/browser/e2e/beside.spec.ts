/** What is said beside the drawing follows it: the drawing waits for none of it, and does not move when it comes. */
import { expect, test, type Page } from './onePage.ts';

const BESIDE = /\/assets\/Panel-[^/]*\.js$/;

async function openFirst(page: Page): Promise<void> {
  await page.goto('/');
  await page.getByRole('button', { name: /Tamarack Ridge/ }).click();
  await expect(page.locator('.sheet svg').first()).toBeVisible();
}

const placeOf = (page: Page, what: string) => page.locator(what).first().boundingBox();

test(
  'a well is drawn before what is said of it is here, and stands still when it comes',
  { tag: '@both' },
  async ({ page }) => {
    let bring = (): void => undefined;
    const wanted = new Promise<void>((resolve) => (bring = resolve));
    await page.route(BESIDE, async (route) => {
      await wanted;
      await route.continue();
    });
    await openFirst(page);
    await expect(page.getByRole('tab', { name: 'Findings' })).toHaveCount(0);
    const drawing = await placeOf(page, '.sheet svg');
    const kept = await placeOf(page, 'aside');
    expect(kept?.height).toBeGreaterThan(page.viewportSize()?.height ?? Infinity);
    bring();
    await expect(page.getByRole('tab', { name: 'Findings' })).toBeVisible();
    expect(await placeOf(page, '.sheet svg')).toEqual(drawing);
    const { x, y, width } = (await placeOf(page, 'aside'))!;
    expect({ x, y, width }).toEqual({ x: kept?.x, y: kept?.y, width: kept?.width });
  },
);

test('a mark that is pressed before its words are here leads to them once they are', async ({ page }) => {
  let bring = (): void => undefined;
  const wanted = new Promise<void>((resolve) => (bring = resolve));
  await page.route(BESIDE, async (route) => {
    await wanted;
    await route.continue();
  });
  await openFirst(page);
  const mark = await page.locator('.sheet svg text', { hasText: /^1$/ }).first().boundingBox();
  if (mark === null) throw new Error('no mark');
  await page.mouse.click(mark.x + mark.width / 2, mark.y + mark.height / 2);
  bring();
  await expect(page.locator('#finding-1')).toBeFocused();
});

test('where it cannot be fetched the page says so, and the drawing stands', async ({ page }) => {
  await page.route(BESIDE, (route) => route.abort());
  await openFirst(page);
  await expect(page.getByRole('alert')).toContainText('A part of the page could not be fetched');
  await expect(page.locator('.sheet svg').first()).toBeVisible();
});
