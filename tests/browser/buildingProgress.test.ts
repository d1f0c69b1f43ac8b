/** How far somebody is with the work outlives whatever becomes of the plan and of what was kept. */
import { describe, expect, test } from 'vitest';
import { readProgress, ticked, withCourse } from '../../src/app/building/progress.ts';

describe('what is kept', () => {
  const begun = withCourse(readProgress(null), 'new', { at: 'trench', done: ['permits', 'lower/7'] });

  test('reads as it was written', () => {
    expect(readProgress(JSON.stringify({ ...begun, kind: 'replace' }))).toEqual({ ...begun, kind: 'replace' });
  });
  test('keeps the tick of a step that the plan has no longer', () => {
    expect(ticked(begun.courses.new, 'trench', true)).toEqual(['permits', 'lower/7', 'trench']);
    expect(ticked(begun.courses.new, 'permits', false)).toEqual(['lower/7']);
  });
  test('a new well and one in place of an old are apart', () => {
    expect(begun.courses.replace).toEqual({ at: null, done: [] });
  });
  test('ticked twice is ticked once', () => {
    expect(ticked(begun.courses.new, 'permits', true).filter((key) => key === 'permits')).toHaveLength(1);
  });
  test.each([
    null,
    '',
    '{',
    '7',
    'null',
    '[]',
    '{"courses":7}',
    '{"kind":"old","courses":{"new":{"at":3,"done":"x"}}}',
  ])('%s is nothing begun', (text) => {
    expect(readProgress(text)).toEqual(readProgress(null));
  });
  test('of a list that is half spoiled the rest counts', () => {
    expect(readProgress('{"courses":{"new":{"done":["permits",7,null]}}}').courses.new.done).toEqual(['permits']);
  });
});
