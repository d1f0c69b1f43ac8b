/** What holds only near what was taken for granted says so: water that is warm, a place that lies high, a long motor. */
import { describe, expect, test } from 'vitest';
import type { Values } from '../../../src/model/solution.ts';
import { psi } from '../../../src/model/units.ts';
import type { Changes } from './fixture.ts';
import { judged } from './fixture.ts';

const restsOn = (rule: string, changes: Changes, values: Partial<Values> = {}) =>
  judged(changes, values).holding.find((each) => each.rule === rule)?.assumed;

describe('a rating', () => {
  // 200 psi, of which water of 80 to 90 degF leaves PE 90 % (PPI Handbook of Polyethylene Pipe, ch. 6).
  test('that warm water would take below the pump rests on the water’s temperature, unless somebody said it', () => {
    const near = { shutOffPressureAtPump: psi(181) };
    expect(restsOn('PR-18', {}, near)).toContain('site.waterTemperature');
    expect(restsOn('PR-18', { 'site.waterTemperature': '50 degF' }, near)).not.toContain('site.waterTemperature');
  });

  test('that bears the pump in warm water too rests on nothing', () => {
    expect(restsOn('PR-18', {}, { shutOffPressureAtPump: psi(179) })).not.toContain('site.waterTemperature');
  });
});

describe('a motor that may be 4 ft long', () => {
  const screened = {
    'well.inflows': undefined,
    'well.casing.bottom': '150 ft',
    'well.intake': { kind: 'screen', diameter: '5 in', screens: [{ top: '150 ft', bottom: '170 ft' }] },
  };

  test.each([
    ['PR-01', 'ten feet off the bottom at 200 ft', {}, '186 ft', '186.2 ft'],
    ['PR-03', 'above a screen at 150 ft', screened, '146 ft', '146.2 ft'],
  ])(
    '%s: is %s from one setting, and a hand deeper only as long as it was taken for',
    (rule, _, well, enough, deeper) => {
      expect(restsOn(rule, { ...well, 'pump.setting': enough })).not.toContain('pump.intakeToMotorBottom');
      expect(restsOn(rule, { ...well, 'pump.setting': deeper })).toContain('pump.intakeToMotorBottom');
      const said = { ...well, 'pump.setting': deeper, 'pump.intakeToMotorBottom': '18 in' };
      expect(restsOn(rule, said)).not.toContain('pump.intakeToMotorBottom');
    },
  );
});
