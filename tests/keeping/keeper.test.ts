/** When a tab writes: at once, then at its pace, and again where the browser refused. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Keeper, type Trouble } from '../../src/app/keeping/keeper.ts';
import { NO_STEPS } from '../../src/app/keeping/keptHistory.ts';
import { place, type Writing, type Written } from '../../src/app/keeping/keptWell.ts';
import type { Plan } from '../../src/model/plan/schema.ts';

beforeEach(() => void vi.useFakeTimers({ now: 1_000_000 }));
afterEach(() => void vi.useRealTimers());

interface Desk {
  readonly keeper: Keeper;
  readonly writes: { readonly writing: Writing; readonly at: number }[];
  readonly troubles: (Trouble | null)[];
  readonly results: Written[];
}

/** A device that takes `slow` milliseconds for each write, and refuses while `refuse` says why. */
function desk(slow: number, refuse: () => Error | null = () => null): Desk {
  const kept = new Map<string, unknown>();
  const writes: Desk['writes'] = [];
  const troubles: Desk['troubles'] = [];
  const results: Written[] = [];
  const write = async (writing: Writing): Promise<Written> => {
    writes.push({ writing, at: Date.now() });
    await new Promise((done) => setTimeout(done, slow));
    const fault = refuse();
    if (fault !== null) throw fault;
    const { puts, answer } = place(kept.get(writing.id), writing);
    for (const put of puts) if (put.room === 'wells') kept.set(put.key, put.value);
    return answer;
  };
  const keeper = new Keeper(
    { write },
    { onwritten: (written) => results.push(written), ontrouble: (trouble) => troubles.push(trouble) },
  );
  return { keeper, writes, troubles, results };
}

const content = (title: string) => ({ plan: { title } as Plan, history: NO_STEPS });
const titlesOf = ({ writes }: Desk): (string | undefined)[] => writes.map(({ writing }) => writing.plan.title);

test('an edit is written at once', () => {
  const { keeper, writes } = desk(5);
  keeper.change('a', content('one'));
  expect(writes).toHaveLength(1);
});

test('under keys that come without a pause nothing waits for longer than a second', async () => {
  const slow = desk(30);
  for (let i = 0; i < 200; i++) {
    slow.keeper.change('a', content(`${i * 30} ms`));
    await vi.advanceTimersByTimeAsync(30);
  }
  await vi.advanceTimersByTimeAsync(1000);
  const ends = slow.writes.map(({ writing, at }) => [Number.parseInt(writing.plan.title ?? ''), at + 30 - 1_000_000]);
  // Each edit is on the disk with the first write that took it along or came after it.
  for (let made = 0; made < 6000; made += 30) {
    const [, kept] = ends.find(([of]) => of! >= made)!;
    expect(kept! - made).toBeLessThan(1000);
  }
  // And the disk is not kept busy by them.
  expect(slow.writes.length).toBeLessThan(40);
});

test.each([5, 150, 250, 700])('a device that takes %d ms gets the last edit without another one', async (slow) => {
  const one = desk(slow);
  for (const title of ['1', '2', '3', '4']) {
    one.keeper.change('a', content(title));
    await vi.advanceTimersByTimeAsync(40);
  }
  await vi.advanceTimersByTimeAsync(3 * slow + 500);
  expect(titlesOf(one).at(-1)).toBe('4');
  expect(one.keeper.isClean('a')).toBe(true);
});

test('one write at a time, and what comes meanwhile goes with the newest', async () => {
  const one = desk(50);
  for (const title of ['1', '2', '3']) one.keeper.change('a', content(title));
  await vi.advanceTimersByTimeAsync(1000);
  expect(titlesOf(one)).toEqual(['1', '3']);
  expect(one.writes[1]?.writing.on).toContain(one.writes[0]?.writing.version);
});

test('wells that change one after the other are all written', async () => {
  const both = desk(50);
  both.keeper.change('a', content('a'));
  both.keeper.change('b', content('b'));
  expect(both.keeper.unwrittenIds().toSorted()).toEqual(['a', 'b']);
  await vi.advanceTimersByTimeAsync(1000);
  expect(titlesOf(both)).toEqual(['a', 'b']);
  expect(both.keeper.unwrittenIds()).toEqual([]);
});

test('a full device is told, the edit waits, is tried again by itself, and then nothing is told any more', async () => {
  let full = true;
  vi.spyOn(console, 'info').mockImplementation(() => {});
  const quota = new DOMException('full', 'QuotaExceededError');
  const one = desk(5, () => (full ? quota : null));
  one.keeper.change('a', content('one'));
  await vi.advanceTimersByTimeAsync(10);
  expect(one.troubles).toEqual(['full']);
  expect(one.keeper.unwritten('a')?.plan.title).toBe('one');
  expect(one.keeper.isClean('a')).toBe(false);
  full = false;
  await vi.advanceTimersByTimeAsync(3100);
  expect(one.troubles).toEqual(['full', null]);
  expect(one.keeper.isClean('a')).toBe(true);
  expect(one.results).toMatchObject([{ outcome: 'kept', again: false }]);
});

test('while something is refused, the next edit is tried at once', async () => {
  vi.spyOn(console, 'info').mockImplementation(() => {});
  let refused = true;
  const one = desk(1, () => (refused ? new Error('no') : null));
  one.keeper.change('a', content('one'));
  await vi.advanceTimersByTimeAsync(5);
  expect(one.troubles).toEqual(['refused']);
  refused = false;
  one.keeper.change('a', content('two'));
  await vi.advanceTimersByTimeAsync(5);
  expect(one.troubles).toEqual(['refused', null]);
  expect(titlesOf(one)).toEqual(['one', 'two']);
});

test('a device that does not answer is told, until it does', async () => {
  const one = desk(6000);
  one.keeper.change('a', content('one'));
  await vi.advanceTimersByTimeAsync(5000);
  expect(one.troubles).toEqual(['late']);
  await vi.advanceTimersByTimeAsync(2000);
  expect(one.troubles).toEqual(['late', null]);
});

test('what the page could not write any more is handed out, what is on its way included', () => {
  const one = desk(50);
  one.keeper.change('a', content('one'));
  one.keeper.change('b', content('other'));
  expect(one.keeper.lastWritings().map(({ plan }) => plan.title)).toEqual(['one', 'other']);
  one.keeper.change('a', content('two'));
  const [, newer] = one.keeper.lastWritings();
  expect(newer?.plan.title).toBe('two');
  expect(newer?.on).toContain(one.writes[0]?.writing.version);
});

test('an edit that is handed out and written all the same is one version', async () => {
  const one = desk(50);
  one.keeper.change('a', content('one'));
  one.keeper.change('a', content('two'));
  const handedOut = one.keeper.lastWritings().map(({ version }) => version);
  one.keeper.flush();
  await vi.advanceTimersByTimeAsync(1000);
  expect(one.writes.map(({ writing }) => writing.version).slice(1)).toEqual(handedOut);
});

test('a well with edits that are not written is not taken for one that was just read', async () => {
  const one = desk(50);
  one.keeper.opened({ id: 'a', version: 'v1' });
  one.keeper.change('a', content('mine'));
  expect(one.keeper.opened({ id: 'a', version: 'v2' })).toBe(false);
  expect(one.keeper.version('a')).toBe('v1');
  await vi.advanceTimersByTimeAsync(1000);
  expect(one.keeper.opened({ id: 'a', version: 'v9' })).toBe(true);
});
