import { expect, test } from './onePage.ts';
import { chip, drag, feetIn, heard, openReport, openSample, redo, undo } from './hands.ts';

test('from a driller’s report to a dragged pump', { tag: '@both' }, async ({ page, hasTouch }) => {
  await openReport(page);
  await page.getByLabel('Name of the well').fill('Birch Hollow');
  await page.getByLabel('Depth of the well').fill('260');
  await page.getByLabel('Casing goes down to').fill('60 ft');
  await page.getByLabel('Static level').fill('41\' 6"');
  await page.getByLabel('How it was tested').selectOption({ label: 'pumped, with a drawdown' });
  await page.getByLabel('Test flow').fill('12');
  await page.getByLabel('Drawdown', { exact: true }).fill('55');
  await page.getByLabel('Peak flow needed').fill('8');
  await page.getByLabel('Well to the house').fill('90');
  await page.getByLabel('Pipe to the house').selectOption('1 in');
  await page.getByLabel('Tank above the well').fill('6');
  await page.getByLabel('Frost goes down to').fill('42');
  await page.getByLabel('Who says so?').selectOption({ label: 'the local code' });
  await page.getByLabel('Power of the pump').selectOption('1 hp');
  await page.getByRole('button', { name: 'Draw the well' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Birch Hollow');
  expect(await page.evaluate(() => window.scrollY)).toBe(0);
  // Drawdown at 8 gpm by proportion: 55 ft x 8 / 12 = 36 ft 8 in, below 41 ft 6 in.
  await expect.poll(async () => feetIn(await heard(page, 'Pumping level'))).toBeCloseTo(41.5 + (55 * 8) / 12, 0);
  await expect(page.getByText(/^A weak pump of that rating gives [\d.]+ gpm at/)).toBeVisible();
  const before = feetIn(await heard(page, 'Pump intake'));
  await drag(page, 'Pump intake', -50, hasTouch ?? false);
  await expect.poll(async () => feetIn(await heard(page, 'Pump intake'))).toBeLessThan(before);
});

test('a report that knows the depth alone still draws, and says what could not be judged', async ({ page }) => {
  await openReport(page);
  await page.getByLabel('Depth of the well').fill('180 ft');
  await page.getByRole('button', { name: 'Draw the well' }).click();
  await expect(chip(page, 'Pump intake')).toBeAttached();
  await expect(page.getByText(/^Could not check/)).toBeVisible();
  await expect(
    page.getByRole('rowheader', { name: /^Total dynamic head/ }).locator('xpath=following-sibling::td'),
  ).toHaveText('not known');
});

test('what is missing or cannot be read is said beside its line, all at once', { tag: '@both' }, async ({ page }) => {
  await openReport(page);
  await page.getByLabel('How it was tested').selectOption({ label: 'pumped, with a drawdown' });
  await page.getByLabel('Static level').fill('+3');
  await page.getByRole('button', { name: 'Draw the well' }).click();
  await expect(page.getByText('The drawing needs the depth of the well.')).toBeVisible();
  await expect(page.getByText('Type the flow and the drawdown of the test,')).toBeVisible();
  await expect(page.getByText('A plus can be read both ways.').first()).toBeVisible();
  await expect(page.getByLabel('Depth of the well')).toBeFocused();
});

test('a line with two readings is answered by a button beside it', { tag: '@both' }, async ({ page }) => {
  await openReport(page);
  await page.getByLabel('Depth of the well').fill('260');
  await page.getByLabel('Static level').fill('+3');
  await page.getByRole('button', { name: '3 ft above it: the well flows' }).click();
  await expect(page.getByLabel('Static level')).toHaveValue('-3 ft');
  await expect(page.getByLabel('Static level')).toBeFocused();
  await page.getByRole('button', { name: 'Draw the well' }).click();
  await expect.poll(() => heard(page, 'Static level')).toMatch(/3\s?ft/);
});

test('a part with a line that cannot be read opens by itself', async ({ page }) => {
  await openReport(page);
  await page.getByLabel('Depth of the well').fill('260');
  await page.getByLabel('Well to the house').fill('far');
  await page
    .getByRole('button', { name: 'Fold all' })
    .or(page.getByRole('button', { name: 'Show all lines' }))
    .click();
  await expect(page.getByLabel('Well to the house')).toBeHidden();
  await page.getByRole('button', { name: 'Draw the well' }).click();
  await expect(page.getByLabel('Well to the house')).toBeFocused();
});

test(
  'the well grows beside the lines, and what is not known is asked for in a list',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    await openReport(page);
    if (hasTouch === true) await page.getByRole('button', { name: 'See it so far' }).click();
    await expect(page.getByText('Type the depth, and the well is drawn here.')).toBeVisible();
    if (hasTouch === true) await page.getByRole('button', { name: 'Back to the lines' }).click();
    await page.getByLabel('Depth of the well').fill('240');
    await page.getByLabel('Casing goes down to').fill('deep');
    if (hasTouch === true) await page.getByRole('button', { name: 'See it so far' }).click();
    await expect(page.getByText('One line cannot be read yet, and is left out.')).toBeVisible();
    await expect(page.locator('figure svg')).toContainText('240 ft');
    if (hasTouch === true) await page.getByRole('button', { name: 'Back to the lines' }).click();
    await page.getByText(/^Still to ask: \d+$/).click();
    await page.getByRole('button', { name: 'How deep does the water stand with no pump running?' }).click();
    await expect(page.getByLabel('Static level')).toBeFocused();
  },
);

test('a report is pasted, looked over line by line, and drawn', { tag: '@both' }, async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Paste its text' }).click();
  const box = page.getByRole('textbox', { name: 'Paste the report' });
  await box.fill(
    'Well depth 350 ft\nCasing: 6 in steel 0 to 41 ft\nStatic level +3 ft\nYield 8 gpm by air\nPumping level 340 ft\nNice view.\n',
  );
  // What was pasted outlives the page.
  await page.reload();
  await expect(box).toHaveValue(/Well depth 350 ft/);
  await page.getByRole('button', { name: 'Read it' }).click();
  await expect(page.getByRole('group', { name: 'What was read' })).toBeFocused();
  await expect(page.getByText('Nice view.').last()).toBeVisible();
  // What is doubtful is not taken before somebody has ticked it.
  const level = page.getByRole('checkbox', { name: /^Static level/ });
  await expect(level).not.toBeChecked();
  await page.getByText(/^Read, and not taken: 1$/).click();
  await expect(page.getByText('With air the level is where the drill stem stood.')).toBeVisible();
  await page.getByRole('button', { name: /^Take \d values$/ }).click();
  await expect(page.getByLabel('Depth of the well')).toHaveValue('350 ft');
  await expect(page.getByLabel('Static level')).toHaveValue('');
  await expect(page.getByLabel('Found with')).toHaveValue('air lift');
  await page.getByRole('button', { name: 'Draw the well' }).click();
  await expect.poll(() => heard(page, 'Well bottom')).toMatch(/350\s?ft/);
});

