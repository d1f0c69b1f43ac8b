/** What is the matter with a well in use: choosing what is noticed, and what to look at with it. */
import { readFileSync } from 'node:fs';
import { readPlan, solve } from '../../../src/model/index.ts';
import { troubleOf } from '../../../src/model/matter/trouble.ts';
import { show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { matter } from '../../../src/words/en/matter.ts';
import { sayTrouble } from '../../../src/words/sayMatter.ts';
import { troubleText } from '../../../src/words/troubleText.ts';
import { axeFinds } from './axe.ts';
import { chip, openChanged, openSample } from './hands.ts';
import { expect, test, type Locator, type Page } from './onePage.ts';

const panel = (page: Page): Locator => page.getByRole('tabpanel', { name: 'Trouble' });
/** What stands there for paper is as long again. */
const onScreen = (page: Page): Locator => panel(page).locator('.screen');
const rings = (page: Page): Locator => page.locator('.drawing svg rect[rx="4"][stroke-width="2"][fill="none"]');
const cause = (page: Page, title: string): Locator =>
  panel(page).getByRole('button', { name: new RegExp(`^\\d+\\s+${title}`) });

async function openTrouble(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Trouble' }).click();
  await expect(panel(page).getByRole('heading', { name: 'What is the matter?' })).toBeVisible();
}

async function choose(page: Page, symptom: string): Promise<void> {
  await panel(page).getByRole('button', { name: symptom, exact: true }).click();
  await expect(panel(page).getByRole('heading', { level: 3, name: symptom })).toBeFocused();
}

test(
  'by keyboard alone: what is noticed, a cause opened, its place lit, and let go again',
  { tag: '@both' },
  async ({ page }) => {
    await openSample(page);
    await page.getByRole('tab', { name: 'Findings' }).focus();
    // Round the end: the last tab is this one.
    await page.keyboard.press('ArrowLeft');
    await expect(page.getByRole('tab', { name: 'Trouble' })).toBeFocused();
    await expect(panel(page).getByRole('button', { name: 'No water at all' })).toBeVisible();
    await page.keyboard.press('Tab');
    await expect(panel(page).getByRole('button', { name: 'No water at all' })).toBeFocused();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await expect(panel(page).getByRole('heading', { level: 3, name: 'Weak flow, low pressure' })).toBeFocused();
    await expect(rings(page)).toHaveCount(0);
    // To choose again, then the causes.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await expect(cause(page, 'A shut valve or a full filter')).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(cause(page, 'A shut valve or a full filter')).toHaveAttribute('aria-expanded', 'true');
    await expect(rings(page)).toHaveCount(1);
    await expect(onScreen(page).getByText('Where: Shut-off to the house')).toBeVisible();
    await page.keyboard.press('Enter');
    await expect(cause(page, 'A shut valve or a full filter')).toHaveAttribute('aria-expanded', 'false');
    await page.keyboard.press('Enter');
    await expect(rings(page)).toHaveCount(1);
    await page.getByRole('tab', { name: 'Figures' }).focus();
    await page.keyboard.press('Enter');
    await expect(rings(page)).toHaveCount(0);
  },
);

test('one opens at a time, and one goes on from it to the next', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  await openTrouble(page);
  await choose(page, 'Freezes in winter');
  await cause(page, 'A pipe in the house').click();
  await panel(page).getByRole('button', { name: 'Go on to the next' }).click();
  await expect(cause(page, 'The buried line is frozen')).toBeFocused();
  await expect(panel(page).locator('[aria-expanded="true"]')).toHaveCount(1);
  await expect(cause(page, 'The buried line is frozen')).toBeInViewport();
  // The sample says how deep frost goes and how deep the adapter sits: that speaks against the top.
  await expect(panel(page).getByRole('listitem').filter({ hasText: 'The top of the well is frozen' })).toContainText(
    'less likely here',
  );
  await cause(page, 'The top of the well is frozen').click();
  await expect(
    onScreen(page).getByText(/The outlet lies 6\sft down, and frost goes 4\sft deep by the plan\./),
  ).toBeVisible();
  await expect(panel(page).getByRole('button', { name: 'Go on to the next' })).toHaveCount(0);
});

test('what the plan itself makes likely comes first and says so', { tag: '@both' }, async ({ page }) => {
  await openChanged(page, { string: { checkValves: [] } });
  await openTrouble(page);
  await choose(page, 'Runs when no water is used');
  const first = panel(page).locator('.causes > li').first();
  await expect(first).toContainText('The check valve leaks or is missing');
  await expect(first).toContainText('more likely here');
  await first.getByRole('button').first().click();
  await expect(first).toContainText('nothing holds the water back when the pump stops');
});

