/** Status codes and layout: USGS, National Water Information System, groundwater-level service. The readings are made up. */
import { axeFinds } from './axe.ts';
import { expect, test, type Locator, type Page } from './onePage.ts';
import { heard, openSample, undo } from './hands.ts';

const TABLE = [
  '# made up, in the layout of public monitoring wells',
  ['agency_cd', 'site_no', 'lev_dt', 'lev_tm', 'lev_va', 'lev_status_cd'],
  ['5s', '15s', '10d', '5s', '12s', '1s'],
  ['USGS', '1', '2019-05', '', '51.20', ''],
  ['USGS', '1', '2020-08-14', '10:30', '88.55', 'P'],
  ['USGS', '1', '2021-04-02', '09:15', '49.85', ''],
  ['USGS', '1', '2021-10-02', '09:15', '58.40', ''],
  ['USGS', '1', '2021-13-02', '09:15', '58.40', ''],
  ['USGS', '1', '2022-04-02', '09:15', '54.25', ''],
]
  .map((row) => (typeof row === 'string' ? row : row.join('\t')))
  .join('\n');

test.beforeEach(async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'The record' }).click();
  await page.getByRole('button', { name: 'Paste a groundwater-level table' }).click();
});

const editor = (page: Page): Locator => page.getByRole('group', { name: 'Groundwater-level table' });
const field = (page: Page, name: string): Locator => page.getByRole('textbox', { name, exact: true }).last();

test(
  'a pasted table says what was read, at rest and left out, and axe finds nothing',
  { tag: '@both' },
  async ({ page }) => {
    await editor(page).getByRole('textbox').fill(TABLE);
    await expect(editor(page).getByRole('status')).toHaveText('5 readings, 4 at rest.');
    await expect(editor(page).getByRole('definition')).toHaveText([
      /^49\.\d+ ft, 2021-04-02$/,
      '58.4 ft, 2021-10-02',
      /^54\.\d+ ft, 2022-04-02$/,
    ]);
    await expect(editor(page).getByText('1 with status P: pumping')).toBeVisible();
    await expect(editor(page).getByText('Line 8: lev_dt is "2021-13-02"')).toBeVisible();
    expect(await axeFinds(page)).toEqual([]);
  },
);

test('its levels go into the record as one step, in place of a fall in a dry season', async ({ page }) => {
  const fall = field(page, 'Fall in a dry season');
  await fall.fill('6 ft');
  await fall.press('Enter');
  await editor(page).getByRole('textbox').fill(TABLE);
  await editor(page).getByRole('button', { name: 'Use highest and lowest' }).click();
  await expect(field(page, 'Static level')).toHaveValue('54.25 ft');
  await expect(field(page, 'Highest static level')).toHaveValue('49.85 ft');
  await expect(field(page, 'Lowest static level')).toHaveValue('58.4 ft');
  await expect(fall).toHaveValue('');
  expect(await heard(page, 'Static level')).toContain('54 ft');

  await undo(page).click();
  await expect(field(page, 'Static level')).toHaveValue('62 ft');
  await expect(field(page, 'Highest static level')).toHaveValue('');
  await expect(fall).toHaveValue('6 ft');
});

test('a dropped text file is read here, and not taken for a plan', async ({ page }) => {
  const file = await page.evaluateHandle((text) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([text], 'levels.txt', { type: 'text/plain' }));
    return transfer;
  }, TABLE);
  const box = editor(page).getByRole('textbox');
  await box.dispatchEvent('dragover', { dataTransfer: file });
  await box.dispatchEvent('drop', { dataTransfer: file });
  await expect(editor(page).getByRole('status')).toHaveText('5 readings, 4 at rest.');
  await expect(field(page, 'Static level')).toHaveValue('62 ft');
});

test('a text that is no such table is refused in words, and nothing can be written', async ({ page }) => {
  await editor(page).getByRole('textbox').fill('The water stood at 50 feet in May.');
  await expect(editor(page).getByRole('status')).toContainText('has no lev_dt, lev_va, lev_status_cd');
  await expect(editor(page).getByRole('button', { name: 'Use highest and lowest' })).toHaveCount(0);
});
