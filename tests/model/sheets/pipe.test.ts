import { describe, expect, test } from 'vitest';
import { solve } from '../../../src/model/solve.ts';
import { feet, psi, toFeet, toPsi } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import { figureOf, numberAt, rowOf, sheetOf, tableOf, valueOf } from './find.ts';

const tenGallons = (change: Record<string, unknown> = {}) =>
  rockWell({
    house: {
      demand: '10 gpm',
      distance: '120 ft',
      rise: '10 ft',
      line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
    },
    ...change,
  });

// Illinois Administrative Code, Title 77, Part 906, Appendix A, Exhibit I: 5.50 ft per 100 ft at C = 150; our plastic has 140.
test('1 in plastic loses 5.50 ft in 100 ft at 10 gpm by Hazen-Williams, taken to C = 140', () => {
  const loss = toFeet(valueOf(sheetOf(tenGallons(), 'pipe'), 'dropPipeFrictionHazenWilliams'));
  expect(loss * (140 / 150) ** 1.852).toBeCloseTo(5.5, 1);
});

test('friction for a hundred feet times the length is the friction of the pipe', () => {
  const solution = solve(tenGallons());
  const sheet = sheetOf(tenGallons(), 'pipe');
  const hundreds = solution.values.dropPipeCutLength! / feet(100);
  expect(valueOf(sheet, 'dropPipeFrictionDarcy') * hundreds).toBeCloseTo(solution.values.frictionDropPipe!, 9);
});

test('the fittings of the table lose what the figure of all fittings says', () => {
  for (const top of [{ kind: 'pitless', depth: '5 ft' }, { kind: 'seal' }]) {
    const plan = tenGallons({ top });
    const table = tableOf(sheetOf(plan, 'pipe'), 'fittings');
    const sum = table.rows.reduce((total, row) => total + numberAt(table, row, 'head')!, 0);
    expect(sum).toBeCloseTo(solve(plan).values.frictionFittings!, 9);
  }
});

// AWWA Manual M55 (2006), Table 4-6: 0.8 for 91 to 100 °F. Missouri Livestock Watering Systems Handbook, ch. 5: 72 % of 200 is 144.
test('200 psi pipe is rated 160 psi in water of 95 °F, and works at 144 psi in cold', () => {
  const warm = tenGallons({ site: { frostDepth: '0 in', waterTemperature: '95 degF' } });
  expect(toPsi(valueOf(sheetOf(warm, 'pipe'), 'dropPipeRating'))).toBeCloseTo(160, 6);
  expect(toPsi(valueOf(sheetOf(tenGallons(), 'pipe'), 'dropPipeWorking'))).toBeCloseTo(144, 6);
});

// ASTM D2239, appendix: 2 HDS/(SIDR + 1) with 800 psi for PE3608 and 1,000 psi for PE4710.
test('SIDR 9 is 160 psi of PE3608 and 200 psi of PE4710', () => {
  const table = tableOf(sheetOf(tenGallons(), 'pipe'), 'dropPipeRatings');
  const of = (resin: string) => table.rows.find(({ cells }) => cells[0] === 'SIDR 9' && cells[1] === resin)!;
  expect(toPsi(numberAt(table, of('PE3608'), 'cold')!)).toBeCloseTo(160, 0);
  expect(toPsi(numberAt(table, of('PE4710'), 'cold')!)).toBeCloseTo(200, 0);
  expect(of('PE4710').mark).toBe('this plan');
});

// ASTM D1785, appendix, rounded to 10 psi: 1-1/4 in PVC bears 520 psi of schedule 80 and 370 psi of schedule 40; threads leave half of it,
// and schedule 40 is not to be threaded (from memory). A buried line is glued.
describe('PVC that is screwed together in the well', () => {
  const pipe = { material: 'PVC', size: '1-1/4 in', ratio: 'schedule 80' };
  const plan = tenGallons({
    dropPipe: pipe,
    house: { demand: '10 gpm', distance: '120 ft', rise: '10 ft', line: { ...pipe, ratio: 'schedule 40' } },
  });
  const sheet = sheetOf(plan, 'pipe');
  test('is rated half on the sheet, as its rule has it, and the glued line in full', () => {
    expect(toPsi(valueOf(sheet, 'dropPipeRating'))).toBeCloseTo(260, -1);
    expect(toPsi(valueOf(sheet, 'lineRating'))).toBeCloseTo(370, -1);
    const { holding } = solve(plan);
    const held = holding.find(({ rule }) => rule === 'PR-18')?.numbers as { rating: number } | undefined;
    expect(held?.rating).toBeCloseTo(valueOf(sheet, 'dropPipeRating'), 6);
  });
  test('stands so in the tables of ratings and sizes, and schedule 40 does not do', () => {
    const ratings = tableOf(sheet, 'dropPipeRatings');
    expect(toPsi(numberAt(ratings, rowOf(ratings, 'schedule 80'), 'warm')!)).toBeCloseTo(260, 0);
    expect(rowOf(ratings, 'schedule 40').cells.at(-1)).toBe('too thin for threads');
    const sizes = tableOf(sheet, 'dropPipeSizes');
    expect(toPsi(numberAt(sizes, rowOf(sizes, '1-1/4 in'), 'rating')!)).toBeCloseTo(260, 0);
    expect(rowOf(tableOf(sheet, 'lineRatings'), 'schedule 40').cells.at(-1)).toBe('does');
  });
});

