/** As it was built: written down beside the plan, kept whatever becomes of the page, and made the plan at one press. */
import { axeFinds } from './axe.ts';
import { heard, keptHere, openSample, undo } from './hands.ts';
import { expect, test, type Page } from './onePage.ts';

async function openBuilt(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Build' }).click();
  await page.getByRole('button', { name: 'Write down what was put in' }).click();
  await expect(page.getByRole('heading', { name: 'As it was built' })).toBeFocused();
}
const put = (page: Page, name: string) => page.getByLabel(`Put in: ${name}`, { exact: true });
const read = (page: Page, name: string) => page.getByLabel(`Measured: ${name}`, { exact: true });

test('by keys: another depth is not as planned, becomes the plan, and is taken back', async ({ page }) => {
  await openSample(page);
  await openBuilt(page);
  const before = await heard(page, 'Pump intake');
  await put(page, 'Pump intake').focus();
  await page.keyboard.type('171');
  await page.keyboard.press('Enter');
  await expect(put(page, 'Pump intake')).toHaveValue('171 ft');
  await expect(page.getByText('not as planned', { exact: true })).toHaveCount(1);
  expect(await heard(page, 'Pump intake')).toBe(before);
  await page.getByRole('button', { name: 'Make this the plan' }).press('Enter');
  await expect.poll(() => heard(page, 'Pump intake')).toContain('171 ft');
  // What was planned is still told, and there is nothing more to make the plan.
  await expect(page.getByText('not as planned', { exact: true })).toHaveCount(1);
  await expect(page.getByRole('button', { name: 'Make this the plan' })).toHaveCount(0);
  await undo(page).press('Enter');
  await expect.poll(() => heard(page, 'Pump intake')).toBe(before);
  await expect(put(page, 'Pump intake')).toHaveValue('171 ft');
});

test('what a field does not take stays in its box, over a reload too', async ({ page }) => {
  await openSample(page);
  await openBuilt(page);
  await put(page, 'Cut-in').fill('a lot');
  await put(page, 'Cut-in').press('Enter');
  await expect(page.getByText(/^Not applied\./)).toBeVisible();
  await read(page, 'Flow into a bucket').fill('5 gal in 30 s');
  await read(page, 'Flow into a bucket').press('Enter');
  await expect(read(page, 'Flow into a bucket')).toHaveValue('10 gpm');
  await page.reload();
  await openBuilt(page);
  await expect(put(page, 'Cut-in')).toHaveValue('a lot');
  await expect(read(page, 'Flow into a bucket')).toHaveValue('10 gpm');
});

test('a reading that is not as expected says what to think of in this well', async ({ page }) => {
  await openSample(page);
  await openBuilt(page);
  await read(page, 'Water after an hour of running, from the ground').fill('172');
  await page.keyboard.press('Tab');
  await expect(page.getByText('lower than expected')).toBeVisible();
  await expect(page.getByText(/Only 8\sft of water are left over the intake/)).toBeVisible();
});

test('an old pump has its own short record, and its sounded bottom becomes a fact', async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'Build' }).click();
  await page.getByRole('radio', { name: /old pump/ }).check();
  await page.getByLabel('The old pump: Bottom as sounded').fill('214 ft');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Take the sounded bottom into the plan' }).click();
  const soundedNow = async (): Promise<unknown> => {
    const plan = (await keptHere(page))[0]?.plan as { well?: { soundedDepth?: string } } | undefined;
    return plan?.well?.soundedDepth;
  };
  await expect.poll(soundedNow).toBe('214 ft');
});

test(
  'with gloves: every box and button is 44 px high, and axe finds nothing',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    await openSample(page);
    await openBuilt(page);
    await read(page, 'Amps while running').fill('14 A');
    await page.keyboard.press('Tab');
    await page.evaluate(() => window.scrollTo(0, 0));
    expect(await axeFinds(page)).toEqual([]);
    if (hasTouch !== true) return;
    const section = page.getByRole('region', { name: 'As it was built' });
    const low = await section
      .locator('input, select, button')
      .evaluateAll((all) =>
        all.filter((each) => each.getBoundingClientRect().height < 44).map((each) => each.outerHTML.slice(0, 90)),
      );
    expect(low).toEqual([]);
  },
);
