/**
 * A browser on a profile of its own that is killed in the middle of edits, without a warning, and started again on the
 * same profile: at most the edits of the last second are gone, and never the well.
 *
 * Eight trials; `npm run kill` makes forty.
 */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { chromium, expect, test, type Browser, type Page } from '@playwright/test';
import { chromiumPath, launchOptions } from '../../../scripts/browser.mjs';
import { chip, feetIn, heard, undo } from './hands.ts';

const TRIALS = Number(process.env['KILL_TRIALS'] ?? 8);
const SEED = Number(process.env['KILL_SEED'] ?? 20261130);
/** Milliseconds: what an edit may be old at most to be lost with the browser. */
const LAST_SECOND = 1000;

interface Running {
  readonly process: ChildProcess;
  readonly browser: Browser;
  readonly page: Page;
}

/** A browser that belongs to this test alone: it and all its children are one group, which can be killed as one. */
async function start(profile: string): Promise<Running> {
  const process = spawn(
    chromiumPath() ?? chromium.executablePath(),
    [
      '--headless=new',
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      ...launchOptions().args,
      'about:blank',
    ],
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const address = await new Promise<string>((found, fail) => {
    process.once('exit', () => fail(new Error('the browser did not start')));
    createInterface({ input: process.stderr! }).on('line', (line) => {
      const [, url] = /DevTools listening on (ws:\S+)/.exec(line) ?? [];
      if (url !== undefined) found(url);
    });
  });
  const browser = await chromium.connectOverCDP(address);
  const [context] = browser.contexts();
  return { process, browser, page: context!.pages()[0] ?? (await context!.newPage()) };
}

async function kill({ process }: Running): Promise<void> {
  const gone = new Promise((done) => process.once('exit', done));
  // Its own group and nothing else.
  globalThis.process.kill(-process.pid!, 'SIGKILL');
  await gone;
}

/** The same numbers for the same seed. */
function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** What the page showed, and when the edit that led to it was begun. */
interface Shown {
  readonly state: string;
  readonly at: number;
}

/** How an edit is made, and how the page shows what it led to; each state comes once. */
const HANDS: readonly {
  readonly name: string;
  prepare(page: Page): Promise<void>;
  edit(page: Page, nth: number): Promise<void>;
  read(page: Page): Promise<string>;
  again(page: Page): Promise<void>;
}[] = [
  {
    name: 'a level that is moved',
    async prepare(page) {
      await chip(page, 'Pump intake').focus();
    },
    edit: (page) => page.keyboard.press('ArrowUp'),
    read: async (page) => String(feetIn(await heard(page, 'Pump intake'))),
    async again(page) {
      await expect(undo(page)).toBeEnabled();
    },
  },
  {
    name: 'a field that is typed in',
    async prepare(page) {
      await page.getByRole('tab', { name: 'The record' }).click();
      await page.getByRole('textbox', { name: 'Title', exact: true }).focus();
    },
    edit: (page, nth) => page.keyboard.type(String.fromCharCode(97 + (nth % 26))),
    read: (page) => page.getByRole('textbox', { name: 'Title', exact: true }).inputValue(),
    async again(page) {
      await page.getByRole('tab', { name: 'The record' }).click();
      await expect(page.getByRole('textbox', { name: 'Title', exact: true })).toBeVisible();
    },
  },
];

test.describe.configure({ mode: 'parallel' });

for (let trial = 0; trial < TRIALS; trial++) {
  const hand = HANDS[trial % HANDS.length]!;
  test(`killed in the middle of edits, ${trial + 1}: ${hand.name}`, async ({ baseURL }) => {
    const next = random(SEED + trial);
    const profile = await mkdtemp(join(tmpdir(), 'wellcut-killed-'));
    let running: Running | null = null;
    try {
      running = await start(profile);
      const { page } = running;
      await page.goto(baseURL!);
      await page.getByRole('main').getByRole('button', { name: 'Tamarack Ridge cabin' }).click();
      await expect(chip(page, 'Pump intake')).toBeAttached();
      await hand.prepare(page);
      const shown: Shown[] = [];
      let ended = false;
      const edits = (async () => {
        for (let nth = 0; !ended; nth++) {
          const at = Date.now();
          await hand.edit(page, nth);
          shown.push({ state: await hand.read(page), at });
          // Bursts of keys, and now and then a pause for thought.
          await page.waitForTimeout(next() < 0.15 ? 150 + 500 * next() : 15 + 45 * next());
        }
      })().catch(() => {
        // The browser is gone, as it should be.
      });
      await expect.poll(() => shown.length, { intervals: [20] }).toBeGreaterThan(2);
      await new Promise((done) => setTimeout(done, 2200 * next()));
      const killed = Date.now();
      await kill(running);
      ended = true;
      await edits;

      running = await start(profile);
      await running.page.goto(baseURL!);
      await expect(chip(running.page, 'Pump intake')).toBeAttached();
      await hand.again(running.page);
      const kept = await hand.read(running.page);
      const last = shown.findLastIndex(({ state }) => state === kept);
      // What is not among what was seen is newer than all of it: the last edit, which nobody saw any more.
      const oldestLost = last === -1 ? (isNewest(kept, shown) ? undefined : shown[0]) : shown[last + 1];
      const age = oldestLost === undefined ? 0 : killed - oldestLost.at;
      test.info().annotations.push({ type: 'lost', description: `${age} ms` });
      if (process.env['KILL_TRIALS'] !== undefined)
        console.log(
          `trial ${trial + 1}: ${shown.length} edits, ${oldestLost === undefined ? 'none lost' : `the oldest lost was ${age} ms old`}`,
        );
      expect(age, `kept "${kept}" of ${JSON.stringify(shown.slice(-8))}`).toBeLessThan(LAST_SECOND);
    } finally {
      if (running !== null && running.process.exitCode === null && running.process.signalCode === null)
        await kill(running);
      await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
    }
  });
}

/** One edit further than the last that was seen: text that is longer by a letter, a level that is one step higher. */
function isNewest(kept: string, shown: readonly Shown[]): boolean {
  const last = shown.at(-1)?.state ?? '';
  if (kept.startsWith(last)) return true;
  const [before, end] = [Number(shown.at(-2)?.state), Number(last)];
  return Number(kept) < end && end - Number(kept) < 1.5 * (before - end);
}
