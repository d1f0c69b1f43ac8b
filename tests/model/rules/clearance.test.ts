import { describe, expect, test } from 'vitest';
import { toFeet } from '../../../src/model/units.ts';
import { judged, saidOf } from './fixture.ts';

const bare = { 'pump.shroudDiameter': undefined };
const bandOf = (changes: Parameters<typeof judged>[0]) =>
  judged(changes).bands.find(({ setting }) => setting === 'pump.setting')!;

describe('the band of a 3.9 in pump', () => {
  test('went on into a hole that is narrower still than a casing which it hardly passes', () => {
    // 0.2 in free in the casing, 0.05 in the hole from 60 ft on; the motor hangs 1.5 ft under the intake.
    const band = bandOf({
      ...bare,
      'well.casing.insideDiameter': '4.1 in',
      'well.intake.diameter': '3.95 in',
      'water.staticLevel': '10 ft',
      'water.pumping.level': '20 ft',
    });
    expect([band.toEnd.rule, toFeet(band.to!)]).toEqual(['PR-17', expect.closeTo(58, 6)]);
  });

  test('ends above a narrow liner under a wide casing', () => {
    const band = bandOf({
      ...bare,
      'well.casing': undefined,
      'well.casings': [
        { material: 'PVC', size: '6 in', bottom: '60 ft', height: '12 in' },
        { material: 'PVC', insideDiameter: '4 in', top: '120 ft', bottom: '200 ft' },
      ],
      'well.intake.diameter': '5.5 in',
    });
    expect([band.toEnd.rule, toFeet(band.to!)]).toEqual(['PR-17', expect.closeTo(118, 6)]);
  });

  test('is not ended by what is as tight from the top', () => {
    const band = bandOf({ ...bare, 'well.casing.insideDiameter': '4.1 in', 'well.intake.diameter': '4.1 in' });
    expect(band.toEnd.rule).not.toBe('PR-17');
  });
});

test('the title names what is tight: the hole, not the casing above it', () => {
  expect(saidOf('PR-17', { ...bare, 'well.intake.diameter': '3.99 in' }).title).toBe(
    'The pump is too wide for the hole',
  );
  expect(saidOf('PR-17', { ...bare, 'well.casing.insideDiameter': '3.99 in' }).title).toBe(
    'The pump is too wide for the casing',
  );
});

test('a hole of unknown width was taken for as wide as the casing', () => {
  const { verdicts, notJudged } = judged({ 'well.intake.diameter': undefined });
  expect(verdicts['PR-17']).toBe('not judged');
  expect(notJudged.find(({ rule }) => rule === 'PR-17')?.fields).toContain('well.intake.diameter');
});
