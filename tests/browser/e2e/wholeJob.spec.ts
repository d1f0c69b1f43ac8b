/** The whole job, from a driller's report to a saved file: by keys alone, and by what a screen reader is given alone. */
import { readFileSync } from 'node:fs';
import { axeFinds } from './axe.ts';
import { expect, test, type Locator, type Page } from './onePage.ts';
import { openReport } from './hands.ts';

interface Saved {
  readonly title: string;
  readonly well: { readonly depth: string };
  readonly pump: { readonly setting: string; readonly power: string };
}

test.describe('by keys alone', () => {
  /** Presses Tab until this has the focus, as whoever has no mouse does. */
  async function tabTo(page: Page, wanted: Locator, way: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
    for (let i = 0; i < 300; i++) {
      // One that is not there yet is not waited for: it is one step away at the soonest.
      if ((await wanted.count()) > 0 && (await wanted.evaluate((each) => each === document.activeElement))) return;
      await page.keyboard.press(way);
    }
    throw new Error(`tabTo: ${String(wanted)} is not reached`);
  }

  /** Tabs to a list of choices and goes down it, with the list closed. */
  async function pick(page: Page, label: string, choice: string): Promise<void> {
    const list = page.getByLabel(label, { exact: true });
    await tabTo(page, list);
    const chosen = () => list.evaluate((select: HTMLSelectElement) => select.selectedOptions[0]?.text ?? '');
    for (let i = 0; i < 20 && !(await chosen()).startsWith(choice); i++) await page.keyboard.press('ArrowDown');
    expect(await chosen()).toMatch(choice);
  }

  /** Tabs to a line of the form and types into it. */
  async function fill(page: Page, label: string, text: string): Promise<void> {
    await tabTo(page, page.getByLabel(label, { exact: true }));
    await page.keyboard.type(text);
  }

  test('a report is drawn, a level moved, a fault fixed, a pump chosen and the well saved', async ({ page }) => {
    test.slow();
    await page.goto('/');
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await tabTo(page, page.getByRole('button', { name: 'Type in the report' }));
    await page.keyboard.press('Enter');
    await expect(page.getByLabel('Name of the well')).toBeFocused();
    await tabTo(page, page.getByRole('button', { name: 'Show all lines' }), 'Shift+Tab');
    await page.keyboard.press('Enter');
    await fill(page, 'Name of the well', 'Birch Hollow');
    await fill(page, 'Depth of the well', '260 ft');
    await fill(page, 'Casing goes down to', '60 ft');
    await fill(page, 'Static level', '41 ft 6 in');
    await pick(page, 'How it was tested', 'pumped, with a drawdown');
    await fill(page, 'Test flow', '12');
    await fill(page, 'Drawdown', '55');
    await fill(page, 'Frost goes down to', '42');
    await pick(page, 'Power of the pump', '1 hp');
    await fill(page, 'Peak flow needed', '8');
    await fill(page, 'Well to the house', '90 ft');
    await pick(page, 'Pipe to the house', 'PE, 1 in');
    await fill(page, 'Tank above the well', '6 ft');
    await tabTo(page, page.getByRole('button', { name: 'Draw the well' }));
    await page.keyboard.press('Enter');
    await expect(page.getByRole('heading', { level: 1, name: 'Birch Hollow' })).toBeFocused();
    await expect(page.getByRole('status').first()).toHaveText(/^Well drawn: Birch Hollow\. /);

    const intake = page.getByRole('slider', { name: 'Pump intake', exact: true });
    await tabTo(page, intake);
    const before = await intake.getAttribute('aria-valuetext');
    await page.keyboard.press('End');
    await expect.poll(() => intake.getAttribute('aria-valuetext')).not.toBe(before);
    await expect(page.getByRole('status').first()).toHaveText(/New danger.+In all/);

    const fix = page.locator('article .offer').first();
    await tabTo(page, fix);
    const words = await fix.textContent();
    await page.keyboard.press('Enter');
    await expect(page.getByRole('status').first()).toHaveText(/(Danger|Warning|Note) gone: .+In all/);
    expect(words).not.toBe('');

    await tabTo(page, page.getByRole('tab', { selected: true }), 'Shift+Tab');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await expect(page.getByRole('heading', { name: 'Which pump' })).toBeVisible();
    const other = page.getByRole('button', {
      name: /^(?:Yes|Works, but|Depends|No) (?!.*now in the plan)/,
      expanded: false,
    });
    await tabTo(page, other.first());
    await page.keyboard.press('Enter');
    const choose = page.getByRole('button', { name: /^Choose \d/ }).first();
    await tabTo(page, choose);
    const name = (await choose.textContent()) ?? '';
    await page.keyboard.press('Enter');
    await expect(page.getByRole('status').first()).toHaveText(
      new RegExp(`^Chosen: ${name.trim().replace('Choose ', '')}\\.`),
    );

    await tabTo(page, page.getByRole('button', { name: 'Save file' }), 'Shift+Tab');
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
    const plan = JSON.parse(readFileSync(await download.path(), 'utf8')) as Saved;
    expect(plan.title).toBe('Birch Hollow');
    expect(plan.well.depth).toBe('260 ft');
    expect(`Choose ${name}`).toContain(plan.pump.power);
  });
});

