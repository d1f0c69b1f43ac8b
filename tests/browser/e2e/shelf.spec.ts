/** The list of kept wells: picture, name, place and when, and nothing of it holds up the page. */
import { readFileSync } from 'node:fs';
import { expect, test, type Locator, type Page } from './onePage.ts';
import { chip, openSample, undo } from './hands.ts';

type Json = Record<string, unknown>;

const sample = (name: string): Json =>
  JSON.parse(readFileSync(new URL(`../../../static/samples/${name}.json`, import.meta.url), 'utf8')) as Json;
const ROCK = sample('tamarack-ridge');
const SAND = sample('heron-flats');
const PLACE = 'Old Mill Lane, lot 7';
/** Turned round from its fourth sign on, and longer than any line. */
const HOSTILE = `Mill\u202Eenal <img src=x onerror=alert(1)> ${'W'.repeat(2000)}`;

const menu = (page: Page) => page.getByRole('button', { name: /^Wells/ });
const rows = (page: Page) => page.getByRole('banner').locator('[data-well]');
const drawn = (row: Locator) => row.locator('svg > *');

/** Put in as one file, the first the newest. */
async function fill(page: Page, plans: readonly Json[]): Promise<void> {
  const wells = plans.map((plan, i) => ({ plan, saved: Date.UTC(2026, 3, 20, 12) - i * 3_600_000 }));
  const buffer = Buffer.from(JSON.stringify({ format: 'wellcut-wells/1', wells }));
  await page.goto('/');
  await page
    .getByRole('main')
    .locator('input[type=file]')
    .setInputFiles({ name: 'wells.json', mimeType: 'application/json', buffer });
  await expect(page.getByText(`${plans.length} of ${plans.length} wells`).first()).toBeVisible();
}

/** Behind the page's back, as a torn write or a later form of the page would leave it. */
async function spoil(page: Page, title: string): Promise<void> {
  await page.evaluate(
    (wanted) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open('wellcut');
        opening.onsuccess = () => {
          const database = opening.result;
          const change = database.transaction('wells', 'readwrite');
          const walking = change.objectStore('wells').openCursor();
          walking.onsuccess = () => {
            const at = walking.result;
            if (at === null) return;
            const well = at.value as { title: string };
            if (well.title === wanted) at.update({ ...well, plan: { format: 'wellcut-plan/1', well: 'torn' } });
            at.continue();
          };
          change.oncomplete = () => {
            database.close();
            done();
          };
          change.onerror = () => fail(new Error('the well could not be spoilt'));
        };
      }),
    title,
  );
}

test(
  'shows picture, name, place and when of each well, in the order they were kept',
  { tag: '@both' },
  async ({ page }) => {
    await fill(page, [{ ...ROCK, place: PLACE }, SAND]);
    await menu(page).click();
    await expect(rows(page)).toHaveCount(2);
    const entry = rows(page).first().getByRole('button').first();
    // The picture is for those who see it: the name is the name.
    await expect(entry).toHaveAccessibleName(/^Tamarack Ridge cabin Old Mill Lane, lot 7 Apr 20, 2026, 12:00$/);
    await expect(rows(page).nth(1).getByRole('button').first()).toHaveAccessibleName(
      /^Heron Flats farmhouse Apr 20, 2026, 11:00$/,
    );
    for (const row of await rows(page).all()) {
      await row.scrollIntoViewIfNeeded();
      await expect(drawn(row)).not.toHaveCount(0);
      expect(await row.locator('svg text').count()).toBe(0);
      await expect(row.locator('.picture')).toHaveAttribute('aria-hidden', 'true');
      const box = await row.locator('svg').boundingBox();
      expect([Math.round(box?.width ?? 0), Math.round(box?.height ?? 0)]).toEqual([54, 70]);
    }
    const [first, second] = await Promise.all([0, 1].map((i) => rows(page).nth(i).locator('svg').innerHTML()));
    expect(first).not.toBe(second);
  },
);

