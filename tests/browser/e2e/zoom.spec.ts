/** The section zoomed and panned: by buttons, keys, wheel, double-click and two fingers; and what is dragged in it. */
import { readFile } from 'node:fs/promises';
import { axeFinds } from './axe.ts';
import { expect, test, type Locator, type Page } from './onePage.ts';
import { chip, feetIn, handOn, heard, openSample, savedPicture, undo } from './hands.ts';

const drawing = (page: Page): Locator =>
  page.getByRole('group', { name: 'Levels that can be moved' }).locator('svg').first();
const bar = (page: Page): Locator => page.getByRole('group', { name: 'Zoom of the section' });
const button = (page: Page, name: string): Locator => bar(page).getByRole('button', { name, exact: true });
const says = (page: Page): Locator => page.locator('[role=status][aria-live=polite]').first();

/** The section's box on the page, and its depths in feet: from the rail, as anyone would read them. */
interface Seen {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly feetPerPixel: number;
  readonly depthAt: (y: number) => number;
}

async function seen(page: Page): Promise<Seen> {
  return drawing(page)
    .evaluate((svg) => {
      const all = [...svg.querySelectorAll('text')];
      // The figures of the rail: bare numbers in one group, right-aligned left of the section.
      const groups = [...svg.querySelectorAll('g')].filter(
        (g) =>
          g.getAttribute('text-anchor') === 'end' &&
          g.children.length > 2 &&
          [...g.children].every((each) => /^-?[\d.]+$/.test(each.textContent)),
      );
      const figures = [...(groups[0]?.children ?? [])];
      const { left, top } = svg.getBoundingClientRect();
      const at = figures.map((each) => ({
        feet: Number(each.textContent),
        y: top + Number(each.getAttribute('y')) - 4,
      }));
      const rail = groups[0]?.parentElement?.querySelector('line');
      return {
        at,
        count: all.length,
        x: left + Number(rail?.getAttribute('x1')),
        top: top + Number(rail?.getAttribute('y1')),
        bottom: top + Number(rail?.getAttribute('y2')),
      };
    })
    .then(({ at, x, top, bottom }) => {
      const first = at[0];
      const last = at[at.length - 1];
      if (first === undefined || last === undefined || first === last) throw new Error('seen: the rail has no figures');
      const feetPerPixel = (last.feet - first.feet) / (last.y - first.y);
      return { x, top, bottom, feetPerPixel, depthAt: (y) => first.feet + (y - first.y) * feetPerPixel };
    });
}

const lengthOf = ({ top, bottom, feetPerPixel }: Seen): number => (bottom - top) * feetPerPixel;

async function inView(page: Page): Promise<Seen> {
  await drawing(page).scrollIntoViewIfNeeded();
  return seen(page);
}

test(
  'buttons zoom in and out by steps and show the whole well again; a live region tells what is shown',
  { tag: '@both' },
  async ({ page }) => {
    await openSample(page);
    const whole = await inView(page);
    await expect(button(page, 'Whole well')).toHaveAttribute('aria-disabled', 'true');
    await button(page, 'Zoom in').click();
    await button(page, 'Zoom in').click();
    await expect.poll(async () => lengthOf(await seen(page))).toBeCloseTo(lengthOf(whole) / 4, 0);
    await expect(says(page)).toHaveText(/Section shows \d+(\.\d)? to \d+(\.\d)? ft\./);
    await button(page, 'Zoom out').click();
    await expect.poll(async () => lengthOf(await seen(page))).toBeCloseTo(lengthOf(whole) / 2, 0);
    await button(page, 'Whole well').click();
    await expect.poll(async () => lengthOf(await seen(page))).toBeCloseTo(lengthOf(whole), 0);
    await expect(says(page)).toHaveText(/Section shows the whole well\./);
  },
);

test('the buttons are large enough to hit', { tag: '@both' }, async ({ page, hasTouch }) => {
  await openSample(page);
  for (const each of await bar(page).getByRole('button').all()) {
    const box = (await each.boundingBox())!;
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(hasTouch === true ? 44 : 24);
  }
});

