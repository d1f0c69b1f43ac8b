import { expect, test, type Locator, type Page } from './onePage.ts';
import { chip, feetIn, heard, openChanged, openSample, undo } from './hands.ts';

test.beforeEach(async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'The record' }).click();
});

test('a typed field moves the drawing and is one step back', { tag: '@both' }, async ({ page }) => {
  const field = page.getByRole('textbox', { name: 'Static level', exact: true }).last();
  await field.fill('71\' 6"');
  await field.press('Enter');
  expect(await heard(page, 'Static level')).toContain('71 ft 6 in');
  await undo(page).click();
  expect(await heard(page, 'Static level')).toContain('62 ft');
  await expect(field).toHaveValue('62 ft');
});

test('while a field is typed in nothing is applied, and what cannot be read stays with its reason', async ({
  page,
}) => {
  const field = page.getByRole('textbox', { name: 'Depth of the well' });
  await field.fill('1');
  expect(await heard(page, 'Well bottom')).toContain('220 ft');
  await field.fill('12 gpm');
  await field.blur();
  await expect(field).toHaveValue('12 gpm');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText(/^Not applied\./)).toBeVisible();
  expect(await heard(page, 'Well bottom')).toContain('220 ft');
});

test('"not known" is an answer: the level loses its handle and the figures their value', async ({ page }) => {
  const row = page.locator('.row', { has: page.getByRole('textbox', { name: 'Static level', exact: true }) });
  await row.getByRole('checkbox', { name: 'not known' }).check();
  await expect(page.getByRole('button', { name: /^Static level, not known/ })).toBeAttached();
  await page.getByRole('tab', { name: /^Findings/ }).click();
  const total = page.getByRole('rowheader', { name: /^Total dynamic head/ }).locator('xpath=following-sibling::td');
  await expect(total).toHaveText('not known');
});

test('the datum switch shifts what the record counted, by the height of the casing', async ({ page }) => {
  const before = feetIn(await heard(page, 'Pump intake'));
  await page.getByRole('combobox', { name: 'Depths counted from' }).selectOption('casing top');
  // The sample's casing stands 16 in above the ground: 180 ft from its top is 178 ft 8 in from the ground.
  expect(before - feetIn(await heard(page, 'Pump intake'))).toBeCloseTo(16 / 12, 2);
});

const layers = (page: Page): Locator => page.getByRole('textbox', { name: /^Material of (the|layer \d+)/ });
const depths = (page: Page): Locator => page.getByRole('textbox', { name: /^Bottom of (the layer|layer \d+)$/ });
const newEntry = (page: Page, name: string): Locator => page.getByRole('form', { name });

test('a layer is removed, and comes back by a step back', async ({ page }) => {
  await expect(layers(page)).toHaveCount(4);
  await page.getByRole('button', { name: 'Remove layer 1', exact: true }).click();
  await expect(layers(page)).toHaveCount(3);
  await expect(page.getByRole('button', { name: 'Add a layer' })).toBeFocused();
  await undo(page).click();
  await expect(layers(page).first()).toHaveValue('clay');
});

test('a new layer is asked for before it is written, goes where its depth belongs, and is one step back', async ({
  page,
}) => {
  await expect(depths(page)).toHaveCount(4);
  const add = page.getByRole('button', { name: 'Add a layer' });
  await add.focus();
  await page.keyboard.press('Enter');
  const material = page.getByRole('textbox', { name: 'Material of the new layer' });
  await expect(material).toBeFocused();
  await expect(material).toHaveValue('');
  await expect(material).toHaveAttribute('placeholder', 'for example clay');
  await expect(depths(page)).toHaveCount(4);
  await material.fill('peat');
  await page.getByRole('textbox', { name: 'Bottom of the new layer' }).fill('6 ft');
  await page.keyboard.press('Enter');
  await expect(add).toBeFocused();
  await expect(depths(page)).toHaveCount(5);
  await expect(layers(page).first()).toHaveValue('peat');
  await undo(page).click();
  await expect(depths(page)).toHaveCount(4);
  await expect(layers(page).first()).toHaveValue('clay');
});

test(
  'what cannot be put in keeps what was typed, with the reason beside it, also while another tab shows',
  { tag: '@both' },
  async ({ page }) => {
    await page.getByRole('button', { name: 'Add an inflow' }).click();
    const form = newEntry(page, 'New inflow');
    const depth = form.getByRole('textbox', { name: 'Depth of the new inflow' });
    await form.getByRole('button', { name: 'Put in' }).click();
    await expect(depth).toBeFocused();
    await expect(depth).toHaveAccessibleDescription(/^Type a value\./);
    await depth.fill('170');
    await depth.press('Enter');
    await expect(depth).toHaveAttribute('aria-invalid', 'true');
    await expect(depth).toHaveAccessibleDescription(/without a unit\. Write it as "170 ft"/);
    await page.getByRole('tab', { name: 'Depths' }).click();
    await page.getByRole('tab', { name: 'The record' }).click();
    await expect(depth).toHaveValue('170');
    await form.getByRole('button', { name: 'Leave it' }).click();
    await expect(page.getByRole('button', { name: 'Add an inflow' })).toBeFocused();
    await expect(page.getByRole('textbox', { name: /^Depth of inflow/ })).toHaveCount(2);
    await page.getByRole('button', { name: 'Add an inflow' }).click();
    await expect(depth).toHaveValue('');
  },
);

