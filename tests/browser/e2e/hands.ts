/** Hands for the page: opening a well, and a drag by mouse or by finger, whichever the device has. */
import { readFileSync } from 'node:fs';
import { expect, type CDPSession, type Download, type Locator, type Page } from '@playwright/test';

export async function openSample(page: Page, title = 'Tamarack Ridge cabin'): Promise<void> {
  await page.goto('/');
  await page.getByRole('main').getByRole('button', { name: title }).click();
  await expect(chip(page, 'Pump intake')).toBeAttached();
}

/** The lines of the report on the empty page, all of them shown; one that was begun is open already. */
export async function openReport(page: Page): Promise<void> {
  await page.goto('/');
  const door = page.getByRole('button', { name: 'Type in the report' });
  const all = page.getByRole('button', { name: 'Show all lines' });
  await expect(door.or(all)).toBeVisible();
  if (await door.isVisible()) await door.click();
  await all.click();
}

/** The first sample with some of its parts exchanged, opened from a file. */
export async function openChanged(page: Page, changes: Readonly<Record<string, unknown>>): Promise<void> {
  const file = new URL('../../../static/samples/tamarack-ridge.json', import.meta.url);
  const plan = { ...(JSON.parse(readFileSync(file, 'utf8')) as object), ...changes };
  // The page opens where it was left, and only an empty one asks for a file: what it kept is erased behind its back,
  // from a file beside it, or it might still be writing. A tab that was not there yet has nothing of it.
  if (!/^about:blank$|\/icon\.svg$/.test(page.url())) {
    await page.goto('/icon.svg');
    await eraseKept(page);
  }
  await page.goto('/');
  await page
    .getByRole('main')
    .locator('input[type=file]')
    .setInputFiles({ name: 'changed.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(plan)) });
  await expect(chip(page, 'Pump intake')).toBeAttached();
}

/** All that the browser keeps for the page is gone, as if somebody had cleared it. */
export async function eraseKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    window.localStorage.clear();
    window.sessionStorage.clear();
    await new Promise((done, fail) => {
      const erasing = indexedDB.deleteDatabase('wellcut');
      erasing.onsuccess = done;
      erasing.onerror = fail;
    });
  });
}

export interface KeptHere {
  readonly id: string;
  readonly title: string;
  readonly version: string;
  readonly takenAway: number | null;
  readonly plan: unknown;
}

/** The wells as this browser keeps them, taken away or not. */
export async function keptHere(page: Page): Promise<KeptHere[]> {
  return page.evaluate(async () => {
    const asked = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((done, fail) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => fail(request.error as Error);
      });
    // The page makes the database: one that is not there must not be made by looking.
    if (!(await indexedDB.databases()).some(({ name }) => name === 'wellcut')) return [];
    const database = await asked(indexedDB.open('wellcut'));
    const room = database.transaction('wells').objectStore('wells');
    const [ids, wells] = await Promise.all([asked(room.getAllKeys()), asked(room.getAll())]);
    database.close();
    return ids.map((id, i) => ({ id: String(id), ...(wells[i] as Omit<KeptHere, 'id'>) }));
  });
}

/** Whether the browser has no room for anything that the page wants to keep. */
export async function fillUp(page: Page, full: boolean): Promise<void> {
  await page.evaluate((isFull) => {
    const room = IDBObjectStore.prototype as IDBObjectStore & { putWithRoom?: IDBObjectStore['put'] };
    room.putWithRoom ??= room.put;
    const put = room.putWithRoom;
    // A disk cannot be filled in a test: the browser's answer is the one that it gives when it is.
    room.put = isFull
      ? () => {
          throw new DOMException('full', 'QuotaExceededError');
        }
      : put;
  }, full);
}

/** In the page, before it runs: a browser that has no database for it. */
export function withoutDatabase(): void {
  Object.defineProperty(window, 'indexedDB', {
    get() {
      throw new DOMException('denied', 'SecurityError');
    },
  });
}

/** The samples are sound. With a thinner wire and a weaker pipe there is a danger, and two warnings. */
export async function openFaulty(page: Page): Promise<void> {
  await openChanged(page, {
    wire: { size: '12 AWG' },
    dropPipe: { material: 'PE', size: '1 in', rating: '160 psi' },
  });
}

