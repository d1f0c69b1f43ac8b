import { readFile } from 'node:fs/promises';
import { expect, test, type Page } from './onePage.ts';
import {
  chip,
  eraseKept,
  feetIn,
  fillUp,
  handOn,
  heard,
  keptHere,
  openChanged,
  openReport,
  openSample,
  redo,
  savedPicture,
  undo,
  withoutDatabase,
} from './hands.ts';

const menu = (page: Page) => page.getByRole('button', { name: /^Wells/ });

/** On a phone the file buttons are in the menu. */
async function savedPlan(page: Page): Promise<{ text: string; name: string }> {
  const button = page.getByRole('button', { name: 'Save file' });
  const within = page.getByRole('button', { name: /^Save(?:: Save)? and print/ });
  if (!(await button.isVisible())) await within.click();
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  if (await within.isVisible()) await page.keyboard.press('Escape');
  return { text: await readFile(await download.path(), 'utf8'), name: download.suggestedFilename() };
}

test('a well survives a closed tab, with the last change', async ({ page, context }) => {
  await openSample(page);
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('PageUp');
  const moved = await heard(page, 'Pump intake');
  await page.close({ runBeforeUnload: true });
  const again = await context.newPage();
  // The browser writes what a closing page keeps in its own time: a page opened too soon starts empty, and is asked again.
  await expect(async () => {
    await again.goto('/');
    await expect(chip(again, 'Pump intake')).toHaveAttribute('aria-valuetext', moved, { timeout: 3000 });
  }).toPass({ timeout: 30_000 });
});

test(
  'a saved file opens again as it was, and opening it is a step that can be taken back',
  { tag: '@both' },
  async ({ page }) => {
    await openSample(page);
    const { text, name } = await savedPlan(page);
    expect(name).toBe('tamarack-ridge-cabin.json');
    const plan = JSON.parse(text) as { title: string; pump: { setting: string } };
    expect(plan.pump.setting).toBe('180 ft');
    const other = JSON.stringify({ ...plan, title: 'Cedar Bend', pump: { ...plan.pump, setting: '140\' 6"' } });
    await menu(page).click();
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'cedar.json', mimeType: 'application/json', buffer: Buffer.from(other) });
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Cedar Bend');
    expect(await heard(page, 'Pump intake')).toContain('140 ft 6 in');
    await undo(page).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin');
  },
);

test('a step back into the well before stops there, and its own steps are taken back only after a word', async ({
  page,
}) => {
  await openSample(page);
  await press(page, 'PageUp');
  const changed = await heard(page, 'Pump intake');
  await menu(page).click();
  await page.getByRole('button', { name: 'Heron Flats farmhouse' }).click();
  const title = page.getByRole('heading', { level: 1 });
  await expect(title).toHaveText('Heron Flats farmhouse');
  await undo(page).click();
  await expect(title).toHaveText('Tamarack Ridge cabin');
  await undo(page).click();
  const word = page.getByText('Tamarack Ridge cabin is open now. Undo once more takes back its last step');
  await expect(word.first()).toBeVisible();
  expect(await heard(page, 'Pump intake')).toBe(changed);
  await undo(page).click();
  await expect.poll(() => heard(page, 'Pump intake')).not.toBe(changed);
  await expect(word).toHaveCount(0);
  // The way forth is as it was.
  await redo(page).click();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(changed);
  await redo(page).click();
  await expect(title).toHaveText('Heron Flats farmhouse');
});

test('a file that cannot be read says where and what to write, and the well on the page stays', async ({ page }) => {
  await openSample(page);
  const { text } = await savedPlan(page);
  await menu(page).click();
  await page.locator('input[type=file]').setInputFiles({
    name: 'broken.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text.replace('"180 ft"', '180')),
  });
  const said = page.getByRole('alert');
  await expect(said).toContainText('broken.json could not be opened');
  await expect(said).toContainText('pump.setting is 180, without a unit');
  await menu(page).click();
  await page.locator('input[type=file]').setInputFiles({
    name: 'other.json',
    mimeType: 'application/json',
    buffer: Buffer.from('[]'),
  });
  await expect(said.getByRole('listitem')).toHaveText(/^The /);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin');
});

