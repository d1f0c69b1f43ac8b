import { readFile } from 'node:fs/promises';
import { axeFinds } from './axe.ts';
import { expect, test, type Locator, type Page } from './onePage.ts';
import { chip, handOn, openSample, savedPicture, undo } from './hands.ts';

const switchOn = (page: Page): Locator => page.getByRole('button', { name: 'Pump on', exact: true });
const switchOff = (page: Page): Locator => page.getByRole('button', { name: 'Pump off', exact: true });
const back = (page: Page): Locator => page.getByRole('button', { name: 'Back to usual' });
const season = (page: Page): Locator => page.getByRole('slider', { name: 'Season' });
const play = (page: Page): Locator => page.getByRole('button', { name: 'Play the winter' });
const hold = (page: Page): Locator => page.getByRole('button', { name: 'Pause the winter' });
/** The season in hundredths. */
const passed = async (page: Page): Promise<number> => Number(await season(page).inputValue());
/** The frozen ground in the section. */
const band = (page: Page): Locator => page.locator('.section svg rect[fill-opacity="0.82"]');
/** Marks of the flow in the section: round strokes that nothing fills. */
const marks = (page: Page): Locator =>
  page.locator('.section svg [fill="none"][stroke-linecap="round"][stroke-linejoin="round"]');
/** Whether the pump runs, as the section says it beside the pump: haloed, on one line or two. */
const word = (page: Page): Locator => page.locator('.section svg text[paint-order="stroke"]');

/** How often the drawing was written to in so many frames. */
async function writes(page: Page, frames: number): Promise<number> {
  return page.evaluate(async (count) => {
    let written = 0;
    const watch = new MutationObserver((records) => (written += records.length));
    for (const svg of document.querySelectorAll('.stage svg'))
      watch.observe(svg, { attributes: true, childList: true, characterData: true, subtree: true });
    for (let i = 0; i < count; i++) await new Promise((resolve) => requestAnimationFrame(resolve));
    watch.disconnect();
    return written;
  }, frames);
}

/** Height of the dashed line of the level that is drawn, px from the top of its SVG. */
async function drawnLevel(page: Page): Promise<number> {
  return page
    .locator('.section svg [stroke-dasharray="9 4"]')
    .first()
    .evaluate((line) => line.getBoundingClientRect().top - (line.closest('svg')?.getBoundingClientRect().top ?? 0));
}

test(
  'nothing moves by itself; with the pump on water flows and falls, with the pump off it rises again',
  { tag: '@both' },
  async ({ page }) => {
    await openSample(page);
    await expect(marks(page)).toHaveCount(0);
    const undoable = await undo(page).isEnabled();
    expect(await writes(page, 12)).toBe(0);

    await switchOn(page).click();
    await expect(switchOn(page)).toHaveAttribute('aria-pressed', 'true');
    await expect(word(page).first()).toHaveText(/^pump( on)?$/);
    await expect(page.getByText(/^Drawn: water as it stands .* after the start$/)).toBeVisible();
    const first = await marks(page).last().getAttribute('d');
    await expect.poll(() => marks(page).last().getAttribute('d')).not.toBe(first);
    expect(await writes(page, 6)).toBeGreaterThan(5);
    const early = await drawnLevel(page);
    await expect.poll(() => drawnLevel(page)).toBeGreaterThan(early + 3);

    await switchOff(page).click();
    await expect(switchOff(page)).toHaveAttribute('aria-pressed', 'true');
    await expect(page.getByText(/^Drawn: water as it stands .* after the stop$/)).toBeVisible();
    const deep = await drawnLevel(page);
    await expect.poll(() => drawnLevel(page)).toBeLessThan(deep - 3);

    await back(page).click();
    await expect(marks(page)).toHaveCount(0);
    await expect(word(page)).toHaveCount(0);
    // The line under the drawing goes, and the drawing takes its room once more: after that all is still.
    await expect.poll(() => writes(page, 12)).toBe(0);
    expect(await undo(page).isEnabled()).toBe(undoable);
  },
);

