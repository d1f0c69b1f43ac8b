import { readFileSync } from 'node:fs';
import { axeFinds } from './axe.ts';
import { expect, test, type Page } from './onePage.ts';
import { chip, heard, openChanged, openSample, undo } from './hands.ts';

/** The sample with the weaker of two pumps: the stronger one does the job. */
async function openTooWeak(page: Page): Promise<void> {
  const file = new URL('../../../static/samples/tamarack-ridge.json', import.meta.url);
  const { pump } = JSON.parse(readFileSync(file, 'utf8')) as { pump: object };
  await openChanged(page, { pump: { ...pump, power: '1/2 hp' }, wire: { size: '14 AWG' } });
  await page.getByRole('tab', { name: 'Pump' }).click();
  await expect(page.getByRole('heading', { name: 'Which pump' })).toBeVisible();
}

const row = (page: Page, name: string | RegExp) => page.getByRole('button', { name, expanded: false });

test('one click chooses pump, pipe and wire, and one Undo takes them back', async ({ page }) => {
  await openTooWeak(page);
  const best = page.getByRole('button', { name: /^Yes 10 gpm, 1 hp/ });
  await expect(best).toBeVisible();
  await expect(page.getByRole('button', { name: /^No 10 gpm, 1\/2 hp now in the plan/ })).toBeVisible();
  await best.focus();
  await page.keyboard.press('Enter');
  await expect(
    page.getByRole('img', { name: /^What a pump of this name gives, .* water at rest 62 ft/ }),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Choose 10 gpm, 1 hp' }).click();
  await expect(page.getByRole('button', { name: /^Yes 10 gpm, 1 hp now in the plan/ })).toBeVisible();
  await expect(page.getByRole('status').first()).toContainText('Chosen: 10 gpm, 1 hp.');
  await undo(page).click();
  await expect(page.getByRole('button', { name: /^No 10 gpm, 1\/2 hp now in the plan/ })).toBeVisible();
});

test(
  'a pump pasted as two columns is judged with the others, chosen, and kept for the next well',
  { tag: '@both' },
  async ({ page }) => {
    await openSample(page);
    await page.getByRole('tab', { name: 'Pump' }).click();
    await page.getByText('Add a pump by its curve').click();
    const form = page.getByRole('form', { name: 'Add a pump by its curve' });
    await form.getByLabel('Name').fill('Shed pump');
    await form.getByLabel(/^Power/).fill('1 hp');
    await form.getByLabel(/^Flow and head/).fill('flow gpm\thead ft\n0\t330\n5\t310\n10\t250\n10\t240');
    await form.getByRole('button', { name: 'Keep this pump' }).click();
    await expect(form.getByRole('alert')).toHaveText('Lines 4 and 5 have the same flow, 10 gpm: keep one of them.');
    await form.getByLabel(/^Flow and head/).fill('flow gpm\thead ft\n0\t330\n5\t310\n10\t250\n14\t170');
    await form.getByRole('button', { name: 'Keep this pump' }).click();
    await expect(form.getByRole('status')).toHaveText(
      'Shed pump is kept with the plan, with 4 points, and in this browser.',
    );
    await row(page, /^(?:Yes|Works, but|No|Depends) Shed pump$/).click();
    await page.getByRole('button', { name: 'Choose Shed pump' }).click();
    await expect(page.getByRole('button', { name: /Shed pump now in the plan/ })).toBeVisible();
    await undo(page).click();
    await expect(row(page, /10 gpm, 1 hp now in the plan/)).toBeVisible();
    // Another well on this device finds it as well.
    await page.getByRole('button', { name: /^Wells/ }).click();
    await page
      .getByRole('button', { name: /Slate Hollow/ })
      .first()
      .click();
    await page.getByRole('tab', { name: 'Pump' }).click();
    await expect(page.getByRole('button', { name: /^(?:Yes|Works, but|No|Depends) Shed pump$/ })).toBeVisible();
  },
);

test('a tank is chosen by itself, and a flowing well is refused with the reason', async ({ page }) => {
  await openChanged(page, {
    house: {
      demand: '8 gpm',
      tank: '20 gal',
      reliefValve: true,
      distance: '120 ft',
      rise: '8 ft',
      line: { material: 'PE', size: '1 in', rating: '200 psi' },
    },
  });
  await page.getByRole('tab', { name: 'Pump' }).click();
  await page.getByRole('button', { name: 'Choose 44 gal' }).click();
  await expect(page.getByRole('button', { name: 'Choose 44 gal' })).toBeHidden();
  await expect(page.getByRole('button', { name: 'Choose 20 gal' })).toBeVisible();
  await openChanged(page, { water: { staticLevel: '-2 ft' } });
  await page.getByRole('tab', { name: 'Pump' }).click();
  await expect(page.getByText(/The well flows by itself\. Stop/)).toBeVisible();
});

test('every column of every pump is read in one table, by key and on paper', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'Pump' }).click();
  const door = page.getByRole('button', { name: 'Compare every column' });
  await door.focus();
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Which pump' });
  await expect(dialog.getByRole('columnheader')).toHaveText([
    'Pump',
    'Does it do the job',
    'Flow with the water lowest',
    'Of what is wanted',
    'To spare over cut-out',
    'Deepest water it lifts',
    'Water left over the intake',
    'Place in its range',
    'Pump intake',
    'Drop pipe',
    'Wire and supply',
    'Weight at rest',
    'Tank it needs',
  ]);
  await expect(dialog.getByRole('rowheader')).toHaveCount(42);
  const best = dialog.getByRole('row', { name: /^10 gpm, 1 hp now in the plan Yes 10\.4 gpm 130 % 24 psi/ });
  await expect(best).toBeVisible();
  // Nothing of it is out of reach: what is wider than the screen scrolls, and is reached by key.
  const region = dialog.getByRole('region', { name: 'Which pump' });
  await region.focus();
  await expect(region).toBeFocused();
  expect(await axeFinds(page, { within: 'dialog' })).toEqual([]);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('main')).toBeHidden();
  await expect(dialog.getByRole('button', { name: 'Close' })).toBeHidden();
  await expect(best).toBeVisible();
  await page.emulateMedia({ media: 'screen' });
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(door).toBeFocused();
});

