import { describe, expect, test } from 'vitest';
import { RULES } from '../../../src/model/rules/list.ts';
import { show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayHolding } from '../../../src/words/sayJudgement.ts';
import { changed, findingOf, fixOf, judged, saidOf, solvedPlan } from './fixture.ts';

describe('wire', () => {
  test('between 3 and 5 % holds, and says what the code’s figure is', () => {
    const held = judged({}, { voltageDropRunning: 0.042 }).holding.find(({ rule }) => rule === 'PR-49')!;
    const { amount, message } = sayHolding(held, en, show('us'));
    expect(amount).toBe('0.8 % to spare');
    expect(message).toMatch(/^4\.2 % of 230 V is lost .* 10 AWG; the code suggests 3 %\.$/);
  });

  test('never limits how deep the pump hangs, nor does what hangs on a hook or a rope', () => {
    const solved = solvedPlan(
      changed({
        'wire.size': '14 AWG',
        'wire.run': '900 ft',
        'dropPipe.size': '2 in',
        rope: { material: 'polypropylene', breakingStrength: '200 lbf' },
      }),
    );
    const limiting = RULES.filter(({ limits }) => limits(solved).length > 0).map(({ number }) => number);
    for (const rule of ['PR-16', 'PR-49', 'PR-50', 'PR-51']) expect(limiting).not.toContain(rule);
  });

  test('has its mark at the panel end of the cable, over the casing’s top', () => {
    const thin = { 'wire.size': '14 AWG', 'wire.run': '400 ft', 'well.casing.height': '18 in' };
    expect(findingOf('PR-49', thin)).toMatchObject({ part: 'cable' });
    expect(findingOf('PR-49', thin).depth).toBeCloseTo(-0.4572, 9);
    expect(findingOf('PR-50', { ...thin, 'pump.power': '5 hp' }).depth).toBeCloseTo(-0.4572, 9);
  });

  // Common practice, from memory: 1 hp draws 10.4 A at its service factor, where the code's table has 8 A. NFPA 70 (NEC),
  // Chapter 9, Table 8, stranded: 10 AWG 1.24 ohm, 8 AWG 0.778 ohm for 1,000 ft.
  test('is chosen by what the motor draws at its service factor', () => {
    const far = { 'wire.size': '14 AWG', 'wire.run': '400 ft' };
    const length = 400 + (138.5 - 4 + 1) * 1.02 + 5 + 4;
    const lost = (ohms: number, amperes: number) => (2 * amperes * ohms * length) / 1000 / 230;
    expect([lost(1.24, 10.4) > 0.05, lost(1.24, 8) < 0.05, lost(0.778, 10.4) < 0.05]).toEqual([true, true, true]);
    expect(fixOf('PR-49', far)).toEqual({ changes: [{ path: 'wire.size', to: '8 AWG' }], words: 'Use 8 AWG' });
  });

  // NFPA 70 (NEC) 430.22 and Table 310.16: 125 % of 17 A is 21.25 A; 12 AWG carries 20 A, 10 AWG 30 A at 60 degC.
  test('carries what the nameplate says where that is more than the table', () => {
    const hungry = { 'pump.current': '17 A', 'wire.size': '12 AWG', 'wire.run': '1 ft' };
    expect(saidOf('PR-50', hungry).amount).toBe('1.3 A short');
    expect(fixOf('PR-50', hungry).changes).toEqual([{ path: 'wire.size', to: '10 AWG' }]);
  });

  // 5 hp is 28 A by Table 430.248: 35 A asked, whatever a nameplate says less.
  test('is not thinned by a nameplate under the table', () => {
    const modest = { 'pump.power': '5 hp', 'pump.current': '20 A', 'wire.size': '12 AWG', 'wire.run': '1 ft' };
    expect(fixOf('PR-50', modest).changes).toEqual([{ path: 'wire.size', to: '8 AWG' }]);
  });
});
