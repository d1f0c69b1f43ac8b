/** Where the work goes on after each act, for those who neither see the page nor hold a mouse; and what they hear. */
import { expect, test, type Page } from './onePage.ts';
import { chip, openFaulty, openSample, redo, undo } from './hands.ts';

const head = (page: Page) => page.getByRole('main').getByRole('heading', { level: 1 });
const status = (page: Page) => page.getByRole('status').first();

async function openWells(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Wells/ }).press('Enter');
}

async function typeReport(page: Page): Promise<void> {
  await page.goto('/');
  const asked = page.getByRole('button', { name: 'Type in the report' });
  if (await asked.isVisible()) {
    await asked.press('Enter');
    await expect(page.getByLabel('Name of the well')).toBeFocused();
  }
  await page.getByLabel('Name of the well').fill('Birch Hollow');
  await page.getByLabel('Depth of the well').fill('180 ft');
  await page.getByLabel('Depth of the well').press('Enter');
}

test('a report that is drawn leads to the drawing, and what was found is said with it', async ({ page }) => {
  await typeReport(page);
  await expect(head(page)).toHaveText('Birch Hollow');
  await expect(head(page)).toBeFocused();
  await expect(status(page)).toHaveText(/^Well drawn: Birch Hollow\. .+\. \d+ checks could not be made\.$/);
});

test(
  'all round the drawing that a key led to there is a ring, also where the sheets lie',
  { tag: '@both' },
  async ({ page }) => {
    await typeReport(page);
    await expect(head(page)).toBeFocused();
    await expect(chip(page, 'Pump intake')).toBeAttached();
    const edges = async (): Promise<string[]> => {
      const { x, y, width } = (await page.locator('.drawing').boundingBox())!;
      const spots = [
        { x: x + 200, y },
        { x, y: y + 200 },
        { x: x + width - 6, y: y + 200 },
      ];
      const shots = spots.map((spot) =>
        page.screenshot({ clip: { ...spot, width: 6, height: 6 }, animations: 'disabled' }),
      );
      return (await Promise.all(shots)).map((shot) => shot.toString('base64'));
    };
    const ringed = await edges();
    await head(page).evaluate((heading: HTMLElement) => heading.blur());
    await expect.poll(async () => (await edges()).filter((spot, i) => spot === ringed[i])).toEqual([]);
  },
);

test('a sample leads to its drawing, and to what was found', { tag: '@both' }, async ({ page }) => {
  await page.goto('/');
  await page.getByRole('main').getByRole('button', { name: 'Slate Hollow homestead' }).press('Enter');
  await expect(head(page)).toHaveText('Slate Hollow homestead');
  await expect(head(page)).toBeFocused();
  await expect(status(page)).toHaveText(/^Well drawn: Slate Hollow homestead\. .+\.$/);
  // From there one key leads into what is drawn.
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.closest('.drawing') !== null)).toBe(true);
});

test('a well from the list leads to its drawing, and an empty desk to its ways to start', async ({ page }) => {
  await openFaulty(page);
  await openWells(page);
  await page.getByRole('button', { name: 'Heron Flats farmhouse' }).press('Enter');
  await expect(head(page)).toHaveText('Heron Flats farmhouse');
  await expect(head(page)).toBeFocused();
  await openWells(page);
  await page.getByRole('button', { name: /^Tamarack Ridge cabin \d/ }).press('Enter');
  await expect(head(page)).toHaveText('Tamarack Ridge cabin');
  await expect(head(page)).toBeFocused();
  await expect(status(page)).toHaveText(/^Well drawn: Tamarack Ridge cabin\. 1 danger, 2 warnings/);
  await openWells(page);
  await page.getByRole('button', { name: 'New well' }).press('Enter');
  await expect(head(page)).toHaveText(/^See the well cut open/);
  await expect(head(page)).toBeFocused();
  // And a well that was not on the desk yet in this tab.
  await page.reload();
  await page
    .getByRole('main')
    .getByRole('button', { name: /^Tamarack Ridge cabin \d/ })
    .press('Enter');
  await expect(head(page)).toBeFocused();
  await expect(status(page)).toHaveText(/^Well drawn: Tamarack Ridge cabin\. 1 danger/);
});

test('a page that is loaded anew takes no focus', async ({ page }) => {
  await openFaulty(page);
  await page.reload();
  await expect(chip(page, 'Pump intake')).toBeAttached();
  expect(await page.evaluate(() => document.activeElement === document.body)).toBe(true);
});

test('a well that is taken away leaves the focus on what brings it back, and that on the well', async ({ page }) => {
  await openFaulty(page);
  await openWells(page);
  await page.getByRole('button', { name: 'New well' }).press('Enter');
  await openWells(page);
  await page.getByRole('button', { name: /^Take away Tamarack/ }).press('Enter');
  const back = page.getByRole('button', { name: /^Bring back Tamarack/ });
  await expect(back).toBeFocused();
  await back.press('Enter');
  await expect(page.getByRole('button', { name: /^Tamarack Ridge cabin \d/ }).first()).toBeFocused();
  await expect(status(page)).toHaveText(/Tamarack Ridge cabin is back/);
});