test('what was looked at, and what is noticed, are there after a reload', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  await openTrouble(page);
  await choose(page, 'Taps spit air');
  await cause(page, 'Something was worked on').click();
  await panel(page).getByRole('radio', { name: 'Fine' }).check();
  await cause(page, 'The water in the well has fallen').click();
  await panel(page).getByRole('radio', { name: 'This is it' }).check();
  await page.reload();
  await expect(chip(page, 'Pump intake')).toBeAttached();
  await openTrouble(page);
  await expect(panel(page).getByRole('heading', { level: 3, name: 'Taps spit air' })).toBeVisible();
  await expect(cause(page, 'Something was worked on')).toContainText('looked at: fine');
  await expect(cause(page, 'The water in the well has fallen')).toContainText('this is it');
  await cause(page, 'The water in the well has fallen').click();
  await expect(panel(page).getByRole('radio', { name: 'This is it' })).toBeChecked();
  // Another thing that is noticed has ticks of its own.
  await panel(page).getByRole('button', { name: 'Choose something else' }).click();
  await expect(panel(page).getByRole('button', { name: 'Taps spit air' })).toBeFocused();
  await choose(page, 'No water at all');
  await expect(onScreen(page).getByText('this is it', { exact: true })).toHaveCount(0);
});

test('a field that would tell more leads to the record', async ({ page }) => {
  await openSample(page);
  await openTrouble(page);
  await choose(page, 'Milky water');
  await cause(page, 'Gas comes with the water').click();
  await panel(page).getByRole('link', { name: 'Gas', exact: true }).click();
  await expect(page.getByRole('tab', { name: 'The record' })).toHaveAttribute('aria-selected', 'true');
});

test('copied, it is the text of the command line with what was ticked', { tag: '@both' }, async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openSample(page);
  await openTrouble(page);
  await choose(page, 'No water at all');
  await cause(page, 'The breaker has gone off').click();
  await panel(page).getByRole('radio', { name: 'Fine' }).check();
  await panel(page).getByRole('button', { name: 'Copy as text' }).click();
  await expect(page.locator('[role="status"][aria-live="polite"]')).toContainText('The list is copied');
  const file = new URL('../../../static/samples/tamarack-ridge.json', import.meta.url);
  const reading = readPlan(JSON.parse(readFileSync(file, 'utf8')));
  if (!reading.ok) throw new Error('the sample cannot be read');
  const said = sayTrouble(troubleOf(solve(reading.plan), 'no-water'), matter, en, show('us'));
  const looked = said.causes.map((_, i) => (i === 0 ? 'looked at: fine' : null));
  const text = troubleText({ title: reading.plan.title, said, looked }, matter);
  expect((await page.evaluate(() => navigator.clipboard.readText())).replaceAll('\r\n', '\n')).toBe(text);
});

test('on paper every cause stands whole with its box, without a button', async ({ page }) => {
  await openSample(page);
  await openTrouble(page);
  await choose(page, 'Trips the breaker');
  await page.emulateMedia({ media: 'print' });
  await expect(panel(page).getByRole('heading', { name: /The motor has failed/ })).toBeVisible();
  await expect(panel(page).getByText('licensed electrician opens them').last()).toBeVisible();
  // A word that can be touched on the screen is a plain word on paper.
  await expect(panel(page).locator('button:visible:not(.term)')).toHaveCount(0);
  await page.emulateMedia({ media: 'screen' });
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in it, ${colorScheme}`, { tag: '@both' }, async ({ page }, { project }) => {
    await page.emulateMedia({ colorScheme });
    await openChanged(page, { string: { checkValves: [] } });
    await openTrouble(page);
    for (const width of project.name === 'phone' ? [390] : [1440, 1024]) {
      await page.setViewportSize({ width, height: 844 });
      expect(await axeFinds(page)).toEqual([]);
      await choose(page, 'Bangs and knocks');
      await cause(page, 'The check valve leaks or is missing').click();
      await panel(page).getByRole('radio', { name: 'This is it' }).check();
      expect(await axeFinds(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
        0,
      );
      await panel(page).getByRole('button', { name: 'Choose something else' }).click();
    }
  });
}

test('fingers find what they need', { tag: '@phone' }, async ({ page }) => {
  await openSample(page);
  await openTrouble(page);
  const small = (): Promise<unknown> =>
    panel(page)
      .locator('button:visible, label:visible')
      .evaluateAll((all) =>
        all
          .map((each) => ({ name: each.textContent, height: each.getBoundingClientRect().height }))
          .filter(({ height }) => height < 44),
      );
  expect(await small()).toEqual([]);
  await choose(page, 'Sand or grit');
  await cause(page, 'The pump hangs too near the bottom').tap();
  expect(await small()).toEqual([]);
  await panel(page).getByRole('button', { name: 'See it on the drawing' }).tap();
  await expect(rings(page).first()).toBeInViewport();
});
