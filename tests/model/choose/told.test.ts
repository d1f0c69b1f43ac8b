/** What a row says: nothing that the water cannot do, and everything that it rests on. */
import { expect, test } from 'vitest';
import { choosePump, type PumpRow, type PumpTable } from '../../../src/model/choose/choosePump.ts';
import { chooseTank } from '../../../src/model/choose/chooseTank.ts';
import { choosing } from '../../../src/model/choose/choosing.ts';
import { fitOf } from '../../../src/model/choose/fit.ts';
import { lowestStatic } from '../../../src/model/figures/lowestPumping.ts';
import { solve, withValue, type Plan } from '../../../src/model/index.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { gpm, show } from '../../../src/model/units.ts';
import { choose } from '../../../src/words/en/choose.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayInTheWay, sayPumpRow } from '../../../src/words/sayChoice.ts';
import { lowYield, rock, screened } from './jobs.ts';

const words = { ...en, choose };
const us = show('us');

function tableOf(plan: Plan): Extract<PumpTable, { kind: 'rows' }> {
  const table = choosePump(plan);
  if (table.kind === 'refused') throw new Error(`refused: ${table.why.variant}`);
  return table;
}
const said = (row: PumpRow) => sayPumpRow(row, words, us);
const of = (plan: Plan, key: string) => {
  const row = tableOf(plan).rows.find((each) => each.key === key);
  if (row === undefined) throw new Error(`no row ${key}`);
  return row;
};

test('dry-run protection that a row would plan is named with its depth, and without it the row does not hold', () => {
  const rows = tableOf(lowYield).rows.filter(({ does }) => does === 'yes');
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows) {
    const probe = row.solution.facts.pump.lowLevelCutOff;
    if (typeof probe !== 'number') throw new Error('no probe');
    expect(said(row).why).toContain(`With dry-run protection, a probe at ${us.depth(probe)}.`);
    expect(said(row).depth).toContain(`probe at ${us.depth(probe)}`);
    const bare = solve(withValue(row.plan, 'pump.lowLevelCutOff', undefined));
    expect(fitOf(bare, row.rated).does).toBe('no');
  }
});

test('a probe that stands in the plan is no news, nor is one in a well that keeps up', () => {
  const [best] = tableOf(lowYield).rows;
  if (best === undefined) throw new Error('no row');
  const chosen = of(choosing(lowYield, best).plan, best.key);
  expect(said(chosen).why).not.toContain('probe');
  for (const row of tableOf(rock).rows) {
    if (!row.parts.depth.some(({ path }) => path === 'pump.lowLevelCutOff'))
      expect(said(row).depth).not.toContain('probe');
  }
});

test('a pump that lifts nothing is set against the water at rest, or stalls while it draws the bore down', () => {
  const rows = [rock, lowYield, { ...lowYield, pump: { setting: '400 ft', lowLevelCutOff: '390 ft' } }].flatMap(
    (plan) => tableOf(plan).rows.filter(({ why }) => why.variant === 'liftsNone'),
  );
  const kinds = new Set<string>();
  for (const row of rows) {
    const rest = lowestStatic(row.solution.facts) ?? 0;
    const { lifts, left, spare } = row.figures;
    expect([left, spare]).toEqual([null, null]);
    const { why } = said(row);
    if (lifts === null || lifts <= 0) {
      expect(why).toBe('Does not fill the tank from any depth.');
      continue;
    }
    kinds.add(lifts > rest ? 'stalls' : 'rests');
    expect(why).toBe(
      lifts > rest
        ? `Too weak to draw the bore down: it stalls at ${us.depth(lifts)}.`
        : `Lifts water from ${us.depth(lifts)} at the most, and the water at rest stands at ${us.depth(rest)}.`,
    );
  }
  expect(kinds).toEqual(new Set(['stalls', 'rests']));
});

