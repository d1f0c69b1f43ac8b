import { expect, test } from 'vitest';
import { poundsForce, toPoundsForce } from '../../../src/model/units.ts';
import { figureOf, longString, numberAt, sheetOf, tableOf, valueOf } from './find.ts';

const rope = { material: 'polypropylene', breakingStrength: '1125 lbf' };
const sheet = sheetOf(longString({ rope }), 'rope');

// Cordage Institute CI 1401-06: half is left by a knot, design factor 5 to 12.
test('quarter-inch polypropylene works at 112.5 lb with a factor of 5, at 46.9 lb with 12', () => {
  expect(toPoundsForce(valueOf(sheet, 'knottedStrength'))).toBeCloseTo(562.5, 6);
  expect(toPoundsForce(valueOf(sheet, 'workingLoad5'))).toBeCloseTo(112.5, 6);
  expect(toPoundsForce(valueOf(sheet, 'workingLoad12'))).toBeCloseTo(46.875, 6);
});

// Published example for 3/8 in polypropylene of 2,430 lbf at a factor of 12, without a knot: 203 lbf.
test('three-eighths polypropylene works at 203 lb without a knot', () => {
  const thick = sheetOf(longString({ rope: { material: 'polypropylene', diameter: '3/8 in' } }), 'rope');
  expect(Math.round(2 * toPoundsForce(valueOf(thick, 'workingLoad12')) + 1e-6)).toBe(203);
});

const failures = tableOf(sheet, 'failures');
const load = (what: string) =>
  numberAt(
    failures,
    failures.rows.find(({ cells }) => cells[0]!.startsWith(what))!,
    'load',
  )!;

// Balance of forces on the long string, worked by hand: 165.4 full, 100.5 drained, 32 for the pump, 64 with the cable.
test.each([
  ['Top joint opens, pipe stays full', 165.4],
  ['Top joint opens, pipe drains', 100.5],
  ['Joint at the pump opens, pump alone', 32],
  ['Joint at the pump opens, pump and cable', 64],
  ['Full pipe comes onto', 330.8],
])('%s: %d lb', (what, pounds) => expect(Math.abs(toPoundsForce(load(what)) - pounds)).toBeLessThan(2));

test('the peak of a fall holds the energy that the fall had', () => {
  const weight = load('Top joint opens, pipe stays full');
  const stiffness = poundsForce(1125) / (0.2 * valueOf(sheet, 'ropeLength'));
  const peak = valueOf(sheet, 'fallPeak');
  const stretch = peak / stiffness;
  expect((stiffness * stretch ** 2) / 2).toBeCloseTo(weight * (2 * 0.3048 + stretch), 6);
  expect(peak).toBeGreaterThan(2 * weight);
});

test('an aged rope holds less than a new one, and what it cannot hold is marked', () => {
  for (const row of failures.rows) {
    expect(numberAt(failures, row, 'aged')!).toBeLessThan(numberAt(failures, row, 'factor')!);
    expect(row.mark === 'does not do').toBe(numberAt(failures, row, 'aged')! < 1);
  }
});

test('without a rope the sheet still says what one would have to hold', () => {
  const none = sheetOf(longString(), 'rope');
  expect(figureOf(none, 'breakingStrength').value).toBeNull();
  expect(valueOf(none, 'strengthToCatch')).toBeGreaterThan(0);
});
