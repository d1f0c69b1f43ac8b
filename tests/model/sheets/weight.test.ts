import { expect, test } from 'vitest';
import { whoLifts } from '../../../src/model/sheets/weight/pull.ts';
import { feet, poundsForce, toFeet, toInches, toPoundsForce, toPsi } from '../../../src/model/units.ts';
import { longString } from './find.ts';
import { figureOf, numberAt, sheetOf, tableOf, valueOf } from './find.ts';

const sheet = sheetOf(longString(), 'weight');

// Archimedes' principle worked by hand for this string, 62.4 lb/ft³: pipe 121.3, water column 64.8, pump 40, cable 43.4 lb,
// less buoyancy 84.7, 8 and 11.4 lb; within 1 lb for the printed walls.
test('the long string weighs 165 lb full and 101 lb drained, with water 100 ft down', () => {
  expect(Math.abs(toPoundsForce(valueOf(sheet, 'hangLoadAtRest')) - 165.4)).toBeLessThan(1);
  expect(Math.abs(toPoundsForce(valueOf(sheet, 'hangLoadLowering')) - 100.5)).toBeLessThan(1);
});

test('the first row of the pull table is the whole string, the last the pump with what is left', () => {
  const table = tableOf(sheet, 'pull');
  const [first] = table.rows;
  const last = table.rows.at(-1)!;
  expect(numberAt(table, first!, 'full')).toBeCloseTo(valueOf(sheet, 'hangLoadAtRest'), 9);
  expect(numberAt(table, first!, 'drained')).toBeCloseTo(valueOf(sheet, 'hangLoadLowering'), 9);
  expect(toFeet(numberAt(table, last, 'left')!)).toBeCloseTo(0, 6);
  expect(toPoundsForce(numberAt(table, last, 'full')!)).toBeCloseTo(40, 6);
  expect(table.rows.length).toBe(16);
});

// The same balance with 150 ft of pipe left and the water where it was: 155.1 lb.
test('with half the pipe out the hook bears 155 lb', () => {
  const half = tableOf(sheetOf(longString(), 'weight', 'metric'), 'pull');
  const row = half.rows.reduce((best, each) =>
    Math.abs(each.numbers[1]! - feet(150)) < Math.abs(best.numbers[1]! - feet(150)) ? each : best,
  );
  expect(Math.abs(toPoundsForce(numberAt(half, row, 'full')!) - 155.1)).toBeLessThan(3);
});

test('full is never lighter than drained', () => {
  const table = tableOf(sheet, 'pull');
  for (const row of table.rows)
    expect(numberAt(table, row, 'full')!).toBeGreaterThanOrEqual(numberAt(table, row, 'drained')!);
});

// PPI Handbook of Polyethylene Pipe, chapter 3, Table B.1.1: 63,000 psi after 12 h, 29,000 psi after 50 years.
test('the long string stretches 0.30 ft in twelve hours and 0.65 ft in fifty years', () => {
  expect(toFeet(valueOf(sheet, 'stretch12h'))).toBeCloseTo(0.298, 2);
  expect(toFeet(valueOf(sheet, 'stretch50Years'))).toBeCloseTo(0.647, 2);
  expect(valueOf(sheet, 'stretchYear')).toBeGreaterThan(valueOf(sheet, 'stretch12h'));
});

// 8.0e-5 a degree Fahrenheit over 300 ft: 8.64 in for 30 °F, here for 80.6 to 50 °F.
test('three hundred feet of PE get 8.8 in shorter from a warm day to cold water', () => {
  expect(toInches(valueOf(sheet, 'thermalChange'))).toBeCloseTo((-8.64 * 30.6) / 30, 2);
});

// Torsion of a tube with 5252 hp/rpm = 1.522 lb ft and 2.5 times that at start: 403 degrees.
test('a free pipe turns more than once as a 1 hp motor starts', () => {
  expect(valueOf(sheet, 'twist') * 360).toBeCloseTo(403, -1);
});

// ASTM F1804: 0.4 × 0.95 × yield × π D² (1/DR − 1/DR²), here with 3,000 psi and the outside of SIDR 7.
test('the pipe body stands more than ten times what the joint feels', () => {
  const pull = toPoundsForce(valueOf(sheet, 'allowablePull'));
  const area = (Math.PI / 4) * (1.774 ** 2 - 1.38 ** 2); // π D² (1/DR − 1/DR²) is the wall's area
  expect(pull).toBeCloseTo(0.4 * 0.95 * 3000 * area, 0);
});

test('stress is pull by wall, and stays below what PE4710 may carry for years', () => {
  const stress = toPsi(valueOf(sheet, 'wallStress'));
  expect(stress).toBeCloseTo(
    toPoundsForce(valueOf(sheet, 'wallTension')) / ((Math.PI / 4) * (1.774 ** 2 - 1.38 ** 2)),
    0,
  );
  expect(valueOf(sheet, 'stressShare')).toBeCloseTo(stress / 1000, 6);
});

test('the joint at the pump bears the same however deep the pump hangs', () => {
  const deeper = longString({
    pump: { setting: '380.5 ft', power: '1 hp', mass: '40 lb', curve: { kind: 'generic', flow: '7 gpm' } },
  });
  expect(valueOf(sheetOf(deeper, 'weight'), 'jointForce')).toBeCloseTo(valueOf(sheet, 'jointForce'), 6);
});

// NIOSH Applications Manual, DHHS 94-110: 51 lb. Team shares 2/3 and 1/2: from memory. 150 lb: common practice, no source.
test.each([
  [51, 'one person'],
  [52, 'two people'],
  [68, 'two people'],
  [69, 'three people'],
  [76, 'three people'],
  [100, 'hoist, or more people'],
  [151, 'hoist'],
])('%d lb is for %s', (pounds, who) => expect(whoLifts(poundsForce(pounds), false)).toBe(who));

test('threaded pipe wants a hoist at any weight', () => {
  const steel = sheetOf(longString({ dropPipe: { material: 'galvanized steel', size: '1-1/4 in' } }), 'weight');
  expect(figureOf(steel, 'lifters').text).toBe('hoist');
  expect(figureOf(steel, 'stressShare').value).toBeNull();
});
