import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coarse, gridOf } from '../../../src/model/headroom/grid.ts';

test('from 62.3 ft the pump is tried at 62.5, 63 and so on, and last where its motor stands on the bottom', () => {
  const grid = gridOf({ now: 62.3, end: 64.2, step: 0.5, fromNow: false });
  expect(Array.from({ length: grid.last + 1 }, (_, i) => grid.at(i))).toEqual([62.3, 62.5, 63, 63.5, 64, 64.2]);
});

test('the other way it is tried at 62, 61.5 and so on', () => {
  const grid = gridOf({ now: 62.3, end: 60.9, step: 0.5, fromNow: false });
  expect(Array.from({ length: grid.last + 1 }, (_, i) => grid.at(i))).toEqual([62.3, 62, 61.5, 61, 60.9]);
});

test('a fall is counted from where the water stands now', () => {
  const grid = gridOf({ now: 62.3, end: 64, step: 0.5, fromNow: true });
  const values = Array.from({ length: grid.last + 1 }, (_, i) => grid.at(i));
  [62.3, 62.8, 63.3, 63.8, 64].forEach((value, i) => expect(values[i]).toBeCloseTo(value, 9));
});

test('where nothing can move there is the value now alone', () => {
  expect(gridOf({ now: 5, end: 5, step: 1, fromNow: false }).last).toBe(0);
  expect(coarse(gridOf({ now: 5, end: 5, step: 1, fromNow: false }), 16, [5])).toEqual([]);
});

test('whatever the ends, values go one way, a step apart at most, from now to the end', () => {
  const length = fc.double({ min: -50, max: 500, noNaN: true });
  fc.assert(
    fc.property(length, length, fc.constantFrom(0.1, 0.1524, 1), fc.boolean(), (now, end, step, fromNow) => {
      const grid = gridOf({ now, end, step, fromNow });
      const sign = Math.sign(end - now);
      expect(grid.at(0)).toBe(now);
      if (grid.last > 0) expect(grid.at(grid.last)).toBe(end);
      else expect(Math.abs(end - now)).toBeLessThan(1e-5);
      for (let i = 1; i <= grid.last; i++) {
        const apart = sign * (grid.at(i) - grid.at(i - 1));
        expect(apart).toBeGreaterThan(0);
        expect(apart).toBeLessThan(step * (1 + 1e-5));
      }
      const tried = coarse(grid, 16, [now, end, (now + end) / 2]);
      expect(tried.every((index, i) => index > (tried[i - 1] ?? 0) && index <= grid.last)).toBe(true);
      expect(tried.at(-1) ?? 0).toBe(grid.last);
    }),
    { seed: 43 },
  );
});
