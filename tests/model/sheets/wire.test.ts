import { describe, expect, test } from 'vitest';
import { solve } from '../../../src/model/solve.ts';
import { toFeet } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import { figureOf, numberAt, rowOf, sheetOf, tableOf, valueOf } from './find.ts';

const plan = rockWell();
const sheet = sheetOf(plan, 'wire');
const named = { setting: '140 ft', power: '1 hp', current: '8 A', curve: { kind: 'generic', flow: '10 gpm' } };

// From the resistances that NFPA 70 (NEC), Chapter 9, Table 8 prints for stranded copper and the 8.0 A of Table 430.248:
// 5 % of 230 V over 2 × 8 A × R, whole feet rounded down.
test.each([
  [14, 228, 137],
  [12, 363, 217],
  [10, 579, 347],
  [8, 923, 554],
  [6, 1463, 878],
  [4, 2333, 1400],
  [2, 3704, 2222],
])('%d AWG goes %d ft to 5 %% and %d ft to 3 %% for 8 A on 230 V', (gauge, far, near) => {
  const table = tableOf(sheetOf(rockWell({ pump: named }), 'wire'), 'gauges');
  const row = rowOf(table, `${gauge} AWG`);
  expect(Math.floor(toFeet(numberAt(table, row, 'far5')!))).toBe(far);
  expect(Math.floor(toFeet(numberAt(table, row, 'far3')!))).toBe(near);
});

// NFPA 70 (NEC), Tables 430.248, 430.250 and 430.251 (2008).
test.each([
  ['1 hp', 'full1230', 8],
  ['1 hp', 'locked1230', 48],
  ['0.5 hp', 'full1115', 9.8],
  ['5 hp', 'full3230', 15.2],
  ['3 hp', 'locked3460', 32],
])('the code’s table has %s, %s at %d A', (power, column, amperes) => {
  const table = tableOf(sheet, 'currents');
  expect(numberAt(table, rowOf(table, power), column)).toBe(amperes);
});

test('the gauge of the plan has the drop of the plan', () => {
  const table = tableOf(sheet, 'gauges');
  expect(numberAt(table, rowOf(table, '10 AWG'), 'drop')).toBeCloseTo(solve(plan).values.voltageDropRunning!, 12);
});

test('voltage at the start is that of the wire and the stalled motor in series, reckoned with both parts of its impedance', () => {
  const wire = valueOf(sheet, 'startingBound'); // of the stalled motor's impedance, which is 1
  const [resistance, reactance] = [0.7, Math.sqrt(1 - 0.49)];
  expect(valueOf(sheet, 'startingVoltage')).toBeCloseTo(1 / Math.hypot(resistance + wire, reactance), 12);
  expect(valueOf(sheet, 'startingTorque')).toBeCloseTo(valueOf(sheet, 'startingVoltage') ** 2, 12);
});

// NFPA 70 (NEC), 430.22: 125 % of 8 A. Table 250.122 and 250.122(B), from memory: 14 AWG for the thinnest wire, grown with it.
test('a wire thicker than its current asks for takes a thicker ground', () => {
  expect(valueOf(sheet, 'requiredAmpacity')).toBeCloseTo(10, 9);
  expect(valueOf(sheet, 'groundWire')).toBe(10);
  expect(valueOf(sheetOf(rockWell({ wire: { size: '14 AWG', run: '120 ft' } }), 'wire'), 'groundWire')).toBe(14);
});

// IEEE 43 (1974): one megohm and one for each kilovolt.
test('insulation of a 230 V motor has 1.23 megohm at the least', () => {
  expect(valueOf(sheet, 'insulationFloor')).toBeCloseTo(1.23e6, 0);
});

test('no breaker size is named anywhere', () => {
  expect(JSON.stringify(sheet)).not.toMatch(/breaker (of |size)|\d+ A breaker/i);
  expect(sheet.cautions.join()).toContain('licensed electrician');
});

test('without a power nothing is said of the current, and gauges only of what they carry', () => {
  const bare = sheetOf(rockWell({ pump: { setting: '140 ft', curve: { kind: 'generic', flow: '10 gpm' } } }), 'wire');
  expect(figureOf(bare, 'startingBound').value).toBeNull();
  expect(rowOf(tableOf(bare, 'gauges'), '10 AWG').cells.at(-1)).toBe('current not known');
});

describe('a wire that would take more than the whole voltage at start', () => {
  const thin = sheetOf(rockWell({ pump: { power: '1 hp' }, wire: { size: '14 AWG', run: '1200 ft' } }), 'wire');
  test('is told as all of it, and that the motor does not start', () => {
    expect(valueOf(thin, 'startingBound')).toBe(1);
    const { range } = figureOf(thin, 'startingBound').explanation();
    expect(range.holds).toMatch(/motor does not start/);
    expect(range.inside).toBe(false);
  });
  // The voltage divider goes on from the whole ratio, so a longer run leaves less and less torque.
  test('and what is left at the motor goes on falling with the run', () => {
    const longer = sheetOf(rockWell({ pump: { power: '1 hp' }, wire: { size: '14 AWG', run: '2400 ft' } }), 'wire');
    expect(valueOf(longer, 'startingTorque')).toBeLessThan(valueOf(thin, 'startingTorque'));
    expect(valueOf(thin, 'startingTorque')).toBeLessThan(0.3);
  });
});
