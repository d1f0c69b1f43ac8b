import { expect, test } from 'vitest';
import { fieldAt, fields, groups } from '../../../src/model/plan/fields.ts';
import { parseQuantity } from '../../../src/model/units.ts';
import type { QuantityKind } from '../../../src/model/units.ts';

const WORDS = ['text', 'choice', 'flag', 'count'];

test('every field has a label and help in words', () => {
  const mute = fields.filter(({ label, help }) => label.length < 2 || help.length < 6);
  expect(mute.map(({ path }) => path)).toEqual([]);
});

test('limits and defaults of quantities are written as one would type them', () => {
  const unreadable = fields
    .filter(({ kind }) => !WORDS.includes(kind))
    .flatMap(({ path, kind, from, to, default: otherwise }) =>
      [from, to, otherwise]
        .filter((text) => text !== undefined && !parseQuantity(String(text), kind as QuantityKind).ok)
        .map((text) => `${path} ${text}`),
    );
  expect(unreadable).toEqual([]);
});

test('a choice names its options, its default among them', () => {
  for (const field of fields.filter(({ kind }) => kind === 'choice')) {
    expect(field.options?.length).toBeGreaterThan(0);
    if (field.default !== undefined) expect(field.options).toContain(field.default);
  }
});

test('fields of one kind of pumping, top or curve say when they count', () => {
  expect(fieldAt('top.depth')?.when).toEqual({ path: 'top.kind', is: 'pitless' });
  expect(fieldAt('water.pumping.flow', ({ is }) => is === 'level')?.when?.is).toBe('level');
});

test('items of lists are found under any number', () => {
  expect(fieldAt('well.layers.7.bottom')?.label).toBe('Bottom of the layer');
  expect(fieldAt('well.casing.bottom')?.path).toBe('well.casings.*.bottom');
  expect(fieldAt('pump.curve.points.3.1')?.label).toBe('Head');
  expect(fieldAt('pump.depth')).toBeNull();
});

test('the groups stand in the record’s order', () => {
  expect(groups.map(({ path }) => path)).toEqual([
    'site',
    'well',
    'water',
    'house',
    'pump',
    'dropPipe',
    'string',
    'wire',
    'rope',
    'disinfection',
    'asBuilt',
  ]);
});