test('it can be held still, and goes on from there', async ({ page }) => {
  await openSample(page);
  await switchOn(page).click();
  await page.getByRole('button', { name: 'Hold still' }).click();
  await expect.poll(() => writes(page, 6)).toBe(0);
  await expect(marks(page)).not.toHaveCount(0);
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect.poll(() => writes(page, 6)).toBeGreaterThan(5);
});

test('for one who wants it still, states change at once and arrows stand', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openSample(page);
  await switchOn(page).click();
  await expect(marks(page)).not.toHaveCount(0);
  await expect(page.getByText('Drawn: pump on, water at its pumping level')).toBeVisible();
  await expect.poll(() => writes(page, 3)).toBe(0);
  expect(await writes(page, 20)).toBe(0);
  await expect(page.getByRole('button', { name: 'Hold still' })).toHaveCount(0);
  await switchOff(page).click();
  await expect(page.getByText('Drawn: pump off, water at rest')).toBeVisible();
  await expect(marks(page)).toHaveCount(0);
  expect(await writes(page, 20)).toBe(0);
});

test('one who asks for stillness midway has it at once', async ({ page }) => {
  await openSample(page);
  await switchOn(page).click();
  await expect.poll(() => writes(page, 6)).toBeGreaterThan(5);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await expect.poll(() => writes(page, 12)).toBe(0);
});

test('neither paper nor a saved drawing knows of it', async ({ page }) => {
  await openSample(page);
  const saved = async (kind: 'SVG' | 'PNG' | 'Letter'): Promise<string> =>
    readFile(await (await savedPicture(page, kind)).path(), 'latin1');
  const save = async (): Promise<string[]> => [await saved('SVG'), await saved('PNG'), await saved('Letter')];
  const printed = async (): Promise<string> => {
    await page.emulateMedia({ media: 'print' });
    const sheet = await page.locator('.paper svg').first().innerHTML();
    await page.emulateMedia({ media: 'screen' });
    return sheet;
  };
  const [before, onPaper] = [await save(), await printed()];
  await season(page).fill('30');
  await play(page).click();
  await switchOn(page).click();
  await expect(marks(page)).not.toHaveCount(0);
  expect(await save()).toEqual(before);
  expect(await printed()).toBe(onPaper);
  await page.emulateMedia({ media: 'print' });
  await expect(marks(page)).toHaveCount(0);
  await expect(word(page)).toHaveCount(0);
  await expect(page.getByText(/^Drawn:/)).toBeHidden();
  await expect(switchOn(page)).toBeHidden();
  await expect.poll(() => writes(page, 12)).toBe(0);
});

