import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonFault } from '../../../src/model/plan/jsonFault.ts';

// RFC 8259, sections 2 to 7: what a JSON text is made of.
test.each([
  ['{"a": 1,}', 8],
  ['{"a" 1}', 5],
  ['[1 2]', 3],
  ['{a: 1}', 1],
  ['[1, 2', 5],
  ['', 0],
  ['{"a": oops}', 6],
  ['{"a": 1]', 7],
  ['{"a": 1} x', 9],
  ['{"a": 01}', 7],
  ["{'a': 1}", 1],
  ['{"a": "open\n}', 11],
  ['[,1]', 1],
  ['["a\\x"]', 3],
  ['["\\u00e9", tru]', 11],
])('%j breaks at %d', (text, at) => {
  expect(jsonFault(text)).toBe(at);
});

test('JSON has no fault before its end, and loses it when cut', () => {
  fc.assert(
    fc.property(fc.json(), fc.nat(), (text, cut) => {
      expect(jsonFault(text)).toBe(text.length);
      const short = text.slice(0, cut % (text.length + 1));
      expect(jsonFault(short)).toBeLessThanOrEqual(short.length);
    }),
    { seed: 31 },
  );
});
