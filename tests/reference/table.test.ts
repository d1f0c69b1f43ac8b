import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { compareFigures } from './checkValues.ts';
import { checksPage, checksText, differenceText, everyCheck, figure } from './table.ts';

const checked = everyCheck();
const named = { id: 'X1', title: 'a check', source: 'a publication', status: 'published' };

test('the page of checks is the one that the files and the model give today: else run npm run checks', () => {
  const page = readFileSync(new URL('../../docs/checks.md', import.meta.url), 'utf8');
  expect(page).toBe(checksPage(checked));
});

test('every check of every file stands in the table', () => {
  const here = new URL('.', import.meta.url);
  const ids = readdirSync(here)
    .filter((name) => name.endsWith('.json'))
    // Readings of published pumping tests stand beside the checks; they have no list of their own.
    .flatMap(
      (name) => (JSON.parse(readFileSync(new URL(name, here), 'utf8')) as { checks?: { id: string }[] }).checks ?? [],
    )
    .map(({ id }) => id);
  const shown = new Set(checked.flatMap(({ rows }) => rows.map(({ id }) => id)));
  expect([...new Set(ids)].filter((id) => !shown.has(id))).toEqual([]);
  expect(shown.size).toBe(new Set(ids).size);
});

test('a figure beyond its tolerance, a missing one and a failing computation are told as disagreeing', () => {
  const compare = (computed: () => Record<string, unknown>) =>
    compareFigures(named, { head_ft: 100, word: 'ok' }, computed, () => 0.5).map(({ agrees }) => agrees);
  expect(compare(() => ({ head_ft: 100.5, word: 'ok' }))).toEqual([true, true]);
  expect(compare(() => ({ head_ft: 100.6, word: 'warn' }))).toEqual([false, false]);
  expect(compare(() => ({ head_ft: NaN, word: 'ok' }))).toEqual([false, true]);
  expect(compare(() => ({ word: 'ok', more: 1 }))).toEqual([false, true, false]);
  expect(
    compare(() => {
      throw new RangeError('no');
    }),
  ).toEqual([false, false]);
});

test('lists are compared item by item, whatever their length', () => {
  const rows = compareFigures(
    named,
    { a: [[1, 2], [3]] },
    () => ({
      a: [
        [1, 2.1],
        [3, 4],
      ],
    }),
    () => 0,
  );
  expect(rows.map(({ quantity, agrees }) => [quantity, agrees])).toEqual([
    ['a 1 1', true],
    ['a 1 2', false],
    ['a 2 1', true],
    ['a 2 2', false],
  ]);
});

test('differences carry their sign and two digits, and noise of the last bits is none', () => {
  const row = (computed: number) =>
    compareFigures(
      named,
      { a: 100 },
      () => ({ a: computed }),
      () => 1,
    )[0]!;
  expect(differenceText(row(100.1234))).toBe('+0.12');
  expect(differenceText(row(98))).toBe('-2');
  expect(differenceText(row(100 + 1e-12))).toBe('0');
  expect([figure(1.30629e-6), figure(1234567), figure(0.5), figure('ok')]).toEqual([
    '1.30629e-6',
    '1.23457e+6',
    '0.5',
    'ok',
  ]);
});

test('the printed table says how many checks there are and marks one that disagrees', () => {
  const rows = compareFigures(
    named,
    { a: 1 },
    () => ({ a: 2 }),
    () => 0,
  );
  expect(checksText([{ title: 'Sheet', rows }])).toMatch(/X1 .* NO\n\n1 checks with 1 figures; 1 disagree\./);
});
