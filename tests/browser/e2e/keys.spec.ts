import { expect, test } from './onePage.ts';
import { chip, feetIn, heard, openSample } from './hands.ts';

test.beforeEach(async ({ page }) => openSample(page));

test('arrow keys go one step, page keys ten, Home and End to what is possible', async ({ page }) => {
  await chip(page, 'Pump intake').focus();
  const start = feetIn(await heard(page, 'Pump intake'));
  await page.keyboard.press('ArrowDown');
  const step = feetIn(await heard(page, 'Pump intake')) - start;
  expect(step).toBeGreaterThan(0);
  await page.keyboard.press('ArrowUp');
  await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeCloseTo(start, 3);
  await page.keyboard.press('PageUp');
  expect(start - feetIn(await heard(page, 'Pump intake'))).toBeCloseTo(10 * step, 1);
  await page.keyboard.press('End');
  await expect.poll(() => heard(page, 'Pump intake')).toContain('218 ft 6 in');
  await page.keyboard.press('Home');
  await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeLessThan(12);
});

test('Shift with an arrow goes a finer step', async ({ page }) => {
  await chip(page, 'Pump intake').focus();
  const start = feetIn(await heard(page, 'Pump intake'));
  await page.keyboard.press('ArrowDown');
  const coarse = feetIn(await heard(page, 'Pump intake')) - start;
  await page.keyboard.press('Shift+ArrowDown');
  await expect.poll(async () => feetIn(await heard(page, 'Pump intake')) - start).toBeGreaterThan(coarse);
  expect(feetIn(await heard(page, 'Pump intake')) - start).toBeLessThan(1.5 * coarse);
});

test('a burst of keys is one step back', async ({ page }) => {
  const before = await heard(page, 'Pump intake');
  await chip(page, 'Pump intake').focus();
  for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Control+z');
  await expect.poll(() => heard(page, 'Pump intake')).toBe(before);
  await page.keyboard.press('Control+y');
  await expect.poll(() => heard(page, 'Pump intake')).not.toBe(before);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+Shift+z');
  await expect.poll(() => heard(page, 'Pump intake')).not.toBe(before);
});

test('a turn of direction starts a step of its own', async ({ page }) => {
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('ArrowUp');
  const up = await heard(page, 'Pump intake');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Control+z');
  await expect.poll(() => heard(page, 'Pump intake')).toBe(up);
});

test('the live region tells once what the keys changed, and what is undone', async ({ page }) => {
  await chip(page, 'Pump intake').focus();
  for (let i = 0; i < 30; i++) await page.keyboard.press('PageUp');
  await expect(page.getByRole('status')).toContainText(/New danger|New warning/);
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('status')).toContainText(/Undone: Move pump intake/);
});

test('Enter opens the field; a typed depth is kept as typed', async ({ page }) => {
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: /Pump intake/ })).toBeFocused();
  await page.keyboard.type('171 ft 6 in');
  await page.keyboard.press('Enter');
  await expect.poll(() => heard(page, 'Pump intake')).toContain('171 ft 6 in');
  await expect(page.getByRole('textbox', { name: /Pump intake/ })).toHaveValue('171 ft 6 in');
});

test('what cannot be read stays in the field, is not applied, and says how to write it', async ({ page }) => {
  const before = await heard(page, 'Pump intake');
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.type('deep');
  await page.keyboard.press('Enter');
  const field = page.getByRole('textbox', { name: /Pump intake/ });
  await expect(field).toHaveValue('deep');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText('Not applied.')).toBeVisible();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(before);
});

test('an impossible depth is not applied; the nearest possible one is a click away', async ({ page }) => {
  const faults: Error[] = [];
  page.on('pageerror', (fault) => faults.push(fault));
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.type('300 ft');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Not applied.')).toBeVisible();
  await page.getByRole('button', { name: 'Use 218 ft 6 in' }).click();
  await expect.poll(() => heard(page, 'Pump intake')).toContain('218 ft 6 in');
  await expect(chip(page, 'Pump intake')).toBeFocused();
  await expect(page.getByRole('textbox', { name: /Pump intake/ })).toHaveValue('218.5 ft');
  expect(faults).toEqual([]);
});

test('the steppers beside the field move one step', async ({ page }) => {
  await chip(page, 'Frost line').focus();
  const before = await heard(page, 'Frost line');
  await page.getByRole('button', { name: 'Frost line: one step deeper' }).click();
  await expect.poll(() => heard(page, 'Frost line')).not.toBe(before);
});

test('a screen reader that moves the native range by itself moves the level', async ({ page }) => {
  const before = feetIn(await heard(page, 'Pump intake'));
  await chip(page, 'Pump intake').evaluate((range: HTMLInputElement) => {
    range.value = String(Number(range.value) - 1);
    range.dispatchEvent(new Event('change', { bubbles: true }));
  });
  await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeLessThan(before);
});

test('tabbing through the levels keeps its order when a level passes another', async ({ page }) => {
  const names = () => page.getByRole('slider').evaluateAll((all) => all.map((each) => each.getAttribute('aria-label')));
  const before = await names();
  expect(before).toContain('Pump intake');
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('Home');
  await expect
    .poll(async () => feetIn(await heard(page, 'Pump intake')))
    .toBeLessThan(feetIn(await heard(page, 'Static level')));
  expect(await names()).toEqual(before);
});

test('keys leave the pumping level on whole steps, whatever the test’s own flow', async ({ page }) => {
  const level = chip(page, 'Pumping level');
  await level.focus();
  await page.keyboard.press('ArrowDown');
  const first = feetIn(await heard(page, 'Pumping level'));
  await page.keyboard.press('ArrowDown');
  const step = feetIn(await heard(page, 'Pumping level')) - first;
  expect([0.25, 0.5, 1, 2]).toContain(step);
  expect(Number.isInteger(first / step)).toBe(true);
});

test('with a level chosen, the first key of a number opens its field with that key in it', async ({ page }) => {
  const level = chip(page, 'Pump intake');
  const field = page.getByRole('textbox', { name: /^Pump intake/ });
  for (const [first, rest, shown] of [
    ['1', '65 ft', '165 ft'],
    ['.', '5', '.5'],
    [',', '5', ',5'],
  ] as const) {
    await level.focus();
    await page.keyboard.press(first);
    await expect(field).toBeFocused();
    await page.keyboard.type(rest);
    await expect(field).toHaveValue(shown);
    await page.keyboard.press(first === '1' ? 'Enter' : 'Escape');
  }
  await expect.poll(() => heard(page, 'Pump intake')).toContain('165 ft');
});