test('a bare number that was typed keeps its unit when a text in metres is taken beside it', async ({ page }) => {
  await openReport(page);
  await page.getByLabel('Depth of the well').fill('240');
  await page.getByRole('button', { name: 'Paste its text instead' }).click();
  await page.getByRole('textbox', { name: 'Paste the report' }).fill('Static water level: 12.4 m\nYield: 20 L/min\n');
  await page.getByRole('button', { name: 'Read it' }).click();
  await page.getByRole('button', { name: 'Take 2 values' }).click();
  await expect(page.getByLabel('The report is in')).toHaveValue('us');
  await expect(page.getByLabel('Static level')).toHaveValue('12.4 m');
  await page.getByRole('button', { name: 'Draw the well' }).click();
  await expect.poll(() => heard(page, 'Well bottom')).toMatch(/240\s?ft/);
});

test('the browser’s own back leads to what was before, step by step', { tag: '@both' }, async ({ page }) => {
  await openReport(page);
  await page.getByLabel('Depth of the well').fill('240');
  await page.getByRole('button', { name: 'Draw the well' }).click();
  await expect(chip(page, 'Pump intake')).toBeAttached();
  await page.goBack();
  await expect(page.getByLabel('Depth of the well')).toHaveValue('240');
  await page.goBack();
  await expect(page.getByRole('button', { name: 'Type in the report' })).toBeVisible();
  await page.goForward();
  await expect(page.getByLabel('Depth of the well')).toHaveValue('240');
  await page.goForward();
  await expect(chip(page, 'Pump intake')).toBeAttached();
  // What the browser did is a step too, and can be taken back here.
  await undo(page).click();
  await expect(page.getByLabel('Depth of the well')).toHaveValue('240');
  await redo(page).click();
  await expect(chip(page, 'Pump intake')).toBeAttached();
});

