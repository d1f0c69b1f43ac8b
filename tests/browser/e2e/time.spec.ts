import { axeFinds } from './axe.ts';
import { expect, test, type Locator, type Page } from './onePage.ts';
import {
  chip,
  feetIn,
  fillUp,
  handOn,
  heard,
  keptHere,
  openChanged,
  openSample,
  redo,
  undo,
  withoutDatabase,
} from './hands.ts';

const opener = (page: Page): Locator => page.getByRole('button', { name: 'Watch the water over time' });
const range = (page: Page): Locator => page.getByRole('slider', { name: 'Time since the pump started' });
const back = (page: Page): Locator => page.getByRole('button', { name: 'Back to usual' });
const sentence = (page: Page): Locator => page.getByText(/^Water as it stands/);

/** Where the dashed line of the pumping level is drawn in the section, px from the top of its SVG. */
async function drawnLevel(page: Page): Promise<number> {
  const line = page.locator('.section svg [stroke-dasharray="9 4"]').first();
  return line.evaluate((element) => {
    const svg = element.closest('svg');
    if (svg === null) throw new Error('drawnLevel: the line is in no drawing');
    return element.getBoundingClientRect().top - svg.getBoundingClientRect().top;
  });
}

async function saidLevel(page: Page): Promise<number> {
  return feetIn((await sentence(page).innerText()).replace(/^.*start:/, ''));
}

/** The plan as this device keeps it. */
async function keptPlan(page: Page): Promise<string> {
  return JSON.stringify((await keptHere(page))[0]?.plan);
}

test('keys on the range move sentence and drawn level; going back restores both, and no step was made', async ({
  page,
}) => {
  await openSample(page);
  const usual = await heard(page, 'Pumping level');
  const firstStep = await undo(page).isEnabled();
  await opener(page).click();
  await expect(range(page)).toBeFocused();
  await page.keyboard.press('Home');
  await expect(range(page)).toHaveAttribute('aria-valuetext', /^1 min/);
  await expect(page.getByText('Drawn: water as it stands 1 min after the start')).toBeVisible();
  const [early, earlyLine] = [await saidLevel(page), await drawnLevel(page)];
  await page.keyboard.press('End');
  await expect(range(page)).toHaveAttribute('aria-valuetext', /^30 days/);
  await expect.poll(() => drawnLevel(page)).toBeGreaterThan(earlyLine + 5);
  // The report says 62 ft at rest and 42 ft of drawdown at 10 gpm after 4 h; the pump draws more, and for longer.
  expect(early).toBeGreaterThan(62);
  expect(early).toBeLessThan(104);
  expect(await saidLevel(page)).toBeGreaterThan(104);
  await back(page).click();
  await expect(opener(page)).toBeFocused();
  await expect(sentence(page)).toHaveCount(0);
  expect(await heard(page, 'Pumping level')).toBe(usual);
  expect(await undo(page).isEnabled()).toBe(firstStep);
  await expect(redo(page)).toBeDisabled();
});

test('a pump that stops lets the water come back, and the plan is as it was', async ({ page }) => {
  await openChanged(page, {});
  await expect.poll(() => keptPlan(page)).toContain('Tamarack');
  const plan = await keptPlan(page);
  await opener(page).click();
  await range(page).press('End');
  const pumped = await saidLevel(page);
  await page.getByLabel('Pump stops after').selectOption('4 h');
  await expect(page.getByText('the water comes back')).toBeVisible();
  // Recovery by superposition leaves next to nothing after 180 times the pumping time.
  expect(await saidLevel(page)).toBeLessThan(63);
  expect(pumped).toBeGreaterThan(104);
  await page.getByLabel('dry season').check();
  // The sample's dry season is 15 ft lower than 62 ft.
  expect(await saidLevel(page)).toBeCloseTo(77, 0);
  await back(page).click();
  expect(await keptPlan(page)).toBe(plan);
});

test('it plays by itself, and pauses', async ({ page }) => {
  await openSample(page);
  await opener(page).click();
  await range(page).press('Home');
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect.poll(async () => Number(await range(page).inputValue())).toBeGreaterThan(10);
  await page.getByRole('button', { name: 'Pause', exact: true }).click();
  const held = await range(page).inputValue();
  await page.waitForTimeout(100);
  expect(await range(page).inputValue()).toBe(held);
});

