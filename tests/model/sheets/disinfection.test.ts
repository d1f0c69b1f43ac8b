import { expect, test } from 'vitest';
import { solve } from '../../../src/model/solve.ts';
import { gallons, poundsMass, toGallons } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import { figureOf, numberAt, sheetOf, tableOf, valueOf } from './find.ts';

const plan = rockWell();
const sheet = sheetOf(plan, 'disinfection');
const hundreds = solve(plan).values.wellVolume! / gallons(100);
const products = tableOf(sheet, 'products');
const amount = (product: string) =>
  numberAt(
    products,
    products.rows.find(({ cells }) => cells[0] === product)!,
    'well',
  )!;

// Illinois Administrative Code, Title 77, Part 925.50: 3 cups of 5.25 % bleach to 100 gal for 100 mg/L, rounded to a cup.
test('3 cups of 5.25 % bleach to 100 gal', () => {
  expect(amount('bleach, 5.25 %') / gallons(1 / 16) / hundreds).toBeCloseTo(3.05, 1);
});

// The same section: 2 oz of 70 % granules to 100 gal, rounded to an ounce.
test('2 oz of 70 % granules to 100 gal', () => {
  expect(amount('granules, 70 %') / poundsMass(1 / 16) / hundreds).toBeCloseTo(1.9, 1);
});

test('stronger product takes less of it, in proportion', () => {
  expect(amount('bleach, 5.25 %') * 0.0525).toBeCloseTo(amount('bleach, 8.25 %') * 0.0825, 12);
  expect(amount('granules, 65 %') * 0.65).toBeCloseTo(amount('granules, 70 %') * 0.7, 12);
});

test('the strength of the plan has its own row', () => {
  const strong = tableOf(sheetOf(rockWell({ disinfection: { strength: '10 %' } }), 'disinfection'), 'products');
  expect(strong.rows.find(({ mark }) => mark === 'this plan')!.cells[0]).toBe('bleach, 10 %');
  expect(strong.rows.length).toBe(6);
});

// 6.065 in casing (ASME B36.10M) holds 1.501 gal a foot: 160 ft of it here.
test('water in well, line and tank is what a dose is figured for', () => {
  expect(toGallons(valueOf(sheet, 'wellVolume'))).toBeCloseTo(1.5008 * 160, 0);
  const whole = valueOf(sheet, 'wholeDose') * 0.0525 * 1000;
  expect(whole / 0.1).toBeCloseTo(valueOf(sheet, 'wellVolume') + valueOf(sheet, 'plumbingVolume'), 9);
});

test('the cautions name goggles, and acid and ammonia as never to be mixed in', () => {
  expect(sheet.cautions.join()).toMatch(/goggles[\s\S]*acid[\s\S]*ammonia/);
});

test('without the water level nothing is dosed', () => {
  const bare = sheetOf(rockWell({ water: { staticLevel: 'unknown' } }), 'disinfection');
  expect(figureOf(bare, 'wholeDose').unknown.join()).toContain('water level at rest');
});
