import { expect, test } from 'vitest';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { spoiled } from './sample.ts';

test.each([
  ['well.casing.size', 'six', /"6 in"/],
  ['well.casing.size', '700 in', /the inside diameter as measured/],
  ['well.casing.schedule', 'schedule 20', /^one of .*"schedule 40"/],
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

test('a casing size that no table has reads too: its bore is then not known', () => {
  for (const size of ['7 in', '6-5/8 in', '6.625 in', '4-1/2 in']) {
    const plan = spoiled('well.casing.size', size) as Plan;
    expect(readPlan(plan).ok).toBe(true);
    const { facts, unknown } = readFacts(plan);
    expect(facts.well.casings[0]).toMatchObject({ nominalSize: size, insideKnown: false });
    expect(unknown).toContain('well.casing.insideDiameter');
  }
});