test('back from one sample to another, and to the start', async ({ page }) => {
  await openSample(page, 'Heron Flats farmhouse');
  await page.getByRole('button', { name: /^Wells/ }).click();
  await page.getByRole('button', { name: 'Slate Hollow homestead' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Slate Hollow homestead');
  await page.goBack();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Heron Flats farmhouse');
  await page.goBack();
  await expect(page.getByRole('button', { name: 'Type in the report' })).toBeVisible();
});

test('the first picture is there before anything runs, and alive a moment later', async ({ page }) => {
  await page.goto('/');
  const water = page.getByRole('slider', { name: 'Drag the water' });
  await expect(water).toHaveAttribute('aria-valuetext', /^62\s?ft$/);
  const before = await page.locator('figure p').textContent();
  await water.fill('165');
  await expect(page.locator('figure p')).not.toHaveText(before ?? '');
  await page.getByRole('button', { name: 'Open this well' }).click();
  // What was played with is no change to the sample.
  await expect.poll(() => heard(page, 'Static level')).toMatch(/62\s?ft/);
});

test('without JavaScript there is a well to look at', async ({ browser }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto('/');
  const picture = page.getByRole('img', { name: /A drilled well in section/ });
  await expect(picture).toBeVisible();
  // The picture itself came, not its words alone.
  expect(await picture.evaluate((each: HTMLImageElement) => each.naturalWidth)).toBeGreaterThan(0);
  await context.close();
});

test('a test without its drawdown is asked for it once, and then drawn as not known', async ({ page }) => {
  await openReport(page);
  await page.getByLabel('Depth of the well').fill('180');
  // How the water comes in is nothing that the form says for the driller.
  await expect(page.getByLabel('Below the casing')).toHaveValue('');
  await page.getByLabel('How it was tested').selectOption({ label: 'pumped, with a drawdown' });
  await page.getByLabel('Test flow').fill('12');
  await page.getByRole('button', { name: 'Draw the well' }).click();
  await expect(page.getByText('How far did the water fall?')).toBeVisible();
  await expect(page.getByLabel('Drawdown', { exact: true })).toBeFocused();
  await page.getByRole('button', { name: 'Draw the well' }).click();
  await expect(chip(page, 'Pump intake')).toBeAttached();
});

for (const title of [
  'Tamarack Ridge cabin',
  'Heron Flats farmhouse',
  'Palo Amargo guest house',
  'Slate Hollow homestead',
]) {
  test(`the sample ${title} opens from the empty page`, async ({ page }) => {
    await openSample(page, title);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
    await expect(page.getByText(/^\d+ checks: /)).toBeVisible();
  });
}

test('from the empty page to a moved pump with the keyboard alone', async ({ page }) => {
  await page.goto('/');
  const reach = async (name: RegExp): Promise<void> => {
    for (let i = 0; i < 80; i++) {
      await page.keyboard.press('Tab');
      const label = await page.evaluate(
        () => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? '',
      );
      if (name.test(label.trim())) return;
    }
    throw new Error(`no way by Tab to ${String(name)}`);
  };
  await expect(page.getByRole('button', { name: 'Slate Hollow homestead' })).toBeVisible();
  await reach(/^Heron Flats farmhouse$/);
  await page.keyboard.press('Enter');
  await expect(chip(page, 'Pump intake')).toBeAttached();
  await page.locator('body').focus();
  await reach(/^Pump intake$/);
  const before = await heard(page, 'Pump intake');
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => heard(page, 'Pump intake')).not.toBe(before);
  await expect(undo(page)).toBeEnabled();
});

test('a picture in place of a plan is told as what it is', async ({ page }) => {
  await page.goto('/');
  await page
    .getByRole('main')
    .locator('input[type=file]')
    // PNG (third edition), 5.2: the signature of eight bytes.
    .setInputFiles({ name: 'photo.png', mimeType: 'image/png', buffer: Buffer.from('89504e470d0a1a0a', 'hex') });
  const said = page.getByRole('alert');
  await expect(said).toContainText('photo.png could not be opened');
  await expect(said).toContainText('it may be a picture or an archive');
});
