import { expect, test } from 'vitest';
import { casingSchedules, casingSizes, findCasing } from '../../../src/model/tables/casings.ts';
import { toInches } from '../../../src/model/units.ts';

// ASME B36.10M, ASTM D1785 and D2241; 0.244 and 0.250 in: Montana rules 36.21; 0.188 in: Maryland COMAR 26.04.04.17. Inches.
// prettier-ignore
test.each([
  ['steel', '4 in', '40', 4.5, 4.026], ['steel', '5 in', '40', 5.563, 5.047], ['steel', '6 in', '40', 6.625, 6.065], ['steel', '8 in', '40', 8.625, 7.981],
  ['steel', '5 in', '0.244 in', 5.563, 5.075], ['steel', '6 in', '0.250 in', 6.625, 6.125], ['steel', '8 in', '0.250 in', 8.625, 8.125],
  ['steel', '5 in', '0.188 in', 5.563, 5.187], ['steel', '6 in', '0.188 in', 6.625, 6.249], ['steel', '8 in', '0.188 in', 8.625, 8.249],
  ['PVC', '4 in', 'SDR 17', 4.5, 3.97], ['PVC', '5 in', 'SDR 17', 5.563, 4.909], ['PVC', '6 in', 'SDR 17', 6.625, 5.845], ['PVC', '8 in', 'SDR 17', 8.625, 7.609],
  ['PVC', '4 in', 'SDR 21', 4.5, 4.072], ['PVC', '5 in', 'SDR 21', 5.563, 5.033], ['PVC', '6 in', 'SDR 21', 6.625, 5.993], ['PVC', '8 in', 'SDR 21', 8.625, 7.805],
  ['PVC', '4 in', 'SDR 26', 4.5, 4.154], ['PVC', '5 in', 'SDR 26', 5.563, 5.135], ['PVC', '6 in', 'SDR 26', 6.625, 6.115], ['PVC', '8 in', 'SDR 26', 8.625, 7.961],
  ['PVC', '6 in', 'schedule 40', 6.625, 6.065],
] as const)('%s casing of %s and %s is %d in wide with a bore of %d in', (material, size, schedule, outside, bore) => {
  const casing = findCasing({ material, size, schedule })!;
  expect(toInches(casing.outsideDiameter)).toBeCloseTo(outside, 9);
  expect(toInches(casing.insideDiameter)).toBeCloseTo(bore, 9);
});

test('casing without a schedule is schedule 40 in steel, SDR 21 in PVC and 40S in stainless steel', () => {
  expect(findCasing({ material: 'steel', size: '6 in' })?.schedule).toBe('schedule 40');
  expect(findCasing({ material: 'PVC', size: '6 in' })?.schedule).toBe('SDR 21');
  expect(findCasing({ material: 'stainless steel', size: '6 in' })?.schedule).toBe('schedule 40S');
});

test('every way of writing a schedule names the same casing', () => {
  for (const schedule of ['40', 'SCH 40', 'sch. 40', 'schedule 40', 'Schedule 40']) {
    expect(findCasing({ material: 'steel', size: '6"', schedule })?.schedule).toBe('schedule 40');
  }
  for (const schedule of ['SDR 21', 'sdr-21', 'SDR21'])
    expect(findCasing({ material: 'PVC', size: '6', schedule })?.schedule).toBe('SDR 21');
  for (const schedule of ['0.250', '.25 in', '0.250 in wall']) {
    expect(findCasing({ material: 'steel', size: 'DN 150', schedule })?.schedule).toBe('0.250 in wall');
  }
});

test('a driven point and a dug well have their pipe too', () => {
  expect(toInches(findCasing({ material: 'steel', size: '1-1/4 in' })!.insideDiameter)).toBeCloseTo(1.38, 9);
  expect(toInches(findCasing({ material: 'concrete', size: '36 in' })!.insideDiameter)).toBeCloseTo(36, 9);
});

test('what no standard has finds nothing', () => {
  expect(findCasing({ material: 'other', size: '6 in' })).toBeNull();
  expect(findCasing({ material: 'steel', size: '7 in' })).toBeNull();
  expect(findCasing({ material: 'PVC', size: '6 in', schedule: 'SDR 99' })).toBeNull();
});

test('every size and schedule listed can be found, with a bore inside its wall', () => {
  for (const material of ['steel', 'PVC', 'stainless steel', 'concrete'] as const) {
    expect(casingSizes(material).length).toBeGreaterThan(3);
    for (const size of casingSizes(material)) {
      for (const schedule of casingSchedules(material, size)) {
        const casing = findCasing({ material, size, schedule })!;
        expect(casing.schedule).toBe(schedule);
        expect(casing.insideDiameter).toBeGreaterThan(0);
        expect(casing.insideDiameter).toBeLessThan(casing.outsideDiameter);
      }
    }
  }
});
