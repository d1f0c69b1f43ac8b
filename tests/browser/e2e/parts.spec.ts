/** The parts list beside the drawing: what it lists, lights, copies and saves. */
import { readFileSync } from 'node:fs';
import { readPlan, solve } from '../../../src/model/index.ts';
import { partsList } from '../../../src/model/parts/partsList.ts';
import { show } from '../../../src/model/units.ts';
import { partsListWords } from '../../../src/words/en/partsList.ts';
import { partsCsv } from '../../../src/words/partsCsv.ts';
import { partsText } from '../../../src/words/partsText.ts';
import { axeFinds } from './axe.ts';
import { expect, test, type Page } from './onePage.ts';
import { openChanged, openSample } from './hands.ts';

const list = (page: Page) => page.getByRole('tabpanel', { name: 'Parts' });
const row = (page: Page, name: RegExp) => list(page).getByRole('row', { name });
/** Rings round what is lit: nothing else on a drawing is a rounded frame of this line and no fill. */
const rings = (page: Page) => page.locator('.drawing svg rect[rx="4"][stroke-width="2"][fill="none"]');

async function openParts(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Parts' }).click();
  await expect(list(page).getByRole('heading', { name: 'Tools' })).toBeVisible();
}

/** As the command line writes them: it has these two from the same functions, which its own test says. */
function written(): { readonly text: string; readonly csv: string } {
  const file = new URL('../../../static/samples/tamarack-ridge.json', import.meta.url);
  const reading = readPlan(JSON.parse(readFileSync(file, 'utf8')));
  if (!reading.ok) throw new Error('the sample cannot be read');
  const { plan } = reading;
  const found = partsList(solve(plan));
  if (found.kind === 'stop') throw new Error('stopped');
  const { lines } = found;
  const asked = [partsListWords, show('us')] as const;
  return { text: partsText({ title: plan.title, lines, by: 'kind' }, ...asked), csv: partsCsv(lines, ...asked) };
}

test(
  'it lists by kind and by depth, for a new well and for an old one, and follows an edit',
  { tag: '@both' },
  async ({ page }) => {
    await openSample(page);
    await openParts(page);
    const headings = list(page).getByRole('heading', { level: 3 });
    await expect(headings).toHaveText([
      'In the well',
      'Line to the house',
      'Wires',
      'In the house',
      'Used up',
      'Spares',
      'Tools',
      'Every joint from the pump to the tank',
    ]);
    await expect(row(page, /^2.× Insert fitting barb for 1 in pipe; 1 in outer thread \(NPT\)/).first()).toBeVisible();
    await expect(row(page, /^1.× Reducing bushing 1 in inner thread \(NPT\); 1-1\/4 in outer thread/)).toHaveCount(1);
    await list(page).getByRole('button', { name: 'By depth' }).click();
    await expect(headings.first()).toHaveText('From the top down');
    await list(page).getByRole('button', { name: 'In place of an old pump' }).click();
    await expect(row(page, /Pressure tank/)).toHaveCount(0);
    await expect(row(page, /Drop pipe/)).toHaveCount(1);
    // A pipe of the outlet's own size: other fittings, and no bushing.
    await openChanged(page, { dropPipe: { material: 'PE', size: '1-1/4 in', rating: '200 psi' } });
    await openParts(page);
    await expect(row(page, /Insert fitting barb for 1-1\/4 in pipe/)).toHaveCount(1);
    await expect(row(page, /Reducing bushing/)).toHaveCount(0);
    await expect(
      page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
    ).resolves.toBeLessThanOrEqual(0);
  },
);

test('it follows the plan under the hand', { tag: '@both' }, async ({ page }) => {
  await openSample(page);
  await openParts(page);
  const pipe = row(page, /Drop pipe/);
  await expect(pipe).toContainText(/cut to 171\sft 5\sin/);
  const intake = page.getByRole('slider', { name: 'Pump intake', exact: true }).first();
  await intake.focus();
  await page.keyboard.press('PageUp');
  await expect(pipe).not.toContainText(/cut to 171\sft 5\sin/);
  await expect(pipe).toContainText(/cut to 1\d\d\sft \d+\sin buy 1\d\d\sft/);
});