test('the last step back leaves the focus on the way forth, and each says what is found then', async ({ page }) => {
  await openSample(page);
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('End');
  await expect(status(page)).toHaveText(/New (?:danger|warning)/);
  await undo(page).press('Enter');
  await expect(status(page)).toHaveText(/^Undone: Move pump intake.+(Danger|Warning|Note) gone: .+In all/);
  await expect(undo(page)).toBeFocused();
  await undo(page).press('Enter');
  await expect(redo(page)).toBeFocused();
  await redo(page).press('Enter');
  await expect(status(page)).toHaveText(/^Done again: Open the sample.+Well drawn: Tamarack Ridge cabin\. /);
  await redo(page).press('Enter');
  await expect(status(page)).toHaveText(/^Done again: Move pump intake.+New (?:danger|warning).+In all/);
  await expect(undo(page)).toBeFocused();
});

test('a fix leaves the focus in the list, and says what it changed', async ({ page }) => {
  await openFaulty(page);
  const offers = page.locator('.finding .offer');
  const before = await offers.count();
  await offers.first().press('Enter');
  await expect(offers).not.toHaveCount(before);
  await expect(status(page)).toHaveText(/(Danger|Warning|Note) gone: .+In all/);
  expect(await page.evaluate(() => document.activeElement?.closest('aside') !== null)).toBe(true);
});

test('a pump that is chosen says what is found with it, and its row keeps the focus', async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'Pump' }).press('Enter');
  const other = page.getByRole('button', { name: /^(?:Yes|Works, but|No|Depends)/, expanded: false }).nth(1);
  await other.press('Enter');
  await page
    .getByRole('button', { name: /^Choose / })
    .first()
    .press('Enter');
  await expect(status(page)).toHaveText(/^Chosen: .+\. (?:.+ )?In all .+\.\s*$/);
  expect(await page.evaluate(() => document.activeElement?.closest('aside') !== null)).toBe(true);
});

test('what was opened gives the focus back when it is closed', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  for (const [tab, name] of [
    ['Findings', 'How Wellcut judges'],
    ['Pump', 'Compare every column'],
  ] as const) {
    await page.getByRole('tab', { name: tab }).click();
    const opener = page.getByRole('button', { name: new RegExp(`^${name}`) });
    await opener.press('Enter');
    await expect(page.getByRole('dialog')).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(page.getByRole('dialog')).toBeHidden();
    await expect(opener).toBeFocused();
  }
  await openWells(page);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: /^Wells/ })).toBeFocused();
  await chip(page, 'Pump intake').press('Enter');
  await page.keyboard.press('Escape');
  await expect(chip(page, 'Pump intake')).toBeFocused();
});

test('what is told over the page and closed leads back to its head', async ({ page }) => {
  await openSample(page);
  await openWells(page);
  await page
    .locator('.menu input[type=file]')
    .setInputFiles({ name: 'broken.json', mimeType: 'application/json', buffer: Buffer.from('{') });
  await page.getByRole('alert').getByRole('button', { name: 'Close' }).press('Enter');
  await expect(head(page)).toBeFocused();
});

test('a step by key that leads to another well leads to its head, where the field of this one is gone', async ({
  page,
}) => {
  await openSample(page);
  await openWells(page);
  await page.getByRole('button', { name: 'Heron Flats farmhouse' }).press('Enter');
  await expect(head(page)).toHaveText('Heron Flats farmhouse');
  await page.getByRole('tab', { name: 'The record' }).click();
  const choice = page.getByRole('complementary').getByRole('combobox').first();
  await choice.focus();
  await page.keyboard.press('Control+z');
  await expect(head(page)).toHaveText('Tamarack Ridge cabin');
  await expect(head(page)).toBeFocused();
  // Within one well the field keeps it.
  await page.keyboard.press('Control+Shift+z');
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('ArrowUp');
  await choice.focus();
  await page.keyboard.press('Control+z');
  await expect(status(page)).toHaveText(/^Undone: Move pump intake/);
  await expect(choice).toBeFocused();
});

test('which unit the frost is in is answered by hand or key, and the field has the focus again', async ({ page }) => {
  await typeReport(page);
  await undo(page).click();
  await page.getByRole('button', { name: 'Show all lines' }).click();
  const frost = page.getByLabel('Frost goes down to');
  const answer = page.getByRole('group', { name: 'Which did you mean?' });
  await frost.fill('4');
  await page.getByRole('button', { name: 'Draw the well' }).press('Enter');
  await expect(frost).toBeFocused();
  await expect(frost).toHaveAttribute('aria-invalid', 'true');
  await answer.getByRole('button', { name: '4 ft' }).press('Enter');
  await expect(frost).toHaveValue('4 ft');
  await expect(frost).toBeFocused();
  await expect(frost).toHaveAttribute('aria-invalid', 'false');
  await frost.fill('4');
  await answer.getByRole('button', { name: '4 in' }).click();
  await expect(frost).toBeFocused();
});