test('twenty switches of units change nothing in the plan', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  const before = await savedPlan(page);
  if (!(await page.getByRole('group', { name: 'Units' }).isVisible()))
    await page.getByRole('button', { name: /^Look:/ }).click();
  for (let i = 0; i < 10; i++) {
    await page.getByRole('button', { name: /^metres/ }).click();
    await page.getByRole('button', { name: /^feet/ }).click();
  }
  await page.getByRole('button', { name: /^metres/ }).click();
  expect(await heard(page, 'Pump intake')).toContain('54.9 m');
  await page.getByRole('button', { name: /^feet/ }).click();
  await page.keyboard.press('Escape');
  expect((await savedPlan(page)).text).toBe(before.text);
});

/** The same well on the desk of another tab. */
async function otherTab(page: Page): Promise<Page> {
  const other = await page.context().newPage();
  await other.goto('/');
  await expect(chip(other, 'Pump intake')).toBeAttached();
  return other;
}

async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  await chip(page, 'Pump intake').focus();
  for (const key of keys) await page.keyboard.press(key);
}

/** The pump's setting in each version that is kept and was not taken away. */
async function settings(page: Page): Promise<string[]> {
  const wells = (await keptHere(page)).filter(({ takenAway }) => takenAway === null);
  return wells.map(({ plan }) => (plan as { pump: { setting: string } }).pump.setting);
}

/** No tab hears another: as where both change a well in the same moment. */
async function deafTabs(page: Page): Promise<void> {
  await page.context().addInitScript(() => Object.defineProperty(window, 'BroadcastChannel', { value: undefined }));
}

/** Two tabs that have both changed one well, each while it could not hear the other. */
async function bothChanged(page: Page): Promise<{ other: Page; mine: string; theirs: string }> {
  await deafTabs(page);
  await openSample(page);
  await press(page, 'PageUp');
  await expect.poll(() => settings(page)).toHaveLength(1);
  const other = await otherTab(page);
  await press(other, 'PageUp', 'PageUp');
  const theirs = await heard(other, 'Pump intake');
  await expect.poll(async () => feetIn((await settings(page))[0]!)).toBeCloseTo(feetIn(theirs), 1);
  await press(page, 'PageDown', 'PageDown', 'PageDown');
  const mine = await heard(page, 'Pump intake');
  await expect(page.getByRole('alert')).toContainText('changed in another tab too');
  return { other, mine, theirs };
}

test('two tabs on one well follow each other, with the steps', async ({ page }) => {
  await openSample(page);
  await press(page, 'PageUp');
  await expect.poll(() => settings(page)).toHaveLength(1);
  const other = await otherTab(page);
  const before = await heard(page, 'Pump intake');
  expect(await heard(other, 'Pump intake')).toBe(before);
  await press(other, 'PageUp');
  const after = await heard(other, 'Pump intake');
  expect(after).not.toBe(before);
  await expect.poll(() => heard(page, 'Pump intake')).toBe(after);
  await expect(page.getByRole('alert')).toHaveCount(0);
  await undo(page).click();
  expect(await heard(page, 'Pump intake')).toBe(before);
  await expect.poll(() => heard(other, 'Pump intake')).toBe(before);
  expect(await settings(page)).toHaveLength(1);
});

test('that another tab changed the well is said until something is changed here', async ({ page }) => {
  await openSample(page);
  await press(page, 'PageUp');
  await expect.poll(() => settings(page)).toHaveLength(1);
  const other = await otherTab(page);
  await press(other, 'PageUp');
  const status = page.getByRole('status').first();
  await expect(status).toHaveText(/^Changed in another tab\./);
  const name = 'Tamarack Ridge cabin, upper';
  await page.getByRole('tab', { name: 'The record' }).click();
  await page.getByRole('textbox', { name: 'Title' }).fill(name);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(name);
  await expect(status).not.toContainText('Changed in another tab');
});

