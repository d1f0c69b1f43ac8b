import { describe, expect, test } from 'vitest';
import { Shelf } from '../../src/app/state/shelf.ts';
import { memoryStore } from '../../src/app/state/store.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import rock from '../../static/samples/tamarack-ridge.json';

const reading = readPlan(rock);
if (!reading.ok) throw new Error('the sample does not read');
const { plan } = reading;

describe('the shelf of wells', () => {
  test('a well comes back as it was put there', () => {
    const shelf = new Shelf(memoryStore(), 'one');
    shelf.save('a', plan, 0, 1);
    expect(shelf.load('a')?.plan).toEqual(plan);
    expect(shelf.last()?.id).toBe('a');
  });

  test('the newest stands first', () => {
    const shelf = new Shelf(memoryStore(), 'one');
    shelf.save('old', plan, 0, 1);
    shelf.save('new', plan, 0, 2);
    expect(shelf.list().map(({ id }) => id)).toEqual(['new', 'old']);
  });

  test('another tab’s later version is never overwritten', () => {
    const store = memoryStore();
    const one = new Shelf(store, 'one');
    const two = new Shelf(store, 'two');
    one.save('a', plan, 0, 1);
    expect(two.save('a', { ...plan, title: 'theirs' }, 1, 2).outcome).toBe('saved');
    const result = one.save('a', { ...plan, title: 'mine' }, 1, 3);
    expect(result.outcome).toBe('conflict');
    expect(one.load('a')?.title).toBe('theirs');
  });

  test('a store that is full is reported, not thrown', () => {
    const shelf = new Shelf({ ...memoryStore(), set: () => false }, 'one');
    expect(shelf.save('a', plan, 0, 1).outcome).toBe('refused');
  });

  test('what cannot be read is left out of the list and left where it is', () => {
    const store = memoryStore();
    store.set('wellcut/well/bad', '{');
    expect(new Shelf(store, 'one').list()).toEqual([]);
    expect(store.get('wellcut/well/bad')).toBe('{');
  });
});
