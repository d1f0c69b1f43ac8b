/** The wells on a device: what is written over what, what is taken away, and what cannot be read. */
import { describe, expect, test, vi } from 'vitest';
import { REGRET, Wells } from '../../src/app/keeping/wells.ts';
import { emptyDatabase, KINDS, writing } from './onDisk.ts';

const titles = async (wells: Wells): Promise<string[]> => (await wells.list()).map(({ title }) => title);

describe.each(KINDS)('in %s', (_, make) => {
  test('a well comes back as it was put there, with its steps, and was the last', async () => {
    const wells = new Wells(make());
    await wells.write(writing('a', 'v1', []));
    const there = await wells.load('a');
    expect(there?.well).toMatchObject({ title: 'a as v1', version: 'v1', plan: { title: 'a as v1' }, raw: null });
    expect(there?.history).toEqual({ past: [], future: [] });
    expect(await wells.last()).toBe('a');
    expect(await wells.load('b')).toBeNull();
  });

  test('the list tells where a well is, as its plan has it, and nothing where it does not', async () => {
    const wells = new Wells(make());
    const plain = writing('a', 'v1', []);
    await wells.write(plain);
    expect((await wells.list())[0]).toMatchObject({ title: 'a as v1', place: '' });
    const place = 'Old Mill Lane, lot 7';
    const moved = { ...writing('a', 'v2', ['v1']), plan: { ...plain.plan, place } };
    expect((await wells.write(moved)).entry.place).toBe(place);
    expect((await wells.list())[0]).toMatchObject({ place });
    expect((await wells.load('a'))?.well.plan).toMatchObject({ place });
  });

  test('the newest stands first', async () => {
    const wells = new Wells(make());
    await wells.write(writing('old', 'v1', [], 1));
    await wells.write(writing('new', 'v2', [], 2));
    expect((await wells.list()).map(({ id }) => id)).toEqual(['new', 'old']);
  });

  test('a version takes the place of the one it was built on, and of no other', async () => {
    const wells = new Wells(make());
    await wells.write(writing('a', 'v1', []));
    expect((await wells.write(writing('a', 'v2', ['v1']))).outcome).toBe('kept');
    const beside = await wells.write(writing('a', 'v3', ['v1'], 3));
    expect(beside).toMatchObject({
      outcome: 'beside',
      entry: { title: 'a as v3', beside: 'a' },
      theirs: { id: 'a', title: 'a as v2' },
    });
    expect(await titles(wells)).toEqual(['a as v3', 'a as v2']);
  });

  test('a version that is there already is not written twice, nor is one that something was built on', async () => {
    const wells = new Wells(make());
    await wells.write(writing('a', 'v1', []));
    expect((await wells.write(writing('a', 'v1', []))).outcome).toBe('kept');
    await wells.write(writing('a', 'v2', ['v1']));
    expect((await wells.write(writing('a', 'v1', []))).outcome).toBe('kept');
    expect(await titles(wells)).toEqual(['a as v2']);
  });

  test('a write without an answer may be built on by who sent it', async () => {
    const wells = new Wells(make());
    await wells.write(writing('a', 'v1', []));
    await wells.write(writing('a', 'unheard', ['v1']));
    expect((await wells.write(writing('a', 'v3', ['v1', 'unheard']))).outcome).toBe('kept');
    expect(await titles(wells)).toEqual(['a as v3']);
  });

  test('what the browser has erased is kept again, and that is told', async () => {
    const wells = new Wells(make());
    expect(await wells.write(writing('a', 'v2', ['v1']))).toMatchObject({ outcome: 'kept', again: true });
    expect(await wells.write(writing('b', 'v1', []))).toMatchObject({ outcome: 'kept', again: false });
  });

  test('only the version that was seen is taken away; it comes back, or is let go of after thirty days', async () => {
    const wells = new Wells(make());
    await wells.write(writing('a', 'v1', []));
    expect(await wells.takeAway('a', 'v0', 10)).toBe(false);
    expect(await wells.takeAway('a', 'v1', 10)).toBe(true);
    expect(await wells.list()).toMatchObject([{ takenAway: 10 }]);
    await wells.clearOut(10 + REGRET);
    expect(await wells.bringBack('a')).toBe(true);
    expect(await wells.list()).toMatchObject([{ takenAway: null }]);
    await wells.takeAway('a', 'v1', 10);
    await wells.clearOut(11 + REGRET);
    expect(await wells.load('a')).toBeNull();
    expect(await wells.bringBack('a')).toBe(false);
  });

  test('a well that was taken away and is edited elsewhere is among the wells again', async () => {
    const wells = new Wells(make());
    await wells.write(writing('a', 'v1', []));
    await wells.takeAway('a', 'v1', 10);
    await wells.write(writing('a', 'v2', ['v1']));
    expect(await wells.list()).toMatchObject([{ takenAway: null, version: 'v2' }]);
  });

  test.each([
    ['broken text', '{"plan', '{"plan'],
    ['something else', { colour: 'blue' }, '{\n  "colour": "blue"\n}\n'],
    ['an earlier page’s text', { raw: '{', takenAway: null }, '{'],
  ])('%s stays in the list as unreadable, with its text, and is never written over', async (__, value, text) => {
    const rooms = make();
    await rooms.change('wells', 'a', () => ({ puts: [{ room: 'wells', key: 'a', value }], answer: null }));
    const wells = new Wells(rooms);
    expect(await wells.list()).toMatchObject([{ id: 'a', raw: text }]);
    expect(await wells.write(writing('a', 'v1', []))).toMatchObject({ outcome: 'beside', theirs: { raw: text } });
    await wells.takeAway('a', '', 5);
    await wells.bringBack('a');
    expect((await wells.load('a'))?.well.raw).toBe(text);
  });

  test('a plan that cannot be read is listed as that, with its text', async () => {
    const wells = new Wells(make());
    await wells.write(writing('a', 'v1', []));
    expect((await wells.list(() => false))[0]?.raw).toContain('"title": "a as v1"');
  });

  test('of two tabs that write at the same moment, both versions stand', async () => {
    const rooms = make();
    await new Wells(rooms).write(writing('a', 'v1', []));
    await Promise.all(['v2', 'v3', 'v4'].map((version) => new Wells(rooms).write(writing('a', version, ['v1']))));
    expect((await titles(new Wells(rooms))).toSorted()).toEqual(['a as v2', 'a as v3', 'a as v4']);
  });
});

test('a transaction whose decision fails changes nothing', async () => {
  const rooms = emptyDatabase();
  await new Wells(rooms).write(writing('a', 'v1', []));
  const fails = rooms.change('wells', 'a', () => {
    throw new RangeError('no');
  });
  await expect(fails).rejects.toThrow('no');
  expect(await titles(new Wells(rooms))).toEqual(['a as v1']);
});

test('what cannot be stored is refused as a whole', async () => {
  const rooms = emptyDatabase();
  const odd = { ...writing('a', 'v1', []), history: { past: [() => 1], future: [] } as never };
  await expect(new Wells(rooms).write(odd)).rejects.toThrow();
  expect(await new Wells(rooms).list()).toEqual([]);
});

test('a connection that the browser closed is opened again', async () => {
  const rooms = emptyDatabase();
  vi.spyOn(console, 'info').mockImplementation(() => {});
  const wells = new Wells(rooms);
  await wells.write(writing('a', 'v1', []));
  (await rooms.open()).close();
  expect(await titles(wells)).toEqual(['a as v1']);
  (await rooms.open()).close();
  await wells.write(writing('a', 'v2', ['v1']));
  expect(await titles(wells)).toEqual(['a as v2']);
});
