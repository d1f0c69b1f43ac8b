import { solve } from '../../../src/model/index.ts';
import { orderOfWork } from '../../../src/model/work/orderOfWork.ts';
import { planOf, sample } from '../../plans/build.ts';
import { axeFinds } from './axe.ts';
import { expect, test, type Locator, type Page } from './onePage.ts';
import { chip, openChanged, openSample } from './hands.ts';

const step = (page: Page): Locator => page.getByRole('dialog');
const title = (page: Page, name: string): Locator => step(page).getByRole('heading', { level: 2, name });

async function openOrder(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Build' }).click();
  await expect(page.getByRole('heading', { name: 'Order of the work' })).toBeVisible();
}

test.describe('the order of the work', () => {
  test.beforeEach(async ({ page }) => {
    await openSample(page);
    await openOrder(page);
  });

  test(
    'one step after the other, by button and by key, and the drawing beneath is as it was',
    { tag: '@both' },
    async ({ page }) => {
      const desk = await page.locator('.stage svg').first().innerHTML();
      await page.getByRole('button', { name: 'Begin with step 1' }).click();
      await expect(title(page, 'Get the permit')).toBeFocused();
      await expect(step(page).getByText('1 of 36')).toBeVisible();
      await expect(step(page).getByRole('button', { name: 'Back' })).toBeDisabled();
      await step(page).getByRole('button', { name: 'Next' }).click();
      await expect(title(page, 'Have buried lines marked')).toBeFocused();
      await expect(step(page).getByText('Have buried lines marked before digging', { exact: false })).toBeVisible();
      await page.keyboard.press('ArrowRight');
      await expect(title(page, 'Lock the breaker off')).toBeFocused();
      await page.keyboard.press('ArrowLeft');
      await expect(title(page, 'Have buried lines marked')).toBeFocused();
      await step(page).getByRole('button', { name: 'Back' }).click();
      await expect(title(page, 'Get the permit')).toBeFocused();
      expect(await axeFinds(page)).toEqual([]);
      await page.keyboard.press('Escape');
      await expect(step(page)).toHaveCount(0);
      await expect(page.getByRole('button', { name: /^1\s+Get the permit$/ })).toBeFocused();
      expect(await page.locator('.stage svg').first().innerHTML()).toBe(desk);
      expect(await axeFinds(page)).toEqual([]);
    },
  );

  test('picture and words are on one screen, and fingers find the buttons', { tag: '@both' }, async ({ page }) => {
    await page.getByRole('button', { name: /^13\s+Fit the check valve$/ }).click();
    await expect(title(page, 'Fit the check valve')).toBeInViewport();
    await expect(step(page).locator('.drawn > svg')).toBeInViewport({ ratio: 0.8 });
    await expect(step(page).getByRole('listitem').first()).toBeInViewport({ ratio: 1 });
    // What it puts on is ringed, and what comes later is pale.
    const shapes = step(page).locator('.drawn > svg');
    await expect(shapes.locator('[opacity="0.22"]').first()).toBeAttached();
    for (const name of ['Back', 'Next', 'All steps']) {
      const box = await step(page).getByRole('button', { name }).boundingBox();
      expect(box?.height, name).toBeGreaterThanOrEqual(44);
      expect(box?.width, name).toBeGreaterThanOrEqual(44);
    }
  });

  test('ticks, and the step one stands at, are there after a reload', { tag: '@both' }, async ({ page }) => {
    await page.getByRole('button', { name: /^4\s+Measure the well$/ }).click();
    await step(page).getByRole('checkbox', { name: 'Done' }).check();
    await step(page).getByRole('button', { name: 'All steps' }).click();
    await page.getByRole('checkbox', { name: 'Done: Get the permit' }).check();
    await page.reload();
    await expect(chip(page, 'Pump intake')).toBeAttached();
    await openOrder(page);
    await expect(page.getByText('2 are ticked')).toBeVisible();
    for (const name of ['Get the permit', 'Measure the well'])
      await expect(page.getByRole('checkbox', { name: `Done: ${name}` })).toBeChecked();
    await page.getByRole('button', { name: 'Go on with step 4' }).click();
    await expect(title(page, 'Measure the well')).toBeFocused();
    await expect(step(page).getByRole('checkbox', { name: 'Done' })).toBeChecked();
  });

  /** Of the sample, in place of an old pump. */
  const course = orderOfWork(solve(planOf(sample('tamarack-ridge'))), 'replace');
  const replacing = course.kind === 'stop' ? 0 : course.steps.length;

  test('in place of an old pump is another course, with ticks of its own', async ({ page }) => {
    await page.getByRole('checkbox', { name: 'Done: Get the permit' }).check();
    await page.getByRole('radio', { name: 'In place of an old pump' }).check();
    await expect(page.getByText(`${replacing} steps`)).toBeVisible();
    await expect(page.getByRole('button', { name: /Pull the old string/ })).toBeVisible();
    await expect(page.getByRole('checkbox', { name: 'Done: Get the permit' })).not.toBeChecked();
    await page.getByRole('radio', { name: 'A new well' }).check();
    await expect(page.getByRole('checkbox', { name: 'Done: Get the permit' })).toBeChecked();
  });

  test('a finger turns the page sideways, and scrolls it up and down', { tag: '@phone' }, async ({ page }) => {
    await page.getByRole('button', { name: 'Begin with step 1' }).click();
    const session = await page.context().newCDPSession(page);
    const drag = async (dx: number, dy: number): Promise<void> => {
      const from = { x: 195, y: 560 };
      await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [from] });
      for (const part of [0.3, 0.6, 1])
        await session.send('Input.dispatchTouchEvent', {
          type: 'touchMove',
          touchPoints: [{ x: from.x + dx * part, y: from.y + dy * part }],
        });
      await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    };
    await drag(-120, 10);
    await expect(title(page, 'Have buried lines marked')).toBeFocused();
    await drag(-60, -150);
    await expect(title(page, 'Have buried lines marked')).toBeFocused();
    await drag(120, 10);
    await expect(title(page, 'Get the permit')).toBeFocused();
  });

  test('on paper every step stands with a box, and the ticked ones are ticked', async ({ page }) => {
    await page.getByRole('checkbox', { name: 'Done: Get the permit' }).check();
    // Also while one of them is open.
    await page.getByRole('button', { name: 'Begin with step 1' }).click();
    await expect(title(page, 'Get the permit')).toBeFocused();
    // The drawing, and steps that no one page would hold: a browser counts pages before it tells that it prints.
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeGreaterThan(6);
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.whole')).toHaveCount(36);
    await expect(page.locator('.whole .box')).toHaveCount(36);
    await expect(page.locator('.whole .ticked')).toHaveCount(1);
    await expect(page.locator('.whole').nth(1)).toContainText('Caution. Have buried lines marked before digging');
    await expect(page.locator('.whole').last()).toBeVisible();
    await expect(page.locator('dialog')).toBeHidden();
  });
});

test('a well in a pit is told why there are no steps, and nothing else', async ({ page }) => {
  await openChanged(page, {
    well: {
      depth: '220 ft',
      casing: { material: 'steel', size: '6 in', bottom: '90 ft' },
      intake: { kind: 'open hole' },
      inPit: true,
    },
  });
  await openOrder(page);
  await expect(page.getByText('The top of this well is in a pit, so no steps are told.')).toBeVisible();
  await expect(page.getByRole('tabpanel').getByRole('button')).toHaveCount(0);
  await expect(page.getByRole('tabpanel').getByRole('checkbox')).toHaveCount(0);
});
