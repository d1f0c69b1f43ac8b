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
    expect(amount).toBe('4.2 % lost, 5 % allowed');
    expect(message).toMatch(/10 AWG loses 4\.2 % over .*; limit 5 %, advised 3 %\.$/);
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

describe('a wire on which the motor does not start', () => {
  const far = { 'wire.size': '14 AWG', 'pump.voltage': '115 V', 'pump.power': '1-1/2 hp', 'wire.run': '900 ft' };

  test('is a danger, and no percent over a hundred is lost', () => {
    const { findings } = judged(far);
    const found = findings.find(({ rule }) => rule === 'PR-49');
    expect(found).toMatchObject({ severity: 'danger', variant: 'doesNotStart', quantity: 'ratio' });
    expect(solvedPlan(changed(far)).values.voltageDropRunning).toBeNull();
    expect(saidOf('PR-49', far).message).toMatch(/ % of 115 V arrives: too little to turn\.$/);
  });

  // Voltage divider with r = I_LR m R L / V and a power factor of 0.7: half of the voltage is left at r = 1.17, and
  // stranded copper of 14 AWG has 3.14 ohm a thousand feet (NFPA 70, Chapter 9, Table 8): of 1 hp at 230 V, 48 A, 893 ft.
  test('begins where half of the voltage is left, by the code’s table of resistance and of locked rotors', () => {
    const ofLength = (feet: number) => {
      const bound = (48 * 2 * 3.14 * feet) / 1000 / 230;
      return 1 / Math.sqrt(1 + 2 * bound * 0.7 + bound * bound);
    };
    expect(ofLength(893)).toBeCloseTo(0.5, 2);
    const at = (run: number) =>
      judged({ 'wire.size': '14 AWG', 'pump.voltage': '230 V', 'pump.power': '1 hp', 'wire.run': `${run} ft` });
    const inWell = (solvedPlan(changed({ 'wire.run': '10 ft' })).values.wireLength ?? 0) / 0.3048;
    expect(at(893 - inWell - 60).verdicts['PR-49']).toBe('warning');
    expect(at(893 - inWell + 60).verdicts['PR-49']).toBe('danger');
  });

  // Common practice, from memory: a motor takes six times its running current to start. 60 A for 10 A, and r = 1.17 at 714 ft.
  test.each([
    { power: '1 hp', whatever: 'whatever the table has for its power' },
    { power: undefined, whatever: 'its power unknown' },
  ])('begins at six times a current that somebody read, $whatever', ({ power }) => {
    expect((60 * 2 * 3.14 * 714) / 1000 / 230).toBeCloseTo(1.17, 2);
    const read = { 'wire.size': '14 AWG', 'pump.power': power, 'pump.current': '10 A' };
    const inWell = (solvedPlan(changed({ 'wire.run': '10 ft' })).values.wireLength ?? 0) / 0.3048;
    const at = (length: number) => judged({ ...read, 'wire.run': `${length - inWell} ft` }).verdicts['PR-49'];
    expect([at(714 - 35), at(714 + 35)]).toEqual(['warning', 'danger']);
  });
});

// NFPA 70 (NEC), Table 430.248: 1 hp at 230 V draws 8 A; 430.22: the wire carries 125 % of that.
test('the wire’s current is told as that of the code’s table, the drop’s as what the motor draws', () => {
  const held = (rule: string, changes = {}, values = {}) => {
    const found = judged(changes, values).holding.find((each) => each.rule === rule);
    if (found === undefined) throw new Error(`${rule} does not hold`);
    return sayHolding(found, en, show('us'));
  };
  expect(held('PR-50', { 'wire.size': '12 AWG' }).message).toBe(
    '12 AWG carries 20 A; 10 A is asked: 125 % of 8 A, the code’s figure.',
  );
  expect(held('PR-50', { 'pump.current': '10.4 A', 'wire.size': '12 AWG' }).message).toBe(
    '12 AWG carries 20 A; 13 A is asked: 125 % of 10.4 A, the nameplate’s.',
  );
  const drop = held('PR-49', {}, { voltageDropRunning: 0.047 });
  expect(drop.message).toMatch(/^At 10\.4 A .* loses 4\.7 % .*; limit 5 %, advised 3 %\.$/);
  expect(drop.amount).toBe('4.7 % lost, 5 % allowed');
});
