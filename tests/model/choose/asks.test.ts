/** What nobody said of a pump, its pipe or its well, a row asks for before it is called right. */
import { expect, test } from 'vitest';
import { choosePump, type PumpRow } from '../../../src/model/choose/choosePump.ts';
import { chooseTank } from '../../../src/model/choose/chooseTank.ts';
import { solve, withValue, type Plan } from '../../../src/model/index.ts';
import { dropPipeNeed } from '../../../src/model/rules/pipeNeeds.ts';
import { feet, gpm, inches, show, toGallons, toGpm, toPsi } from '../../../src/model/units.ts';
import { choose } from '../../../src/words/en/choose.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayOverTable, sayPumpRow } from '../../../src/words/sayChoice.ts';
import { sayWhyLeft } from '../../../src/words/sayPlacement.ts';
import { rock } from './jobs.ts';

const us = show('us');
const words = { ...en, choose };
function tableOf(plan: Plan) {
  const table = choosePump(plan);
  if (table.kind === 'refused') throw new Error(sayWhyLeft(table.why, en, us));
  return table;
}
const said = (row: PumpRow) => sayPumpRow(row, words, us);
const able = (rows: readonly PumpRow[]) => rows.filter(({ does }) => does !== 'no');

/** PE of which nobody said what it bears. */
const unrated: Plan = { ...rock, dropPipe: { material: 'PE', size: '1 in' } };

test('pipe of unknown rating is chosen by what the pump puts on it', () => {
  const { rows } = tableOf(unrated);
  expect(rows[0]?.does).toBe('yes');
  for (const row of able(rows)) {
    expect(row.parts.pipe.map(({ path }) => path)).toContain('dropPipe.rating');
    expect(row.solution.facts.dropPipe.rating).toBeGreaterThanOrEqual(dropPipeNeed(row.solution));
    expect(row.solution.verdicts['PR-18']).not.toBe('not judged');
  }
});

test('pipe of unknown rating that hangs already is asked for, and no pump is called right on it', () => {
  const { rows } = tableOf({ ...unrated, status: { dropPipe: 'installed' } });
  expect(rows.some(({ does }) => does === 'yes')).toBe(false);
  expect(rows[0]).toMatchObject({ key: '10 gpm, 3/4 hp', does: 'depends' });
  for (const row of able(rows)) {
    const need = us.pressure(dropPipeNeed(row.solution));
    expect(said(row).why).toContain(`Only if the drop pipe bears ${need}: read the rating`);
    expect(said(row).pipe).toBe(`PE 1 in, to bear ${need}`);
  }
});

/** Strong enough for the well, and nobody said what motor is on it. */
const points = [
  ['0 gpm', '330 ft'],
  ['5 gpm', '290 ft'],
  ['10 gpm', '210 ft'],
  ['14 gpm', '90 ft'],
] as const;

test('a pump whose motor nobody said has no wire and no control box yet', () => {
  const { rows } = tableOf({ ...rock, ownPumps: [{ name: 'North field', points: points.map(([q, h]) => [q, h]) }] });
  const own = rows.find(({ name }) => name.kind === 'own');
  if (own === undefined) throw new Error('no row');
  expect(own.does).toBe('depends');
  expect(said(own).why).toMatch(
    /^Say the power of its motor first: wire, supply and control box follow from it\. Gives/,
  );
  expect(said(own).wire).toBe('power unsaid');
  expect(own.parts.wire).toEqual([]);
  // What surely does stands before it.
  expect(rows.findIndex(({ does }) => does === 'yes')).toBeLessThan(rows.indexOf(own));
  const named = tableOf({
    ...rock,
    ownPumps: [{ name: 'North field', power: '3/4 hp', points: points.map(([q, h]) => [q, h]) }],
  }).rows.find(({ name }) => name.kind === 'own');
  expect(named).toMatchObject({ does: 'yes', asks: [] });
});

