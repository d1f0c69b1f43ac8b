import { expect, test } from 'vitest';
import type { Sheet } from './checkValues.ts';

const STATUSES = ['published', 'computed from the formula', 'from memory'];

/** A test for each check of a sheet, and one that each names where it comes from. */
export function testSheet({ checks, compare }: Sheet): void {
  test('every check has a number of its own, a source and a known standing', () => {
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
    for (const { source, status } of checks) {
      // "geometry" is the shortest.
      expect(source.length).toBeGreaterThan(7);
      expect(STATUSES).toContain(status);
    }
  });

  test.each(checks.map(({ id, title, source }) => [id, title, source] as const))('%s: %s (%s)', (id) => {
    const figures = compare(id);
    expect(figures.length).toBeGreaterThan(0);
    expect(figures.filter(({ agrees }) => !agrees)).toEqual([]);
  });
}