test('keys zoom about the chosen level, and pan from the buttons', async ({ page }) => {
  await openSample(page);
  const whole = await inView(page);
  await chip(page, 'Pump intake').focus();
  const line = async (): Promise<number> => {
    const now = await seen(page);
    return (feetIn(await heard(page, 'Pump intake')) - now.depthAt(now.top)) / now.feetPerPixel;
  };
  const before = await line();
  const depth = await heard(page, 'Pump intake');
  await page.keyboard.press('+');
  await expect.poll(async () => lengthOf(await seen(page))).toBeCloseTo(lengthOf(whole) / 2, 0);
  expect(Math.abs((await line()) - before)).toBeLessThan(1);
  expect(await heard(page, 'Pump intake')).toBe(depth);
  await page.keyboard.press('-');
  await expect.poll(async () => lengthOf(await seen(page))).toBeCloseTo(lengthOf(whole), 0);
  await page.keyboard.press('+');
  await page.keyboard.press('+');
  await button(page, 'Zoom in').focus();
  const there = await seen(page);
  await page.keyboard.press('PageUp');
  await expect.poll(async () => (await seen(page)).depthAt(there.top)).toBeLessThan(there.depthAt(there.top) - 10);
  const up = await seen(page);
  await page.keyboard.press('Shift+ArrowDown');
  await expect
    .poll(async () => (await seen(page)).depthAt(there.top))
    .toBeCloseTo(up.depthAt(there.top) + lengthOf(up) / 10, 0);
  await page.keyboard.press('0');
  await expect.poll(async () => lengthOf(await seen(page))).toBeCloseTo(lengthOf(whole), 0);
});

test('a wheel scrolls the page past a whole well; with the control key it zooms about the pointer', async ({
  page,
}) => {
  await openSample(page);
  const whole = await inView(page);
  const x = whole.x + 60;
  const y = Math.round(whole.top + (whole.bottom - whole.top) * 0.7);
  await page.mouse.move(x, y);
  const scrolled = (): Promise<number> => page.evaluate(() => window.scrollY);
  const start = await scrolled();
  await page.mouse.wheel(0, 40);
  await expect.poll(scrolled).toBeGreaterThan(start);
  await page.evaluate(() => window.scrollTo(0, 0));
  await expect.poll(scrolled).toBe(0);
  const under = (await seen(page)).depthAt(y);
  await page.keyboard.down('Control');
  await page.mouse.wheel(0, -300);
  await page.keyboard.up('Control');
  await expect.poll(async () => lengthOf(await seen(page))).toBeLessThan(lengthOf(whole) * 0.75);
  const zoomed = await seen(page);
  expect(Math.abs(zoomed.depthAt(y) - under) / zoomed.feetPerPixel).toBeLessThan(1);
  // Zoomed in, the wheel pans, and the page stands still until the well ends.
  await page.mouse.wheel(0, 30);
  const panned = async (): Promise<number> => ((await seen(page)).depthAt(y) - under) / zoomed.feetPerPixel;
  await expect.poll(panned).toBeGreaterThan(10);
  expect(await panned()).toBeLessThan(32);
  expect(await scrolled()).toBe(0);
  for (let i = 0; i < 20; i++) await page.mouse.wheel(0, 200);
  await expect.poll(scrolled).toBeGreaterThan(0);
});

test('a double-click zooms in about its place, and a drag of the ground pans', async ({ page }) => {
  await openSample(page);
  const whole = await inView(page);
  const x = whole.x + 40;
  const y = Math.round(whole.top + (whole.bottom - whole.top) * 0.62);
  await page.mouse.dblclick(x, y);
  await expect.poll(async () => lengthOf(await seen(page))).toBeCloseTo(lengthOf(whole) / 2, 0);
  await page.mouse.dblclick(x, y);
  await expect.poll(async () => lengthOf(await seen(page))).toBeCloseTo(lengthOf(whole) / 4, 0);
  const before = await seen(page);
  expect(Math.abs(before.depthAt(y) - whole.depthAt(y)) / before.feetPerPixel).toBeLessThan(1.5);
  const plan = await heard(page, 'Pump intake');
  const step = (await undo(page).getAttribute('title')) ?? '';
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y + 80, { steps: 8 });
  await page.mouse.up();
  await expect
    .poll(async () => ((await seen(page)).depthAt(y + 80) - before.depthAt(y)) / before.feetPerPixel)
    .toBeCloseTo(0, 0);
  expect(await heard(page, 'Pump intake')).toBe(plan);
  // Looking is no step of the history.
  await expect(undo(page)).toHaveAttribute('title', step);
});

