import { expect, test } from 'vitest';
import { sampleCurves } from '../../../src/model/figures/curves.ts';
import { nationalPeak } from '../../../src/model/sheets/house/demandMethods.ts';
import { solve } from '../../../src/model/solve.ts';
import { psi, toGallons, toGpm, toPsi } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import { figureOf, numberAt, rowOf, sheetOf, tableOf, valueOf } from './find.ts';

const line = { material: 'PE', size: '1-1/4 in', rating: '200 psi' };
const base = { demand: '7 gpm', distance: '120 ft', rise: '10 ft', line, reliefValve: true, tank: '44 gal' };
const house = (change: Record<string, unknown>) => rockWell({ house: { ...base, ...change } });

const fixtures = { 'bathroom group': 2, 'Kitchen sink': 1, dishwashers: 1, 'clothes washer': 1 };

// International Plumbing Code (2018), Tables E103.3(2) and (3): 3.6 + 3.6 + 1.4 + 1.4 + 1.4 = 11.4 units, 15.64 gpm.
test('two baths, kitchen, dishwasher and washer are 11.4 units and 15.6 gpm', () => {
  const table = tableOf(sheetOf(house({ fixtures }), 'house'), 'demand');
  const row = rowOf(table, 'Fixture units, International Plumbing Code');
  expect(row.cells[1]).toBe('11.4 units');
  expect(toGpm(numberAt(table, row, 'peak')!)).toBeCloseTo(15.64, 2);
});

// National Standard Plumbing Code, Table B.5.4: 3 units 3 gpm, 8 units 7 gpm, 14 units 10.5 gpm.
test.each([
  [3, 3],
  [8, 7],
  [14, 10.5],
])('%d units are %d gpm by the National Standard curve', (units, flow) => {
  expect(toGpm(nationalPeak(units)!)).toBeCloseTo(flow, 9);
});

// Uniform Plumbing Code (2018), Table 610.3, private: first hose bibb 2.5, each further one 1.0; shower 2.0, closet 2.5.
test('the Uniform code counts the second hose bibb for less', () => {
  const table = tableOf(sheetOf(house({ fixtures: { 'hose bibbs': 2, shower: 1, toilet: 1 } }), 'house'), 'demand');
  expect(rowOf(table, 'Fixture units of the Uniform Plumbing Code, read on the International curve').cells[1]).toBe(
    '8 units',
  );
});

test('the methods disagree, and the plan’s own demand stands first', () => {
  const table = tableOf(sheetOf(house({ fixtures, people: 4 }), 'house'), 'demand');
  const peaks = table.rows.map((row) => numberAt(table, row, 'peak')).filter((peak) => peak !== null);
  expect(Math.max(...peaks) / Math.min(...peaks)).toBeGreaterThan(2);
  expect(table.rows[0]!.mark).toBe('this plan');
});

test('a name that no code has is told, not guessed', () => {
  expect(sheetOf(house({ fixtures: { sauna: 1 }, stock: { llama: 2 } }), 'house').notes.join()).toMatch(
    /sauna[\s\S]*llama/,
  );
});

// Missouri Extension G1801, Table 1: 50 to 100 gal a person a day; extension sheets on livestock: a horse 10 to 15 gal a day.
test('four people and two horses use 330 gal a day', () => {
  expect(toGallons(valueOf(sheetOf(house({ people: 4, stock: { horses: 2 } }), 'house'), 'dailyUse'))).toBeCloseTo(
    330,
    6,
  );
});

// Ontario prints 15 imperial gallons a day for a cow with her calf; an imperial gallon is 4.54609 L exactly (1.20095 US gallons).
test('ten cows with their calves drink 180 US gallons a day: the printed gallons are imperial', () => {
  const use = toGallons(valueOf(sheetOf(house({ stock: { 'cow-calf pairs': 10 } }), 'house'), 'dailyUse'));
  expect(use).toBeCloseTo(180.14, 2);
});

// Boyle's law for 44 gal, 30/50 psi, pre-charge 28 psi at sea level (14.696 psi): 12.99 gal.
test('a 44 gal tank on 30/50 gives 13 gal', () => {
  const sheet = sheetOf(house({ cutIn: '30 psi', cutOut: '50 psi' }), 'house');
  expect(toGallons(valueOf(sheet, 'tankDrawdown'))).toBeCloseTo(12.99, 1);
  expect(toPsi(valueOf(sheet, 'precharge'))).toBeCloseTo(28, 6);
});