test(
  'a row that is chosen lights its parts, brings them forward, and lets go of them',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    await openSample(page);
    await openParts(page);
    await expect(rings(page)).toHaveCount(0);
    // It is at the pump, which a narrow page shows only when it is asked to.
    const valve = list(page).getByRole('button', { name: 'Check valve' });
    if (hasTouch) await valve.tap();
    else await valve.click();
    await expect(valve).toHaveAttribute('aria-pressed', 'true');
    await expect(rings(page)).toHaveCount(1);
    if (hasTouch) {
      await list(page).getByRole('button', { name: 'See it on the drawing' }).tap();
      await expect(rings(page)).toBeInViewport();
      await valve.tap();
    } else await valve.click();
    await expect(valve).toHaveAttribute('aria-pressed', 'false');
    if (!hasTouch) {
      await page.mouse.move(0, 0);
      await row(page, /Hose clamp.*screws opposed/)
        .first()
        .hover();
      await expect(rings(page)).toHaveCount(4);
      await page.getByRole('tab', { name: 'Parts' }).hover();
    }
    // What stands in the house is in a picture of its own.
    const tank = list(page).getByRole('button', { name: 'Pressure tank' });
    await tank.focus();
    await page.keyboard.press('Enter');
    await expect(rings(page)).toHaveCount(1);
    await page.getByRole('tab', { name: 'Findings' }).click();
    await expect(rings(page)).toHaveCount(0);
  },
);

test(
  'by keyboard alone it is copied and saved, in the bytes of the command line',
  { tag: '@both' },
  async ({ page, context, hasTouch }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await openSample(page);
    await page.getByRole('tab', { name: 'Findings' }).focus();
    // Round the end: the last tab is Trouble, before it stand Build and Parts.
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    await expect(page.getByRole('tab', { name: 'Parts' })).toBeFocused();
    await expect(list(page).getByRole('heading', { name: 'Tools' })).toBeVisible();
    const { text, csv } = written();
    for (let i = 0; i < 5; i++) await page.keyboard.press('Tab');
    await expect(list(page).getByRole('button', { name: 'Copy as text' })).toBeFocused();
    await page.keyboard.press('Enter');
    const live = page.locator('[role="status"][aria-live="polite"]');
    await expect(live).toContainText('The list is copied');
    expect((await page.evaluate(() => navigator.clipboard.readText())).replaceAll('\r\n', '\n')).toBe(text);
    await page.keyboard.press('Tab');
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
    expect(download.suggestedFilename()).toBe('tamarack-ridge-cabin-parts.csv');
    expect(readFileSync(await download.path(), 'utf8')).toBe(csv);
    await expect(live).toContainText('Saved as tamarack-ridge-cabin-parts.csv');
    await page.keyboard.press('Tab');
    await expect(list(page).getByRole('button', { name: /^Well cap/ })).toBeFocused();
    await expect(rings(page).first()).toBeAttached();
    await page.keyboard.press('Enter');
    await expect(list(page).getByRole('button', { name: /^Well cap/ })).toHaveAttribute('aria-pressed', 'true');
    if (hasTouch) {
      const small = await list(page)
        .getByRole('button')
        .evaluateAll((all) =>
          all
            .map((each) => ({ name: each.textContent, height: each.getBoundingClientRect().height }))
            .filter(({ height }) => height < 44),
        );
      expect(small).toEqual([]);
    }
  },
);

test('where the browser lets nothing be copied, it says what to do instead', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'clipboard', { value: undefined });
  });
  await openSample(page);
  await openParts(page);
  await list(page).getByRole('button', { name: 'Copy as text' }).click();
  await expect(list(page).getByText('This browser did not let the list be copied. Save it as CSV.')).toBeVisible();
});

test('for a flowing well it says who decides, and nothing else', async ({ page }) => {
  await openChanged(page, { water: { staticLevel: '-2 ft' } });
  await page.getByRole('tab', { name: 'Parts' }).click();
  await expect(list(page)).toHaveText(
    /^\s*Parts\s+No list for a well that flows by itself: a licensed contractor .*\.\s*$/,
  );
});

test('on paper it is a table of four columns, without a button', async ({ page }) => {
  await openSample(page);
  await openParts(page);
  await page.emulateMedia({ media: 'print' });
  const heads = list(page).getByRole('columnheader', { name: 'What it has to fit' }).first();
  await expect(heads).toBeVisible();
  await expect(list(page).getByRole('button', { name: 'Copy as text' })).toBeHidden();
  const pipe = row(page, /Drop pipe/);
  const tops = await pipe
    .locator('> *')
    .evaluateAll((cells) => cells.map((cell) => Math.round(cell.getBoundingClientRect().top)));
  expect(tops).toHaveLength(4);
  expect(new Set(tops).size).toBe(1);
  await page.emulateMedia({ media: 'screen' });
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in the list, ${colorScheme}`, { tag: '@both' }, async ({ page }, { project }) => {
    await page.emulateMedia({ colorScheme });
    await openSample(page);
    await openParts(page);
    for (const width of project.name === 'phone' ? [390] : [1440, 1024]) {
      await page.setViewportSize({ width, height: 844 });
      await list(page).getByRole('button', { name: 'By depth' }).click();
      await list(page).getByRole('button', { name: 'Check valve' }).click();
      // What is half under the tabs is met by scrolling.
      await page.evaluate(() => window.scrollTo(0, 0));
      expect(await axeFinds(page)).toEqual([]);
      await list(page).getByRole('button', { name: 'By kind' }).click();
    }
  });
}