// AWWA Manual M55 (2006), p. 47: 11.3 psi for each ft/s in the 100 psi pipe, which is DR 17, that is SIDR 15 of PE3408.
test('a foot a second stopped at once is 11.3 psi in pipe of DR 17', () => {
  const sheet = sheetOf(
    tenGallons({ dropPipe: { material: 'PE', size: '1 in', ratio: 'SIDR 15', resin: 'PE3408' } }),
    'pipe',
  );
  const { operatingFlowAtCutIn } = solve(
    tenGallons({ dropPipe: { material: 'PE', size: '1 in', ratio: 'SIDR 15', resin: 'PE3408' } }),
  ).values;
  const velocity = operatingFlowAtCutIn! / ((Math.PI / 4) * (1.049 * 0.0254) ** 2);
  expect(toPsi(valueOf(sheet, 'dropPipeSurge')) / toFeet(velocity)).toBeCloseTo(11.3, 1);
});

// US Standard Atmosphere (1976) and saturation pressure at 15 °C: 33.4 ft at sea level, 27.7 ft at 5,000 ft.
test.each([
  ['0 ft', 33.36],
  ['5000 ft', 27.7],
])('at %s the air holds %d ft of water', (altitude, held) => {
  const plan = rockWell({ site: { frostDepth: '36 in', waterTemperature: '15 degC', altitude } });
  expect(toFeet(valueOf(sheetOf(plan, 'pipe'), 'columnHeldByAir'))).toBeCloseTo(held, 1);
});

// The same table: at 5,000 ft the air holds 5.7 ft less than at sea level, and the habit of 25 ft gives way by as much.
test('thin air lowers the highest place of an upper check valve, as its rule has it', () => {
  const at = (altitude: string) => {
    const plan = rockWell({ site: { frostDepth: '36 in', waterTemperature: '15 degC', altitude } });
    return toFeet(solve(plan).values.lowestPumpingWaterLevel! - valueOf(sheetOf(plan, 'pipe'), 'highestCheckValve'));
  };
  expect(at('0 ft')).toBeCloseTo(25, 6);
  expect(at('5000 ft')).toBeCloseTo(25 - 5.7, 1);
});

test('wider pipe is slower and loses less, by both methods', () => {
  const table = tableOf(sheetOf(tenGallons(), 'pipe'), 'dropPipeSizes');
  for (const column of ['velocity', 'darcy', 'hazen']) {
    const numbers = table.rows.map((row) => numberAt(table, row, column)!);
    for (let i = 1; i < numbers.length; i++) expect(numbers[i]!, column).toBeLessThan(numbers[i - 1]!);
  }
  expect(rowOf(table, '3/4 in').mark).toBe('does not do');
  expect(rowOf(table, '1 in').mark).toBe('this plan');
});

test('metal pipe has no printed rating, and the sheet says so', () => {
  const sheet = sheetOf(tenGallons({ dropPipe: { material: 'galvanized steel', size: '1-1/4 in' } }), 'pipe');
  expect(figureOf(sheet, 'dropPipeRating').unknown.join()).toContain('metal');
});

test('the line at the well bears the tank’s pressure and the rise', () => {
  const plan = rockWell();
  const low = valueOf(sheetOf(plan, 'pipe'), 'lineLowPressure');
  expect(low).toBeGreaterThan(psi(60));
  expect(toPsi(low - psi(60))).toBeCloseTo(15 / 2.3073, 2); // 2.3073 ft of water of 10 °C a psi
});