test('what is said of a pump follows a level that is moved', async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'Pump' }).click();
  const best = page.getByRole('button', { name: /^Yes 10 gpm, 1 hp/ });
  await expect(best).toBeVisible();
  const told = page.locator('tbody, li').filter({ has: best }).first();
  const before = await told.innerText();
  expect(before).toMatch(/\d psi/);
  await chip(page, 'Static level').focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press('PageDown');
  await expect.poll(() => heard(page, 'Static level')).not.toMatch(/62 ft/);
  await expect.poll(() => told.innerText()).not.toBe(before);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(
    `axe finds nothing among the pumps and tanks, ${colorScheme}`,
    { tag: '@both' },
    async ({ page }, { project }) => {
      await page.emulateMedia({ colorScheme });
      await openSample(page);
      for (const width of project.name === 'phone' ? [390] : [1440, 1024]) {
        await page.setViewportSize({ width, height: 844 });
        await page.getByRole('tab', { name: 'Pump' }).click();
        const best = page.getByRole('button', { name: /^Yes 10 gpm, 1 hp/ });
        if ((await best.getAttribute('aria-expanded')) === 'false') await best.click();
        await page.getByText('Add a pump by its curve').click();
        expect(await axeFinds(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
          0,
        );
      }
    },
  );
}

test('what the pumps wait for leads to its field, and the tanks lead up to the pumps', async ({ page }) => {
  await openChanged(page, { house: { people: 4 }, pump: { setting: '180 ft' }, status: {} });
  await page.getByRole('tab', { name: 'Pump' }).click();
  const pumps = page.getByRole('region', { name: 'Which pump' });
  await expect(pumps).toContainText('Nobody said');
  await page.getByRole('link', { name: /^Choose the pump first/ }).press('Enter');
  await expect(page.getByRole('heading', { name: 'Which pump' })).toBeFocused();
  await pumps.getByRole('link', { name: 'Well to house' }).press('Enter');
  await expect(page.getByRole('textbox', { name: 'Well to house' })).toBeFocused();
  await page.getByRole('textbox', { name: 'Well to house' }).fill('60 ft');
  await page.keyboard.press('Enter');
  // What was said is asked no more.
  await page.getByRole('tab', { name: 'Pump' }).click();
  await expect(pumps.getByRole('link', { name: 'Rise to the tank' })).toBeVisible();
  await expect(pumps.getByRole('link', { name: 'Well to house' })).toHaveCount(0);
  await expect(pumps.getByRole('link')).toHaveCount(2);
});
