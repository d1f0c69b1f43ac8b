import { expect, test } from './onePage.ts';
import { chip, heard, openChanged, openFaulty, openSample, undo } from './hands.ts';

test.beforeEach(async ({ page }) => openSample(page));

test('a fix is one click and one step back', async ({ page }) => {
  await openFaulty(page);
  const fix = page.getByRole('article', { name: /wire is thin/ }).getByRole('button', { name: 'Use 10 AWG' });
  await fix.click();
  await expect(fix).toBeHidden();
  await expect(page.getByText('10 AWG, 3 and ground')).toBeVisible();
  await undo(page).click();
  await expect(fix).toBeVisible();
  await expect(page.getByText('12 AWG, 3 and ground')).toBeVisible();
});

test('a pump raised out of the water is a danger on the list at once, and gone again when it is put back', async ({
  page,
}) => {
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('Home');
  await expect(page.getByRole('heading', { name: /^Danger:/ }).first()).toBeVisible();
  await expect.poll(() => heard(page, 'Pump intake')).toContain('Danger');
  await undo(page).click();
  await expect(page.getByRole('heading', { name: /^Danger:/ })).toHaveCount(0);
});

test('every finding is numbered as its mark, and the mark leads to the entry', { tag: '@both' }, async ({ page }) => {
  await openFaulty(page);
  const entries = page.getByRole('article');
  const count = await entries.count();
  expect(count).toBeGreaterThan(2);
  for (let i = 0; i < count; i++) await expect(entries.nth(i)).toHaveAttribute('id', `finding-${i + 1}`);
  // The mark with the number 1 stands in the drawing as text.
  const mark = page.locator('.sheet svg text', { hasText: /^1$/ }).first();
  const box = await mark.boundingBox();
  if (box === null) throw new Error('no mark');
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await expect(entries.first()).toBeFocused();
});

test('a finding that has focus lights its part on the drawing, and the light goes with the focus', async ({ page }) => {
  const drawing = async (): Promise<string> =>
    (await page.locator('.sheet > svg').evaluateAll((all) => all.map((each) => each.innerHTML))).join('');
  const unlit = await drawing();
  await page.getByRole('article').first().focus();
  await expect.poll(drawing).not.toBe(unlit);
  await page.getByRole('article').first().blur();
  await expect.poll(drawing).toBe(unlit);
});

test('what could not be checked stands first, then what is assumed, then what is OK', async ({ page }) => {
  await expect(page.getByText(/^\d+ checks: /)).toBeVisible();
  const summaries = page.locator('section[aria-labelledby=says] details > summary');
  const names = (await summaries.allTextContents()).filter((name) => /^(?:Could not|Assumed|Checked)/.test(name));
  expect(names.map((name) => name.replace(/ \(\d+\)$/, ''))).toEqual(['Could not check', 'Assumed', 'Checked, OK']);
  await expect(page.getByText(/^Not checked: whether/).first()).toBeVisible();
});

test('what could not be checked leads to the field that would decide it', async ({ page }) => {
  const group = page.locator('details', { has: page.getByText(/^Could not check/) });
  await group.getByRole('link', { name: 'How high a flood reaches at the well' }).click();
  await expect(page.getByRole('tab', { name: 'The record' })).toHaveAttribute('aria-selected', 'true');
  await expect(page.getByRole('textbox', { name: 'Height of the flood' })).toBeFocused();
});

test('what is assumed leads to its field, with its value', async ({ page }) => {
  await page.getByText(/^Assumed \(\d+\)/).click();
  const link = page.getByRole('link', { name: 'Margin below frost', exact: true });
  const assumed = (await link.locator('xpath=following-sibling::span').textContent()) ?? '';
  await link.click();
  await expect(page.locator(':focus')).toHaveAttribute('placeholder', `assumed: ${assumed}`);
});

