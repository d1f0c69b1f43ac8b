import { expect, test } from 'vitest';
import { siteFrostEstimate } from '../../../src/model/formulas/frost.ts';
import { SURFACES } from '../../../src/model/tables/surfaces.ts';
import { FREEZING_STATIONS } from '../../../src/model/tables/freezingStations.ts';
import { toInches } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import { figureOf, numberAt, rowOf, sheetOf, tableOf, valueOf } from './find.ts';

// International Residential Code P2603.5 as adopted in Knoxville: 12 in of frost and 6 in below it, 18 in. From memory.
test('eighteen inches just meet six below a frost of twelve', () => {
  const sheet = sheetOf(rockWell({ site: { frostDepth: '12 in' }, top: { kind: 'pitless', depth: '18 in' } }), 'frost');
  expect(toInches(valueOf(sheet, 'marginUsual'))).toBeCloseTo(0, 6);
});

// Uniform Plumbing Code 609.1, from memory: 48 in of frost and 12 in below it, 60 in.
test('sixty inches just meet twelve below a frost of forty-eight', () => {
  const sheet = sheetOf(rockWell({ site: { frostDepth: '48 in' }, top: { kind: 'pitless', depth: '60 in' } }), 'frost');
  expect(toInches(valueOf(sheet, 'marginWide'))).toBeCloseTo(0, 6);
});

test('without frost both codes still ask for twelve inches of cover', () => {
  const sheet = sheetOf(rockWell({ site: { frostDepth: '0 in' }, top: { kind: 'pitless', depth: '12 in' } }), 'frost');
  expect(toInches(valueOf(sheet, 'marginUsual'))).toBeCloseTo(0, 6);
});

const station = FREEZING_STATIONS.find(({ name }) => name.includes('Minneapolis'))!;
const cold = (freezing: Record<string, unknown> = {}) =>
  rockWell({ site: { frostDepth: '42 in', freezing: { station: station.name, ...freezing } } });

// Minnesota Rules 1303.1600: 3.5 ft for footings in the southern zone. Minneapolis in silt loam, one winter in ten: 45 in by
// UFC 3-130-06 within the method's 25 %.
test('the estimate stands beside the depth entered, which wins', () => {
  const sheet = sheetOf(cold({ soil: 'silt loam' }), 'frost');
  expect(toInches(valueOf(sheet, 'frostDepth'))).toBeCloseTo(42, 6);
  const winters = tableOf(sheet, 'winters');
  const ten = toInches(numberAt(winters, rowOf(winters, 'coldest of about 10'), 'depth')!);
  expect(ten / 42).toBeGreaterThan(0.8);
  expect(ten / 42).toBeLessThan(1.25);
  expect(valueOf(sheet, 'estimateLow')).toBeLessThan(valueOf(sheet, 'estimate'));
  expect(valueOf(sheet, 'estimateHigh')).toBeGreaterThan(valueOf(sheet, 'estimate'));
});

test('the estimate opens into the equation with its numbers although a depth was entered', () => {
  const opened = figureOf(sheetOf(cold(), 'frost'), 'estimate').explanation();
  expect(opened.worked).toContain('√');
  expect(opened.source).toContain('UFC 3-130-06');
});

test('frost is deeper where the ground is cleared, and in drier soil', () => {
  const sheet = sheetOf(cold(), 'frost');
  const surfaces = tableOf(sheet, 'surfaces');
  const byShare = [...surfaces.rows].sort((a, b) => numberAt(surfaces, a, 'share')! - numberAt(surfaces, b, 'share')!);
  const depths = byShare.map((row) => numberAt(surfaces, row, 'depth')!);
  for (let i = 1; i < depths.length; i++) expect(depths[i]!).toBeGreaterThanOrEqual(depths[i - 1]! - 1e-9);
  expect(surfaces.rows.length).toBe(SURFACES.length - 1);
  const soils = tableOf(sheet, 'soils');
  const depth = (row: string) =>
    numberAt(
      soils,
      soils.rows.find(({ cells }) => cells[0]!.startsWith(row))!,
      'depth',
    )!;
  expect(depth('clean gravelly sand')).toBeGreaterThan(depth('sandy loam'));
  expect(depth('sandy loam')).toBeGreaterThan(depth('clay, moist'));
});

test('the plan’s own row of the tables is the estimate', () => {
  const estimate = siteFrostEstimate({ station: station.name, index: null, soil: null, surface: null });
  const soils = tableOf(sheetOf(cold(), 'frost'), 'soils');
  const own = soils.rows.find(({ mark }) => mark === 'this plan')!;
  expect('depth' in estimate && numberAt(soils, own, 'depth')).toBe('depth' in estimate && estimate.depth);
});

test('without a station there is no estimate and no table of dashes', () => {
  const sheet = sheetOf(rockWell(), 'frost');
  expect(figureOf(sheet, 'estimate').unknown.join()).toContain('station');
  expect(sheet.tables).toEqual([]);
});
