/** Pumps that were pasted are kept on the device, and nothing that stands there can break the page. */
import { expect, test, vi } from 'vitest';
import { memoryRooms, type Rooms } from '../../src/app/keeping/rooms.ts';
import { OwnPumps } from '../../src/app/state/ownPumps.ts';

const shed = { name: 'Shed', points: [['0 gpm', '200 ft'] as const, ['10 gpm', '100 ft'] as const] };

function lasting(): Rooms {
  return { ...memoryRooms(), lasting: true };
}

async function opened(rooms: Rooms): Promise<OwnPumps> {
  const pumps = new OwnPumps(rooms);
  await pumps.open();
  return pumps;
}

async function put(rooms: Rooms, key: string, value: unknown): Promise<void> {
  await rooms.change('pumps', key, () => ({ puts: [{ room: 'pumps', key, value }], answer: null }));
}

test('what is kept is there in the next page, and one of the same name is replaced', async () => {
  const rooms = lasting();
  const changed = vi.fn();
  const pumps = new OwnPumps(rooms, changed);
  expect(pumps.keep(shed)).toBe(true);
  await vi.waitFor(() => expect(changed).toHaveBeenCalledTimes(1));
  expect((await opened(rooms)).keep({ ...shed, power: '1 hp' })).toBe(true);
  await vi.waitFor(async () => expect((await opened(rooms)).list()).toEqual([{ ...shed, power: '1 hp' }]));
  pumps.remove('Shed');
  await vi.waitFor(async () => expect((await opened(rooms)).list()).toEqual([]));
});

test('two tabs that keep a pump each keep both', async () => {
  const rooms = lasting();
  const [one, two] = [await opened(rooms), await opened(rooms)];
  one.keep(shed);
  two.keep({ ...shed, name: 'Barn' });
  await vi.waitFor(async () => expect((await opened(rooms)).list().map(({ name }) => name)).toEqual(['Shed', 'Barn']));
});

test('where the device refuses, it is there as long as the page is, and that is said from the second on', async () => {
  const refusing: Rooms = { ...lasting(), change: () => Promise.reject(new Error('refused')) };
  const pumps = new OwnPumps(refusing);
  pumps.keep(shed);
  await Promise.resolve();
  expect(pumps.keep({ ...shed, name: 'Barn' })).toBe(false);
  await pumps.open();
  expect(pumps.list().map(({ name }) => name)).toEqual(['Shed', 'Barn']);
  pumps.remove('Shed');
  expect(pumps.list().map(({ name }) => name)).toEqual(['Barn']);
});

test('where nothing lasts, that is said', () => {
  expect(new OwnPumps(memoryRooms()).keep(shed)).toBe(false);
});

test.each([
  ['7', 7],
  ['nothing', null],
  ['text', '{'],
  ['a nameless pump', { name: '' }],
  ['half a point', { name: 'x', points: [['1 gpm']] }],
  ['points no plan could hold', { name: 'Odd', points: [['ten', 'high'], ['1', '2']] }], // prettier-ignore
])('%s is passed over', async (_, value) => {
  const rooms = lasting();
  await put(rooms, 'x', value);
  await put(rooms, 'Shed', shed);
  expect((await opened(rooms)).list()).toEqual([shed]);
});