test('wire is sized for the voltage that the motor needs, and another than the plan says is told', () => {
  const on230 = tableOf(rock);
  const { rows } = tableOf({ ...rock, pump: { ...rock.pump, voltage: '115 V' } });
  const [best] = rows;
  const same = on230.rows.find(({ key }) => key === best?.key);
  if (best === undefined || same === undefined) throw new Error('no row');
  expect(best).toMatchObject({ key: '10 gpm, 3/4 hp', does: 'yes', supplyFrom: { voltage: 115, wires: null } });
  expect(said(best).wire).toBe(said(same).wire);
  expect(said(best).wire).toMatch(/230 V/);
  expect(said(best).why).toContain('It needs 230 V, not 115 V as in the plan.');
  // What 115 V does for stays on it.
  const half = rows.find(({ power, rated }) => power !== null && power < 400 && toGpm(rated) < 6);
  expect(half?.supplyFrom).toBeNull();
});

test('in a narrow casing the width of the pump is asked for', () => {
  const narrow = (diameter?: string): Plan => ({
    ...rock,
    well: {
      ...rock.well,
      casing: { material: 'steel', size: '4 in', bottom: '90 ft', height: '16 in' },
      intake: { kind: 'open hole', diameter: '4 in' },
    },
    top: { kind: 'seal' },
    pump: { ...rock.pump, ...(diameter !== undefined && { diameter }) },
  });
  const [best] = tableOf(narrow()).rows;
  if (best === undefined) throw new Error('no row');
  expect(best.does).toBe('depends');
  // A hole of 4 in less the quarter of an inch that has to be free.
  expect(best.asks).toEqual([{ variant: 'pumpWidth', numbers: { most: expect.closeTo(inches(3.75), 9) } }]);
  expect(said(best).why).toContain('Only if the pump is 3.75 in wide or less');
  expect(tableOf(narrow('3.7 in')).rows[0]).toMatchObject({ does: 'yes', asks: [] });
});

test('a well of which nobody said what it gives is asked for', () => {
  const well = { ...rock.well, yield: undefined, yieldFrom: undefined };
  const plan: Plan = { ...rock, well, water: { staticLevel: '45 ft', pumping: { kind: 'level', level: '75 ft' } } };
  const { rows } = tableOf(plan);
  expect(rows.some(({ does }) => does === 'yes')).toBe(false);
  const [best] = rows;
  if (best === undefined) throw new Error('no row');
  expect(best.does).toBe('depends');
  expect(said(best).why).toContain('Only if that level was read at 8 gpm or more: nobody said how much was pumped.');
  const unpumped = tableOf({ ...rock, well, water: { staticLevel: '45 ft' } }).rows;
  expect(unpumped.some(({ does }) => does === 'yes')).toBe(false);
  for (const row of unpumped.filter(({ does }) => does === 'depends'))
    expect(said(row).why).toContain('Have the well pumped first: nobody said what it gives');
  // Where nobody knows how far the water falls none is taken that is named for far more than is wanted.
  expect(unpumped.find(({ key }) => key === '20 gpm, 3 hp')).toMatchObject({
    does: 'no',
    why: { variant: 'farOver', numbers: { gives: null } },
  });
});

test('what a pump puts on a tank without a relief valve is told with it', () => {
  const without = (reliefValve: boolean | undefined) =>
    tableOf(withValue(rock, 'house.reliefValve', reliefValve)).rows[0];
  for (const row of [without(false), without(undefined)]) {
    if (row === undefined) throw new Error('no row');
    const { shutOffPressureAtTank } = row.solution.values;
    const rating = row.solution.facts.house.tankRating;
    expect(shutOffPressureAtTank ?? 0).toBeGreaterThan(rating);
    expect(said(row).why).toContain(
      `Fit a relief valve: it can put ${us.pressure(shutOffPressureAtTank ?? 0)} on the tank, whose rating is ${us.pressure(rating)}.`,
    );
  }
  expect(without(true)?.told.map(({ variant }) => variant)).not.toContain('needsRelief');
});

