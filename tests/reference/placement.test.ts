/** Whole wells with known verdicts: placement.json names the rules and what each must say. */
import { expect, test } from 'vitest';
import { placementSheet, placementsTwice } from './sheets.ts';
import { testSheet } from './testSheet.ts';

testSheet(placementSheet);

test('the placements are the same in both files that hold them', () => {
  expect(placementsTwice.here).toEqual(placementsTwice.inWells);
});