test('keys alone do all of it, and what is switched is said once', async ({ page }) => {
  await openSample(page);
  await page.evaluate(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    const live = document.querySelector('[aria-live="polite"], [role="status"]');
    if (live === null) throw new Error('nothing speaks');
    new MutationObserver(() => said.push(live.textContent)).observe(live, {
      childList: true,
      characterData: true,
      subtree: true,
    });
  });
  // A sentence ends in a hard space every second time, so that it is heard again.
  const said = () => page.evaluate(() => (window as unknown as { said: string[] }).said.map((words) => words.trim()));
  for (let i = 0; i < 80 && !(await switchOn(page).evaluate((each) => each === document.activeElement)); i++)
    await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await expect.poll(() => writes(page, 6)).toBeGreaterThan(5);
  expect(await said()).toEqual(['Pump on. The water falls from rest.']);
  await page.keyboard.press('Tab');
  await expect(switchOff(page)).toBeFocused();
  await page.keyboard.press('Enter');
  await expect.poll(said).toContainEqual(expect.stringContaining('Pump off. The water comes back.'));
  const before = (await said()).length;
  await play(page).focus();
  await page.keyboard.press('Enter');
  await expect(hold(page)).toBeFocused();
  await expect.poll(() => passed(page)).toBeGreaterThan(2);
  await page.keyboard.press('Space');
  await expect(play(page)).toBeFocused();
  await expect.poll(async () => (await said()).slice(before)).toHaveLength(2);
  const [begun, held] = (await said()).slice(before);
  expect(begun).toBe('The winter passes in twelve seconds: frost goes down, and thaws again.');
  expect(held).toMatch(/^The winter is held: frost \d+ in of 48 in\.$/);
  await page.keyboard.press('Tab');
  await expect(season(page)).toBeFocused();
  await page.keyboard.press('Home');
  await expect(season(page)).toHaveAttribute('aria-valuetext', 'Autumn, before the first frost, frost 0 in of 48 in');
  await page.keyboard.press('PageUp');
  await expect(season(page)).not.toHaveAttribute('aria-valuetext', /frost 0 in/);
  await page.keyboard.press('End');
  await expect(season(page)).toHaveAttribute('aria-valuetext', 'The end of the thaw, thawed to 48 in of 48 in');
  await season(page).fill('100');
  await expect(season(page)).toHaveAttribute('aria-valuetext', 'Spring, at the end of the frost, frost 48 in of 48 in');
});

test('the frozen ground grows with the season, and the frost line stays', async ({ page }) => {
  await openSample(page);
  const line = page.locator('.section svg [stroke-dasharray="9 3 1.6 3"]');
  // The words over the drawing take their room from it first.
  await season(page).fill('90');
  await expect(page.getByText(/^Drawn: frost/)).toBeVisible();
  const place = await line.getAttribute('y1');
  const tall = async () => Number(await band(page).getAttribute('height'));
  const late = await tall();
  // A third of the half-sine season has a quarter of its cold, and that freezes half of the depth.
  await season(page).fill('33');
  await expect.poll(tall).toBeLessThan(late * 0.53);
  expect(await tall()).toBeGreaterThan(late * 0.47);
  expect(await line.getAttribute('y1')).toBe(place);
  await expect(page.getByText('Drawn: frost 24 in')).toBeVisible();
  // The same law thaws it, from the surface down.
  await season(page).fill('133');
  await expect(page.getByText('Drawn: thawed to 24 in')).toBeVisible();
  await season(page).fill('100');
  await expect(page.getByText('Drawn: frost 48 in')).toBeVisible();
  const whole = await tall();
  await season(page).fill('133');
  await expect.poll(tall).toBeLessThan(whole * 0.53);
  expect(await tall()).toBeGreaterThan(whole * 0.47);
  expect(await line.getAttribute('y1')).toBe(place);
});

test('a winter passes by itself, from autumn to the end of the thaw, and ends there', async ({ page }) => {
  await openSample(page);
  await play(page).click();
  await expect(page.getByText(/^Drawn: frost/)).toBeVisible();
  await expect.poll(() => passed(page)).toBeGreaterThan(4);
  const [early, shallow] = [await passed(page), Number(await band(page).getAttribute('height'))];
  expect(early).toBeLessThan(100);
  await expect.poll(() => passed(page)).toBeGreaterThan(early + 5);
  expect(Number(await band(page).getAttribute('height'))).toBeGreaterThan(shallow);
  // Some twelve seconds, on a machine that does nothing else.
  await expect(season(page)).toHaveValue('200', { timeout: 40_000 });
  await expect(play(page)).toBeVisible();
  await expect(page.getByText('Drawn: thawed to 48 in')).toBeVisible();
  await expect(band(page)).toHaveAttribute('height', '0');
  await expect.poll(() => writes(page, 12)).toBe(0);
  await back(page).click();
  await expect(page.getByText(/^Drawn:/)).toBeHidden();
  await expect(season(page)).toHaveValue('100');
});