test('a press on the picture opens the well', { tag: '@both' }, async ({ page }) => {
  await fill(page, [{ ...ROCK, place: PLACE }, SAND]);
  await menu(page).click();
  const row = rows(page).nth(1);
  await row.scrollIntoViewIfNeeded();
  await expect(drawn(row)).not.toHaveCount(0);
  const box = await row.locator('svg').boundingBox();
  if (box === null) throw new Error('no picture');
  await page.mouse.click(box.x + box.width / 2, box.y + box.height - 6);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Heron Flats farmhouse');
});

test('a place is typed in the record, stands in the list, and goes with a step back', async ({ page }) => {
  await openSample(page);
  await page.getByRole('tab', { name: 'Record' }).click();
  const field = page.getByRole('textbox', { name: 'Where it is', exact: true });
  await field.fill(PLACE);
  await field.press('Tab');
  await menu(page).click();
  await expect(rows(page).first().getByText(PLACE, { exact: true })).toBeVisible();
  await page.keyboard.press('Escape');
  await undo(page).click();
  await menu(page).click();
  await expect(rows(page)).toHaveCount(1);
  await expect(rows(page).first().getByText(PLACE)).toHaveCount(0);
});

test(
  'a hostile name and place turn no line round, run nothing and leave the row its size',
  { tag: '@both' },
  async ({ page }) => {
    const dialogs: string[] = [];
    page.on('dialog', (dialog) => {
      dialogs.push(dialog.message());
      void dialog.dismiss();
    });
    await fill(page, [{ ...ROCK, title: HOSTILE, place: HOSTILE }]);
    await menu(page).click();
    const row = rows(page).first();
    await row.scrollIntoViewIfNeeded();
    await expect(drawn(row)).not.toHaveCount(0);
    expect(await row.locator('img').count()).toBe(0);
    expect(dialogs).toEqual([]);
    const box = await row.boundingBox();
    expect(box?.height).toBeLessThan(220);
    const when = row.getByText('Apr 20, 2026, 12:00', { exact: true });
    await expect(when).toBeVisible();
    // Left of where the turned words would have put it.
    const [whenBox, nameBox] = await Promise.all([when.boundingBox(), row.locator('.well').boundingBox()]);
    expect(whenBox?.x).toBe(nameBox?.x);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  },
);

test('a well that cannot be read has an empty frame, and the others their pictures', async ({ page }) => {
  await fill(page, [ROCK, SAND]);
  await spoil(page, 'Tamarack Ridge cabin');
  await page.reload();
  await menu(page).click();
  const [broken, whole] = [rows(page).first(), rows(page).nth(1)];
  await whole.scrollIntoViewIfNeeded();
  await expect(drawn(whole)).not.toHaveCount(0);
  await broken.scrollIntoViewIfNeeded();
  await expect(broken.getByText('cannot be read')).toBeVisible();
  await expect(broken.locator('.picture .none')).toBeVisible();
  await expect(broken.locator('svg')).toHaveCount(0);
});

test('pictures follow the theme', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'light' });
  await fill(page, [ROCK]);
  await menu(page).click();
  const paper = rows(page).first().locator('svg > rect').first();
  await rows(page).first().scrollIntoViewIfNeeded();
  await expect(paper).toHaveAttribute('fill', '#fff');
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect(paper).toHaveAttribute('fill', '#14181B');
});

test('a list that is open in one tab follows what another does with a well', async ({ page, context }) => {
  await openSample(page);
  await chip(page, 'Pump intake').focus();
  await page.keyboard.press('PageUp');
  const other = await context.newPage();
  await other.goto('/');
  await menu(other).click();
  const picture = rows(other).first().locator('svg');
  await rows(other).first().scrollIntoViewIfNeeded();
  await expect(drawn(rows(other).first())).not.toHaveCount(0);
  const before = await picture.innerHTML();
  await page.bringToFront();
  await chip(page, 'Pump intake').focus();
  for (let i = 0; i < 6; i++) await page.keyboard.press('PageUp');
  await other.bringToFront();
  await expect.poll(() => picture.innerHTML()).not.toBe(before);
});

