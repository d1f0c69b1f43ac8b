import { expect, test } from 'vitest';
import { meets } from '../../../src/model/rules/grace.ts';
import { verdictOf } from './fixture.ts';

test('a tenth of a millimetre, a pascal and a tenth of a newton short still count as met', () => {
  expect([meets(-0.00009, 'length'), meets(-0.00011, 'length')]).toEqual([true, false]);
  expect([meets(-0.99, 'pressure'), meets(-1.01, 'pressure')]).toEqual([true, false]);
  expect([meets(-0.099, 'force'), meets(-0.101, 'force')]).toEqual([true, false]);
});

test('the same depth in another unit gets the same verdict', () => {
  // 42 in of frost and 6 in of margin are 1219.2 mm.
  expect(verdictOf('PR-19', { 'top.depth': '1219.2 mm' })).toBe('ok');
  expect(verdictOf('PR-19', { 'top.depth': '1219.15 mm' })).toBe('ok');
  expect(verdictOf('PR-19', { 'top.depth': '1219 mm' })).toBe('warning');
});
