/** A thumb on the drawing: it scrolls, and moves a level only after that was chosen or held. */
import { expect, test, type CDPSession, type Page } from './onePage.ts';
import { chip, feetIn, heard, openSample, redo, undo } from './hands.ts';

type Point = readonly [x: number, y: number];

/** Fingers, each told anew with every event, as a screen tells them. */
type Fingers = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly Point[]) => Promise<void>;

async function fingersOf(page: Page): Promise<Fingers> {
  const session: CDPSession = await page.context().newCDPSession(page);
  return async (type, points) => {
    await session.send('Input.dispatchTouchEvent', { type, touchPoints: points.map(([x, y], id) => ({ x, y, id })) });
  };
}

async function middleOf(page: Page, name: string): Promise<Point> {
  await chip(page, name).scrollIntoViewIfNeeded();
  const box = await chip(page, name).boundingBox();
  if (box === null) throw new Error(`middleOf: no ${name}`);
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Down, a way in steps, and up. */
async function swipe(fingers: Fingers, [x, y]: Point, dy: number, lift = true): Promise<void> {
  await fingers('touchStart', [[x, y]]);
  for (let step = 1; step <= 8; step++) await fingers('touchMove', [[x, y + (dy * step) / 8]]);
  if (lift) await fingers('touchEnd', []);
}

const LEVELS = [
  'Casing top',
  'Frost line',
  'Static level',
  'Pumping level',
  'Casing bottom',
  'Pump intake',
  'Well bottom',
];

async function allHeard(page: Page): Promise<string[]> {
  return Promise.all(LEVELS.map((name) => heard(page, name)));
}

function scrolled(page: Page): Promise<number> {
  return page.evaluate(() => Math.round(window.scrollY));
}

test.beforeEach(async ({ page }) => {
  await openSample(page);
  await page.setViewportSize({ width: 390, height: 700 });
});

test('a flick that begins on a level scrolls the page and edits nothing', { tag: '@phone' }, async ({ page }) => {
  const before = await allHeard(page);
  for (const name of LEVELS) {
    await page.evaluate(() => window.scrollTo(0, 0));
    const at = await middleOf(page, name);
    const top = await scrolled(page);
    await swipe(await fingersOf(page), at, -200);
    await expect.poll(() => scrolled(page), name).toBeGreaterThan(top + 50);
    expect(await allHeard(page), name).toEqual(before);
  }
  await expect(undo(page)).toHaveAttribute('title', /Open the sample/);
});

test('a flick to the side on a level edits nothing either', { tag: '@phone' }, async ({ page }) => {
  const before = await allHeard(page);
  const [x, y] = await middleOf(page, 'Pumping level');
  const fingers = await fingersOf(page);
  await fingers('touchStart', [[x, y]]);
  for (let step = 1; step <= 8; step++) await fingers('touchMove', [[x - 20 * step, y - 5 * step]]);
  await fingers('touchEnd', []);
  expect(await allHeard(page)).toEqual(before);
  await expect(undo(page)).toHaveAttribute('title', /Open the sample/);
});

test(
  'a tap chooses a level and shows it; a finger on the chosen one moves it, and the page stands still',
  { tag: '@phone' },
  async ({ page }) => {
    const before = await heard(page, 'Pump intake');
    const at = await middleOf(page, 'Pump intake');
    await page.touchscreen.tap(...at);
    await expect(page.getByRole('textbox', { name: /Pump intake/ })).toHaveValue('180 ft');
    await expect(chip(page, 'Pump intake')).toBeFocused();
    await expect(page.locator('[data-handle=pumpSetting]')).toHaveClass(/chosen/);
    const top = await scrolled(page);
    await swipe(await fingersOf(page), await middleOf(page, 'Pump intake'), -60);
    await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeLessThan(feetIn(before) - 10);
    expect(await scrolled(page)).toBe(top);
    // It was chosen for this once: the next flick over it scrolls.
    const moved = await heard(page, 'Pump intake');
    await swipe(await fingersOf(page), await middleOf(page, 'Pump intake'), -60);
    await expect.poll(() => scrolled(page)).not.toBe(top);
    expect(await heard(page, 'Pump intake')).toBe(moved);
  },
);

test('another level than the chosen one is not moved', { tag: '@phone' }, async ({ page }) => {
  await page.touchscreen.tap(...(await middleOf(page, 'Pump intake')));
  await expect(page.locator('[data-handle=pumpSetting]')).toHaveClass(/chosen/);
  const before = await allHeard(page);
  await swipe(await fingersOf(page), await middleOf(page, 'Static level'), -100);
  expect(await allHeard(page)).toEqual(before);
});

test(
  'a level that a finger rests on is taken, and follows it while the page stands still',
  { tag: '@phone' },
  async ({ page }) => {
    const before = await heard(page, 'Pump intake');
    const [x, y] = await middleOf(page, 'Pump intake');
    const top = await scrolled(page);
    const fingers = await fingersOf(page);
    await fingers('touchStart', [[x, y]]);
    await expect(page.locator('.sheet > .note')).toContainText('where it was');
    for (let step = 1; step <= 8; step++) await fingers('touchMove', [[x, y - 8 * step]]);
    await expect(page.locator('.sheet > .note')).toContainText('shallower');
    await fingers('touchEnd', []);
    await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeLessThan(feetIn(before) - 10);
    expect(await scrolled(page)).toBe(top);
    await undo(page).click();
    await expect.poll(() => heard(page, 'Pump intake')).toBe(before);
  },
);

test('a finger that rested on a level and did not move it has chosen it', { tag: '@phone' }, async ({ page }) => {
  const fingers = await fingersOf(page);
  await fingers('touchStart', [await middleOf(page, 'Pump intake')]);
  await expect(page.locator('.sheet > .note')).toContainText('where it was');
  await fingers('touchEnd', []);
  await expect(page.getByRole('textbox', { name: /Pump intake/ })).toHaveValue('180 ft');
  await expect(undo(page)).toHaveAttribute('title', /Open the sample/);
});

const ENDS: Readonly<Record<string, (page: Page, fingers: Fingers, at: Point) => Promise<unknown>>> = {
  'turning the phone': (page) => page.setViewportSize({ width: 844, height: 390 }),
  'another window': (page) => page.evaluate(() => window.dispatchEvent(new FocusEvent('blur'))),
  'a call that hides the page': (page) =>
    page.evaluate(() => {
      Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => 'hidden' });
      document.dispatchEvent(new Event('visibilitychange'));
    }),
  'a second finger': (_page, fingers, [x, y]) =>
    fingers('touchStart', [
      [x, y],
      [60, 120],
    ]),
};

for (const [what, end] of Object.entries(ENDS)) {
  test(`${what} ends the drag, with the level back where it was`, { tag: '@phone' }, async ({ page }) => {
    const before = await allHeard(page);
    await page.touchscreen.tap(...(await middleOf(page, 'Pump intake')));
    await expect(page.locator('[data-handle=pumpSetting]')).toHaveClass(/chosen/);
    const [x, y] = await middleOf(page, 'Pump intake');
    const fingers = await fingersOf(page);
    await swipe(fingers, [x, y], -80, false);
    await expect.poll(() => heard(page, 'Pump intake')).not.toBe(before[LEVELS.indexOf('Pump intake')]);
    await end(page, fingers, [x, y - 80]);
    await expect.poll(() => allHeard(page)).toEqual(before);
    await expect(page.locator('.sheet > .note')).toBeHidden();
    await fingers('touchMove', [[x, y - 120]]);
    await fingers('touchEnd', []);
    await expect.poll(() => allHeard(page)).toEqual(before);
    await expect(undo(page)).toHaveAttribute('title', /Open the sample/);
    await expect(redo(page)).toBeDisabled();
  });
}
