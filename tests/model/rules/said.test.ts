import { expect, test } from 'vitest';
import { CASES } from './cases.ts';
import { nameOf, saidOfCase } from './said.ts';
import kept from './said.json' with { type: 'json' };

const KEPT = kept as Readonly<Record<string, readonly string[]>>;

test('each case has a name of its own, and no other is kept: else run npm run said', () => {
  expect(new Set(CASES.map(nameOf)).size).toBe(CASES.length);
  expect(Object.keys(KEPT).sort()).toEqual(CASES.map(nameOf).sort());
});

test.each(CASES)('$rule, $says: unchanged since it was read, else read npm run said', (each) => {
  expect(saidOfCase(each)).toEqual(KEPT[nameOf(each)]);
});