test('where both tabs changed a well, both versions stand in the list with their times', async ({ page }) => {
  const { mine, theirs } = await bothChanged(page);
  expect(await heard(page, 'Pump intake')).toBe(mine);
  await page.getByRole('button', { name: 'Keep both' }).click();
  await expect(page.getByRole('alert')).toHaveCount(0);
  expect(await settings(page)).toHaveLength(2);
  await menu(page).click();
  const kept = page.getByRole('listitem').filter({ hasText: 'Tamarack Ridge cabin' });
  await expect(kept).toHaveCount(2);
  await expect(kept.filter({ hasText: /\d\d:\d\d/ })).toHaveCount(2);
  await kept
    .getByRole('button', { name: /^Tamarack/ })
    .and(page.locator(':not([aria-current])'))
    .click();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(theirs);
});

test('the choice is carried out on the wells it names, whatever lies on the desk', async ({ page }) => {
  const { mine, theirs } = await bothChanged(page);
  // Another well is opened and changed: the question waits with the wells it is about.
  await menu(page).click();
  await page.getByRole('button', { name: 'Palo Amargo guest house' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Palo Amargo guest house');
  await expect(page.getByRole('alert')).toHaveCount(0);
  await press(page, 'PageUp');
  await expect.poll(async () => (await keptHere(page)).length).toBe(3);
  await undo(page).click();
  await undo(page).click();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(mine);
  await page.getByRole('button', { name: 'Take the other tab’s' }).click();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(theirs);
  await expect(page.getByRole('alert')).toHaveCount(0);
  const kept = await keptHere(page);
  expect(kept.filter(({ takenAway }) => takenAway !== null)).toHaveLength(1);
  expect(kept.map(({ title }) => title).toSorted()).toEqual([
    'Palo Amargo guest house',
    'Tamarack Ridge cabin',
    'Tamarack Ridge cabin',
  ]);
});

test('a choice does not take away what has changed again since it was offered', async ({ page }) => {
  const { other, mine } = await bothChanged(page);
  await press(other, 'PageUp');
  await expect.poll(async () => new Set((await keptHere(page)).map(({ version }) => version)).size).toBe(2);
  await other.waitForTimeout(700);
  await page.getByRole('button', { name: 'Keep this tab’s' }).click();
  await expect(page.getByRole('alert')).toContainText('Nothing was taken away');
  expect(await settings(page)).toHaveLength(2);
  // Now the newer one is what is offered.
  await page.getByRole('button', { name: 'Keep this tab’s' }).click();
  await expect(page.getByRole('alert')).toHaveCount(0);
  expect(await settings(page)).toHaveLength(1);
  expect(await heard(page, 'Pump intake')).toBe(mine);
});

test('two tabs that change one well and close in the same moment lose nothing', async ({ page, context }) => {
  await deafTabs(page);
  await openSample(page);
  await press(page, 'PageUp');
  await expect.poll(() => settings(page)).toHaveLength(1);
  const other = await otherTab(page);
  await Promise.all([press(page, 'PageUp'), press(other, 'PageDown')]);
  const ends = await Promise.all([heard(page, 'Pump intake'), heard(other, 'Pump intake')]);
  await Promise.all([page.close({ runBeforeUnload: true }), other.close({ runBeforeUnload: true })]);
  const again = await context.newPage();
  await again.goto('/');
  await expect(chip(again, 'Pump intake')).toBeAttached();
  const rounded = (feet: number): number => Math.round(feet * 10);
  await expect
    .poll(async () => (await settings(again)).map((setting) => rounded(feetIn(setting))).toSorted())
    .toEqual(ends.map((words) => rounded(feetIn(words))).toSorted());
});

test('the page works where the browser keeps nothing, and says so', async ({ page }) => {
  await page.addInitScript(withoutDatabase);
  await openSample(page);
  await expect(page.getByText('This browser keeps nothing.')).toBeVisible();
  await press(page, 'PageUp');
  const moved = await heard(page, 'Pump intake');
  await menu(page).click();
  await page.getByRole('button', { name: 'Palo Amargo guest house' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Palo Amargo guest house');
  await menu(page).click();
  await page
    .getByRole('listitem')
    .getByRole('button', { name: /^Tamarack/ })
    .click();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(moved);
  expect((await savedPlan(page)).text).toContain('Tamarack');
});

test('the page works on plain http, where a browser gives out no ids', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(Crypto.prototype, 'randomUUID', { value: undefined }));
  await openSample(page);
  await press(page, 'PageUp');
  await expect.poll(() => settings(page)).toHaveLength(1);
});

test('a browser without room says since when nothing is kept, and no more once there is', async ({ page }) => {
  await openSample(page);
  await press(page, 'PageUp');
  await expect.poll(() => settings(page)).toHaveLength(1);
  await fillUp(page, true);
  await press(page, 'PageUp');
  const words = page.getByText(/^This browser has no room left\. What changed since\s+\d\d:\d\d is not kept\./);
  await expect(words).toBeVisible();
  const moved = await heard(page, 'Pump intake');
  const feet = feetIn(moved);
  expect((await savedPlan(page)).text).toContain('Tamarack');
  // Another well and back: what could not be kept is still there.
  await menu(page).click();
  await page.getByRole('button', { name: 'Palo Amargo guest house' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Palo Amargo guest house');
  await menu(page).click();
  const entry = page.getByRole('listitem').getByRole('button', { name: /^Tamarack/ });
  await expect(entry).toContainText('not kept yet');
  await entry.click();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(moved);
  await fillUp(page, false);
  await expect(words).toBeHidden();
  await expect.poll(async () => feetIn((await settings(page))[0] ?? '0 ft')).toBeCloseTo(feet, 1);
});

test('what the browser erases under an open page is kept again with the next edit, and that is said', async ({
  page,
}) => {
  await openSample(page);
  await press(page, 'PageUp');
  await expect.poll(() => settings(page)).toHaveLength(1);
  await eraseKept(page);
  await press(page, 'PageUp');
  await expect(page.getByText('The browser had erased what was kept here.')).toBeVisible();
  await expect.poll(() => settings(page)).toHaveLength(1);
});

test('a kept well that cannot be read stays in the list, and its text can be had as a file', async ({ page }) => {
  await openSample(page);
  const { text } = await savedPlan(page);
  await page.evaluate(
    (plan) => {
      localStorage.setItem('wellcut/well/torn', '{"plan": {"title": ');
      const kept = { title: 'Odd one', saved: 5, revision: 1, writer: 'x', plan: JSON.parse(plan) as unknown };
      localStorage.setItem('wellcut/well/odd', JSON.stringify(kept));
    },
    text.replace('"180 ft"', '180'),
  );
  await page.reload();
  await expect(chip(page, 'Pump intake')).toBeAttached();
  await menu(page).click();
  const torn = page.getByRole('listitem').filter({ hasText: 'A well that cannot be read' });
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    torn.getByRole('button', { name: 'Save its text' }).click(),
  ]);
  expect(await readFile(await download.path(), 'utf8')).toBe('{"plan": {"title": ');
  const odd = page.getByRole('listitem').filter({ hasText: 'cannot be read' }).filter({ hasText: 'Tamarack' });
  await odd.getByRole('button', { name: /^Tamarack/ }).click();
  await expect(page.getByRole('alert')).toContainText('pump.setting is 180, without a unit');
  await expect(page.getByRole('alert').getByRole('button', { name: 'Save its text' })).toBeVisible();
  expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('wellcut/well/')))).toEqual(
    [],
  );
});