test('nothing moves by itself for one who wants it still', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openSample(page);
  await opener(page).click();
  await range(page).press('Home');
  await expect(page.getByRole('button', { name: 'Play', exact: true })).toHaveCount(0);
  await page.getByRole('button', { name: 'Next step' }).click();
  await expect(range(page)).toHaveAttribute('aria-valuetext', /^10 min/);
});

test('taking hold of a level ends it', { tag: '@both' }, async ({ page, hasTouch }) => {
  await openSample(page);
  await opener(page).click();
  await expect(sentence(page)).toBeVisible();
  const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch === true);
  await hand.press();
  const drawing = page.locator('.section svg').first();
  const before = await drawing.boundingBox();
  await hand.moveBy(20);
  await expect(sentence(page)).toBeHidden();
  await expect(page.getByText(/^Drawn: water/)).toBeHidden();
  // The drawing stays where it is, and as large, until the release.
  expect(await drawing.boundingBox()).toEqual(before);
  await hand.release();
  await expect(opener(page)).toBeVisible();
});

test('what cannot be told is said in words', async ({ page }) => {
  await openSample(page, 'Slate Hollow homestead');
  await opener(page).click();
  await page.getByLabel('dry season').check();
  await expect(page.getByText('The lowest static level is not known.')).toBeVisible();
});

/**
 * Kruseman & de Ridder (1994), Analysis and Evaluation of Pumping Test Data, table 3.2: Oude Korendijk, piezometer at
 * 30 m, 788 m³/d; minutes and metres, from 1 to 10 min. The straight line through these gives T = 385 m²/d and
 * S = 1.7e-4 there (ch. 3, from memory). Theis by least squares on these readings alone is 363 m²/d and 1.95e-4: the
 * best of a grid over T and S, with the series of W(u), worked out apart from this program.
 */
const KORENDIJK =
  'min\tm\n1\t0.23\n1.4\t0.28\n1.9\t0.33\n2.33\t0.36\n2.8\t0.39\n3.36\t0.42\n4\t0.45\n5.35\t0.50\n6.8\t0.54\n8.3\t0.57\n10\t0.60';

async function openTest(page: Page): Promise<void> {
  await openSample(page, 'Heron Flats farmhouse');
  await page.getByRole('tab', { name: 'The record' }).click();
  await page.getByRole('button', { name: 'Type in a pumping test' }).click();
  await expect(page.getByRole('group', { name: 'Pumping test' })).toBeVisible();
}

async function typeTest(page: Page): Promise<void> {
  await page.getByLabel('Flow, held constant').fill('32.8333 m3/h');
  await page.getByLabel('Where measured').selectOption('in another well');
  await page.getByLabel('Distance from the pumped well').fill('30 m');
  await page.getByLabel('Time of reading 1', { exact: true }).evaluate((cell, text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text', text);
    cell.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  }, KORENDIJK);
}

test('a published test is fitted, is used as one step, and undone as one', async ({ page }) => {
  await openTest(page);
  await expect(page.getByText(/^Not fitted yet/)).toBeVisible();
  await typeTest(page);
  await expect(page.getByText('11 readings pasted. 1 without two numbers left out.')).toBeVisible();
  const row = page.getByRole('row', { name: /^Transmissivity/ });
  const found = Number(/([\d.]+) m2\/d$/.exec(await row.innerText())?.[1]);
  expect(Math.abs(found - 363)).toBeLessThanOrEqual(1);
  expect(Math.abs(found / 385 - 1)).toBeLessThan(0.1);
  const storativity = Number(/([\d.]+)$/.exec(await page.getByRole('row', { name: /^Storativity/ }).innerText())?.[1]);
  expect(Math.abs(storativity / 1.95e-4 - 1)).toBeLessThan(0.01);
  const line = await page.getByText(/^The straight line through the late readings/).innerText();
  expect(Math.abs(Number(/([\d.]+) m2\/d/.exec(line)?.[1]) / 385 - 1)).toBeLessThan(0.06);
  const before = await heard(page, 'Pumping level');
  const usualLine = await drawnLevel(page);
  await page.getByRole('button', { name: 'Use it' }).click();
  await expect(page.getByRole('textbox', { name: 'Transmissivity' })).toHaveValue(`${found} m2/d`);
  // So open a ground hardly lets the water fall; and a level that follows from an aquifer is not for dragging.
  await expect.poll(() => drawnLevel(page)).toBeLessThan(usualLine - 5);
  await expect(chip(page, 'Pumping level')).toHaveCount(0);
  await undo(page).click();
  await expect(page.getByRole('textbox', { name: 'Transmissivity' })).toHaveCount(0);
  expect(await heard(page, 'Pumping level')).toBe(before);
});

