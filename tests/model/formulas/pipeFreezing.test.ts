import { expect, test } from 'vitest';
import { timeToFreezeThrough, timeToFreezing, trickleFlow } from '../../../src/model/formulas/pipeFreezing.ts';

const pipe = { insideDiameter: 0.0254, resistance: 0.58, surround: -2 };

test('twice the bore lasts four times as long, twice the insulation twice as long', () => {
  const time = timeToFreezeThrough(pipe);
  expect(timeToFreezeThrough({ ...pipe, insideDiameter: 2 * pipe.insideDiameter })).toBeCloseTo(4 * time, 6);
  expect(timeToFreezeThrough({ ...pipe, resistance: 2 * pipe.resistance })).toBeCloseTo(2 * time, 6);
});

test('water that stands at freezing has no time left to cool', () => {
  expect(timeToFreezing({ ...pipe, start: 0 })).toBe(0);
});

test('the trickle carries just the heat that the line loses', () => {
  const flow = trickleFlow({ heatLoss: 2, length: 30, cooling: 3 });
  // 62.4 lb/ft³ and 1 Btu/(lb °F) are 4.185 MJ/(m³ K).
  expect(flow * 4.185e6 * 3).toBeCloseTo(60, 1);
});

test('figures without a meaning are refused', () => {
  expect(() => timeToFreezeThrough({ ...pipe, surround: 0 })).toThrow(RangeError);
  expect(() => timeToFreezing({ ...pipe, start: -1 })).toThrow(RangeError);
  expect(() => trickleFlow({ heatLoss: 2, length: 30, cooling: 0 })).toThrow(RangeError);
});