test('the dot of the operating point lies on both curves', async ({ page }) => {
  const gaps = await page.locator('section[aria-labelledby=curve] > svg').evaluate((plot) => {
    const dot = plot.querySelector('circle:not(.open)');
    const x = Number(dot?.getAttribute('cx'));
    const y = Number(dot?.getAttribute('cy'));
    return [...plot.querySelectorAll<SVGPathElement>('.pump, .system')].map((path) => {
      const length = path.getTotalLength();
      let nearest = Infinity;
      for (let along = 0; along <= length; along += 0.05) {
        const point = path.getPointAtLength(along);
        nearest = Math.min(nearest, Math.hypot(point.x - x, point.y - y));
      }
      return nearest;
    });
  });
  expect(gaps).toHaveLength(2);
  for (const gap of gaps) expect(gap).toBeLessThan(0.1);
});

test('every depth stands in a table that can be sorted', async ({ page }) => {
  await page.getByRole('tab', { name: 'Depths' }).click();
  const rows = page.getByRole('row');
  await expect(rows.filter({ hasText: 'Pump intake' })).toContainText('180 ft');
  await page.getByRole('button', { name: 'By name' }).click();
  const names = await page.getByRole('rowheader').allTextContents();
  expect(names.length).toBeGreaterThan(6);
  expect(names).toEqual([...names].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0)));
});

test(
  'a part is explained when it is pointed at or touched, and the close-up opens and closes there',
  { tag: '@both' },
  async ({ page }) => {
    await page.getByRole('button', { name: 'Look closer' }).click();
    const closeUp = page.getByRole('dialog', { name: /^Close-up/ });
    await expect(closeUp).toBeVisible();
    await closeUp.getByRole('button', { name: 'Close-up deeper' }).click();
    await page.keyboard.press('Escape');
    await expect(closeUp).toBeHidden();
  },
);

test(
  'a part that is pointed at or touched is explained in one paragraph',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    const strip = page.locator('.strip');
    await expect(strip).toContainText('Point at a part');
    const drawing = await page.locator('.sheet').first().boundingBox();
    const level = await chip(page, 'Pumping level').boundingBox();
    if (drawing === null || level === null) throw new Error('no drawing');
    // Across the well under the pumping level, from the left: the pipe hangs somewhere on the way.
    const y = level.y + level.height + 50;
    for (let x = drawing.x + 60; x < level.x; x += 6) {
      if (hasTouch === true) await page.touchscreen.tap(x, y);
      else await page.mouse.move(x, y);
      if (((await strip.textContent()) ?? '').includes('Drop pipe')) break;
    }
    await expect(strip).toContainText('Carries the water up and carries the weight');
  },
);

test('on paper a fix stands in words, and no button is printed', async ({ page }) => {
  await openFaulty(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('To fix it: Use 10 AWG.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Use 10 AWG' })).toBeHidden();
  await expect(page.getByRole('button', { name: 'Set the depths for me' })).toBeHidden();
  await page.emulateMedia({ media: 'screen' });
  await expect(page.getByText('To fix it: Use 10 AWG.')).toBeHidden();
});

test('on paper every list lies open, what could not be checked first', async ({ page }) => {
  const assumed = page.getByText('Margin below frost', { exact: true });
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText(/^Not checked: whether/).first()).toBeVisible();
  await expect(assumed).toBeVisible();
  await page.emulateMedia({ media: 'screen' });
  await expect(assumed).toBeHidden();
});

test('of a well that was only blown with air, what to measure and the level’s own mark lead to the test', async ({
  page,
}) => {
  await openChanged(page, { water: { staticLevel: '62 ft', pumping: { kind: 'yield only' } } });
  await page.getByRole('button', { name: /^Measure it: pump the well/ }).click();
  const kind = page.getByRole('combobox', { name: 'Kind of test' });
  await expect(kind).toBeFocused();
  await page.locator('[data-handle=pumpingLevel] button').first().click();
  await page.getByRole('button', { name: 'Open it in the record' }).click();
  await expect(kind).toBeFocused();
});

test(
  'a word of the trade says what it means when it is touched, by key or by hand',
  { tag: '@both' },
  async ({ page }) => {
    await openFaulty(page);
    await page.getByRole('tab', { name: 'Findings' }).click();
    const term = page.locator('article .term').first();
    const word = await term.textContent();
    await term.press('Enter');
    const note = page
      .getByRole('note')
      .filter({ hasText: `${word}:` })
      .first();
    await expect(note).toBeVisible();
    await term.press('Escape');
    await expect(note).toBeHidden();
  },
);