// The same law turned round: a minute of 10 gpm on 40/60 wants 38.8 gal, 3.88 gal for each gpm.
test('the smallest tank is 3.88 gal for each gallon a minute on 40/60', () => {
  const plan = house({});
  const { values } = solve(plan);
  const flow = (toGpm(values.operatingFlowAtCutIn!) + toGpm(values.operatingFlowAtCutOut!)) / 2;
  expect(toGallons(valueOf(sheetOf(plan, 'house'), 'smallestTank')) / flow).toBeCloseTo(3.877, 2);
});

// Two hours of peak for a farmstead (Missouri Extension G1801): (7 − 2) gpm over 60 or 120 minutes.
test('a poor well wants the peak less its yield in store', () => {
  const poor = (change: Record<string, unknown>) =>
    rockWell({
      well: {
        depth: '200 ft',
        casing: { material: 'steel', size: '6 in', bottom: '200 ft', height: '12 in' },
        intake: { kind: 'open hole', diameter: '6 in' },
        yield: '2 gpm',
      },
      house: { ...base, ...change },
    });
  expect(toGallons(valueOf(sheetOf(poor({}), 'house'), 'storageNeeded'))).toBeCloseTo(300, 6);
  expect(toGallons(valueOf(sheetOf(poor({ stock: { cows: 3 } }), 'house'), 'storageNeeded'))).toBeCloseTo(600, 6);
  expect(valueOf(sheetOf(house({}), 'house'), 'storageNeeded')).toBe(0);
});

test('at the speed told, the pump gives the head that well and pipes ask for', () => {
  const plan = rockWell({
    house: { ...base, control: 'variable speed' },
    pump: { setting: '140 ft', power: '2 hp', curve: { kind: 'generic', flow: '10 gpm' } },
  });
  const sheet = sheetOf(plan, 'house');
  const [speed, least] = [valueOf(sheet, 'speedAtDemand'), valueOf(sheet, 'leastSpeed')];
  const solution = solve(plan);
  const { values } = solution;
  const shutOff = sampleCurves(solution).pump[0]!.head;
  const rated = 10 * 6.30902e-5;
  const headAt = (flow: number) => (shutOff / 4) * (4 - (flow / rated) ** 2); // the single-point curve of EPANET
  expect(speed ** 2 * headAt(values.demandFlow! / speed)).toBeCloseTo(values.totalDynamicHead!, 2);
  expect(least).toBeLessThan(speed);
});

test('an open tank has no pressure, and its sheet none of the pressure tank’s figures', () => {
  const sheet = sheetOf(house({ kind: 'open tank', tank: '1000 gal', people: 4 }), 'house');
  expect(sheet.figures.map(({ key }) => key)).not.toContain('drawdownFactor');
  expect(valueOf(sheet, 'daysInTank')).toBeCloseTo(1000 / 300, 9);
  expect(figureOf(sheet, 'fillTime').value).toBeGreaterThan(0);
  expect(sheet.cautions.join(' ')).toMatch(/float switch, never by a valve alone.*overflow.*covered/);
});

test('nothing on the sheets of pump and house is told at cut-in or at cut-out of an open tank', () => {
  const open = house({ kind: 'open tank', tank: '1000 gal', people: 4 });
  const titles = (['pump', 'house'] as const).flatMap((key) => sheetOf(open, key).figures.map(({ title }) => title));
  expect(titles.filter((title) => /at cut-(?:in|out)/.test(title))).toEqual([]);
  expect(titles).toContain('Flow of the pump into the open tank');
  expect(titles.filter((title, i) => titles.indexOf(title) !== i)).toEqual([]);
});

test('a branch below the tank has more pressure at no flow than one above it', () => {
  const table = tableOf(
    sheetOf(
      house({
        branches: [
          { name: 'barn', demand: '5 gpm', distance: '100 ft', rise: '0 ft' },
          { name: 'cabin', demand: '5 gpm', distance: '100 ft', rise: '40 ft' },
        ],
      }),
      'house',
    ),
    'branches',
  );
  const [barn, cabin] = table.rows.map((row) => numberAt(table, row, 'pressure')!);
  expect(barn! - cabin!).toBeCloseTo(psi(40 / 2.3073), -2); // 2.3073 ft of water of 10 °C a psi
});
