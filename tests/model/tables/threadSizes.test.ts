import { describe, expect, test } from 'vitest';
import { isWider, systemSaid, threadSize } from '../../../src/model/tables/threadSizes.ts';

describe('the size of a thread', () => {
  test.each([
    ['1-1/4 in', '1-1/4 in'],
    ['1 1/4 NPT', '1-1/4 in'],
    ['Rp 1 1/4', '1-1/4 in'],
    ['DN 32', '1-1/4 in'],
    ['40 mm', '1-1/4 in'],
    ['G 2', '2 in'],
    ['as stamped', null],
  ])('%s', (name, size) => {
    expect(threadSize(name)).toBe(size);
  });
});

// ASME B1.20.1, 1: NPT, NPTF, NPSM, and F or M before them by trade. ISO 7-1, designation: R, Rp, Rc; ISO 228-1: G.
describe('the system that a name tells', () => {
  test.each(['1 in NPT', '1-1/4 FNPT', '1 MNPT', '1 NPTF'])('%s is NPT', (name) => {
    expect(systemSaid(name)).toBe('NPT');
  });
  test.each(['Rp 1 1/4', 'R 1', 'Rc 2', 'G 1 1/2', 'G1', '1 in BSP', '1-1/4 BSPT', 'ISO 7-1 Rp 1'])(
    '%s is ISO 7-1',
    (name) => {
      expect(systemSaid(name)).toBe('ISO 7-1');
    },
  );
  test.each(['1-1/4 in', 'DN 32', 'RATED 1 in', 'BIG 2 in'])('%s tells none', (name) => {
    expect(systemSaid(name)).toBeNull();
  });
});

test('one thread is wider than another, by name or by number, and a name that tells no size is not', () => {
  expect(isWider('1-1/4 in', '1 in')).toBe(true);
  expect(isWider('3/4 in', '1 in')).toBe(false);
  expect(isWider('DN 32', '1-1/4 in')).toBe(false);
  expect(isWider('2 in', 'as stamped')).toBe(false);
});