test('points of the pump are typed, not shown ready made', async ({ page }) => {
  await page.locator('summary').getByText('Pump', { exact: true }).click();
  const curve = page.getByRole('combobox', { name: 'Curve of the pump', exact: true });
  await curve.selectOption('points');
  const form = newEntry(page, 'Points from the maker’s sheet');
  await expect(form.getByRole('textbox', { name: 'Flow of the first point' })).toBeFocused();
  for (const each of await form.getByRole('textbox').all()) await expect(each).toHaveValue('');
  await form.getByRole('button', { name: 'Leave it' }).click();
  await expect(curve).toBeFocused();
  await expect(curve).toHaveValue('generic');
  await curve.selectOption('points');
  for (const [name, text] of [
    ['Flow of the first point', '0 gpm'],
    ['Head of the first point', '350 ft'],
    ['Flow of the second point', '16 gpm'],
    ['Head of the second point', '120 ft'],
  ] as const)
    await form.getByRole('textbox', { name }).fill(text);
  await form.getByRole('button', { name: 'Put in' }).click();
  await expect(page.getByRole('textbox', { name: 'Head of point 2' })).toHaveValue('120 ft');
  await expect(page.getByRole('button', { name: 'Add a point of the curve' })).toBeVisible();
  await undo(page).click();
  await expect(curve).toHaveValue('generic');
});

test('a buried line has no material until one is chosen', async ({ page }) => {
  await page.locator('summary').getByText('House', { exact: true }).click();
  await page.getByRole('button', { name: 'Remove the line to the house' }).click();
  const add = page.getByRole('button', { name: 'Add the line to the house' });
  await expect(add).toBeFocused();
  await add.press('Enter');
  const material = page.getByRole('combobox', { name: 'Material of the line to the house', exact: true });
  await expect(material).toBeFocused();
  await expect(material.locator('option:checked')).toHaveText('choose');
  await page.getByRole('textbox', { name: 'Size of the line to the house' }).fill('1-1/4 in');
  await page.getByRole('textbox', { name: 'Size of the line to the house' }).press('Enter');
  await expect(material).toHaveAccessibleDescription(/^Choose one\./);
  await material.selectOption('PVC');
  await newEntry(page, 'Line to the house').getByRole('button', { name: 'Put in' }).click();
  await expect(page.getByRole('button', { name: 'Remove the line to the house' })).toBeVisible();
  await expect(material).toHaveValue('PVC');
  await expect(page.getByRole('combobox', { name: 'Standard of the line to the house', exact: true })).toBeVisible();
});

test('a seal on top takes the pitless adapter’s level off the drawing', async ({ page }) => {
  await page.getByText('Top of the well', { exact: true }).click();
  await page.getByRole('combobox', { name: 'How the pipe leaves' }).selectOption('seal');
  await expect(chip(page, 'Pitless adapter')).toHaveCount(0);
});

test('what is assumed looks assumed, and gives way to what is typed', async ({ page }) => {
  const row = page.locator('.row', { has: page.getByRole('textbox', { name: /^Height above ground/ }) });
  const field = row.getByRole('textbox');
  await field.fill('');
  await field.press('Enter');
  await expect(row.getByText('assumed', { exact: true })).toBeVisible();
  await expect(field).toHaveAttribute('placeholder', 'assumed: 12 in');
  await expect(row.getByRole('combobox')).toHaveCount(0);
  // A bare number has the unit of what was assumed.
  await field.fill('18');
  await field.press('Enter');
  await expect(field).toHaveValue('18 in');
  await expect(row.getByText('assumed', { exact: true })).toHaveCount(0);
});

test('each value says how it came to stand there, and that is one step back', async ({ page }) => {
  const status = page.getByRole('combobox', { name: 'Status of Static level' });
  await status.selectOption('measured');
  await expect(status).toHaveValue('measured');
  await undo(page).click();
  await expect(status).toHaveValue('');
  await page.locator('summary').getByText('Pump', { exact: true }).click();
  await page.getByRole('combobox', { name: 'Status of Pump intake' }).selectOption('installed');
  await expect(page.getByRole('combobox', { name: 'Status of Pump intake' })).toHaveValue('installed');
});

test(
  'a number whose unit nobody can tell is told as it is left, with the unit to add, and all of it is seen',
  { tag: '@both' },
  async ({ page }) => {
    await openChanged(page, { house: { people: 4 } });
    await page.getByRole('tab', { name: 'The record' }).click();
    await page.locator('aside details').evaluateAll((all) => all.forEach((each) => each.setAttribute('open', '')));
    const distance = page.getByRole('textbox', { name: 'Well to house' });
    await distance.fill('60');
    // At the lower edge of the window its words lie beyond.
    await distance.evaluate((field) => {
      const { bottom } = field.getBoundingClientRect();
      window.scrollBy(0, bottom - window.innerHeight + 1);
    });
    await page.keyboard.press('Enter');
    const refused = page.getByText(
      'Not applied. Well to house cannot be "60": it is without a unit. Write it as "60 ft"',
    );
    await expect(refused.first()).toBeInViewport({ ratio: 1 });
    await expect(page.getByRole('status').first()).toContainText('Write it as "60 ft"');
    await page.keyboard.press('Tab');
    await expect(page.getByRole('status').first()).toContainText('Write it as "60 ft"');
  },
);