test('a place past the range never reads as the limit', () => {
  const at = (range: number) => choose.pumps.whys.overRange({ range, most: 1.3 });
  expect(at(1.31)).toContain('Works at 1.31 times its rated flow, over 1.3:');
  expect(at(1.302)).toContain('Works at 1.31 times');
  expect(at(1.4)).toContain('Works at 1.4 times');
  expect(choose.pumps.whys.underRange({ range: 0.498, least: 0.5 })).toContain('Works at 0.49 times');
});

test('what alone keeps every pump from doing the job is said, and nothing where some do', () => {
  const deep: Plan = {
    ...lowYield,
    dropPipe: {
      material: 'PVC',
      standard: 'ASTM D1785',
      size: '1-1/4 in',
      ratio: 'schedule 80',
      sectionLength: '20 ft',
    },
    house: { ...lowYield.house, rise: '130 ft' },
  };
  const threaded = tableOf(deep);
  expect(threaded.inTheWay.map(({ variant }) => variant)).toEqual(['weakPipe']);
  const steel = tableOf({
    ...deep,
    dropPipe: { material: 'galvanized steel', size: '1-1/4 in', sectionLength: '20 ft' },
  });
  const able = steel.rows.filter((row) => row.does === 'yes').map(({ name }) => choose.pumps.name(name));
  expect(able.length).toBeGreaterThan(0);
  expect(threaded.inTheWay.map((each) => sayInTheWay(each, words, us))).toEqual([
    `The threaded PVC drop pipe does not bear stronger pumps: with galvanized steel ${able.length > 2 ? `${able.length} of these do, first ${able[0] ?? ''}` : able.length === 2 ? `${able.join(' and ')} do` : `${able[0] ?? ''} does`}, heavier to lift.`,
  ]);

  const limited = tableOf({ ...rock, pump: { ...rock.pump, flowLimiter: '5 gpm' } });
  expect(limited.inTheWay).toEqual([
    {
      variant: 'flowLimiter',
      numbers: {
        limit: gpm(5),
        able: tableOf(rock)
          .rows.filter((row) => row.does === 'yes')
          .map(({ name }) => name),
      },
    },
  ]);
  for (const plan of [rock, lowYield, screened]) expect(tableOf(plan).inTheWay).toEqual([]);
});

/** ISO 1452-2 pipe of these sizes starts at PN 8 in the tables here; what is chosen is a class that they have. */
test.each(['40 mm', '50 mm', '63 mm', '90 mm'])('PVC of %s in metres: every row is a plan that can be read', (size) => {
  for (const ratio of [undefined, 'PN 8', 'PN 10']) {
    const plan = {
      ...screened,
      dropPipe: { material: 'PVC', standard: 'ISO 1452-2', size, ...(ratio !== undefined && { ratio }) },
      pump: { ...screened.pump, setting: '20 m' },
    } as Plan;
    const { rows, inTheWay } = tableOf(plan);
    for (const row of rows) {
      expect(readPlan(JSON.parse(JSON.stringify(row.plan))).ok).toBe(true);
      expect(row.solution.facts.dropPipe.wallClass).not.toBe('PN 6');
    }
    // Socket pipe cannot be threaded: the steel pipe nearest to its outside is tried instead.
    if (rows.every(({ does }) => does === 'no')) expect(inTheWay.map(({ variant }) => variant)).toContain('weakPipe');
  }
});

