/** The steps of a well as they are kept with it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  deskHistory,
  followed,
  joined,
  NO_STEPS,
  readSteps,
  renamed,
  sharing,
  stepsOf,
  type Desk,
} from '../../src/app/keeping/keptHistory.ts';
import { record, startHistory, undo, type History } from '../../src/app/state/history.ts';
import type { Plan } from '../../src/model/plan/schema.ts';

const plan = (title: string): Plan => ({ title }) as Plan;
const at = (id: string | null, title: string): Desk => ({ id, plan: plan(title) });

/** Well a, a second well b, and a again. */
function session(): History<Desk> {
  let history = startHistory<Desk>({ id: null, plan: null });
  const steps: [string, string][] = [['a', 'a0'], ['a', 'a1'], ['b', 'b0'], ['b', 'b1'], ['b', 'b2']]; // prettier-ignore
  for (const [id, title] of steps) history = record(history, at(id, title), { name: `to ${title}` });
  return history;
}

test('a well’s steps are those next to the present that are its own', () => {
  const { past, future } = stepsOf(undo(session()), 'b');
  expect([past.map(({ name }) => name), future.map(({ name }) => name)]).toEqual([['to b1'], ['to b2']]);
});

test('what is kept comes back as a history in which each step can be taken', () => {
  const kept = stepsOf(undo(session()), 'b');
  const history = deskHistory('b', plan('b1'), kept);
  expect(undo(history).present).toEqual(at('b', 'b0'));
  expect(stepsOf(history, 'b')).toEqual(kept);
});

test('another tab’s steps take the place of this well’s, and other wells’ stay', () => {
  const theirs = { past: [{ name: 'theirs', before: plan('b0'), after: plan('b9') }], future: [] };
  const history = followed(session(), 'b', plan('b9'), theirs);
  expect(history.past.map(({ name }) => name)).toEqual(['to a0', 'to a1', 'to b0', 'theirs']);
  expect(history.present.plan?.title).toBe('b9');
});

test('a well goes on under another id in every step, and the others keep theirs', () => {
  const history = renamed(undo(session()), 'b', 'c');
  expect(history.past.map(({ after }) => after.id)).toEqual(['a', 'a', 'c', 'c']);
  expect([history.present.id, history.future[0]?.before.id]).toEqual(['c', 'c']);
});

test('steps of another day come before those of today, two hundred at most', () => {
  const many = { past: Array.from({ length: 150 }, (_, i) => ({ name: `${i}`, before: plan('x'), after: plan('y') })), future: [] }; // prettier-ignore
  expect(joined(many, many).past).toHaveLength(200);
  expect(joined(undefined, many)).toEqual(many);
});

describe('what is read', () => {
  const good = { name: 'move', before: plan('a'), after: plan('b') };
  const reads = (value: unknown): boolean => typeof (value as Plan | null)?.title === 'string';

  test.each([
    ['nothing', undefined, NO_STEPS],
    ['a number', 7, NO_STEPS],
    ['lists that are none', { past: 1, future: 'x' }, NO_STEPS],
    ['whole steps', { past: [good], future: [good] }, { past: [good], future: [good] }],
    ['a broken one in the past', { past: [good, null, good], future: [] }, { past: [good], future: [] }],
    ['a plan that cannot be read', { past: [], future: [good, { ...good, after: 3 }] }, { past: [], future: [good] }],
  ])('%s', (_, kept, expected) => expect(readSteps(kept, reads)).toEqual(expected));
});

describe('sharing', () => {
  test('is the same value, written the same way, whatever stood before', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (before, after) => {
        expect(JSON.stringify(sharing(before, after))).toBe(JSON.stringify(after));
      }),
    );
  });

  test('takes over every part that did not change', () => {
    const before = { well: { depth: '1' }, pump: { setting: '2', curve: [1, 2] } };
    const after = structuredClone(before);
    expect(sharing(before, after)).toBe(before);
    after.pump.setting = '3';
    const shared = sharing(before, after);
    expect(shared.well).toBe(before.well);
    expect(shared.pump.curve).toBe(before.pump.curve);
    expect(shared).toEqual(after);
  });
});
