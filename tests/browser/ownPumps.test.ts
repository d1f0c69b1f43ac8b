/** Pumps that were pasted are kept on the device, and nothing that stands in its store can break the page. */
import { expect, test } from 'vitest';
import { OwnPumps } from '../../src/app/state/ownPumps.ts';
import { memoryStore, type Store } from '../../src/app/state/store.ts';

const shed = { name: 'Shed', points: [['0 gpm', '200 ft'] as const, ['10 gpm', '100 ft'] as const] };

function lasting(): Store {
  return { ...memoryStore(), lasting: true };
}

test('what is kept is there in the next page, and one of the same name is replaced', () => {
  const store = lasting();
  expect(new OwnPumps(store).keep(shed)).toBe(true);
  expect(new OwnPumps(store).keep({ ...shed, power: '1 hp' })).toBe(true);
  expect(new OwnPumps(store).list()).toEqual([{ ...shed, power: '1 hp' }]);
  new OwnPumps(store).remove('Shed');
  expect(new OwnPumps(store).list()).toEqual([]);
});

test('where the store refuses, it is there as long as the page is, and that is said', () => {
  const pumps = new OwnPumps({ ...lasting(), set: () => false });
  expect(pumps.keep(shed)).toBe(false);
  expect(pumps.keep({ ...shed, name: 'Barn' })).toBe(false);
  expect(pumps.list().map(({ name }) => name)).toEqual(['Shed', 'Barn']);
  pumps.remove('Shed');
  expect(pumps.list().map(({ name }) => name)).toEqual(['Barn']);
});

test.each(['{', '7', 'null', '[null, 3, {"name": ""}, {"name": "x", "points": [["1 gpm"]]}]'])(
  '%s is passed over',
  (text) => {
    const store = lasting();
    store.set('wellcut/pumps', text);
    expect(new OwnPumps(store).list()).toEqual([]);
    expect(new OwnPumps(store).keep(shed)).toBe(true);
  },
);

test('a pump whose points no plan could hold is passed over', () => {
  const store = lasting();
  store.set(
    'wellcut/pumps',
    JSON.stringify([
      {
        name: 'Odd',
        points: [
          ['ten', 'high'],
          ['1', '2'],
        ],
      },
      shed,
    ]),
  );
  expect(new OwnPumps(store).list()).toEqual([shed]);
});
