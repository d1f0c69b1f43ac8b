import { axeFinds } from './axe.ts';
import { expect, test, type Locator, type Page } from './onePage.ts';
import { chip, handOn, heard, openChanged, openSample } from './hands.ts';

test.beforeEach(async ({ page }) => openSample(page));

const list = (page: Page): Locator => page.locator('details', { has: page.getByText('How far may it go') });
const signs = (page: Page): Locator => page.locator('[data-tick]');

/** The number in a line of the list: "Deeper than 208.5 ft: …" is 208.5. */
async function told(page: Page, line: RegExp): Promise<number> {
  const text = await list(page).getByRole('definition').filter({ hasText: line }).first().innerText();
  return Number(/([\d.]+) (?:ft|in|m|cm)/.exec(text)?.[1]);
}

async function type(page: Page, label: RegExp, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: label });
  await field.fill(text);
  await field.press('Enter');
}

test(
  'each of the six is told with what begins to be wrong, and axe finds nothing',
  { tag: '@both' },
  async ({ page }) => {
    await expect(list(page).getByRole('term')).toHaveText([
      /^Water at rest\s+62 ft$/,
      /^Yield of the well\s+10 gpm$/,
      /^Peak flow needed\s+8 gpm$/,
      /^Pressure switch\s+stops the pump at 60 psi$/,
      /^Pump\s+intake at 180 ft$/,
      /^Frost\s+48 in$/,
    ]);
    await expect(list(page).getByText(/^Danger: Falls more than [\d.]+ ft further: /)).toBeVisible();
    expect(await axeFinds(page)).toEqual([]);
  },
);

test('as deep as is told nothing is wrong, and a foot deeper the warning stands on the list', async ({ page }) => {
  await expect(list(page).getByText(/Deeper than [\d.]+ ft: the pump is too near the bottom/)).toBeVisible();
  const deepest = await told(page, /Deeper than [\d.]+ ft: the pump/);
  const wrong = page.getByRole('article', { name: /pump is too near the bottom/ });
  await chip(page, 'Pump intake').focus();
  await type(page, /^Pump intake/, `${deepest} ft`);
  await expect.poll(() => heard(page, 'Pump intake')).toContain(`${Math.floor(deepest)} ft`);
  await expect(wrong).toHaveCount(0);
  await type(page, /^Pump intake/, `${deepest + 1} ft`);
  await expect(wrong).toBeVisible();
  // It is so now, and no way is left.
  await expect(list(page).getByText(/^Warning: Already now: the pump is too near the bottom/)).toBeVisible();
});

test('the signs of a level show while it is chosen, and no others', { tag: '@both' }, async ({ page }) => {
  await expect(list(page).getByRole('term').first()).toBeVisible();
  await expect(signs(page)).toHaveCount(0);
  await chip(page, 'Static level').focus();
  await expect(signs(page)).toHaveCount(2);
  const [warning, danger] = await signs(page).evaluateAll((all) => all.map((each) => each.getBoundingClientRect().y));
  expect(warning).toBeLessThan(danger!);
  await chip(page, 'Pump intake').focus();
  await expect(signs(page)).toHaveCount(4);
  await chip(page, 'Well bottom').focus();
  await expect(signs(page)).toHaveCount(0);
});

test('a screen reader hears how far a level may go, and what the bar beside the hole says', async ({ page }) => {
  await expect(list(page).getByRole('term').first()).toBeVisible();
  const pump = chip(page, 'Pump intake');
  await expect(pump).toHaveAccessibleDescription(
    /^The rules for depth hold from \d+ ft \(10 ft under the dry level\) to \d+ ft \(10 ft off the bottom\)\. Deeper than/,
  );
  await expect(chip(page, 'Frost line')).toHaveAccessibleDescription(/^Deeper than \d+ in: the pitless adapter is/);
  // And the same is read beside it.
  await pump.focus();
  await expect(page.locator('.beside').getByText(/^The rules for depth hold from/)).toBeVisible();
  await expect(page.locator('.beside').getByText(/^Higher than [\d.]+ ft: too little water/)).toBeVisible();
});

test('for a metric reader all of it is metric', { tag: '@both' }, async ({ page }) => {
  await expect(list(page).getByRole('term').first()).toBeVisible();
  const metric = page.getByRole('button', { name: /^metres, litres a minute/ });
  if (!(await metric.isVisible())) await page.getByRole('button', { name: /^Look:/ }).click();
  await metric.click();
  await expect(
    list(page)
      .getByText(/Falls more than [\d.]+ m further/)
      .first(),
  ).toBeVisible();
  await expect(list(page)).not.toContainText(/\d (?:ft|in|gpm|psi)\b/);
});

test('what nobody said leads to the field that takes it', async ({ page }) => {
  await openChanged(page, { water: { staticLevel: 'unknown' } });
  await expect(list(page).getByText('Not known: nobody said where the water stands at rest.')).toBeVisible();
  await list(page).getByRole('link', { name: 'Water at rest' }).click();
  await expect(page.getByRole('tab', { name: 'The record' })).toHaveAttribute('aria-selected', 'true');
});

test(
  'two signs of one kind stand on one level, which moves by hand, by key and by number',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    // The dry-run protection is left dry at once, and further down the pump is: two dangers on one way.
    await openChanged(page, {
      site: { frostDepth: '4 ft' },
      top: undefined,
      string: undefined,
      dropPipe: undefined,
      wire: undefined,
      well: {
        depth: '305 ft',
        casing: { material: 'steel', size: '6 in', bottom: '62 ft' },
        intake: { kind: 'open hole' },
        yield: '8 gpm',
        yieldFrom: 'air lift',
      },
      water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } },
      status: {},
      pump: {
        setting: '283 ft',
        lowLevelCutOff: '281 ft',
        power: '3/4 hp',
        curve: { kind: 'generic', flow: '10 gpm' },
      },
      house: { people: 4, distance: '60 ft', rise: '8 ft', line: { material: 'PE', size: '1 in' } },
    });
    const level = chip(page, 'Static level');
    await expect(list(page).getByRole('term').first()).toBeVisible();
    await level.focus();
    await expect(signs(page)).toHaveCount(2);
    expect(await signs(page).evaluateAll((all) => all.map((each) => each.classList.contains('danger')))).toEqual([
      true,
      true,
    ]);
    const before = await heard(page, 'Static level');
    const hand = await handOn(page, level, hasTouch);
    await hand.press();
    await hand.moveBy(20);
    await hand.release();
    await expect.poll(() => heard(page, 'Static level')).not.toBe(before);
    const dragged = await heard(page, 'Static level');
    await level.focus();
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => heard(page, 'Static level')).not.toBe(dragged);
    await type(page, /^Static level/, '45 ft');
    await expect.poll(() => heard(page, 'Static level')).toContain('45 ft');
  },
);