test('nothing of the list breaks the page’s policy', async ({ page }) => {
  const violations: string[] = [];
  await page.exposeFunction('tellViolation', (said: string) => violations.push(said));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective, sample: said }) => {
      (window as unknown as { tellViolation(said: string): void }).tellViolation(`${effectiveDirective} ${said}`);
    });
  });
  await fill(page, [{ ...ROCK, title: HOSTILE, place: HOSTILE }, SAND]);
  await menu(page).click();
  for (const row of await rows(page).all()) {
    await row.scrollIntoViewIfNeeded();
    await expect(drawn(row)).not.toHaveCount(0);
  }
  expect(violations).toEqual([]);
});

test(
  'of thirty wells only those in view are drawn, the others as they come, and all at once when opened again',
  { tag: '@both' },
  async ({ page }) => {
    const plans = Array.from({ length: 30 }, (_, i) => ({ ...(i % 2 === 0 ? ROCK : SAND), title: `Well ${i + 1}` }));
    await fill(page, plans);
    // Where the menu lies, nothing of the page's own list is in view.
    await page.evaluate(() => window.scrollTo(0, 0));
    await menu(page).click();
    await expect(rows(page)).toHaveCount(30);
    await rows(page).first().scrollIntoViewIfNeeded();
    await expect(drawn(rows(page).first())).not.toHaveCount(0);
    await expect(rows(page).nth(29).locator('svg')).toHaveCount(0);
    // What is asked for meanwhile is done: a well opens though its list is still being drawn.
    await rows(page).nth(29).scrollIntoViewIfNeeded();
    await expect(drawn(rows(page).nth(29))).not.toHaveCount(0);
    await page.keyboard.press('Escape');
    await menu(page).focus();
    // Looked at in the very task in which it opens, before any other could have run.
    const atOnce = await page.evaluate(async () => {
      document.querySelector<HTMLElement>('header button[aria-expanded]')?.click();
      await new Promise((done) => requestAnimationFrame(() => done(null)));
      return document.querySelectorAll('header [data-well] svg > *').length;
    });
    expect(atOnce).toBeGreaterThan(0);
  },
);

test('pictures wait until the page has nothing else to do, and come one at a time', async ({ page }) => {
  // A page that is idle only when it is told so.
  await page.addInitScript(() => {
    const waiting: (() => void)[] = [];
    Object.assign(window, { waiting, requestIdleCallback: (call: () => void) => waiting.push(call) });
  });
  const plans = Array.from({ length: 30 }, (_, i) => ({ ...(i % 2 === 0 ? ROCK : SAND), title: `Well ${i + 1}` }));
  await fill(page, plans);
  await menu(page).click();
  await expect(rows(page)).toHaveCount(30);
  await rows(page).nth(3).scrollIntoViewIfNeeded();
  const pictures = page.locator('[data-well] svg');
  type Idle = Window & { waiting: (() => void)[] };
  const waiting = () => page.evaluate(() => (window as unknown as Idle).waiting.length);
  for (const count of [0, 1, 2]) {
    await expect.poll(waiting).toBe(1);
    await expect(pictures).toHaveCount(count);
    await page.evaluate(() => (window as unknown as Idle).waiting.shift()?.());
    await expect(pictures).toHaveCount(count + 1);
  }
  // The page answers all the while.
  await expect.poll(waiting).toBe(1);
  await page.getByRole('banner').getByRole('button', { name: 'Rename Well 4', exact: true }).click();
  await expect(page.getByRole('textbox', { name: 'Name of Well 4' })).toBeFocused();
  await expect(pictures).toHaveCount(3);
});
