/** What was half typed is read as it was, and whatever else stands there does no harm. */
import { expect, test } from 'vitest';
import { readPump } from '../../src/app/choose/halfTypedPump.ts';

const NOTHING = { name: '', power: '', text: '', flow: null, head: null };

test('a pump that is half typed is read as it was kept', () => {
  const half = { name: 'Shed pump', power: '1 h', text: '0\t140\n5', flow: 'L/s', head: 'psi' };
  expect(readPump(JSON.stringify(half))).toEqual(half);
});

test.each([null, '', '{"name', 'null', '7', '[]', '{"name": 7, "flow": "cups", "head": {}}'])(
  'of %s nothing is read',
  (text) => expect(readPump(text)).toEqual(NOTHING),
);