/** Of the tree that a screen reader is given, in which the drawing itself has no part. */
test(
  'by names and roles alone a report is drawn, read from top to bottom, mended and saved',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    await openReport(page);
    await page.getByRole('textbox', { name: 'Name of the well' }).fill('Birch Hollow');
    await page.getByRole('textbox', { name: 'Depth of the well' }).fill('260 ft');
    await page.getByRole('textbox', { name: 'Casing goes down to' }).fill('60 ft');
    await page.getByRole('textbox', { name: 'Static level' }).fill('41 ft 6 in');
    await page.getByRole('combobox', { name: 'How it was tested' }).selectOption({ label: 'pumped, with a drawdown' });
    await page.getByRole('textbox', { name: 'Test flow' }).fill('12');
    await page.getByRole('textbox', { name: 'Drawdown', exact: true }).fill('55');
    await page.getByRole('textbox', { name: 'Peak flow needed' }).fill('8');
    await page.getByRole('textbox', { name: 'Well to the house' }).fill('90 ft');
    await page.getByRole('combobox', { name: 'Pipe to the house' }).selectOption('1 in');
    await page.getByRole('textbox', { name: 'Tank above the well' }).fill('6 ft');
    await page.getByRole('combobox', { name: 'Power of the pump' }).selectOption('1 hp');
    await page.getByRole('button', { name: 'Draw the well' }).click();
    await expect(page.getByRole('main').getByRole('heading', { level: 1, name: 'Birch Hollow' })).toBeFocused();

    // The levels, as a group of ranges with what they say.
    const intake = page.getByRole('slider', { name: 'Pump intake', exact: true });
    await expect(intake).toHaveAttribute('aria-valuetext', /^Pump intake, .+, assumed\. Motor .+ above the bottom\./);
    await expect(intake).toHaveAccessibleDescription(/The rules for depth hold from .+ to /);
    await intake.press('End');
    await expect(page.getByRole('status').first()).toHaveText(/New danger/);

    // What is wrong, each with its place in the list and what mends it.
    await page.getByRole('tab', { name: 'Findings' }).click();
    const danger = page.getByRole('article', { name: /Danger/ }).first();
    await expect(danger).toBeVisible();
    await danger.getByRole('button').first().click();
    await expect(page.getByRole('status').first()).toHaveText(/(Danger|Warning|Note) gone: /);

    // The section as a list, and where the pump may hang.
    await page.getByRole('tab', { name: 'Depths' }).click();
    await expect(page.getByRole('region', { name: 'Where the pump may hang' })).toContainText(
      /The rules for depth hold/,
    );
    const list = page.getByRole('region', { name: 'From top to bottom' }).getByRole('list');
    await expect(list.getByRole('listitem').filter({ hasText: /^\s*Pitless adapter/ })).toContainText(
      /Below it: the drop pipe, on a stainless steel insert fitting with 2\sclamps\./,
    );
    await expect(list.getByRole('listitem').filter({ hasText: /^\s*Casing bottom/ })).toContainText(/60\sft/);
    await expect(list.getByRole('listitem').filter({ hasText: /^\s*Well bottom/ })).toContainText(/260\sft/);
    await page.evaluate(() => window.scrollTo(0, 0));
    expect(await axeFinds(page)).toEqual([]);

    await page.getByRole('tab', { name: 'Pump' }).click();
    await page
      .getByRole('button', { name: /^(?:Yes|Works, but|Depends|No) (?!.*now in the plan)/, expanded: false })
      .first()
      .click();
    const choose = page.getByRole('button', { name: /^Choose \d/ }).first();
    await choose.click();
    await expect(page.getByRole('status').first()).toHaveText(/^Chosen: /);
    expect(await axeFinds(page)).toEqual([]);

    if (hasTouch === true) await page.getByRole('button', { name: /^Save(?:: Save)? and print/ }).click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save file' }).click(),
    ]);
    expect((JSON.parse(readFileSync(await download.path(), 'utf8')) as Saved).title).toBe('Birch Hollow');
  },
);
