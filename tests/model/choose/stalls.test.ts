/** A pump that lifts nothing from where the water may fall to runs on against a shut house: it is no first choice. */
import { expect, test } from 'vitest';
import { choosePump, type PumpRow } from '../../../src/model/choose/choosePump.ts';
import { chooseTank } from '../../../src/model/choose/chooseTank.ts';
import { solve, type Plan } from '../../../src/model/index.ts';
import { setDepths } from '../../../src/model/place/setDepths.ts';
import { lowestLevel } from '../../../src/model/figures/lowestLevel.ts';
import { levelAtNoFlow } from '../../../src/model/figures/curves.ts';
import { fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import { show, toFeet, toGpm, toPsi } from '../../../src/model/units.ts';
import { choose } from '../../../src/words/en/choose.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayInTheWay, sayPumpRow } from '../../../src/words/sayChoice.ts';
import { planOf } from '../../plans/build.ts';

const us = show('us');
const words = { ...en, choose };

/** Blown with air at what the house wants, and never pumped. */
const blown = planOf({
  format: 'wellcut-plan/1',
  units: 'us',
  site: { frostDepth: '48 in' },
  well: {
    depth: '305 ft',
    casing: { material: 'steel', size: '6 in', bottom: '42 ft', height: '18 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
    yield: '8 gpm',
    yieldFrom: 'air lift',
  },
  water: { staticLevel: '35 ft', pumping: { kind: 'yield only' } },
  house: { people: 5, distance: '90 ft', rise: '12 ft', line: { material: 'PE', size: '1 in', rating: '200 psi' } },
});

function tableOf(plan: Plan) {
  const table = choosePump(plan);
  if (table.kind === 'refused') throw new Error(JSON.stringify(table.why));
  return table;
}
const said = (row: PumpRow) => sayPumpRow(row, words, us);
const fit = ({ does }: PumpRow) => does === 'yes' || does === 'depends';

/** The deepest water that it lifts, over the lowest that its intake or probe lets the water fall to [m]. */
function overItsLowest({ solution: { facts } }: PumpRow): number {
  return (levelAtNoFlow(facts, { end: 'least', tank: 'cutIn' }) ?? Infinity) - lowestLevel(facts).depth;
}

test('of pumps that hang on an unknown level that one is first which still works within its range at the lowest', () => {
  const { rows } = tableOf(blown);
  // Common practice, no source: in 305 ft of rock at 8 gpm the trade hangs 7 gpm with 1 hp near the bottom, guarded.
  expect(rows[0]).toMatchObject({ key: '7 gpm, 1 hp', does: 'depends' });
  expect(rows[0]?.figures.range).toBeGreaterThanOrEqual(0.5);
  expect(toFeet(rows[0]?.solution.facts.pump.setting ?? 0)).toBeGreaterThan(230);
});

test('none that may be chosen hangs where nobody put it, nor where it lifts nothing before its probe acts', () => {
  for (const plan of [blown, { ...blown, pump: { setting: '283 ft', lowLevelCutOff: '281 ft' } }] as Plan[]) {
    const { rows } = tableOf(plan);
    expect(rows.some(fit)).toBe(true);
    for (const row of rows.filter(fit)) {
      expect(overItsLowest(row), row.key).toBeGreaterThan(-0.01);
      expect(row.solution.facts.pump.lowLevelCutOff, row.key).not.toBeNull();
    }
  }
});

test('setting the depths after a choice turns no verdict', () => {
  const [first] = tableOf(blown).rows;
  if (first === undefined) throw new Error('no row');
  const placed = setDepths(first.plan).plan;
  const again = tableOf(placed).rows.find(({ isPlans }) => isPlans);
  expect(again).toMatchObject({ key: first.key, does: first.does });
});

test('the band of a pump does not turn on where it hangs meanwhile', () => {
  const at = (setting: string, lowLevelCutOff: string) =>
    solve({
      ...blown,
      pump: { setting, lowLevelCutOff, power: '3/4 hp', curve: { kind: 'generic', flow: '10 gpm' } },
    } as Plan).bands.find(({ setting: of }) => of === 'pump.setting')?.to;
  expect(at('283 ft', '281 ft')).toBeCloseTo(at('160 ft', '158 ft') ?? 0, 2);
});

test('what a row lacks stands beside the figures of the same water', () => {
  const plans: Plan[] = [blown, { ...blown, water: { staticLevel: '35 ft', staticLowest: '60 ft' } } as Plan];
  let seen = 0;
  for (const row of plans.flatMap((plan) => tableOf(plan).rows)) {
    if (row.does !== 'no') continue;
    if (row.why.variant === 'givesLittle') {
      expect(toGpm(row.figures.flow ?? 0), row.key).toBeCloseTo(toGpm(row.why.numbers.flow), 6);
      seen++;
    }
    if (row.why.variant === 'lacksPressure') {
      expect(toPsi(row.figures.spare ?? 0), row.key).toBeCloseTo(toPsi(row.why.numbers.spare), 6);
      seen++;
    }
  }
  expect(seen).toBeGreaterThan(5);
});

const dug = planOf({
  format: 'wellcut-plan/1',
  units: 'us',
  site: { frostDepth: '40 in' },
  well: {
    depth: '32 ft',
    casing: { material: 'concrete', size: '36 in', insideDiameter: '36 in', bottom: '32 ft', height: '24 in' },
    intake: { kind: 'dug', diameter: '36 in' },
  },
  water: { staticLevel: '14 ft', staticLowest: '21 ft' },
  house: {
    demand: '6 gpm',
    cutIn: '30 psi',
    cutOut: '50 psi',
    distance: '50 ft',
    rise: '6 ft',
    line: { material: 'PE', size: '1 in', rating: '160 psi' },
  },
});

test('where no depth has water enough over the intake and room under the motor, that is told over the table', () => {
  const { rows, inTheWay } = tableOf(dug);
  expect(rows.some(fit)).toBe(false);
  expect(inTheWay.map(({ variant }) => variant)).toEqual(['noDepth']);
  const [told] = inTheWay.map((each) => sayInTheWay(each, words, us));
  expect(told).toMatch(/under the water at rest it would have to go to 31 ft, and 20\.5 ft is as deep as it may/);
  expect(told).toMatch(/a well that is 10\.5 ft deeper\..*licensed contractor.*never go down into the well/);
  expect(told).not.toMatch(/while pumping|smaller flow/);
});

test('water that does not stand over the intake at rest is not brought back by pumping less', () => {
  const solution = solve(dug);
  const index = solution.findings.findIndex(({ rule }) => rule === 'PR-02');
  const offered = fixesOf(dug, solution)[index];
  expect(offered?.button ?? offered?.words).not.toMatchObject({ variant: 'pumpLess' });
});

/** Everything hangs already, and the pump is to be replaced. */
const hangs = planOf({
  ...JSON.parse(JSON.stringify(blown)),
  well: { ...blown.well, depth: '260 ft', yield: '6 gpm', yieldFrom: 'pump' },
  water: { staticLevel: '48 ft', pumping: { kind: 'level', level: '105 ft', flow: '6 gpm' } },
  house: { ...blown.house, people: undefined, demand: '7 gpm', cutIn: '30 psi', cutOut: '50 psi' },
  pump: { setting: '200 ft', power: '1/2 hp', curve: { kind: 'generic', flow: '10 gpm' }, voltage: '230 V', wires: 2 },
  dropPipe: { material: 'PE', size: '1 in', rating: '160 psi' },
  status: { 'pump.setting': 'installed', dropPipe: 'installed' },
});

test('a pump that lacks only dry-run protection is chosen with it, where its depth stands as well', () => {
  const { rows } = tableOf({ ...hangs, dropPipe: { ...hangs.dropPipe, rating: '250 psi' } } as Plan);
  expect(rows.map(({ why }) => why.variant)).not.toContain('unguarded');
  const guarded = rows.find(({ does, parts }) => fit({ does } as PumpRow) && parts.depth.length > 0);
  expect(guarded?.parts.depth).toEqual([{ path: 'pump.lowLevelCutOff', to: '198 ft' }]);
  expect(guarded && said(guarded).why).toContain('With dry-run protection, a probe at 198 ft.');
});

test('of new pipe the weakest class is named in which a pump does', () => {
  const { inTheWay } = tableOf(hangs);
  const newPipe = inTheWay.find(({ variant }) => variant === 'newPipe');
  expect(newPipe && sayInTheWay(newPipe, words, us)).toContain('with new PE of 200 psi');
});

test('a pump whose motor nobody sized wants its power said before a tank, and not to be chosen again', () => {
  const own: Plan = {
    ...hangs,
    pump: {
      setting: '200 ft',
      curve: {
        kind: 'points',
        points: [
          ['0 gpm', '330 ft'],
          ['5 gpm', '290 ft'],
          ['10 gpm', '210 ft'],
        ],
      },
    },
  } as Plan;
  expect(chooseTank(own)).toMatchObject({ kind: 'refused', why: 'powerFirst' });
});

test('a probe at the intake or under it guards nothing, and that is more than a note', () => {
  const at = (lowLevelCutOff: string) =>
    solve({ ...hangs, pump: { ...hangs.pump, lowLevelCutOff } } as Plan).verdicts['PR-08'];
  expect([at('195 ft'), at('199.5 ft'), at('200 ft'), at('230 ft')]).toEqual(['ok', 'note', 'warning', 'warning']);
});

/** Pumped at a little less than the house wants, and no dry season told. */
const tested = planOf({
  format: 'wellcut-plan/1',
  units: 'us',
  site: { frostDepth: '42 in' },
  well: {
    depth: '300 ft',
    casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '18 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
  },
  water: { staticLevel: '40 ft', pumping: { kind: 'level', level: '95 ft', flow: '7 gpm' } },
  house: {
    demand: '8 gpm',
    distance: '60 ft',
    rise: '10 ft',
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
    reliefValve: true,
  },
});

test('a well that gives less than is asked is served first by what draws more of its store', () => {
  const [first, second] = tableOf(tested).rows.filter(fit);
  expect(first).toMatchObject({ key: '7 gpm, 3/4 hp' });
  expect(toFeet(first?.solution.facts.pump.setting ?? 0)).toBeGreaterThan(200);
  expect(first?.power ?? 0).toBeLessThanOrEqual(second?.power ?? Infinity);
});

test('where a row hangs does not turn on which was written into the plan before', () => {
  const { rows } = tableOf(tested);
  const settings = (of: readonly PumpRow[]) =>
    Object.fromEntries(of.filter(fit).map(({ key, solution }) => [key, toFeet(solution.facts.pump.setting)]));
  const before = settings(rows);
  for (const row of rows.filter(fit).slice(0, 3)) {
    const after = settings(tableOf(row.plan).rows);
    // In the lower half of the water, guarded, it hangs well: a few feet more are not worth a move.
    for (const [key, setting] of Object.entries(after))
      expect(setting, `${row.key}, ${key}`).toBeGreaterThan((40 + (before[key] ?? setting)) / 2);
  }
});

test('a store that is drawn in the middle of the peak does not carry it: a tested well gives little while its water stands high', () => {
  // By hand: 6 in open hole less 1 in PE at 1.40 gal/ft, 55 ft of fall, 7 gpm in when it is drawn down, on the average half
  // of that before: 8 gpm are there for 77 / (8 - 3.5) = 17 min, then 1 gpm is lacking for 43 min, 9 % of 480 gal.
  const at97 = {
    setting: '97 ft',
    lowLevelCutOff: '95 ft',
    power: '3/4 hp',
    curve: { kind: 'generic', flow: '10 gpm' },
  };
  expect(solve({ ...tested, pump: at97 } as Plan).verdicts['PR-55']).toBe('warning');
  // Twice as wide a hole holds four times as much, and lasts the hour.
  const wide = {
    ...tested.well,
    casing: { ...tested.well.casing, size: '12 in' },
    intake: { kind: 'open hole', diameter: '12 in' },
  };
  expect(solve({ ...tested, well: wide, pump: at97 } as Plan).verdicts['PR-55']).toBe('note');
});

/** An open tank on a hill, and a line that bears less than a strong pump can put on it. */
const cistern = {
  ...tested,
  well: { ...tested.well, yield: '1 gpm', yieldFrom: 'pump' },
  water: { staticLevel: '40 ft', pumping: { kind: 'level', level: '250 ft', flow: '1 gpm' } },
  house: { ...tested.house, kind: 'open tank', reliefValve: undefined, people: 4 },
} as Plan;

test('an open tank of unknown size is asked for, since the pump follows from it', () => {
  const { rows } = tableOf(cistern);
  expect(rows.some(({ does }) => does === 'yes')).toBe(false);
  for (const row of rows.filter(fit)) expect(row.asks.map(({ variant }) => variant)).toContain('openTank');
  const { rows: known } = tableOf({ ...cistern, house: { ...cistern.house, tank: '1000 gal' } } as Plan);
  expect(known.flatMap(({ asks }) => asks.map(({ variant }) => variant))).not.toContain('openTank');
});

test('a row that puts more on the line than it bears says so', () => {
  const weak = {
    ...cistern,
    house: { ...cistern.house, tank: '1000 gal', line: { material: 'PE', size: '1 in', rating: '100 psi' } },
  } as Plan;
  const over = tableOf(weak).rows.filter((row) => fit(row) && row.solution.verdicts['PR-61'] === 'danger');
  expect(over.length).toBeGreaterThan(0);
  for (const row of over) expect(said(row).why).toMatch(/line/);
});
