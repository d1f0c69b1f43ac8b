import { describe, expect, test } from 'vitest';
import {
  boreResponse,
  boreStorageDrawdown,
  groundResponse,
  storageFadeTime,
} from '../../../src/model/formulas/boreStorage.ts';
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

describe('the ground round the well', () => {
  const time = 600;

  test('is drawn down at the wall as the bore is, and nearer than the wall there is only the wall', () => {
    expect(groundResponse(well, well.wellRadius, time)).toBeCloseTo(boreResponse(well, time), 6);
    expect(groundResponse(well, well.wellRadius / 3, time)).toBe(groundResponse(well, well.wellRadius, time));
    expect(groundResponse(well, 2 * well.wellRadius, time)).toBeLessThan(groundResponse(well, well.wellRadius, time));
  });

  test('follows Theis once the bore has given its own water', () => {
    const late = 20 * storageFadeTime(well.casingRadius, well.transmissivity);
    for (const radius of [0.15, 1, 5]) {
      const byTheis = theisDrawdown({ ...well, radius, time: late }) / well.flow;
      expect(Math.abs(groundResponse(well, radius, late) / byTheis - 1)).toBeLessThan(0.002);
    }
  });

  test('is spared what the water loses on its way into the bore: the level in the bore stands lower by that', () => {
    const entryLoss = 500;
    const late = 20 * storageFadeTime(well.casingRadius, well.transmissivity);
    const lossy = { ...well, entryLoss };
    expect((boreResponse(lossy, late) - boreResponse(well, late)) / entryLoss).toBeCloseTo(1, 2);
    expect(groundResponse(lossy, 1, late) / groundResponse(well, 1, late)).toBeCloseTo(1, 3);
    // Early, while the bore itself is emptied, less is asked of ground that is harder to draw from.
    expect(groundResponse({ ...well, entryLoss: 2e4 }, 0.15, 60)).toBeLessThan(0.9 * groundResponse(well, 0.15, 60));
  });
});
