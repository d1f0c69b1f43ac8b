import { expect, test } from 'vitest';
import { dropCableLength } from '../../../src/model/formulas/cableLength.ts';

const well = { setting: 80, pumpToSplice: 1, slack: 0.02, topAllowance: 1.5 };

test('without slack and allowance the cable is as long as the setting less the lead', () => {
  expect(dropCableLength({ ...well, slack: 0, topAllowance: 0 })).toBe(79);
});

test('a lead longer than the setting is refused', () => {
  expect(() => dropCableLength({ ...well, pumpToSplice: 81 })).toThrow(RangeError);
});