test('wells, tests and the one that was open are taken over from the earlier form of the page', async ({ page }) => {
  await openSample(page);
  const plan = JSON.parse((await savedPlan(page)).text) as object;
  await page.evaluate(
    (text) => {
      sessionStorage.clear();
      localStorage.setItem('wellcut/well/earlier', text);
      localStorage.setItem('wellcut/last', 'earlier');
    },
    JSON.stringify({
      title: 'Earlier well',
      saved: 5,
      revision: 2,
      writer: 'x',
      plan: { ...plan, title: 'Earlier well' },
    }),
  );
  const again = await page.context().newPage();
  await again.goto('/');
  await expect(again.getByRole('heading', { level: 1 })).toHaveText('Earlier well');
  expect((await keptHere(again)).map(({ id, title }) => [id, title])).toEqual([['earlier', 'Earlier well']]);
  expect(await again.evaluate(() => localStorage.getItem('wellcut/well/earlier'))).toBeNull();
});

test('steps can be taken back after a reload, one by one', async ({ page }) => {
  await openSample(page);
  const first = await heard(page, 'Pump intake');
  await press(page, 'PageUp');
  await page.waitForTimeout(600);
  await press(page, 'PageDown', 'PageDown');
  const second = await heard(page, 'Pump intake');
  await page.reload();
  await expect(chip(page, 'Pump intake')).toBeAttached();
  await expect.poll(() => heard(page, 'Pump intake')).toBe(second);
  await undo(page).click();
  await undo(page).click();
  expect(await heard(page, 'Pump intake')).toBe(first);
  await redo(page).click();
  await redo(page).click();
  expect(await heard(page, 'Pump intake')).toBe(second);
});