test('a winter is held by its button, goes on from there, and the range takes it out of its hands', async ({
  page,
}) => {
  await openSample(page);
  await season(page).fill('20');
  await play(page).click();
  await expect.poll(() => passed(page)).toBeGreaterThan(22);
  await hold(page).click();
  await expect.poll(() => writes(page, 6)).toBe(0);
  const held = await passed(page);
  expect(held).toBeGreaterThan(22);
  await play(page).click();
  await expect.poll(() => passed(page)).toBeGreaterThan(held);
  await season(page).focus();
  await page.keyboard.press('Home');
  await expect(play(page)).toBeVisible();
  await expect.poll(() => writes(page, 6)).toBe(0);
  await expect(season(page)).toHaveValue('0');
});

test(
  'a finger or a mouse on the range holds the winter before it moves',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    await openSample(page);
    await play(page).click();
    await expect.poll(() => passed(page)).toBeGreaterThan(2);
    const hand = await handOn(page, season(page), hasTouch === true);
    await hand.press();
    await expect(play(page)).toBeVisible();
    await expect.poll(() => writes(page, 6)).toBe(0);
    await hand.release();
    await expect.poll(() => writes(page, 6)).toBe(0);
  },
);

test('no winter passes for one who wants it still: the range alone is there', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openSample(page);
  await expect(season(page)).toBeVisible();
  await expect(play(page)).toHaveCount(0);
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  await play(page).click();
  await expect.poll(() => writes(page, 6)).toBeGreaterThan(2);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await expect.poll(() => writes(page, 12)).toBe(0);
  await page.emulateMedia({ reducedMotion: 'no-preference' });
  await expect(play(page)).toBeVisible();
  expect(await writes(page, 12)).toBe(0);
});

test('taking hold of a level ends a winter that passes', { tag: '@both' }, async ({ page, hasTouch }) => {
  await openSample(page);
  await play(page).click();
  await expect.poll(() => passed(page)).toBeGreaterThan(2);
  const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch === true);
  await hand.press();
  await hand.moveBy(20);
  await expect(page.getByText(/^Drawn:/)).toBeHidden();
  await expect.poll(() => writes(page, 6)).toBe(0);
  await hand.release();
  await expect(play(page)).toBeVisible();
  const left = await season(page).inputValue();
  await expect.poll(() => writes(page, 12)).toBe(0);
  await expect(season(page)).toHaveValue(left);
});

test('where the ground does not freeze there is no season', async ({ page }) => {
  await openSample(page, 'Palo Amargo guest house');
  await expect(switchOn(page)).toBeVisible();
  await expect(season(page)).toHaveCount(0);
});

test(
  'taking hold of a level stops it all, and the drawing is as planned',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    await openSample(page);
    await season(page).fill('50');
    await switchOn(page).click();
    await expect(marks(page)).not.toHaveCount(0);
    const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch === true);
    await hand.press();
    await hand.moveBy(20);
    await expect(marks(page)).toHaveCount(0);
    await expect(page.getByText(/^Drawn:/)).toBeHidden();
    await expect.poll(() => writes(page, 6)).toBe(0);
    await hand.release();
    await expect(switchOn(page)).toHaveAttribute('aria-pressed', 'false');
    await expect(marks(page)).toHaveCount(0);
  },
);

test('the page stays accessible while the well runs', { tag: '@both' }, async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openSample(page);
  await season(page).fill('40');
  await switchOn(page).click();
  await expect(marks(page)).not.toHaveCount(0);
  expect(await axeFinds(page)).toEqual([]);
});

test('the controls leave the drawing where it is', { tag: '@both' }, async ({ page, isMobile }) => {
  await openSample(page);
  const top = async () => (await page.locator('.section svg').first().boundingBox())?.y ?? 0;
  const before = await top();
  await switchOn(page).click();
  await expect(marks(page)).not.toHaveCount(0);
  await page.evaluate(() => scrollTo(0, 0));
  // One line of words over it, and no more.
  expect((await top()) - before).toBeLessThan(isMobile ? 44 : 40);
});
