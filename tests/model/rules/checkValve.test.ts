import { describe, expect, test } from 'vitest';
import { valveAboveWaterLimit } from '../../../src/model/rules/checkValve.ts';
import { toFeet } from '../../../src/model/units.ts';
import { changed, fixOf, solvedPlan } from './fixture.ts';

describe('how high a check valve may hang above the pumping level', () => {
  const limitAt = (altitude: string) =>
    toFeet(
      valveAboveWaterLimit(solvedPlan(changed({ 'site.altitude': altitude, 'site.waterTemperature': '15 degC' }))),
    );

  test('is 25 ft at sea level, common practice', () => {
    expect(limitAt('0 ft')).toBeCloseTo(25, 9);
  });

  test('loses at 5,000 ft what the air holds up less there', () => {
    // Standard atmosphere (ISO 2533): 101.325 kPa and 84.31 kPa, 17.02 kPa of water at 15 degC is 5.70 ft.
    expect(limitAt('5000 ft')).toBeCloseTo(25 - 5.7, 1);
  });

  test('is not more than 25 ft in a place below the sea', () => {
    expect(limitAt('-1000 ft')).toBeCloseTo(25, 9);
  });
});

test('an upper valve out of reach is left out, and the one at the pump stays', () => {
  const fix = fixOf('PR-09', { 'string.checkValves': ['0 ft', '100 ft'] });
  expect(fix.changes).toEqual([{ path: 'string.checkValves', to: ['0 ft'] }]);
});
