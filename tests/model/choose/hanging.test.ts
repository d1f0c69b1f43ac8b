/**
 * Where a pump of the table hangs, and the pipe and wire that it gets there. How a driller hangs pumps is common practice,
 * no source: in a well that gives little deep in the store, under a dry season that nobody told with more water over it.
 */
import { expect, test } from 'vitest';
import { choosePump, type PumpRow } from '../../../src/model/choose/choosePump.ts';
import { withValue, type Plan } from '../../../src/model/index.ts';
import { openYield } from '../../../src/model/rules/openFacts.ts';
import { feet, show, toFeet } from '../../../src/model/units.ts';
import { choose } from '../../../src/words/en/choose.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayOverTable, sayPumpRow } from '../../../src/words/sayChoice.ts';
import { blownRock, deepPoor, heavy, justEnough, metricRock, shallowRich, slimCasing } from './hardWells.ts';
import { lowYield, rock } from './jobs.ts';

const words = { ...en, choose };
const us = show('us');

function tableOf(plan: Plan) {
  const table = choosePump(plan);
  if (table.kind === 'refused') throw new Error(`refused: ${table.why.variant}`);
  return table;
}
const rowsOf = (plan: Plan): readonly PumpRow[] => tableOf(plan).rows;
const named = (rows: readonly PumpRow[], key: string): PumpRow => {
  const row = rows.find((each) => each.key === key);
  if (row === undefined) throw new Error(key);
  return row;
};
const settingOf = ({ solution }: PumpRow) => toFeet(solution.facts.pump.setting);

test('the same pump at the same depth gets the same pipe and wire, whatever depth was typed before', () => {
  let met = 0;
  for (const plan of [blownRock, deepPoor, metricRock, lowYield, rock]) {
    const bottom = Number.parseFloat(plan.well.depth ?? '');
    const unit = plan.units === 'metric' ? 'm' : 'ft';
    const depths = [undefined, ...[0.45, 0.7, 0.93].map((share) => `${Math.round(share * bottom)} ${unit}`)];
    const gear = new Map<string, string>();
    for (const typed of depths) {
      const own = typed === undefined ? plan : withValue(plan, 'pump.setting', typed);
      for (const row of rowsOf(withValue(own, 'pump.lowLevelCutOff', undefined))) {
        const { setting: depth, lowLevelCutOff } = row.solution.facts.pump;
        const at = `${plan.title} ${row.key} at ${depth.toFixed(6)} ${lowLevelCutOff}`;
        const { dropPipe, wire } = row.plan;
        const now = JSON.stringify([dropPipe, wire]);
        if (gear.has(at)) {
          met++;
          expect([at, now]).toEqual([at, gear.get(at)]);
        }
        gear.set(at, now);
      }
    }
  }
  expect(met).toBeGreaterThan(40);
});

/** 5.6 ft/s is what 15 gpm come to in a bore of 1.049 in: 0.4085 gpm / in2, handbooks of pump practice. */
test('the drop pipe is wide enough for what the pump itself gives', () => {
  const narrow = withValue(heavy, 'dropPipe.size', '1 in');
  for (const plan of [narrow, rock, shallowRich]) {
    for (const { does, key, figures, solution } of rowsOf(plan)) {
      if (does === 'no' || figures.flow === null) continue;
      const velocity = figures.flow / ((Math.PI / 4) * solution.facts.dropPipe.insideDiameter ** 2);
      expect([key, velocity <= feet(5.6) * 1.01]).toEqual([key, true]);
    }
  }
  const row = named(rowsOf(narrow), '20 gpm, 3 hp');
  expect(row.solution.facts.dropPipe.nominalSize).toBe('1-1/4 in');
});

test('in rock that gives less than is wanted it hangs deep in the store, and what draws more of it comes first', () => {
  const rows = rowsOf(blownRock);
  const [best] = rows;
  if (best === undefined) throw new Error('no row');
  expect(best.key).toBe('10 gpm, 1-1/2 hp');
  expect(settingOf(best)).toBeGreaterThan(280);
  expect(settingOf(best)).toBeLessThan(325);
  expect(best.figures.share ?? 0).toBeGreaterThanOrEqual(0.8);
  // The water there is under an inflow: said, and no reason for a pump that leaves the store unused.
  expect(sayPumpRow(best, words, us).why).toContain('below the inflow at 188 ft.');
  const sure = rows
    .filter(({ does }) => does === 'depends')
    .map(({ solution }) => Math.round((10 * (openYield(solution)?.bad ?? 0)) / (openYield(solution)?.good ?? 1)));
  expect(sure.length).toBeGreaterThan(2);
  expect(sure).toEqual(sure.toSorted((one, other) => other - one));
});

