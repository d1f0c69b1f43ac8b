/** What was looked at outlives whatever becomes of the plan and of what was kept. */
import { describe, expect, test } from 'vitest';
import { readLooked, resultOf, withResult } from '../../src/app/trouble/looked.ts';

describe('what is kept', () => {
  const begun = withResult({ ...readLooked(null), symptom: 'no-water' }, 'power', 'fine');

  test('reads as it was written', () => {
    expect(readLooked(JSON.stringify(begun))).toEqual(begun);
    expect(resultOf(begun, 'power')).toBe('fine');
    expect(resultOf(begun, 'switch')).toBeNull();
  });
  test('one symptom’s ticks are apart from another’s', () => {
    const other = { ...begun, symptom: 'trips' } as const;
    expect(resultOf(other, 'power')).toBeNull();
    expect(resultOf(withResult(other, 'power', 'this'), 'power')).toBe('this');
    expect(resultOf({ ...withResult(other, 'power', 'this'), symptom: 'no-water' }, 'power')).toBe('fine');
  });
  test('a tick is changed and taken back', () => {
    expect(resultOf(withResult(begun, 'power', 'this'), 'power')).toBe('this');
    expect(withResult(begun, 'power', null).results).toEqual({ 'no-water': {} });
  });
  test('before anything is chosen nothing is ticked', () => {
    expect(withResult(readLooked(null), 'power', 'fine')).toEqual(readLooked(null));
  });
  test.each([null, '', '{', '7', 'null', '[]', '{"symptom":"dry"}', '{"results":7,"symptom":7}'])(
    '%s is nothing looked at',
    (text) => {
      expect(readLooked(text)).toEqual({ symptom: null, results: {} });
    },
  );
  test('of what is half spoiled the rest counts', () => {
    expect(readLooked('{"results":{"air":{"gas":"fine","power":7,"cable":"maybe"},"x":3}}').results).toEqual({
      air: { gas: 'fine' },
      x: {},
    });
  });
});