test('with the frequency unsaid the band is too wide for a job that either does', () => {
  const unsaid: Plan = {
    ...screened,
    site: { frostDepth: '0 m', frostFrom: 'local code', waterTemperature: '32 degC' },
    well: {
      depth: '90 m',
      depthsFrom: 'casing top',
      casing: { material: 'PVC', size: '6 in', schedule: 'schedule 40', bottom: '90 m', height: '0.4 m' },
      intake: { kind: 'screen', screens: [{ top: '70 m', bottom: '88 m', slot: '1 mm', openArea: '6 %' }] },
      yield: '60 L/min',
      yieldFrom: 'pump',
    },
    water: { staticLevel: '35 m', staticLowest: '41 m', pumping: { kind: 'level', level: '48 m', flow: '60 L/min' } },
    house: {
      demand: '45 L/min',
      cutIn: '2 bar',
      cutOut: '3.5 bar',
      distance: '40 m',
      rise: '4 m',
      line: { material: 'PVC', size: '1-1/4 in', ratio: 'schedule 40' },
    },
    top: { kind: 'seal' },
    pump: { setting: '60 m', voltage: '230 V' },
    dropPipe: { material: 'galvanized steel', size: '1-1/4 in', sectionLength: '6 m' },
  };
  const { rows, inTheWay } = tableOf(unsaid);
  expect(rows.some(({ does }) => does === 'yes' || does === 'depends')).toBe(false);
  expect(inTheWay.map(({ variant }) => variant)).toContain('frequency');
});

test('with variable speed the drive’s maker names motor and wires', () => {
  const rows = tableOf({ ...rock, house: { ...rock.house, control: 'variable speed' } }).rows;
  for (const row of rows) {
    expect(said(row).wire).toMatch(/motor and wires as the drive’s maker asks$/);
    expect(said(row).wire).not.toMatch(/control box|-wire/);
  }
});

test('with variable speed no row says how many wires the motor has, nor keeps what was said of another', () => {
  const small = { ...rock.pump, setting: '150 ft', power: '3/4 hp', curve: { kind: 'generic', flow: '10 gpm' } };
  const written = (control: string | undefined) =>
    tableOf({
      ...rock,
      house: { ...rock.house, ...(control !== undefined && { control }) },
      pump: { ...small, wires: 2 },
    } as Plan).rows.flatMap(({ parts }) => parts.pump.filter(({ path }) => path === 'pump.wires'));
  expect(new Set(written(undefined).map(({ to }) => to))).toEqual(new Set([3]));
  expect(written('variable speed').length).toBeGreaterThan(0);
  expect(new Set(written('variable speed').map(({ to }) => to))).toEqual(new Set([undefined]));
  for (const { parts, solution } of tableOf({
    ...rock,
    house: { ...rock.house, control: 'variable speed' },
    pump: { ...small, wires: 2 },
  } as Plan).rows)
    if (parts.pump.some(({ path }) => path === 'pump.wires')) expect(solution.verdicts['PR-59']).not.toBe('danger');
});

test('no tank is chosen for a well that flows', () => {
  const flowing = {
    ...rock,
    water: { ...rock.water, staticLevel: '-2 ft' },
    pump: { power: '3/4 hp', curve: { kind: 'generic', flow: '10 gpm' } },
  } as Plan;
  expect(chooseTank(flowing)).toEqual({ kind: 'refused', why: 'flowing' });
  expect(chooseTank({ ...flowing, water: rock.water } as Plan).kind).toBe('rows');
});

test('a pump for which no usual tank is large enough depends on tanks together', () => {
  const large: Plan = {
    ...rock,
    house: { ...rock.house, demand: '17 gpm' },
    well: { ...rock.well, yield: '60 gpm' },
    water: { staticLevel: '45 ft', pumping: { kind: 'level', level: '60 ft', flow: '30 gpm' } },
  } as Plan;
  const none = tableOf(large).rows.filter(({ tank }) => tank === null);
  expect(none.length).toBeGreaterThan(0);
  expect(none.map(({ does }) => does)).not.toContain('yes');
  expect(none.some(({ why }) => why.variant === 'tanksTogether')).toBe(true);
  // An open tank needs none, and the drive a small one.
  const open = tableOf({ ...large, house: { ...large.house, control: 'variable speed' } } as Plan);
  expect(open.rows.some(({ does, tank }) => does === 'yes' && tank === null)).toBe(true);
});
