import { describe, expect, test } from 'vitest';
import { adapterRoom } from '../../../src/model/rules/adapterRoom.ts';
import { toFeet } from '../../../src/model/units.ts';
import type { Changes } from './fixture.ts';
import { changed, solvedPlan } from './fixture.ts';

/** Where a hole can be dug and one wall bored through: common practice, no source. */
function room(changes: Changes) {
  const { deepest, by } = adapterRoom(solvedPlan(changed(changes)).facts);
  return [Math.round(toFeet(deepest) * 100) / 100, by];
}

const twoCasings = (top: string, outerBottom = '60 ft') => ({
  'well.casing': undefined,
  'well.casings': [
    { material: 'steel', size: '6 in', bottom: outerBottom, height: '12 in' },
    { material: 'PVC', size: '5 in', top, bottom: '150 ft' },
  ],
});

describe('an adapter stands', () => {
  test('no deeper than 12 ft, where nobody digs', () => {
    expect(room({})).toEqual([12, 'digging']);
  });

  test('in the outer casing', () => {
    expect(room(twoCasings('20 ft', '9 ft'))).toEqual([9, 'casing']);
  });

  test('above a liner, into which it was moved before', () => {
    expect(room(twoCasings('8 ft'))).toEqual([7, 'liner']);
  });

  test('nowhere in a well that is lined to its top', () => {
    expect(room(twoCasings('0 ft'))[0]).toBeLessThan(0);
  });

  test('above the pump, with a foot and a half between', () => {
    expect(room({ 'pump.setting': '10 ft' })).toEqual([7, 'pump']);
  });

  test('in a casing of unknown length as deep as one digs', () => {
    expect(room({ 'well.casing.bottom': undefined })).toEqual([12, 'digging']);
  });
});
