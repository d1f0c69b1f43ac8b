/**
 * Pumps that an adviser would sign, in wells where nothing fits with all that is to spare: what works is told apart from
 * what does not, and a pump far too large for its well is none. What the trade would hang is common practice, from memory.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { choosePump, type PumpRow } from '../../../src/model/choose/choosePump.ts';
import { choosing } from '../../../src/model/choose/choosing.ts';
import { solve, type Plan } from '../../../src/model/index.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { show, toFeet, toGpm } from '../../../src/model/units.ts';
import { choose } from '../../../src/words/en/choose.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayOverTable, sayPumpRow } from '../../../src/words/sayChoice.ts';
import { SOUND } from '../../wells/sound.ts';

const words = { ...en, choose };

function tableOf(plan: unknown) {
  const read = readPlan(plan);
  if (!read.ok) throw new Error('not read');
  const table = choosePump(read.plan);
  if (table.kind === 'refused') throw new Error(`refused: ${table.why.variant}`);
  return table;
}
const sound = (name: string) => SOUND.find((well) => well.name === name)?.plan;
const plans = (rows: readonly PumpRow[]) => rows.find(({ isPlans }) => isPlans);

/** Hard rock, blown with air at 6 gpm, for a house that wants 8: the bore has to carry the peak. */
const blown: Plan = {
  format: 'wellcut-plan/1',
  title: 'Quarry Lane',
  site: { frostDepth: '42 in', frostFrom: 'local code' },
  well: {
    depth: '325 ft',
    casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '18 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
    yield: '6 gpm',
    yieldFrom: 'air lift',
  },
  water: { staticLevel: '45 ft', pumping: { kind: 'yield only' } },
  house: {
    demand: '8 gpm',
    cutIn: '40 psi',
    cutOut: '60 psi',
    distance: '80 ft',
    rise: '5 ft',
    tank: '44 gal',
    reliefValve: true,
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
  },
  top: { kind: 'pitless', depth: '5 ft' },
  pump: {
    setting: '280 ft',
    power: '1-1/2 hp',
    curve: { kind: 'generic', flow: '10 gpm' },
    voltage: '230 V',
    lowLevelCutOff: true,
    flowLimiter: true,
  },
  dropPipe: { material: 'PE', size: '1 in', rating: '200 psi' },
  wire: { size: '12 AWG' },
};

test('a well that was blown at 6 gpm: 10 gpm and 1-1/2 hp, hung where it gives enough, and no 20 gpm pump at all', () => {
  const { rows } = tableOf(blown);
  expect(rows[0]).toMatchObject({ key: '10 gpm, 1-1/2 hp', does: 'yes' });
  const [best] = rows;
  if (best === undefined) throw new Error('no row');
  // From 280 ft it still gives more than four fifths of what is wanted with the last water: it stays there.
  expect(best.movedFrom).toBeNull();
  expect(toFeet(solve(choosing(blown, best).plan).facts.pump.setting)).toBeCloseTo(280, 6);
  // Typed deeper than it gives so much from, it is hung higher, and that is said.
  const deeper: Plan = { ...blown, pump: { ...blown.pump, setting: '310 ft' } };
  const [higher] = tableOf(deeper).rows;
  if (higher === undefined) throw new Error('no row');
  expect(higher).toMatchObject({ key: '10 gpm, 1-1/2 hp', does: 'yes' });
  expect(toFeet(higher.movedFrom ?? 0)).toBeCloseTo(310, 6);
  const { facts } = higher.solution;
  expect(toFeet(facts.pump.setting)).toBeGreaterThan(280);
  expect(sayPumpRow(higher, words, show('us')).why).toContain(
    `Hung at ${show('us').depth(facts.pump.setting)} instead of 310 ft.`,
  );
  for (const row of rows) if (toGpm(row.rated) > 16.01) expect(row.does).toBe('no');
  const large = rows.find(({ key }) => key === '20 gpm, 3 hp');
  expect(large?.why).toMatchObject({ variant: 'farOver' });
});

test('nor is it hung elsewhere where it stands', () => {
  const { rows } = tableOf({ ...blown, status: { 'pump.setting': 'installed' } });
  const row = plans(rows);
  expect(row?.movedFrom).toBeNull();
  if (row === undefined) throw new Error('no row');
  const said = sayPumpRow(row, words, show('us'));
  expect(said.does).toBe('Yes');
  expect(said.why).toBe(
    'Gives 14 gpm from the full bore and still 7.8 gpm with it drawn down to 280 ft. The well itself gives 3 to 6 gpm: measure what it gives to a pump. While the bore is full it runs past its best range: fit a flow-limiting valve of 13 gpm. The tank takes 11 gal: 68 s of running at 10 gpm; 2 min is the usual least.',
  );
});

test('a pump within the check and past the range of choosing works, but runs past its best range', () => {
  const file = new URL('../../../static/samples/willow-dale.json', import.meta.url);
  const { rows } = tableOf(JSON.parse(readFileSync(file, 'utf8')));
  const row = plans(rows);
  if (row === undefined) throw new Error('no row');
  expect(row.solution.verdicts['PR-58']).toBe('ok');
  const said = sayPumpRow(row, words, show('metric'));
  expect([said.does, said.why]).toEqual([
    'Works, but',
    'Runs past its best range: 1.34 times its rated flow; choosing asks for 1.3 at most.',
  ]);
  expect(rows[0]?.does).toBe('yes');
});

test.each(['Brzozowy Las', 'Heidekamp', 'Spruce Cove', 'Red Clay Road'])(
  '%s: a sound well whose pumps all run past their best range is not told that none does',
  (name) => {
    const table = tableOf(sound(name));
    expect(table.rows[0]?.does).toBe('works');
    // Nothing stands in the way; a valve that would do is named.
    expect(sayOverTable(table, words, show('us'))?.[0]).toBe(choose.pumps.noneWithRoom);
    expect(table.inTheWay.filter(({ variant }) => variant !== 'noFlowLimiter')).toEqual([]);
    // Its own pump, that the trade hangs there, is among what works.
    expect(plans(table.rows)?.does).toBe('works');
  },
);

test('in no sound well is its own pump told to be none', () => {
  const told = SOUND.map(({ name, plan }) => [name, plans(tableOf(plan).rows)?.does] as const);
  expect(told.filter(([, does]) => does === 'no')).toEqual([]);
});

test('in no sound well is a pump first that gives more than the well does, or five times what is wanted', () => {
  for (const { name, plan } of SOUND) {
    const [best] = tableOf(plan).rows;
    const { facts, values } = best?.solution ?? { facts: null, values: null };
    if (best === undefined || facts === null) throw new Error(name);
    expect(`${name} ${(best.figures.share ?? 0) < 3}`).toBe(`${name} true`);
    const gives = facts.well.yield;
    const demand = facts.house.demand ?? 0;
    if (gives !== null && gives >= demand) {
      const most = values?.operatingFlowAtCutInMost ?? 0;
      expect(`${name} ${most <= 1.5 * gives}`).toBe(`${name} true`);
    }
  }
});

test('where nobody knows how far the water falls, a pump that does wherever it is comes before one that may', () => {
  for (const name of ['Birch Hollow', 'Ledge End', 'Kallioniemi']) {
    const { rows } = tableOf(sound(name));
    expect([name, rows[0]?.why.variant]).toEqual([name, 'unknownLevel']);
  }
});