test('half of a field is there after a reload and in a new tab, not applied, and Enter applies it', async ({
  page,
}) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'The record' }).click();
  const field = (on: Page) => on.getByRole('textbox', { name: 'Depth of the well' });
  await field(page).fill('24');
  await expect.poll(async () => (await keptHere(page)).length).toBe(1);
  for (const fresh of [false, true]) {
    const on = fresh ? await page.context().newPage() : page;
    if (fresh) await on.goto('/');
    else await on.reload();
    await on.getByRole('tab', { name: 'The record' }).click();
    await expect(field(on)).toHaveValue('24');
    await expect(on.getByText('Typed before and not applied yet')).toBeVisible();
    expect(await heard(on, 'Well bottom')).toContain('220 ft');
  }
  await field(page).fill('240');
  await field(page).press('Enter');
  expect(await heard(page, 'Well bottom')).toContain('240 ft');
  await page.reload();
  await page.getByRole('tab', { name: 'The record' }).click();
  await expect(field(page)).toHaveValue('240 ft');
});

test('a new layer and the box of a level that are half typed come back', async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'The record' }).click();
  await page.getByRole('button', { name: 'Add a layer' }).click();
  await page.getByRole('textbox', { name: 'Material of the new layer' }).fill('pea');
  await press(page, 'Enter');
  await page.keyboard.type('17');
  await expect.poll(async () => (await keptHere(page)).length).toBe(1);
  await page.reload();
  await expect(page.getByRole('textbox', { name: /^Pump intake/ })).toHaveValue(/17/);
  await page.getByRole('tab', { name: 'The record' }).click();
  await expect(page.getByRole('textbox', { name: 'Material of the new layer' })).toHaveValue('pea');
});

