/** The close-up and the house are found at once: by a button, by a handle on the rail, by a double click, and by keys. */
import { chip, openChanged, openSample } from './hands.ts';
import { expect, test, type Locator, type Page } from './onePage.ts';

const closeUp = (page: Page): Locator => page.getByRole('dialog', { name: /^Close-up/ });
const glass = (page: Page): Locator => page.getByRole('button', { name: /^Close-up at .*, true proportion$/ });
const feetOf = async (page: Page): Promise<number> =>
  Number(/at ([\d.]+) ft/.exec((await closeUp(page).getAttribute('aria-label')) ?? '')?.[1]);

async function middleOf(box: Locator): Promise<{ x: number; y: number }> {
  const { x, y, width, height } = (await box.boundingBox())!;
  return { x: x + width / 2, y: y + height / 2 };
}

test.beforeEach(async ({ page }) => {
  await openSample(page);
});

test('a button that says what it does opens it at the pump, and shuts it', async ({ page }) => {
  const button = page.getByRole('button', { name: 'C Close-up, true proportion' });
  await button.click();
  await expect(closeUp(page)).toBeVisible();
  expect(await feetOf(page)).toBe(180);
  await expect(button).toHaveAttribute('aria-pressed', 'true');
  await button.click();
  await expect(closeUp(page)).toBeHidden();
});

test('a glass on the rail opens it where it stands, and takes it along when it is dragged', async ({ page }) => {
  const { x, y } = await middleOf(glass(page));
  await page.mouse.click(x, y);
  expect(await feetOf(page)).toBe(180);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y - 120, { steps: 8 });
  await page.mouse.up();
  await expect(closeUp(page)).toBeVisible();
  expect(await feetOf(page)).toBeLessThan(170);
  expect((await middleOf(glass(page))).y).toBeCloseTo(y - 120, -1);
});

test('with keys the glass opens it a foot higher and a foot deeper', async ({ page }) => {
  await glass(page).focus();
  await page.keyboard.press('ArrowUp');
  await expect(closeUp(page)).toBeVisible();
  expect(await feetOf(page)).toBe(179);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  expect(await feetOf(page)).toBe(181);
  await page.keyboard.press('Escape');
  await expect(closeUp(page)).toBeHidden();
});

test('a double click on a part of the well opens it there', async ({ page }) => {
  const { y } = await middleOf(chip(page, 'Pump intake'));
  const sheet = page.getByRole('group', { name: 'Levels that can be moved' });
  const { x, width } = (await sheet.boundingBox())!;
  // Across the section, over the levels of the pump and its valve: somewhere on the way hangs the pipe.
  const above = y - 120;
  for (let at = 0.36; at > 0.1 && !(await closeUp(page).isVisible()); at -= 0.01) {
    await page.mouse.move(x + width * at, above);
    if ((await sheet.evaluate((element) => element.style.cursor)) === 'help')
      await page.mouse.dblclick(x + width * at, above);
  }
  await expect(closeUp(page)).toBeVisible();
  const feet = await feetOf(page);
  expect(feet).toBeLessThan(170);
  expect(feet).toBeGreaterThan(110);
});

test('the house is fetched when it is asked for, and tells of its parts', async ({ page }) => {
  const button = page.getByRole('button', { name: 'D At the house' });
  await button.click();
  const house = page.getByRole('dialog', { name: 'At the house' });
  await expect(house).toBeVisible();
  await expect(house.getByText('Shut-off to the house')).toBeVisible();
  const tank = await middleOf(house.locator('svg').first());
  await page.mouse.move(tank.x - 120, tank.y);
  await expect(page.locator('.strip')).toContainText('Pressure tank');
  // It and the close-up take each other's place.
  await page.getByRole('button', { name: 'C Close-up, true proportion' }).click();
  await expect(house).toBeHidden();
  await page.keyboard.press('Escape');
  await expect(closeUp(page)).toBeHidden();
});

test('asked for under the section, the close-up comes into view', { tag: '@phone' }, async ({ page }) => {
  await page.getByRole('button', { name: /^C Close-up/ }).tap();
  await expect(closeUp(page)).toBeInViewport({ ratio: 0.6 });
});

test('the glass on the rail lies over no figure', { tag: '@both' }, async ({ page }) => {
  // Beside the lower end of what is allowed.
  const pump = { setting: '214 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } };
  await openChanged(page, { pump });
  const { x, y, width, height } = (await glass(page).locator('svg').boundingBox())!;
  const under: string[] = [];
  let others = 0;
  for (const words of await page.locator('svg text:visible').all()) {
    const box = await words.boundingBox();
    if (box === null) continue;
    if (box.x < x + width && box.x + box.width > x && box.y < y + height && box.y + box.height > y)
      under.push((await words.textContent()) ?? '');
    else others++;
  }
  expect(under).toEqual([]);
  expect(others).toBeGreaterThan(20);
});
