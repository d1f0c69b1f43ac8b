import { expect, test } from 'vitest';
import { FREEZING_STATIONS, findStation } from '../../../src/model/tables/freezingStations.ts';
import { metalOf } from '../../../src/model/tables/metals.ts';
import { findSoil, SOILS } from '../../../src/model/tables/soils.ts';
import { findSurface } from '../../../src/model/tables/surfaces.ts';

test('stations have ids of their own, and colder winters have larger indexes and longer seasons', () => {
  expect(new Set(FREEZING_STATIONS.map(({ id }) => id)).size).toBe(FREEZING_STATIONS.length);
  for (const station of FREEZING_STATIONS) {
    expect(station.normalIndex).toBeLessThanOrEqual(station.coldTenIndex);
    expect(station.coldTenIndex).toBeLessThanOrEqual(station.coldHundredIndex);
    expect(station.normalSeasonDays).toBeLessThanOrEqual(station.coldTenSeasonDays);
    expect(station.coldTenSeasonDays).toBeLessThanOrEqual(station.coldHundredSeasonDays);
  }
});

test('a station is found by id, by name and by name with its region', () => {
  expect(findStation('US-MN-Duluth')?.name).toBe('Duluth');
  expect(findStation(' duluth ')?.id).toBe('US-MN-Duluth');
  expect(findStation('Duluth, MN')?.id).toBe('US-MN-Duluth');
  expect(findStation('Atlantis')).toBeNull();
  expect(findStation('grand rapids, mn')?.name).toBe('Grand Rapids');
  expect(findStation('US-MN-StCloud')?.name).toBe('St. Cloud');
});

test('soils and surfaces are found as people write them', () => {
  expect(findSoil('Sandy_Loam')?.id).toBe('sandy loam');
  expect(findSoil('cheese')).toBeNull();
  expect(findSurface('Lawn')?.factor).toBe(0.5);
  expect(findSurface('cheese')).toBeNull();
});

// Usual ranges: dry density 120 to 140 lb/ft³ for gravel and sand, 90 to 100 for silt and clay.
test('mineral soils hold more water the finer they are, and conduct 1.5 to 2.5 W/(m K)', () => {
  const mineral = SOILS.filter(({ confidence }) => confidence === 'usual');
  expect(mineral).toHaveLength(6);
  for (let place = 1; place < mineral.length; place++) {
    expect(mineral[place]!.latentHeat).toBeGreaterThan(mineral[place - 1]!.latentHeat);
  }
  for (const { frozenConductivity, unfrozenConductivity } of mineral) {
    expect((frozenConductivity + unfrozenConductivity) / 2).toBeGreaterThan(1.5);
    expect((frozenConductivity + unfrozenConductivity) / 2).toBeLessThan(2.5);
  }
});

test('galvanized pipe meets others as zinc, plastic with no metal at all', () => {
  expect(metalOf('galvanized steel')).toBe('zinc');
  expect(metalOf('stainless steel')).toBe('304 stainless steel');
  expect(metalOf('steel')).toBe('carbon steel');
  expect(metalOf('brass')).toBe('brass');
  expect(metalOf('PE')).toBeNull();
  expect(metalOf('toString')).toBeNull();
});
