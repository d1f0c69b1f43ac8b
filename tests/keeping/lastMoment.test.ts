/** What a page that is closed could not write any more is written by the next one. */
import { beforeEach, expect, test, vi } from 'vitest';
import { leave, takeInLeft } from '../../src/app/keeping/lastMoment.ts';
import { Wells } from '../../src/app/keeping/wells.ts';
import { memoryStore } from '../../src/app/state/store.ts';
import type { Plan } from '../../src/model/plan/schema.ts';
import { emptyDatabase, writing } from './onDisk.ts';

// What cannot be read is said there.
beforeEach(() => void vi.spyOn(console, 'info').mockImplementation(() => {}));

const plan = (title: string): Plan => ({ title }) as Plan;
const step = (n: number) => ({ name: `step ${n}`, before: plan(`${n}`), after: plan(`${n + 1}`) });
const steps = (from: number, to: number) => Array.from({ length: to - from }, (_, i) => step(from + i));

test('the edit, its steps after those that were kept, and what was typed; then nothing is left behind', async () => {
  const [store, rooms] = [memoryStore(), emptyDatabase()];
  const wells = new Wells(rooms);
  await wells.write({ ...writing('a', 'v1', []), history: { past: steps(0, 40), future: [] } });
  leave(
    store,
    'tab',
    [{ ...writing('a', 'v2', ['v1']), history: { past: steps(0, 43), future: [] } }],
    [
      { key: 'a field top.depth', text: '4' },
      { key: 'a levels', text: null },
    ],
  );
  await rooms.change('drafts', 'a levels', () => ({
    puts: [{ room: 'drafts', key: 'a levels', value: 'old' }],
    answer: null,
  }));
  await takeInLeft(store, rooms, wells);
  expect((await wells.load('a'))?.well.version).toBe('v2');
  expect((await wells.load('a'))?.history).toEqual({ past: steps(0, 43), future: [] });
  expect(await rooms.all('drafts')).toEqual([['a field top.depth', '4']]);
  expect(store.keys()).toEqual([]);
});

test('what was written after all is not written twice', async () => {
  const [store, rooms] = [memoryStore(), emptyDatabase()];
  const wells = new Wells(rooms);
  await wells.write(writing('a', 'v1', []));
  await wells.write(writing('a', 'v2', ['v1']));
  await wells.write(writing('a', 'v3', ['v2']));
  leave(store, 'tab', [writing('a', 'v2', ['v1'])], []);
  await takeInLeft(store, rooms, wells);
  expect((await wells.list()).map(({ version }) => version)).toEqual(['v3']);
});

test('where another tab has gone on, it stands beside', async () => {
  const [store, rooms] = [memoryStore(), emptyDatabase()];
  const wells = new Wells(rooms);
  await wells.write(writing('a', 'v1', []));
  leave(store, 'tab', [writing('a', 'mine', ['v1'])], []);
  await wells.write(writing('a', 'theirs', ['v1']));
  await takeInLeft(store, rooms, wells);
  expect((await wells.list()).map(({ version }) => version).toSorted()).toEqual(['mine', 'theirs']);
});

test('a page with nothing unwritten leaves nothing, and what cannot be read there stops nobody', async () => {
  const [store, rooms] = [memoryStore(), emptyDatabase()];
  leave(store, 'tab', [writing('a', 'v1', [])], []);
  leave(store, 'tab', [], []);
  expect(store.keys()).toEqual([]);
  store.set('wellcut/left/x', '{"wells": [{"id": 3}, null], "typed": 4}');
  store.set('wellcut/left/y', 'no');
  await takeInLeft(store, rooms, new Wells(rooms));
  expect(await new Wells(rooms).list()).toEqual([]);
});