test('a pump that is half typed in comes back with its well, after a reload and in a new tab', async ({
  page,
  context,
}) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'Pump' }).click();
  await page.getByText('Add a pump by its curve').click();
  const form = (on: Page) => on.getByRole('form', { name: 'Add a pump by its curve' });
  await form(page).getByLabel('Name').fill('Shed pump');
  await form(page).getByLabel('Head in').selectOption('psi');
  await form(page)
    .getByLabel(/^Flow and head/)
    .fill('0\t140\n5');
  await page.reload();
  await page.getByRole('tab', { name: 'Pump' }).click();
  await expect(form(page).getByLabel('Name')).toHaveValue('Shed pump');
  await expect(form(page).getByLabel('Head in')).toHaveValue('psi');
  await expect(form(page).getByLabel(/^Flow and head/)).toHaveValue('0\t140\n5');
  // Another well has none of it.
  await page.getByRole('button', { name: /^Wells/ }).click();
  await page.getByRole('button', { name: 'Heron Flats farmhouse' }).first().click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Heron Flats farmhouse');
  await expect(form(page)).toBeHidden();
  const tab = await context.newPage();
  await page.close();
  await tab.goto('/');
  // The sample beside it was only looked at: the well is what was open last.
  await expect(tab.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin');
  await tab.getByRole('tab', { name: 'Pump' }).click();
  await expect(form(tab).getByLabel('Name')).toHaveValue('Shed pump');
  await form(tab)
    .getByLabel(/^Flow and head/)
    .fill('0\t140\n5\t130\n10\t100');
  await form(tab).getByRole('button', { name: 'Keep this pump' }).click();
  await expect(form(tab).getByLabel('Name')).toHaveValue('');
  await tab.reload();
  await tab.getByRole('tab', { name: 'Pump' }).click();
  await expect(tab.getByText('Add a pump by its curve')).toBeVisible();
  await expect(form(tab)).toBeHidden();
});

test(
  'half of a report is there after a reload, a narrowed window and Back',
  { tag: '@both' },
  async ({ page }, { project }) => {
    await openReport(page);
    const depth = page.getByLabel('Depth of the well');
    await depth.fill('260');
    await page.getByLabel('Below the casing').selectOption('screen');
    await page.getByLabel('Screen from').fill('2');
    const there = async (): Promise<void> => {
      await expect(depth).toHaveValue('260');
      await expect(page.getByLabel('Below the casing')).toHaveValue('screen');
      await expect(page.getByLabel('Screen from')).toHaveValue('2');
    };
    await page.reload();
    await there();
    const wide = project.name === 'desktop';
    await page.setViewportSize(wide ? { width: 390, height: 844 } : { width: 844, height: 390 });
    await there();
    await page.goto('about:blank');
    await page.goBack();
    await there();
    await page.getByRole('button', { name: 'Other ways to begin' }).click();
    await page.getByRole('main').getByRole('button', { name: 'Tamarack Ridge cabin' }).click();
    await expect(chip(page, 'Pump intake')).toBeAttached();
    await undo(page).click();
    await there();
  },
);

test(
  'a report that was drawn is there again by a step back, and not for the next well',
  { tag: '@both' },
  async ({ page }) => {
    await openReport(page);
    await page.getByLabel('Depth of the well').fill('260');
    await page.getByRole('button', { name: 'Draw the well' }).click();
    await expect(chip(page, 'Pump intake')).toBeAttached();
    await undo(page).click();
    await expect(page.getByLabel('Depth of the well')).toHaveValue('260');
    await redo(page).click();
    await expect(chip(page, 'Pump intake')).toBeAttached();
    await menu(page).click();
    await page.getByRole('button', { name: 'New well' }).click();
    await page.getByRole('button', { name: 'Type in the report' }).click();
    await expect(page.getByLabel('Depth of the well')).toHaveValue('');
  },
);

test('a level in mid-drag is there in the next page, as a step', { tag: '@both' }, async ({ page, hasTouch }) => {
  await openChanged(page, {});
  const before = await heard(page, 'Pump intake');
  const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
  await hand.press();
  await hand.moveBy(-60);
  await page.waitForTimeout(700);
  const dragged = await heard(page, 'Pump intake');
  expect(dragged).not.toBe(before);
  // The tab goes down with the finger on the glass.
  const again = await page.context().newPage();
  await again.goto('/');
  await expect.poll(() => heard(again, 'Pump intake')).toBe(dragged);
  await undo(again).click();
  expect(await heard(again, 'Pump intake')).toBe(before);
});

