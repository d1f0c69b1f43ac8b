/** What was reported, measured or installed is asked for before a hand changes it. */
import { expect, test, type Locator, type Page } from './onePage.ts';
import { chip, drag, feetIn, handOn, heard, openChanged, undo } from './hands.ts';

const FACTS = { status: { 'water.pumping': 'measured', 'well.depth': 'reported', 'pump.setting': 'installed' } };

function question(page: Page): Locator {
  return page.getByRole('alertdialog');
}

function answer(page: Page, name: string): Locator {
  return question(page).getByRole('button', { name, exact: true });
}

async function nothingHappened(page: Page, level: string, before: string): Promise<void> {
  await expect(question(page)).toBeHidden();
  await expect.poll(() => heard(page, level)).toBe(before);
  await expect(undo(page)).toHaveAttribute('title', /^Open/);
  await expect(chip(page, level)).toBeFocused();
}

test.beforeEach(async ({ page }) => openChanged(page, FACTS));

test(
  'a measured level that is dragged stays where it was let go until somebody says that it is changed',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    const before = await heard(page, 'Pumping level');
    await drag(page, 'Pumping level', 60, hasTouch ?? false);
    await expect(question(page)).toHaveAccessibleName('The pumping level was measured. Change it?');
    await expect(answer(page, 'Keep as measured')).toBeFocused();
    await expect(undo(page)).toHaveAttribute('title', /^Open/);
    await expect.poll(async () => feetIn(await heard(page, 'Pumping level'))).toBeGreaterThan(feetIn(before) + 10);
    await answer(page, 'Change').click();
    await expect(question(page)).toBeHidden();
    await expect(undo(page)).toHaveAttribute('title', /^Move pumping level/);
    await expect.poll(async () => feetIn(await heard(page, 'Pumping level'))).toBeGreaterThan(feetIn(before) + 10);
    await undo(page).click();
    await expect.poll(() => heard(page, 'Pumping level')).toBe(before);
  },
);

for (const [how, keep] of Object.entries({
  'the other button': (page: Page) => answer(page, 'Keep as reported').click(),
  Escape: (page: Page) => page.keyboard.press('Escape'),
})) {
  test(`${how} gives a reported level back and leaves no step`, async ({ page, hasTouch }) => {
    const before = await heard(page, 'Well bottom');
    await drag(page, 'Well bottom', 30, hasTouch ?? false);
    await expect(question(page)).toHaveAccessibleName('The well bottom was reported. Change it?');
    await keep(page);
    await nothingHappened(page, 'Well bottom', before);
  });
}

test('whoever goes on to something else has not changed it', async ({ page, hasTouch }) => {
  const before = await heard(page, 'Pumping level');
  await drag(page, 'Pumping level', 60, hasTouch ?? false);
  await expect(question(page)).toBeVisible();
  await page.getByRole('tab', { name: 'The record' }).focus();
  await expect(question(page)).toBeHidden();
  await expect.poll(() => heard(page, 'Pumping level')).toBe(before);
  await expect(undo(page)).toHaveAttribute('title', /^Open/);
});

test('keys ask once for each level that is chosen', async ({ page }) => {
  const before = await heard(page, 'Pump intake');
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('ArrowUp');
  await expect(question(page)).toHaveAccessibleName('The pump intake stands installed. Change it?');
  await page.keyboard.press('Escape');
  await nothingHappened(page, 'Pump intake', before);
  await page.keyboard.press('ArrowUp');
  await answer(page, 'Change').press('Enter');
  await expect(chip(page, 'Pump intake')).toBeFocused();
  const first = feetIn(await heard(page, 'Pump intake'));
  expect(first).toBeLessThan(feetIn(before));
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await expect(question(page)).toBeHidden();
  await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeLessThan(first);
  await chip(page, 'Static level').focus();
  await page.keyboard.press('ArrowDown');
  await expect(question(page)).toBeHidden();
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('ArrowUp');
  await expect(question(page)).toBeVisible();
});

test('a stepper asks, a typed depth does not', async ({ page }) => {
  await chip(page, 'Pump intake').focus();
  await page.getByRole('button', { name: 'Pump intake: one step deeper' }).click();
  await expect(question(page)).toBeVisible();
  await page.keyboard.press('Escape');
  const field = page.getByRole('textbox', { name: /Pump intake/ });
  await field.fill('170 ft');
  await field.press('Enter');
  await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBe(170);
  await expect(question(page)).toBeHidden();
});

test('a page that ends before the answer has changed nothing', { tag: '@both' }, async ({ page, hasTouch }) => {
  const before = await heard(page, 'Pumping level');
  const hand = await handOn(page, chip(page, 'Pumping level'), hasTouch ?? false);
  await hand.press();
  await hand.moveBy(60);
  // As long as a level in hand is kept for the next page, were it a choice and no fact.
  await page.waitForTimeout(1500);
  await page.reload();
  await expect.poll(() => heard(page, 'Pumping level')).toBe(before);
  await expect(undo(page)).not.toHaveAttribute('title', /^Move/);
});

test('where nobody said what stands, nothing is asked', async ({ page, hasTouch }) => {
  await openChanged(page, {});
  const before = await heard(page, 'Pump intake');
  await drag(page, 'Pump intake', -40, hasTouch ?? false);
  await expect.poll(() => heard(page, 'Pump intake')).not.toBe(before);
  await expect(question(page)).toBeHidden();
});