test('a pump that takes far more than the well is said to give is told so, unless something guards it', () => {
  const toGive10 = { ...rock, well: { ...rock.well, yield: '10 gpm' } };
  const [best] = tableOf(toGive10).rows;
  const guarded = tableOf(withValue(toGive10, 'pump.lowLevelCutOff', true)).rows.find(({ key }) => key === best?.key);
  expect(best?.told).toMatchObject([{ variant: 'beyondYield', numbers: { gives: expect.closeTo(gpm(10), 9) } }]);
  expect(guarded?.told).toEqual([]);
  // 12 gpm and a little more: as nearly every pump.
  expect(tableOf(rock).rows[0]?.told).toEqual([]);
});

/** Water power is flow times head times 9.81 kN/m³: 10 gpm through 210 ft are 0.53 hp in the water alone. */
test('points that the motor cannot give, and work past the last of them, are asked about', () => {
  const own = (power: string, curve: readonly (readonly [string, string])[]) =>
    tableOf({
      ...rock,
      ownPumps: [{ name: 'Own', power, points: curve.map(([q, h]): [string, string] => [q, h]) }],
    }).rows.find(({ name }) => name.kind === 'own');
  expect(own('1/3 hp', points)?.asks.map(({ variant }) => variant)).toEqual(['powerTooSmall']);
  expect(own('3/4 hp', points)?.asks).toEqual([]);
  const short = [
    ['0 gpm', '300 ft'],
    ['4 gpm', '275 ft'],
    ['8 gpm', '222 ft'],
  ] as const;
  const row = own('3/4 hp', short);
  expect(row?.does).toBe('depends');
  expect(row?.asks).toMatchObject([{ variant: 'pastPoints', numbers: { last: gpm(8) } }]);
});

test('past an adapter in a narrow casing the width that passes is asked for, not that of the casing', () => {
  const plan: Plan = {
    ...rock,
    well: {
      ...rock.well,
      casing: { material: 'steel', size: '4 in', bottom: '90 ft', height: '16 in' },
      intake: { kind: 'open hole', diameter: '4 in' },
    },
    top: { kind: 'pitless', depth: '6 ft' },
  };
  const table = tableOf(plan);
  const [best] = table.rows;
  if (best === undefined) throw new Error('no row');
  // A bore of 4.026 in, a reach of half an inch at the least, a quarter free.
  expect(best.asks).toEqual([
    { variant: 'pumpWidth', numbers: { most: expect.closeTo(inches(4.026 - 0.5 - 0.25), 3) } },
  ]);
  expect(sayOverTable(table, words, us)?.join(' ')).toContain(
    'A slimmer pump would do; another top may leave it more room.',
  );
});

