import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  empiricalFrostDepth,
  frostDepthEstimate,
  judgeFrost,
  siteFrostEstimate,
  stationClimate,
} from '../../../src/model/formulas/frost.ts';
import { FREEZING_STATIONS } from '../../../src/model/tables/freezingStations.ts';
import { SOILS } from '../../../src/model/tables/soils.ts';
import { inches, toInches } from '../../../src/model/units.ts';

const bare = { meanAnnual: 7, season: null, soil: 'sandy loam', surfaceFactor: 0.7 };
const depthOf = (estimate: ReturnType<typeof frostDepthEstimate>) => {
  if (!('depth' in estimate)) throw new Error(estimate.reason);
  return estimate.depth;
};

test('more freezing means deeper frost, with the season taken from the index', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 20, max: 2500, noNaN: true }),
      fc.double({ min: 1.01, max: 2, noNaN: true }),
      fc.constantFrom(...SOILS.map(({ id }) => id)),
      (index, more, soil) => {
        const depth = (cold: number) => depthOf(frostDepthEstimate({ ...bare, soil, index: cold }));
        expect(depth(index * more)).toBeGreaterThan(depth(index));
      },
    ),
    { seed: 20260308 },
  );
});

test('a ploughed driveway freezes deeper than bare soil, and bare soil deeper than lawn', () => {
  const depth = (surface: string) =>
    depthOf(siteFrostEstimate({ station: 'Duluth', index: null, soil: null, surface }));
  expect(depth('ploughed driveway')).toBeGreaterThan(depth('bare soil'));
  expect(depth('bare soil')).toBeGreaterThan(depth('lawn'));
});

test('moist fine soil freezes less deep than drained coarse soil', () => {
  const depths = ['gravelly sand', 'sand', 'sandy loam', 'silt loam', 'clay loam', 'clay'].map((soil) =>
    depthOf(frostDepthEstimate({ ...bare, soil, index: 1000 })),
  );
  for (let place = 1; place < depths.length; place++) expect(depths[place]).toBeLessThan(depths[place - 1]!);
});

test('every station gives a depth for every winter, or says why not', () => {
  for (const station of FREEZING_STATIONS) {
    for (const winter of ['normal', 'cold 10', 'cold 100'] as const) {
      const climate = stationClimate(station, winter);
      const estimate = frostDepthEstimate({ ...climate, soil: 'sandy loam', surfaceFactor: 0.7 });
      if (station.meanAnnualFahrenheit <= 32) expect(estimate).toEqual({ reason: 'permafrost possible' });
      else expect(depthOf(estimate)).toBeLessThan(inches(130));
    }
  }
});

test('an own index goes before that of the station', () => {
  const site = { station: 'Duluth, MN', soil: null, surface: null };
  const own = depthOf(siteFrostEstimate({ ...site, index: 500 }));
  expect(own).toBeLessThan(depthOf(siteFrostEstimate({ ...site, index: null })));
});

test('what is not in the tables is named instead of guessed', () => {
  const site = { station: 'Duluth', index: null, soil: null, surface: null };
  expect(siteFrostEstimate({ ...site, station: null })).toEqual({ reason: 'climate not known' });
  expect(siteFrostEstimate({ ...site, station: 'Nowhere' })).toEqual({ reason: 'station not known' });
  expect(siteFrostEstimate({ ...site, soil: 'cheese' })).toEqual({ reason: 'soil not known' });
  expect(siteFrostEstimate({ ...site, surface: 'cheese' })).toEqual({ reason: 'surface not known' });
});

test('a pipe at the frost line is within the margin, at the margin it is right', () => {
  const line = { entered: inches(42), estimate: null, margin: inches(6) };
  expect(judgeFrost({ ...line, pipeTop: inches(42) }).verdict).toBe('margin');
  expect(judgeFrost({ ...line, pipeTop: line.entered + line.margin }).verdict).toBe('ok');
  expect(judgeFrost({ ...line, pipeTop: inches(41.99) }).verdict).toBe('fail');
  expect(judgeFrost({ ...line, entered: null, pipeTop: inches(60) }).verdict).toBe('unknown');
});

test('the estimate for bare silt is of the size that Fair, Geyer & Okun’s equation gives', () => {
  // Two empirical methods for different grounds: the same order is all that can be asked.
  for (const fahrenheitDays of [500, 1000, 2000]) {
    const index = fahrenheitDays / 1.8;
    const ratio = depthOf(frostDepthEstimate({ ...bare, soil: 'silt loam', index })) / empiricalFrostDepth(index);
    expect(ratio).toBeGreaterThan(0.5);
    expect(ratio).toBeLessThan(1.5);
  }
});

test('for Calgary the estimate is near the 79 in met in March 2011', () => {
  // Frost depth reported for that winter, one figure for a whole city; the estimate claims 25 %.
  const estimate = depthOf(
    siteFrostEstimate({ station: 'Calgary', index: null, soil: 'sandy loam', surface: 'bare soil' }),
  );
  expect(Math.abs(toInches(estimate) / 79 - 1)).toBeLessThan(0.1);
});

test('figures without a meaning are refused', () => {
  expect(() => frostDepthEstimate({ ...bare, index: -1 })).toThrow(RangeError);
  expect(() => frostDepthEstimate({ ...bare, index: 100, meanAnnual: Number.NaN })).toThrow(RangeError);
  expect(() => frostDepthEstimate({ ...bare, index: 100, season: 0 })).toThrow(RangeError);
  expect(() => empiricalFrostDepth(-1)).toThrow(RangeError);
});

test('the band of an estimate runs from four fifths to five fourths of its depth', () => {
  const estimate = frostDepthEstimate({ ...bare, soil: 'silt loam', index: 600 });
  const depth = depthOf(estimate);
  expect(depth).toBeGreaterThan(0.5);
  expect(estimate).toEqual({ depth, low: expect.closeTo(0.8 * depth, 12), high: expect.closeTo(1.25 * depth, 12) });
});

test('a place whose year is at freezing or colder may never thaw: no depth is told', () => {
  for (const meanAnnual of [0, -1])
    expect(frostDepthEstimate({ ...bare, index: 600, meanAnnual })).toEqual({ reason: 'permafrost possible' });
});

test('each winter of a station has its own figures, and a usual one is the mildest', () => {
  for (const station of FREEZING_STATIONS) {
    const index = (winter: 'normal' | 'cold 10' | 'cold 100') => stationClimate(station, winter);
    expect(index('normal')).toMatchObject({
      index: expect.closeTo(station.normalIndex / 1.8, 9),
      season: station.normalSeasonDays,
    });
    expect(index('cold 10')).toMatchObject({
      index: expect.closeTo(station.coldTenIndex / 1.8, 9),
      season: station.coldTenSeasonDays,
    });
    expect(index('cold 100').season).toBe(station.coldHundredSeasonDays);
  }
});

test('an estimate at the very depth entered is not deeper', () => {
  const judged = (estimate: number | null) => judgeFrost({ pipeTop: 2, entered: 1, estimate, margin: 0.15 });
  expect([judged(1).estimateDeeper, judged(1.001).estimateDeeper, judged(null).estimateDeeper]).toEqual([
    false,
    true,
    false,
  ]);
});
