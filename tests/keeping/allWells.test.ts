/** All wells as one file, and back. */
import { expect, test } from 'vitest';
import { fileOf, notThere, readFile } from '../../src/app/keeping/allWells.ts';
import { readKept } from '../../src/app/keeping/keptWell.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import type { Plan } from '../../src/model/plan/schema.ts';
import rock from '../../static/samples/tamarack-ridge.json';
import sand from '../../static/samples/heron-flats.json';

const reads = (plan: unknown): boolean => readPlan(plan).ok;
const NOW = 10;
const wells = [
  readKept('a', { title: 'Rock', saved: 2, version: 'v1', plan: rock }),
  readKept('b', { title: 'Sand', saved: 1, version: 'v2', plan: sand }),
  readKept('c', { title: 'Gone', saved: 1, version: 'v3', takenAway: 9, plan: rock }),
  readKept('d', '{"torn'),
];

test('plans come back as they were; what was taken away stays out, what cannot be read is named', () => {
  const text = fileOf(wells);
  expect(readFile(text, reads, NOW)).toEqual({
    wells: [
      { plan: rock, saved: 2 },
      { plan: sand, saved: 1 },
    ],
    unread: ['well 3'],
  });
  expect(text).toContain('{\\"torn');
});

test('where a well is goes along with its plan, and comes back', () => {
  const plan = { ...rock, place: 'Old Mill Lane, lot 7' };
  const text = fileOf([readKept('a', { title: 'Rock', saved: 2, version: 'v1', plan })]);
  expect(readFile(text, reads, NOW)).toEqual({ wells: [{ plan, saved: 2 }], unread: [] });
});

test('a place that is no text is none', () => {
  expect(readKept('a', { title: 'Rock', saved: 2, version: 'v1', plan: { ...rock, place: 7 } }).place).toBe('');
});

test('a plan that is none is named by its title, and the others are read', () => {
  const text = fileOf(wells).replace('"180 ft"', '180');
  expect(readFile(text, reads, NOW)).toEqual({ wells: [{ plan: sand, saved: 1 }], unread: ['Rock', 'well 3'] });
});

test.each([
  ['a plan', JSON.stringify(rock)],
  ['other text', 'wellcut-wells/1'],
  ['a list', '["wellcut-wells/1"]'],
  ['one without wells', '{"format": "wellcut-wells/1"}'],
  ['nothing', ''],
])('%s is no such file', (_, text) => expect(readFile(text, reads, NOW)).toBeNull());

test.each([
  ['later than now', 11],
  ['before all time', -1],
  ['a word', 'yesterday'],
])('a time that is %s is not taken over', (_, saved) => {
  const text = JSON.stringify({ format: 'wellcut-wells/1', wells: [{ title: 'Rock', saved, plan: rock }] });
  expect(readFile(text, reads, NOW)).toEqual({ wells: [{ plan: rock, saved: null }], unread: [] });
});

test('a well that stands there with its plan and its time is none to put in; one that was taken away or changed is', () => {
  const filed = [
    { plan: rock as Plan, saved: 2 },
    { plan: sand as Plan, saved: 1 },
  ];
  expect(notThere(filed, [])).toEqual(filed);
  expect(notThere(filed, wells)).toEqual([]);
  expect(notThere([{ plan: rock as Plan, saved: 1 }], wells)).toHaveLength(1);
  expect(notThere([{ plan: sand as Plan, saved: 2 }], wells)).toHaveLength(1);
  expect(notThere([{ plan: rock as Plan, saved: null }], wells)).toHaveLength(1);
});
