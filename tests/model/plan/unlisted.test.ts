import { expect, test } from 'vitest';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { spoiled } from './sample.ts';

test.each([
  ['well.casing.size', '7 in', /^one of .*"6 in"/],
  ['well.casing.schedule', 'schedule 20', /^one of .*"schedule 40"/],
  ['well.casing.material', 'other', /insideDiameter as measured/],
  ['dropPipe.size', '3 in', /^one of .*"1-1\/4 in"/],
  ['dropPipe.standard', 'ASTM D1785', /"ASTM D2239"/],
  ['dropPipe.ratio', 'SIDR 8', /"SIDR 9"/],
  ['house.line.size', '3 in', /"1 in"/],
])('%s %s is answered with what there is', (path, value, write) => {
  const reading = readPlan(spoiled(path, value));
  expect(reading.ok ? [] : reading.problems.map((problem) => write.test(problem.write))).toEqual([true]);
});

test('a measured inside diameter stands for a casing that no table has', () => {
  expect(readPlan(spoiled('well.casing', { material: 'steel', size: '7 in', insideDiameter: '6.5 in' })).ok).toBe(true);
});
