/** Levels moved elsewhere than at their label: by their line in a detail, by the rail of depths, two at a time. */
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from './onePage.ts';
import { draw, type FramePlace } from '../../../src/draw/index.ts';
import { readPlan, solve } from '../../../src/model/index.ts';
import { feet } from '../../../src/model/units.ts';
import { chip, feetIn, handOn, heard, openSample, undo } from './hands.ts';

const FEET_PER_METRE = 1 / 0.3048;

/** Where a frame of the drawing lies on the page, from the same drawing made here at the size that is shown there. */
async function frameOnPage(page: Page, view: 'O' | 'A'): Promise<FramePlace> {
  const reading = readPlan(
    JSON.parse(readFileSync(new URL('../../../static/samples/tamarack-ridge.json', import.meta.url), 'utf8')),
  );
  if (!reading.ok) throw new Error('the sample cannot be read');
  const svg = page.getByRole('group', { name: 'Levels that can be moved' }).locator('svg').first();
  await svg.scrollIntoViewIfNeeded();
  const box = await svg.boundingBox();
  if (box === null) throw new Error('no drawing');
  const { width, height } = box;
  const sheet = width >= 860 ? 'all' : 'section';
  const scene = draw(solve(reading.plan), { sheet, width, height, units: 'us', theme: 'light' });
  const frame = scene.frames.find((each) => each.view === view);
  if (frame === undefined) throw new Error(`no frame ${view}`);
  return { ...frame, x: box.x + frame.x, y: box.y + frame.y };
}

const yOf = (frame: FramePlace, depth: number): number =>
  frame.y + ((depth - frame.topDepth) / (frame.bottomDepth - frame.topDepth)) * frame.height;

/** Feet, from the inches that small depths are said in. */
const depthIn = (words: string): number => Number(/, ([\d.]+) in/.exec(words)?.[1]) / 12;

async function fingerDrag(page: Page, x: number, from: number, to: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y: from }] });
  for (let step = 1; step <= 6; step++)
    await session.send('Input.dispatchTouchEvent', {
      type: 'touchMove',
      touchPoints: [{ x, y: from + ((to - from) * step) / 6 }],
    });
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

test(
  'a line is taken by the mouse, in a detail at its own scale; a finger on it scrolls',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    await openSample(page);
    const before = await heard(page, 'Frost line');
    const frame = await frameOnPage(page, hasTouch === true ? 'O' : 'A');
    const x = frame.x + 24;
    const y = yOf(frame, feet(depthIn(before)));
    if (hasTouch === true) {
      const top = await page.evaluate(() => window.scrollY);
      await fingerDrag(page, x, y, y - 60);
      await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(top + 20);
      expect(await heard(page, 'Frost line')).toBe(before);
      return;
    }
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - 40, { steps: 8 });
    await page.mouse.up();
    const moved = depthIn(before) - depthIn(await heard(page, 'Frost line'));
    const worth = (40 / frame.height) * (frame.bottomDepth - frame.topDepth) * FEET_PER_METRE;
    expect(worth).toBeLessThan(2);
    expect(Math.abs(moved - worth)).toBeLessThan(0.25);
    await undo(page).click();
    expect(await heard(page, 'Frost line')).toBe(before);
  },
);

test(
  'a chosen level is placed by touching the rail of depths, in one step',
  { tag: '@both' },
  async ({ page, hasTouch }) => {
    await openSample(page);
    const before = await heard(page, 'Pump intake');
    const hand = await handOn(page, chip(page, 'Pump intake'), hasTouch ?? false);
    await hand.press();
    await hand.release();
    await expect(page.getByRole('textbox', { name: /Pump intake/ })).toBeVisible();
    const frame = await frameOnPage(page, 'O');
    const y = yOf(frame, feet(120));
    if (hasTouch === true) await page.touchscreen.tap(frame.x - 14, y);
    else await page.mouse.click(frame.x - 14, y);
    // Within the pixel that the finger can tell.
    const pixel = ((frame.bottomDepth - frame.topDepth) / frame.height) * FEET_PER_METRE;
    expect(Math.abs(feetIn(await heard(page, 'Pump intake')) - 120)).toBeLessThanOrEqual(pixel + 0.6);
    await undo(page).click();
    expect(await heard(page, 'Pump intake')).toBe(before);
  },
);

test('with the drawdown kept, both levels of a measured pair move; without, the static one alone', async ({ page }) => {
  await openSample(page, 'Heron Flats farmhouse');
  const metres = async (name: string): Promise<number> => Number(/([\d.]+) m/.exec(await heard(page, name))?.[1]);
  const still = await metres('Static level');
  const pumping = await metres('Pumping level');
  await chip(page, 'Static level').focus();
  const lock = page.getByRole('checkbox', { name: /Keep the drawdown/ });
  const shallower = page.getByRole('button', { name: 'Static level: one step shallower' });
  for (let step = 0; step < 6; step++) await shallower.click();
  const up = still - (await metres('Static level'));
  expect(up).toBeGreaterThan(0);
  // The measured level stays; only what the demand makes of it shifts.
  const measured = await metres('Pumping level');
  expect(pumping - measured).toBeLessThan(0.75 * up);
  await lock.check();
  for (let step = 0; step < 6; step++) await shallower.click();
  expect(await metres('Static level')).toBeLessThan(still - up);
  expect(measured - (await metres('Pumping level'))).toBeCloseTo(up, 1);
  while ((await metres('Static level')) < still) await undo(page).click();
  expect([await metres('Static level'), await metres('Pumping level')]).toEqual([still, pumping]);
});