test('a sample is looked at without being kept, until something is changed', async ({ page }) => {
  for (let i = 0; i < 3; i++) {
    await openSample(page);
    await menu(page).click();
    await page.getByRole('button', { name: 'New well' }).click();
  }
  await openSample(page);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin');
  expect(await keptHere(page)).toEqual([]);
  await press(page, 'PageUp');
  await expect.poll(async () => (await keptHere(page)).length).toBe(1);
});

test('a well that is taken away can be brought back', async ({ page }) => {
  await openChanged(page, {});
  await expect.poll(() => settings(page)).toHaveLength(1);
  await menu(page).click();
  await page.getByRole('button', { name: 'New well' }).click();
  await menu(page).click();
  await page.getByRole('button', { name: 'Take away Tamarack Ridge cabin' }).click();
  await expect.poll(() => settings(page)).toHaveLength(0);
  await page.reload();
  await expect(page.getByRole('button', { name: 'Wells' })).toBeVisible();
  await menu(page).click();
  await page.getByRole('button', { name: 'Bring back Tamarack Ridge cabin' }).click();
  await expect.poll(() => settings(page)).toHaveLength(1);
});

test('a well is given another name where it stands in the list, on the desk or not', async ({ page }) => {
  const titles = async () => (await keptHere(page)).map(({ title }) => title);
  await openChanged(page, {});
  await expect.poll(titles).toEqual(['Tamarack Ridge cabin']);
  await menu(page).click();
  await page.getByRole('button', { name: 'Rename Tamarack Ridge cabin' }).click();
  const field = page.getByRole('textbox', { name: 'Name of Tamarack Ridge cabin' });
  await expect(field).toBeFocused();
  await page.keyboard.type('Lost name');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Rename Tamarack Ridge cabin' })).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.type('Upper cabin');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Rename Upper cabin' })).toBeFocused();
  await expect.poll(titles).toEqual(['Upper cabin']);
  await expect(page.getByRole('main').getByRole('heading', { level: 1 })).toHaveText('Upper cabin');
  await page.keyboard.press('Escape');
  await undo(page).click();
  await expect.poll(titles).toEqual(['Tamarack Ridge cabin']);
  // And one that does not lie on the desk, with its steps.
  await menu(page).click();
  await page.getByRole('button', { name: 'New well' }).click();
  await menu(page).click();
  await page.getByRole('button', { name: 'Rename Tamarack Ridge cabin' }).click();
  await page.keyboard.type('Lower cabin');
  await page.keyboard.press('Enter');
  await expect.poll(titles).toEqual(['Lower cabin']);
  await page.reload();
  await page
    .getByRole('main')
    .getByRole('button', { name: /^Lower cabin/ })
    .click();
  await expect(page.getByRole('main').getByRole('heading', { level: 1 })).toHaveText('Lower cabin');
  await expect(page.getByRole('button', { name: 'Redo', exact: true })).toBeEnabled();
});

test('all wells leave as one file, and come back from it beside what is there', async ({ page }) => {
  await openChanged(page, {});
  await expect.poll(() => settings(page)).toHaveLength(1);
  await menu(page).click();
  await page.getByRole('button', { name: 'Copy Tamarack Ridge cabin' }).click();
  await expect
    .poll(async () => (await keptHere(page)).map(({ title }) => title).toSorted())
    .toEqual(['Tamarack Ridge cabin', 'Tamarack Ridge cabin (copy)']);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save all wells as one file' }).click(),
  ]);
  const file = JSON.parse(await readFile(await download.path(), 'utf8')) as { wells: { saved: number }[] };
  expect(file.wells).toHaveLength(2);
  for (const well of file.wells) well.saved = Date.UTC(2024, 1, 3, 9, 5);
  const buffer = Buffer.from(JSON.stringify(file));
  await eraseKept(page);
  await page.reload();
  await page
    .getByRole('main')
    .locator('input[type=file]')
    .setInputFiles({ name: 'wells.json', mimeType: 'application/json', buffer });
  await expect(page.getByText('2 of 2 wells of wells.json are now in the list.').first()).toBeVisible();
  // The same file once more: what stands there as it is comes no second time.
  await page
    .getByRole('main')
    .locator('input[type=file]')
    .setInputFiles({ name: 'wells.json', mimeType: 'application/json', buffer });
  await expect(
    page.getByText('2 of 2 wells of wells.json are now in the list. 2 stood there already.').first(),
  ).toBeVisible();
  expect(await keptHere(page)).toHaveLength(2);
  await page
    .getByRole('main')
    .getByRole('button', { name: /^Tamarack Ridge cabin \(copy\) Feb 3, 2024, 09:05$/ })
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin (copy)');
});