test('pipe that hangs and is too weak is answered by new pipe before steel; what no pipe bears is none', () => {
  const deep: Plan = {
    ...rock,
    well: { ...rock.well, depth: '400 ft', layers: [] },
    water: { staticLevel: '200 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '20 ft', after: '24 h' } },
    dropPipe: { material: 'PE', size: '1 in', rating: '160 psi' },
    status: { dropPipe: 'installed' },
  };
  const table = tableOf(deep);
  expect(table.inTheWay.map(({ variant }) => variant)).toContain('newPipe');
  expect(table.inTheWay.map(({ variant }) => variant)).not.toContain('weakPipe');
  const unrated = tableOf({ ...deep, dropPipe: { material: 'PE', size: '1 in' } }).rows;
  for (const row of unrated)
    for (const ask of row.asks)
      if (ask.variant === 'pipeRating' && toPsi(ask.numbers.need) > 315) expect(row.does).toBe('no');
  expect(unrated.some(({ why }) => why.variant === 'overAnyPipe')).toBe(true);
});

test('water too warm for motors is told over the table', () => {
  const warm = tableOf(withValue(rock, 'site.waterTemperature', '100 degF'));
  expect(sayOverTable(warm, words, us)).toContain(
    'The water is 100 °F; motors are usually made for 86 °F: ask the maker for one that stands it.',
  );
});

test('two pumps of the same points on other motors are two', () => {
  const same = points.map(([q, h]): [string, string] => [q, h]);
  const plan: Plan = {
    ...rock,
    pump: { ...rock.pump, power: undefined, curve: { kind: 'points', points: same } },
    ownPumps: [
      { name: 'Bare', points: same },
      { name: 'With motor', power: '3/4 hp', points: same },
    ],
  };
  const of = (name: string) => tableOf(plan).rows.find((row) => row.name.kind === 'own' && row.name.name === name);
  expect(of('Bare')).toMatchObject({ isPlans: true, asks: [{ variant: 'power' }] });
  expect(of('With motor')).toMatchObject({ isPlans: false, asks: [] });
});

test('what PE does not bear galvanized steel does, and what less than is wanted does is told', () => {
  const deep: Plan = {
    ...rock,
    well: { ...rock.well, depth: '560 ft', layers: [] },
    water: { staticLevel: '380 ft', pumping: { kind: 'test', flow: '12 gpm', drawdown: '20 ft', after: '24 h' } },
  };
  const table = tableOf(deep);
  expect(table.rows.some(({ does }) => does === 'yes' || does === 'depends')).toBe(false);
  const steel = table.inTheWay.find(({ variant }) => variant === 'weakPipe');
  if (steel?.variant !== 'weakPipe') throw new Error('no steel');
  expect(steel.numbers.material).toBe('PE');
  expect(steel.numbers.able.length).toBeGreaterThan(0);
  const inSteel = tableOf({ ...deep, dropPipe: { material: 'galvanized steel', size: '1 in' } });
  for (const name of steel.numbers.able)
    expect(inSteel.rows.find((row) => choose.pumps.name(row.name) === choose.pumps.name(name))?.does).toBe('yes');
  expect(sayOverTable(table, words, us)?.join(' ')).toMatch(
    /PE drop pipe does not bear stronger pumps: with galvanized/,
  );
});

test('where pumps lack nothing but flow, the house that they serve is told', () => {
  const much: Plan = { ...rock, house: { ...rock.house, demand: '32 gpm' }, well: { ...rock.well, yield: '60 gpm' } };
  const plan: Plan = {
    ...much,
    water: { staticLevel: '45 ft', pumping: { kind: 'test', flow: '60 gpm', drawdown: '20 ft', after: '24 h' } },
    house: { ...much.house, line: { material: 'PE', size: '2 in', rating: '200 psi' }, tank: '119 gal' },
  };
  const table = tableOf(plan);
  const less = table.inTheWay.find(({ variant }) => variant === 'demand');
  if (less?.variant !== 'demand') throw new Error(JSON.stringify(table.inTheWay));
  const most = toGpm(less.numbers.most);
  expect(most).toBeGreaterThanOrEqual(16);
  expect(most).toBeLessThan(32);
  // Which do then depends on the tank: 25 gpm for two minutes no usual one gives.
  const then = tableOf(withValue(plan, 'house.demand', `${most} gpm`)).rows;
  expect(then[0]).toMatchObject({ does: 'depends', why: { variant: 'tanksTogether' } });
  expect(less.numbers.able).toEqual([]);
  expect(sayOverTable(table, words, us)).toContain(
    `If ${us.flow(less.numbers.most)} at the busiest is enough, some of these may do.`,
  );
});

test('sand is told over the table', () => {
  expect(sayOverTable(tableOf({ ...rock, water: { ...rock.water, sand: true } }), words, us)).toContain(
    choose.pumps.sand,
  );
  expect(sayOverTable(tableOf(rock), words, us)).toBeNull();
});

test('of the way to the tank only what nobody said is asked for', () => {
  const without = (...parts: ('line' | 'distance' | 'rise')[]) => {
    const table = choosePump(parts.reduce((plan, part) => withValue(plan, `house.${part}`, undefined), rock));
    return table.kind === 'refused' ? sayWhyLeft(table.why, en, us) : '';
  };
  expect(without('rise')).toBe('Nobody said how far the tank stands over the well.');
  expect(without('line', 'distance')).toBe(
    'Nobody said which pipe leads to the house and how far the house is from the well.',
  );
});

test('the tank that a pump needs is the first that does; a smaller one that is there may stay', () => {
  // 44 gal between 40 and 60 psi give 11 gal: 57 s at 11.5 gpm.
  const plan: Plan = {
    ...rock,
    pump: { ...rock.pump, power: '1 hp', curve: { kind: 'generic', flow: '11.5 gpm' } },
    house: { ...rock.house, tank: '62 gal' },
  };
  const sizes = (tank: string) => {
    const table = chooseTank(withValue(plan, 'house.tank', tank));
    if (table.kind === 'refused') throw new Error(table.why);
    return table.rows;
  };
  const needed = choosePump(plan);
  if (needed.kind === 'refused') throw new Error('refused');
  const own = needed.rows.find(({ isPlans }) => isPlans);
  const bought = sizes('62 gal');
  expect(toGallons(own?.tank ?? 0)).toBeCloseTo(62, 6);
  expect(bought[0]).toMatchObject({ key: '62 gal', does: 'yes' });
  expect(bought.find(({ key }) => key === '44 gal')).toMatchObject({ does: 'no', why: { variant: 'runsShort' } });
  expect(sizes('44 gal').find(({ key }) => key === '44 gal')).toMatchObject({
    does: 'yes',
    why: { variant: 'runsNearly' },
  });
});

test('a drop pipe that nobody rated never carries a pump that is called right', () => {
  for (const plan of [unrated, { ...rock, dropPipe: { material: 'PE' } } as Plan])
    for (const { does, plan: chosen } of tableOf(plan).rows)
      if (does === 'yes') expect(solve(chosen).verdicts['PR-18']).toBe('ok');
});

test('where nobody knows how far the water falls a weak pump hangs with its probe where it still shuts off', () => {
  const well = { ...rock.well, yield: undefined, yieldFrom: undefined };
  const { rows } = tableOf({ ...rock, well, pump: { voltage: '230 V' }, water: { staticLevel: '45 ft' } });
  const weak = rows.filter(({ why, does }) => does === 'depends' && why.variant === 'unknownLevel');
  const higher = weak.filter(({ solution }) => solution.facts.pump.setting < feet(200));
  expect(higher.length).toBeGreaterThan(0);
  for (const { figures, solution } of weak) {
    expect(typeof solution.facts.pump.lowLevelCutOff).toBe('number');
    expect(figures.spare ?? 0).toBeGreaterThan(0);
  }
});

test('watering that was said is not silently left out of an assumed demand', () => {
  const watered = (demand: string | undefined) =>
    sayOverTable(tableOf({ ...rock, house: { ...rock.house, demand, irrigation: '30 gpm' } }), words, us);
  expect(watered(undefined)?.join(' ')).toContain('The 30 gpm for watering are not counted');
  expect(watered('8 gpm')).toBeNull();
});

test('a pump that would work, and depends on its pipe, is not called too strong or too weak', () => {
  const { rows } = tableOf({ ...unrated, status: { dropPipe: 'installed' } });
  const past = rows.filter(({ does, why }) => does === 'depends' && why.variant === 'overRange');
  expect(past.length).toBeGreaterThan(0);
  for (const row of past) expect(said(row).why).toMatch(/Runs past its best range: 1\.\d+ times its rated flow/);
});