test('a test that is half typed is still there on another day', async ({ page }) => {
  await openTest(page);
  await typeTest(page);
  await page.getByLabel('Pump ran for').fill('10 min');
  await page.getByRole('tab', { name: 'Findings' }).click();
  await page.getByRole('tab', { name: 'The record' }).click();
  await expect(page.getByLabel('Drawdown of reading 11', { exact: true })).toHaveValue('0.60');
  await expect(page.getByRole('row', { name: /^Transmissivity/ })).toBeVisible();
  // Well and test are kept a moment after the last change.
  await page.waitForTimeout(900);
  await page.reload();
  await page.getByRole('tab', { name: 'The record' }).click();
  await expect(page.getByLabel('Flow, held constant')).toHaveValue('32.8333 m3/h');
  await expect(page.getByLabel('Pump ran for')).toHaveValue('10 min');
  await expect(page.getByLabel('Time of reading 5', { exact: true })).toHaveValue('2.8');
});

test('where the browser has no room left for it, the page says so, and says no more once there is', async ({
  page,
}) => {
  await openTest(page);
  await fillUp(page, true);
  const words = page.getByText(/^This browser has no room left\.[\s\S]*What is being typed is not kept/);
  await expect(words).toBeHidden();
  await page.getByLabel('Flow, held constant').fill('32.8333 m3/h');
  await expect(words).toBeVisible();
  await expect(page.getByText('This browser keeps nothing.')).toBeHidden();
  await page.getByRole('tab', { name: 'Findings' }).click();
  await page.getByRole('tab', { name: 'The record' }).click();
  await expect(page.getByLabel('Flow, held constant')).toHaveValue('32.8333 m3/h');
  await fillUp(page, false);
  await page.getByLabel('Flow, held constant').fill('30 m3/h');
  await expect(words).toBeHidden();
});

test('a pumping test where the browser keeps nothing is named with the well', async ({ page }) => {
  await page.addInitScript(withoutDatabase);
  await openTest(page);
  await page.getByLabel('Flow, held constant').fill('32.8333 m3/h');
  await expect(page.getByText(/^This browser keeps nothing\..*What is being typed is not kept/)).toBeVisible();
});

test('readings that cannot be fitted are refused in words', async ({ page }) => {
  await openTest(page);
  await page.getByLabel('Flow, held constant').fill('30 L/min');
  const cell = (name: string): Locator => page.getByLabel(name, { exact: true });
  await cell('Time of reading 1').fill('1');
  await cell('Drawdown of reading 1').fill('much');
  await expect(cell('Drawdown of reading 1')).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText('1 row is not whole and left out.')).toBeVisible();
  await cell('Drawdown of reading 1').fill('0,3');
  await expect(page.getByText(/Readings at 1 different times are too few/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Use it' })).toHaveCount(0);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe finds nothing in time strip and test, ${colorScheme}`, { tag: '@both' }, async ({ page }, { project }) => {
    await page.emulateMedia({ colorScheme });
    await openTest(page);
    await typeTest(page);
    await opener(page).click();
    await expect(sentence(page)).toBeVisible();
    for (const width of project.name === 'phone' ? [390] : [1440, 1024]) {
      await page.setViewportSize({ width, height: 844 });
      expect(await axeFinds(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
        0,
      );
    }
  });
}