test('opening another well keeps the first on this device', async ({ page }) => {
  await openChanged(page, {});
  await menu(page).click();
  await page.getByRole('button', { name: 'Palo Amargo guest house' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Palo Amargo guest house');
  await menu(page).click();
  const kept = page.getByRole('listitem');
  await expect(kept.filter({ hasText: 'Tamarack Ridge cabin' })).toHaveCount(1);
  await kept.getByRole('button', { name: /^Tamarack Ridge cabin/ }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tamarack Ridge cabin');
});

test('the drawing leaves the page as an SVG without ids, styles or scripts', async ({ page }) => {
  await openSample(page);
  const download = await savedPicture(page, 'SVG');
  expect(download.suggestedFilename()).toBe('tamarack-ridge-cabin.svg');
  const svg = await readFile(await download.path(), 'utf8');
  expect(svg).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg"/);
  expect(svg).toContain('<title>');
  expect(svg).not.toMatch(/\sid=|<style|\sstyle=|<script|foreignObject/);
});

test('a plan file that is dropped on the page opens', async ({ page }) => {
  await openSample(page);
  const { text } = await savedPlan(page);
  const dropped = await page.evaluateHandle(
    (content) => {
      const data = new DataTransfer();
      data.items.add(new File([content], 'dropped.json', { type: 'application/json' }));
      return data;
    },
    text.replace('Tamarack Ridge cabin', 'Dropped well'),
  );
  await page.dispatchEvent('main', 'drop', { dataTransfer: dropped });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Dropped well');
});

test(
  'a copy stands under the first, so that a second tap there copies the first again',
  { tag: '@both' },
  async ({ page }) => {
    await openChanged(page, {});
    await expect.poll(() => settings(page)).toHaveLength(1);
    await menu(page).click();
    const copy = page.getByRole('button', { name: /^Copy / }).first();
    const before = await copy.boundingBox();
    await copy.click();
    await expect(page.getByRole('button', { name: /^Copy / })).toHaveCount(2);
    expect(await copy.boundingBox()).toEqual(before);
    await expect(copy).toHaveAccessibleName('Copy Tamarack Ridge cabin');
  },
);

test(
  'a name that turns its letters round turns nothing beside it, and a long one says where it ends',
  { tag: '@both' },
  async ({ page }) => {
    await openChanged(page, { title: '\u202Eniwt reviR' });
    await expect.poll(() => settings(page)).toHaveLength(1);
    await menu(page).click();
    const entry = page.locator('.menu [data-well] .entry');
    await expect(entry).toHaveCount(1);
    const [name, when] = [await entry.locator('.well').boundingBox(), await entry.locator('.when').boundingBox()];
    // In a line of its own under the name.
    expect(when!.y).toBeGreaterThanOrEqual(name!.y + name!.height - 1);
    expect(await entry.locator('.when').innerText()).toMatch(/^\d/);
    await page.getByRole('button', { name: /^Rename / }).click();
    const said = page.getByText('A name has 120 letters at most.');
    await page.keyboard.type('River');
    await expect(said).toHaveCount(0);
    await page.getByRole('textbox', { name: /^Name of / }).fill('a'.repeat(119));
    await page.keyboard.type('bc');
    await expect(said).toBeVisible();
  },
);