/** The native range inside a level's label. */
export function chip(page: Page, name: string): Locator {
  return page.getByRole('slider', { name, exact: true }).first();
}

/** What a screen reader hears of a level. */
export async function heard(page: Page, name: string): Promise<string> {
  return (await chip(page, name).getAttribute('aria-valuetext')) ?? '';
}

export function undo(page: Page): Locator {
  return page.getByRole('button', { name: 'Undo', exact: true });
}

export function redo(page: Page): Locator {
  return page.getByRole('button', { name: 'Redo', exact: true });
}

/** The drawing as a file; where there is little room the button is in a menu. All menus are closed afterwards. */
export async function savedPicture(page: Page, kind: 'SVG' | 'PNG' | 'Letter' | 'A4'): Promise<Download> {
  const opener = page.getByRole('button', { name: /^Save picture/ });
  const menu = page.getByRole('button', { name: /^Save(?:: Save)? and print/ });
  if (!(await opener.isVisible())) await menu.click();
  await opener.click();
  const entry = page.getByRole('button', { name: new RegExp(`^${kind} `) });
  const [download] = await Promise.all([page.waitForEvent('download'), entry.click()]);
  await expect(opener).toHaveAttribute('aria-expanded', 'false');
  if (await menu.isVisible()) await page.keyboard.press('Escape');
  return download;
}

export interface Hand {
  press(): Promise<void>;
  /** px from where it pressed. */
  moveBy(dy: number): Promise<void>;
  release(): Promise<void>;
  /** The system takes the pointer away. */
  cancel(): Promise<void>;
}

/** A hand over the middle of what is to be dragged. */
export async function handOn(page: Page, target: Locator, hasTouch: boolean): Promise<Hand> {
  await target.scrollIntoViewIfNeeded();
  const box = await target.boundingBox();
  if (box === null) throw new Error('handOn: the target is not on the page');
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  return hasTouch ? finger(await page.context().newCDPSession(page), target, x, y) : mouse(page, x, y);
}

function mouse(page: Page, x: number, y: number): Hand {
  return {
    async press() {
      await page.mouse.move(x, y);
      await page.mouse.down();
    },
    moveBy: (dy) => page.mouse.move(x, y + dy, { steps: 6 }),
    release: () => page.mouse.up(),
    async cancel() {
      // A mouse has no system gesture to lose to, so the event itself is sent, with the id that every mouse has.
      await page.evaluate(
        ([left, top]) => {
          const under = document.elementFromPoint(left ?? 0, top ?? 0) ?? document.body;
          under.dispatchEvent(new PointerEvent('pointercancel', { pointerId: 1, bubbles: true, isPrimary: true }));
        },
        [x, y],
      );
      await page.mouse.up();
    },
  };
}

/** Playwright's own touchscreen only taps. On a level the finger rests until it has it in hand, as a level asks for. */
function finger(session: CDPSession, target: Locator, x: number, y: number): Hand {
  let now = y;
  const send = (
    type: 'touchStart' | 'touchMove' | 'touchEnd' | 'touchCancel',
    points: readonly { x: number; y: number }[],
  ) => session.send('Input.dispatchTouchEvent', { type, touchPoints: [...points] });
  return {
    async press() {
      await send('touchStart', [{ x, y }]);
      const level = target.locator('xpath=ancestor::*[@data-handle]');
      if ((await level.count()) > 0) await expect(level).toHaveClass(/held|chosen|beyond/);
    },
    async moveBy(dy) {
      const from = now;
      for (let step = 1; step <= 6; step++) {
        now = from + ((y + dy - from) * step) / 6;
        await send('touchMove', [{ x, y: now }]);
      }
    },
    release: async () => void (await send('touchEnd', [])),
    cancel: async () => void (await send('touchCancel', [])),
  };
}

/** Press, move, release. */
export async function drag(page: Page, name: string, dy: number, hasTouch: boolean): Promise<void> {
  const hand = await handOn(page, chip(page, name), hasTouch);
  await hand.press();
  await hand.moveBy(dy);
  await hand.release();
}

/** The first number of feet in what is heard. */
export function feetIn(words: string): number {
  const found = /([\d.]+) ft(?: ([\d.]+) in)?/.exec(words);
  if (found === null) throw new Error(`feetIn: no feet in "${words}"`);
  return Number(found[1]) + Number(found[2] ?? 0) / 12;
}