test('two fingers zoom and pan, one finger does neither', { tag: '@both' }, async ({ page }) => {
  const session = await page.context().newCDPSession(page);
  // A desktop may have a touch screen as well.
  await session.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 5 });
  await openSample(page);
  const whole = await inView(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: { x: number; y: number; id: number }[]) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints });
  const x = whole.x + 40;
  const middle = (Math.max(whole.top, 80) + Math.min(whole.bottom, 800)) / 2;
  const two = (apart: number, y = middle) => [
    { x, y: y - apart / 2, id: 0 },
    { x: x + 20, y: y + apart / 2, id: 1 },
  ];
  const scroll = await page.evaluate(() => [window.scrollY, window.visualViewport?.scale]);
  const under = whole.depthAt(middle);
  await send('touchStart', [two(80)[0]!]);
  await send('touchStart', two(80));
  for (const apart of [100, 140, 180, 240]) await send('touchMove', two(apart));
  await expect.poll(async () => lengthOf(await seen(page))).toBeLessThan(lengthOf(whole) * 0.42);
  const near = await seen(page);
  expect(Math.abs(near.depthAt(middle) - under) / near.feetPerPixel).toBeLessThan(2);
  for (const dy of [10, 25, 40]) await send('touchMove', two(240, middle + dy));
  await expect.poll(async () => Math.abs((await seen(page)).depthAt(middle + 40) - under)).toBeLessThan(1);
  await send('touchEnd', []);
  // The page itself neither grew nor scrolled.
  expect(await page.evaluate(() => [window.scrollY, window.visualViewport?.scale])).toEqual(scroll);
  const length = lengthOf(await seen(page));
  await send('touchStart', [{ x, y: middle, id: 0 }]);
  for (const dy of [20, 60, 100]) await send('touchMove', [{ x, y: middle - dy, id: 0 }]);
  await send('touchEnd', []);
  expect(lengthOf(await seen(page))).toBeCloseTo(length, 3);
});

test(
  'a level dragged while zoomed moves by the zoomed scale, stops at the window’s edge, and is one step',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    await openSample(page);
    await inView(page);
    const before = feetIn(await heard(page, 'Pump intake'));
    await chip(page, 'Pump intake').focus();
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    await expect.poll(async () => lengthOf(await seen(page))).toBeLessThan(32);
    const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
    const scale = (await seen(page)).feetPerPixel;
    await hand.press();
    await hand.moveBy(-48);
    await hand.release();
    await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeLessThan(before - 0.5);
    const moved = before - feetIn(await heard(page, 'Pump intake'));
    // Rounded to the step that a pixel is worth: an inch here.
    expect(Math.abs(moved - 48 * scale)).toBeLessThan(0.1);
    expect(await lengthOf(await seen(page))).toBeLessThan(32);
    await undo(page).click();
    await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBe(before);

    const again = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
    const window = await seen(page);
    await again.press();
    await again.moveBy(-Math.min(500, window.bottom - window.top));
    await again.release();
    const edge = window.depthAt(window.top);
    await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeLessThan(before - 3);
    expect(feetIn(await heard(page, 'Pump intake'))).toBeGreaterThanOrEqual(edge - 0.1);
  },
);

test(
  'a level beyond the window is chosen at its chip, which brings it into view; it is not dragged there',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    await openSample(page);
    await inView(page);
    await chip(page, 'Pump intake').focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press('+');
    await expect.poll(async () => lengthOf(await seen(page))).toBeLessThan(32);
    const deep = await heard(page, 'Static level');
    const length = lengthOf(await seen(page));
    const hand = await handOn(page, chip(page, 'Static level'), hasTouch ?? false);
    await hand.press();
    // A finger that moves on scrolls the page, and has chosen nothing.
    if (hasTouch !== true) await hand.moveBy(30);
    await hand.release();
    await expect
      .poll(async () => {
        const now = await seen(page);
        return Math.abs(now.depthAt((now.top + now.bottom) / 2) - feetIn(deep));
      })
      .toBeLessThan(1);
    expect(await heard(page, 'Static level')).toBe(deep);
    expect(lengthOf(await seen(page))).toBeCloseTo(length, 1);
    await expect(page.getByRole('textbox', { name: /Static level/ })).toBeVisible();
  },
);

