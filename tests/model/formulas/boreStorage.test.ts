import { expect, test } from 'vitest';
import { boreStorageDrawdown, storageFadeTime } from '../../../src/model/formulas/boreStorage.ts';
import { theisDrawdown } from '../../../src/model/formulas/theis.ts';

const well = { flow: 10 / 86400, transmissivity: 10 / 86400, storativity: 1e-4, wellRadius: 0.15, casingRadius: 0.15 };

test('in the first seconds the pump only empties the bore: drawdown is the pumped volume by its area', () => {
  const time = 5;
  const emptied = (well.flow * time) / (Math.PI * well.casingRadius ** 2);
  expect(Math.abs(boreStorageDrawdown({ ...well, time }) / emptied - 1)).toBeLessThan(0.02);
});

// Papadopulos & Cooper (1967): limit from memory, the shares as the fade times of the field state them.
test.each([
  [5, 0.23],
  [10, 0.09],
  [25, 0.025],
  [250, 0.002],
])('after %d rc²/T the level is short of Theis by a share of about %d', (multiple, share) => {
  const time = (storageFadeTime(well.casingRadius, well.transmissivity) * multiple) / 250;
  const short = 1 - boreStorageDrawdown({ ...well, time }) / theisDrawdown({ ...well, radius: well.wellRadius, time });
  expect(Math.abs(short - share)).toBeLessThan(0.15 * share);
});

test('a bore that stores more follows later', () => {
  const at = (casingRadius: number) => boreStorageDrawdown({ ...well, casingRadius, time: 600 });
  expect(at(0.3)).toBeLessThan(at(0.15));
  expect(at(0.15)).toBeLessThan(at(0.05));
});

test('no transmissivity is refused by name', () => {
  expect(() => boreStorageDrawdown({ ...well, transmissivity: 0, time: 1 })).toThrow('transmissivity is 0');
});
