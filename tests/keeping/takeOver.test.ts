/** What an earlier form of the page kept is taken over once, whole, and taken out only when it is written. */
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { memoryRooms, type Rooms } from '../../src/app/keeping/rooms.ts';
import { takeOver } from '../../src/app/keeping/takeOver.ts';
import { Wells } from '../../src/app/keeping/wells.ts';
import { memoryStore, type Store } from '../../src/app/state/store.ts';
import rock from '../../static/samples/tamarack-ridge.json';
import { emptyDatabase } from './onDisk.ts';

// What cannot be read is said there.
beforeEach(() => void vi.spyOn(console, 'info').mockImplementation(() => {}));

const pump = { name: 'Shed', points: [['0 gpm', '200 ft'], ['10 gpm', '100 ft']] }; // prettier-ignore

function earlier(): Store {
  const store = memoryStore();
  store.set('wellcut/well/a', JSON.stringify({ title: 'A', saved: 5, revision: 3, writer: 'tab', plan: rock }));
  store.set('wellcut/well/b', JSON.stringify({ title: 'B', saved: 7, revision: 1, writer: 'tab', plan: rock }));
  store.set('wellcut/well/broken', '{"plan": ');
  store.set('wellcut/test/a', '{"flow": "10 gpm"}');
  store.set('wellcut/pumps', JSON.stringify([pump]));
  store.set('wellcut/last', 'a');
  store.set('wellcut/settings', '{}');
  store.set('of another page', 'x');
  return store;
}

async function all(rooms: Rooms): Promise<unknown> {
  return {
    wells: await new Wells(rooms).list(),
    a: await new Wells(rooms).load('a'),
    drafts: await rooms.all('drafts'),
    pumps: await rooms.all('pumps'),
    last: await new Wells(rooms).last(),
  };
}

describe('taking over', () => {
  test('wells with their times, the broken one with its text, test, pumps and which was open', async () => {
    const [store, rooms] = [earlier(), emptyDatabase()];
    await takeOver(store, rooms, new Wells(rooms));
    expect(await all(rooms)).toMatchObject({
      wells: [
        { id: 'b', saved: 7, raw: null },
        { id: 'a', saved: 5, title: 'Tamarack Ridge cabin' },
        { id: 'broken', raw: '{"plan": ' },
      ],
      a: { well: { plan: rock } },
      drafts: [['a test', '{"flow": "10 gpm"}']],
      pumps: [['Shed', pump]],
      last: 'a',
    });
    expect(store.keys().toSorted()).toEqual(['of another page', 'wellcut/settings']);
  });

  test('twice, or in two tabs at once, it is there once', async () => {
    const rooms = emptyDatabase();
    await Promise.all([
      takeOver(earlier(), rooms, new Wells(rooms)),
      takeOver(earlier(), rooms, new Wells(rooms)),
      takeOver(earlier(), rooms, new Wells(rooms)),
    ]);
    expect((await new Wells(rooms).list()).map(({ id }) => id)).toEqual(['b', 'a', 'broken']);
  });

  test('broken off after any number of writes, nothing is lost and the next page finishes it', async () => {
    const whole = emptyDatabase();
    await takeOver(earlier(), whole, new Wells(whole));
    const expected = await all(whole);
    for (let good = 0; good < 8; good++) {
      const [store, rooms] = [earlier(), { ...memoryRooms(), lasting: true }];
      let left = good;
      const failing: Rooms = {
        ...rooms,
        change: (room, key, decide) =>
          left-- > 0 ? rooms.change(room, key, decide) : Promise.reject(new Error('no room')),
      };
      await expect(takeOver(store, failing, new Wells(failing)).then(() => null, String)).resolves.toSatisfy(
        (fault) => fault === null || fault === 'Error: no room',
      );
      await takeOver(store, rooms, new Wells(rooms));
      expect(await all(rooms)).toEqual(expected);
    }
  });

  test('what a page of the earlier form wrote afterwards is taken over too, beside what changed since', async () => {
    const [store, rooms] = [earlier(), emptyDatabase()];
    await takeOver(store, rooms, new Wells(rooms));
    const later = { title: 'A', saved: 9, revision: 4, writer: 'tab', plan: { ...rock, title: 'Later' } };
    store.set('wellcut/well/a', JSON.stringify(later));
    await takeOver(store, rooms, new Wells(rooms));
    expect((await new Wells(rooms).list()).map(({ title }) => title)).toEqual([
      'Later',
      'Tamarack Ridge cabin',
      'Tamarack Ridge cabin',
      '',
    ]);
  });

  test('where nothing lasts, it is shown and stays where it was', async () => {
    const [store, rooms] = [earlier(), memoryRooms()];
    const before = store.keys();
    await takeOver(store, rooms, new Wells(rooms));
    expect((await new Wells(rooms).list()).map(({ id }) => id)).toEqual(['b', 'a', 'broken']);
    expect(store.keys()).toEqual(before);
  });
});
