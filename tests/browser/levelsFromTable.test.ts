/** The readings are made up; the foot is 0.3048 m exactly (NIST Special Publication 811, appendix B). */
import { expect, test } from 'vitest';
import { waterFromTable } from '../../src/app/form/levelsFromTable.ts';
import { withValue } from '../../src/model/plan/editPlan.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import type { Plan } from '../../src/model/plan/schema.ts';
import { readGroundwaterLevels, type LevelTable } from '../../src/model/records/groundwaterLevels.ts';
import rock from '../../static/samples/tamarack-ridge.json';

const reading = readPlan(rock);
if (!reading.ok) throw new Error('the sample does not read');
const plan: Plan = reading.plan;

function tableOf(...rows: readonly string[]): LevelTable {
  const table = readGroundwaterLevels(['lev_dt\tlev_va\tlev_status_cd', '10d\t12s\t1s', ...rows].join('\n'));
  if (!table.ok) throw new Error(table.problem);
  return table;
}

const THREE = tableOf('2020-05-01\t50\t', '2020-10-01\t60\t', '2021-05-01\t54.25\t');

test('the latest is the static level, with the highest and lowest beside it and no fall in a dry season', () => {
  const { dryFall, ...before } = plan.water;
  expect(dryFall).toBe('15 ft');
  expect(waterFromTable(plan, THREE)).toEqual({
    ...before,
    staticLevel: '54.25 ft',
    staticHighest: '50 ft',
    staticLowest: '60 ft',
  });
});

test('a table of one level, and one above the ground, still make a plan that reads', () => {
  const water = waterFromTable(plan, tableOf('2020\t-1.5\t'));
  expect(water).toMatchObject({ staticLevel: '-1.5 ft', staticHighest: '-1.5 ft', staticLowest: '-1.5 ft' });
  expect(readPlan({ ...plan, water }).ok).toBe(true);
});

test('where the record counts from the top of the casing, so do its levels: 16 in more', () => {
  const counted = withValue(plan, 'well.depthsFrom', 'casing top');
  expect(waterFromTable(counted, THREE)).toMatchObject({ staticHighest: '51.33 ft', staticLowest: '61.33 ft' });
});

test('a metric record gets metres: 50 ft are 15.24 m', () => {
  const metric: Plan = { ...withValue(plan, 'water.staticLevel', 'unknown'), units: 'metric' };
  expect(waterFromTable(metric, THREE)).toMatchObject({ staticHighest: '15.24 m', staticLowest: '18.288 m' });
});

test('without a reading at rest there is nothing to write', () => {
  expect(waterFromTable(plan, tableOf('2020-05-01\t50\tP'))).toBeNull();
});
