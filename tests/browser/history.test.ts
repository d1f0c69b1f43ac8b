import { describe, expect, test } from 'vitest';
import { BURST_PAUSE, endBurst, MOST_STEPS, record, redo, startHistory, undo } from '../../src/app/state/history.ts';

describe('history', () => {
  test('a step can be taken back and done again', () => {
    const done = record(startHistory(180), 200, { name: 'Move pump' });
    expect(undo(done).present).toBe(180);
    expect(redo(undo(done)).present).toBe(200);
  });

  test('what changes nothing leaves no step', () => {
    const before = startHistory(180);
    expect(record(before, 180, { name: 'Move pump' })).toBe(before);
  });

  test('a new step drops what was undone', () => {
    const turned = record(undo(record(startHistory(1), 2, { name: 'a' })), 3, { name: 'b' });
    expect(turned.future).toHaveLength(0);
    expect(turned.past.map(({ name }) => name)).toEqual(['b']);
  });

  test('keys of one burst are one step, named from where the burst began', () => {
    let history = startHistory(180);
    for (const [i, depth] of [181, 182, 183].entries()) {
      history = record(history, depth, { name: (before) => `from ${before}`, burst: 'pump deeper', at: i * 100 });
    }
    expect(history.past.map(({ name }) => name)).toEqual(['from 180']);
    expect(undo(history).present).toBe(180);
  });

  test('a pause, another direction or an end of the burst starts a new step', () => {
    const first = record(startHistory(1), 2, { name: 'a', burst: 'deeper', at: 0 });
    expect(record(first, 3, { name: 'b', burst: 'deeper', at: BURST_PAUSE + 1 }).past).toHaveLength(2);
    expect(record(first, 3, { name: 'b', burst: 'shallower', at: 1 }).past).toHaveLength(2);
    expect(record(endBurst(first), 3, { name: 'b', burst: 'deeper', at: 1 }).past).toHaveLength(2);
  });

  test('a burst that comes back to its start leaves no step', () => {
    const there = record(startHistory(1), 2, { name: 'a', burst: 'x', at: 0 });
    expect(record(there, 1, { name: 'a', burst: 'x', at: 1 }).past).toHaveLength(0);
  });

  test('at least a hundred steps are kept', () => {
    let history = startHistory(0);
    for (let i = 1; i <= MOST_STEPS + 50; i++) history = record(history, i, { name: `step ${i}` });
    expect(history.past.length).toBe(MOST_STEPS);
    expect(MOST_STEPS).toBeGreaterThanOrEqual(100);
  });

  test('undo and redo at the ends change nothing', () => {
    const fresh = startHistory(1);
    expect(undo(fresh)).toBe(fresh);
    expect(redo(fresh)).toBe(fresh);
  });
});