test('no pump is hung as deep as it lifts nothing, and called weak there', () => {
  for (const plan of [deepPoor, blownRock]) {
    for (const { key, why, figures } of rowsOf(plan)) {
      if (why.variant !== 'lacksPressure' || figures.lifts === null) continue;
      expect([key, figures.lifts - why.numbers.level > feet(10)]).toEqual([key, true]);
    }
  }
  const row = named(rowsOf(deepPoor), '5 gpm, 1 hp');
  expect(row.does).toBe('depends');
  expect(row.figures.share ?? 0).toBeGreaterThan(0.8);
  expect(named(rowsOf(deepPoor), '7 gpm, 3/4 hp').why.variant).toBe('storeTooSmall');
});

test('where nobody told the dry season it hangs in the deep half of what the well has', () => {
  const told = withValue(justEnough, 'water.staticLowest', '30 ft');
  const [untold, said] = [justEnough, told].map((plan) => {
    const { solution } = named(rowsOf(withValue(plan, 'pump.flowLimiter', '11 gpm')), '10 gpm, 3/4 hp');
    return toFeet(solution.facts.pump.setting - (solution.lowest?.depth ?? 0));
  });
  expect(said).toBeCloseTo(30, -0.3);
  expect(untold).toBeGreaterThan(35);
  expect(untold).toBeLessThan(41);
  // Ten feet are over it at 42 ft, and the screen ends the room at 48.5.
  const slim = settingOf(named(rowsOf(slimCasing), '10 gpm, 1/2 hp'));
  expect(slim).toBeGreaterThan(45);
  expect(slim).toBeLessThan(48.4);
});

test('weight decides on no pump, and a rig is named', () => {
  const does = (rating: string) => named(rowsOf(withValue(heavy, 'dropPipe.rating', rating)), '15 gpm, 2 hp').does;
  expect([does('250 psi'), does('315 psi')]).toEqual(['yes', 'yes']);
  const said = sayPumpRow(named(rowsOf(heavy), '20 gpm, 3 hp'), words, us);
  expect(said.weight).toMatch(/^3\d\d lb, needs a rig$/);
  expect(said.why).toMatch(/Needs a rig: 3\d\d lb hang on the hook\.$/);
});

test('a pump that does not pass is none, and what would do is said once above the table', () => {
  const said = { ...slimCasing, pump: { diameter: '3.9 in' } };
  const above = (plan: Plan) => (sayOverTable(tableOf(plan), words, us) ?? []).join(' ');
  const able = (plan: Plan) => new Set(rowsOf(plan).map(({ does }) => does));
  // Said, and in the way for sure.
  const tight: Plan = { ...said, top: { kind: 'pitless', protrusion: '1 in' } };
  expect(able(tight)).toEqual(new Set(['no']));
  expect(rowsOf(tight)[0]).toMatchObject({ why: { variant: 'finding', numbers: { finding: { rule: 'PR-21' } } } });
  expect(above(tight)).toContain('A slimmer pump would do; another adapter or top may leave it more room.');
  // As wide as such pumps usually are: it depends on the pump that is bought.
  expect(able(slimCasing)).toEqual(new Set(['depends', 'no']));
  expect(above(slimCasing)).toContain('the pump is 3.9 in wide over its guard. A slimmer pump');
  // Past no adapter, but hardly through the casing.
  const sealed: Plan = { ...said, top: { kind: 'seal' } };
  expect(able(sealed)).toEqual(new Set(['depends', 'no']));
  expect(above(sealed)).toContain('A slimmer pump would do, or a bore that proves wider.');
  // The best of them stays the first.
  expect(rowsOf(sealed)[0]?.key).toBe('10 gpm, 1/2 hp');
});

test('over a table in which none does it is said that a valve would make some do', () => {
  const { rows } = tableOf(justEnough);
  expect(rows.some(({ does }) => does === 'yes' || does === 'depends')).toBe(false);
  const able = rowsOf(withValue(justEnough, 'pump.flowLimiter', '11.5 gpm')).filter((row) => row.does === 'yes');
  const [first] = able.map(({ key }) => key);
  expect(able.length).toBeGreaterThan(2);
  expect(sayOverTable(tableOf(justEnough), words, us)).toContain(
    `With a flow-limiting valve of 11.5 gpm in the drop pipe ${able.length} of these do, first ${first ?? ''}.`,
  );
});

test('what gives over twice the demand is not first where one works that gives up to 1.6 times', () => {
  const [best, ...others] = rowsOf(shallowRich);
  expect(best).toMatchObject({ key: '7 gpm, 1/2 hp', does: 'works' });
  expect(others.find(({ does }) => does === 'yes')?.figures.share ?? 0).toBeGreaterThan(2);
});

test('a pressure that misses what is asked by a hair is not told as if it met it', () => {
  const { lacksPressure } = choose.pumps.whys;
  const asked = 68947.6;
  expect(lacksPressure({ spare: asked - 1000, level: 20, asked }, us)).toBe(
    'Reaches cut-out with a little under 10 psi to spare; 10 psi are wanted.',
  );
  expect(lacksPressure({ spare: -500, level: feet(70), asked }, us)).toBe(
    'Too weak: just short of cut-out with the water at 70 ft.',
  );
});