test(
  'the window outlives edits and a switch of units, and another well begins whole',
  { tag: '@both' },
  async ({ page }) => {
    await openSample(page);
    await inView(page);
    await chip(page, 'Pump intake').focus();
    await page.keyboard.press('+');
    await page.keyboard.press('+');
    await expect(button(page, 'Whole well')).toHaveAttribute('aria-disabled', 'false');
    const length = lengthOf(await seen(page));
    await page.keyboard.press('ArrowUp');
    await expect(undo(page)).toBeEnabled();
    expect(lengthOf(await seen(page))).toBeCloseTo(length, 1);
    const metric = page.getByRole('button', { name: 'metres, litres a minute, bar' });
    if (!(await metric.isVisible())) await page.getByRole('button', { name: /^Wells/ }).click();
    await metric.click();
    // The rail now counts in metres.
    await expect.poll(async () => lengthOf(await seen(page))).toBeCloseTo(length * 0.3048, 0);
    const another = page.getByRole('button', { name: 'Palo Amargo guest house' });
    if (!(await another.isVisible())) await page.getByRole('button', { name: /^Wells/ }).click();
    await another.click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Palo Amargo guest house');
    await expect(button(page, 'Whole well')).toHaveAttribute('aria-disabled', 'true');
  },
);

test('an exported picture shows the whole well', async ({ page }) => {
  await openSample(page);
  const exported = async (): Promise<string> => readFile(await (await savedPicture(page, 'SVG')).path(), 'utf8');
  const whole = await exported();
  await inView(page);
  await button(page, 'Zoom in').click();
  await button(page, 'Zoom in').click();
  await expect(button(page, 'Whole well')).toHaveAttribute('aria-disabled', 'false');
  expect(await exported()).toBe(whole);
});

test('paper shows the whole well', async ({ page }) => {
  await openSample(page);
  const onPaper = async (): Promise<string> => {
    await page.emulateMedia({ media: 'print' });
    const sheet = page.locator('svg:visible').first();
    await expect(sheet).toContainText(/SCALE .*1:\d+/);
    const drawn = await sheet.innerHTML();
    await page.emulateMedia({ media: 'screen' });
    return drawn;
  };
  const whole = await onPaper();
  const seenWhole = await inView(page);
  await button(page, 'Zoom in').click();
  await expect.poll(async () => lengthOf(await seen(page))).toBeLessThan(lengthOf(seenWhole) * 0.6);
  expect(await onPaper()).toBe(whole);
  await expect.poll(async () => lengthOf(await seen(page))).toBeLessThan(lengthOf(seenWhole) * 0.6);
});

test('axe finds nothing while zoomed', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  await button(page, 'Zoom in').click();
  await button(page, 'Zoom in').click();
  await expect(button(page, 'Whole well')).toHaveAttribute('aria-disabled', 'false');
  expect(await axeFinds(page)).toEqual([]);
});

test(
  'beside the rail stands what the close-up shows, or an arrow to it when the section no longer shows that',
  { tag: '@both' },
  async ({ page }) => {
    await openSample(page);
    await page.getByRole('button', { name: 'Look closer' }).click();
    await expect(page.getByRole('dialog', { name: /^Close-up/ })).toBeVisible();
    const letter = (name: string): Locator =>
      drawing(page)
        .locator('text')
        .filter({ hasText: new RegExp(`^${name}$`) });
    // A section without brackets for the details has none for the close-up.
    const details = await letter('A').count();
    await expect(letter('C')).toHaveCount(details === 0 ? 0 : 1);
    if (details === 0) return;
    // It opens at the pump.
    const underFoot = async (): Promise<number> => {
      const [box, { bottom }] = [await letter('C').boundingBox(), await seen(page)];
      return (box?.y ?? NaN) + (box?.height ?? NaN) / 2 - bottom;
    };
    expect(await underFoot()).toBeLessThan(0);
    await chip(page, 'Frost line').focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press('+');
    await expect.poll(underFoot).toBeGreaterThan(0);
    await page.keyboard.press('0');
    await expect.poll(underFoot).toBeLessThan(0);
  },
);
