/** What is half typed: there at once, on the device soon, and again with the next page. */
import { expect, test, vi } from 'vitest';
import { Drafts, NO_WELL } from '../../src/app/keeping/drafts.ts';
import { memoryRooms, type Rooms } from '../../src/app/keeping/rooms.ts';
import { memoryStore } from '../../src/app/state/store.ts';

const quiet = (): void => {};

function lasting(): Rooms {
  return { ...memoryRooms(), lasting: true };
}

test('stands under its well and name, goes with a copy of the well, and can be done with', async () => {
  const drafts = new Drafts(lasting(), memoryStore(), quiet);
  drafts.keep('one', 'test', 'text');
  drafts.keep('one', 'field top.depth', '4');
  drafts.copy('one', 'two');
  drafts.copy('none', 'three');
  drafts.forget('one', 'test');
  expect(drafts.load('one', 'test')).toBeNull();
  expect(drafts.names('one')).toEqual(['field top.depth']);
  expect(drafts.names('two')).toEqual(['test', 'field top.depth']);
  expect(drafts.names('three')).toEqual([]);
});

test('comes back in a new tab from the device, and in the same tab at once', async () => {
  const [rooms, tab] = [lasting(), memoryStore()];
  const before = new Drafts(rooms, tab, quiet);
  before.keep(NO_WELL, 'report', 'half');
  await before.settled();
  expect(new Drafts(rooms, tab, quiet).load(NO_WELL, 'report')).toBe('half');
  const elsewhere = new Drafts(rooms, memoryStore(), quiet);
  expect(elsewhere.load(NO_WELL, 'report')).toBeNull();
  await elsewhere.open();
  expect(elsewhere.load(NO_WELL, 'report')).toBe('half');
});

test('what was typed before the device answered stays', async () => {
  const rooms = lasting();
  const before = new Drafts(rooms, memoryStore(), quiet);
  before.keep('a', 'test', 'old');
  before.keep('a', 'levels', 'old');
  await before.settled();
  const after = new Drafts(rooms, memoryStore(), quiet);
  after.keep('a', 'test', 'new');
  after.keep('a', 'levels', 'x');
  after.forget('a', 'levels');
  await after.open();
  expect([after.load('a', 'test'), after.load('a', 'levels')]).toEqual(['new', null]);
  expect(after.isFresh('a', 'test')).toBe(true);
  expect(after.isFresh('a', 'report')).toBe(false);
});

test('what is done with is gone from the device too', async () => {
  const [rooms, tab] = [lasting(), memoryStore()];
  const drafts = new Drafts(rooms, tab, quiet);
  drafts.keep('a', 'test', 'text');
  await drafts.settled();
  drafts.forget('a', 'test');
  await drafts.settled();
  expect(await rooms.all('drafts')).toEqual([]);
  expect(tab.keys()).toEqual([]);
});

test('a device that refuses is told until it takes it, and nothing is lost on the page', async () => {
  vi.spyOn(console, 'info').mockImplementation(quiet);
  let full = true;
  const rooms = lasting();
  const told: boolean[] = [];
  const refusing: Rooms = {
    ...rooms,
    change: (room, key, decide) => (full ? Promise.reject(new Error('full')) : rooms.change(room, key, decide)),
  };
  const drafts = new Drafts(refusing, memoryStore(), (kept) => told.push(kept));
  drafts.keep('a', 'test', 'text');
  await drafts.settled();
  expect(drafts.load('a', 'test')).toBe('text');
  expect(drafts.lastTyped()).toEqual([{ key: 'a test', text: 'text' }]);
  full = false;
  await drafts.settled();
  expect(told).toEqual([false, true]);
  expect(drafts.lastTyped()).toEqual([]);
});

test('where nothing lasts, that is told', async () => {
  const told: boolean[] = [];
  const drafts = new Drafts(memoryRooms(), memoryStore(), (kept) => told.push(kept));
  drafts.keep('a', 'test', 'text');
  await drafts.settled();
  expect(told).toEqual([false]);
});

test('who keeps wells is told that something is typed beside one', () => {
  const wells: string[] = [];
  const drafts = new Drafts(lasting(), memoryStore(), quiet, (well) => wells.push(well));
  drafts.keep('a', 'test', 'text');
  drafts.keep(NO_WELL, 'report', 'text');
  expect(wells).toEqual(['a']);
});
