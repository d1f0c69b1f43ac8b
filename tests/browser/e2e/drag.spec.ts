import { expect, test } from './onePage.ts';
import { chip, drag, feetIn, handOn, heard, openSample, redo, undo } from './hands.ts';

test.beforeEach(async ({ page }) => openSample(page));

test(
  'a drag moves the pump by what the pointer moved, and is one step back and forth',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    const before = await heard(page, 'Pump intake');
    await drag(page, 'Pump intake', -60, hasTouch ?? false);
    const after = await heard(page, 'Pump intake');
    expect(feetIn(after)).toBeLessThan(feetIn(before) - 10);
    await undo(page).click();
    await expect.poll(() => heard(page, 'Pump intake')).toBe(before);
    await expect(undo(page)).toBeEnabled(); // opening the sample is a step too
    await redo(page).click();
    await expect.poll(() => heard(page, 'Pump intake')).toBe(after);
  },
);

test(
  'while the pointer is down the drawing already shows the new depth, both units and the way from the start',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
    await hand.press();
    await hand.moveBy(-80);
    const note = page.locator('.sheet > .note');
    await expect(note).toContainText(' ft');
    await expect(note).toContainText(' m');
    await expect(note).toContainText('shallower');
    await hand.release();
    await expect(note).toBeHidden();
  },
);

test(
  'what is wrong shows while the pointer is still down, and goes when the level goes back',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    const drawing = page.locator('.sheet svg').first();
    await expect(drawing).not.toContainText('too high');
    const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
    await hand.press();
    await hand.moveBy(-340);
    await expect(drawing).toContainText('too high');
    await hand.moveBy(-4);
    await expect(drawing).not.toContainText('too high');
    await hand.release();
    await expect(drawing).not.toContainText('too high');
  },
);

test('a drag that comes back to its start leaves no step', async ({ page, hasTouch }) => {
  await drag(page, 'Pump intake', -60, hasTouch ?? false);
  await undo(page).click();
  const before = await heard(page, 'Pump intake');
  const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
  await hand.press();
  await hand.moveBy(-40);
  await hand.moveBy(0);
  await hand.release();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(before);
  await expect(redo(page)).toBeEnabled();
});

test(
  'a press without a drag changes nothing and shows the field of that level',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    const before = await heard(page, 'Pump intake');
    const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
    await hand.press();
    await hand.release();
    await expect.poll(() => heard(page, 'Pump intake')).toBe(before);
    await expect(page.getByRole('textbox', { name: /Pump intake/ })).toHaveValue('180 ft');
  },
);

test('Escape puts a dragged level back and adds no step', async ({ page, hasTouch }) => {
  const before = await heard(page, 'Static level');
  const hand = await handOn(page, chip(page, 'Static level'), hasTouch ?? false);
  await hand.press();
  await hand.moveBy(40);
  await expect.poll(() => heard(page, 'Static level')).not.toBe(before);
  await page.keyboard.press('Escape');
  await expect.poll(() => heard(page, 'Static level')).toBe(before);
  await hand.release();
  await expect.poll(() => heard(page, 'Static level')).toBe(before);
  await expect(page.getByRole('status')).toContainText('put back');
  await expect(undo(page)).toHaveAttribute('title', /Open the sample/);
});

test('a pointer that the system takes away puts the level back', { tag: '@both' }, async ({ page, hasTouch }) => {
  const before = await heard(page, 'Pump intake');
  const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
  await hand.press();
  await hand.moveBy(-60);
  await expect.poll(() => heard(page, 'Pump intake')).not.toBe(before);
  await hand.cancel();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(before);
  await expect(undo(page)).toHaveAttribute('title', /Open the sample/);
});

test('the motor stops on the bottom of the well, and the drawing says why', async ({ page, hasTouch }) => {
  const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
  await hand.press();
  await hand.moveBy(300);
  await expect(page.locator('.sheet > .note')).toContainText('motor stands on the bottom');
  await hand.release();
  await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeCloseTo(218.5, 1);
});

test('the static level carries the pumping level along, because the drawdown comes from a test', async ({
  page,
  hasTouch,
}) => {
  const fall = async (): Promise<number> =>
    feetIn(await heard(page, 'Pumping level')) - feetIn(await heard(page, 'Static level'));
  const before = await fall();
  const start = feetIn(await heard(page, 'Static level'));
  await drag(page, 'Static level', 40, hasTouch ?? false);
  await expect.poll(async () => feetIn(await heard(page, 'Static level'))).toBeGreaterThan(start + 5);
  expect(await fall()).toBeCloseTo(before, 0);
});

test('the scale of depths stands still while the bottom is dragged', { tag: '@both' }, async ({ page, hasTouch }) => {
  // The figure at 100 ft on the rail; a chip may stand still for its neighbours' sake.
  const figure = page
    .getByRole('group', { name: 'Levels that can be moved' })
    .locator('svg text')
    .filter({ hasText: /^100$/ })
    .first();
  const place = (): Promise<number> =>
    figure.evaluate((element) => element.getBoundingClientRect().top + window.scrollY);
  const before = await place();
  const hand = await handOn(page, chip(page, 'Well bottom'), hasTouch ?? false);
  await hand.press();
  await hand.moveBy(-40);
  expect(Math.abs((await place()) - before)).toBeLessThan(1);
  await hand.release();
  await expect.poll(place).not.toBe(before);
});

test('away from the labels the page scrolls as any page does', { tag: '@both' }, async ({ page, hasTouch }) => {
  await page.setViewportSize({ width: page.viewportSize()?.width ?? 390, height: 600 });
  const top = await page.evaluate(() => window.scrollY);
  const box = await page.getByRole('group', { name: 'Levels that can be moved' }).boundingBox();
  if (box === null) throw new Error('no drawing');
  if (hasTouch === true) {
    const session = await page.context().newCDPSession(page);
    // In the ground: further left the handle of the close-up is a control of its own.
    const x = box.x + 100;
    await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y: 450 }] });
    for (let y = 440; y >= 200; y -= 20)
      await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [{ x, y }] });
    await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  } else {
    await page.mouse.move(box.x + 60, 300);
    await page.mouse.wheel(0, 250);
  }
  await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(top + 50);
});

test(
  'a bottom that meets the pump stops there and offers to raise the pump, both in one step',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    const before = [await heard(page, 'Well bottom'), await heard(page, 'Pump intake')];
    await drag(page, 'Well bottom', -200, hasTouch ?? false);
    await expect.poll(async () => feetIn(await heard(page, 'Well bottom'))).toBeCloseTo(181.5, 1);
    await page.getByRole('button', { name: /^Raise pump to/ }).click();
    await expect.poll(async () => feetIn(await heard(page, 'Well bottom'))).toBeLessThan(181);
    await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeLessThan(170);
    await undo(page).click();
    await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBe(180);
    await undo(page).click();
    expect([await heard(page, 'Well bottom'), await heard(page, 'Pump intake')]).toEqual(before);
  },
);

test('a dragged pump stops at the end of its band and says at what', async ({ page, hasTouch }) => {
  const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
  await hand.press();
  let said = '';
  // The band ends ten feet under the water of the dry season: within a few pixels of it the drag must stop.
  for (let up = 20; up <= 160 && said === ''; up += 3) {
    await hand.moveBy(-up);
    const text = (await page.locator('.sheet > .note').textContent()) ?? '';
    if (text.includes('Stops at')) said = text;
  }
  await hand.release();
  expect(said).toMatch(/Stops at: .+\. Hold Alt to pass/);
});
