/** Where a probe goes that a button sets, and whether what stops the pump can ever act. */
import { describe, expect, test } from 'vitest';
import { solve } from '../../../src/model/solve.ts';
import { drawsTo, hasCutOff, isGuarded, probeOf } from '../../../src/model/rules/cutOff.ts';
import type { Solved } from '../../../src/model/solution.ts';
import { feet } from '../../../src/model/units.ts';
import { changed, fixOf, type Changes } from './fixture.ts';

const solved = (changes: Changes) => solve(changed(changes));

describe('a probe is written two feet over the intake, no lower, in steps that one ties it to', () => {
  test.each([
    ['half feet', '140.3 ft', '139.5 ft', '138 ft'],
    ['half feet', '140.6 ft', '139.5 ft', '138.5 ft'],
    ['tenths of a metre', '42.75 m', '42.5 m', '42.1 m'],
    ['centimetres', '4275 cm', '4250 cm', '4214 cm'],
    ['centimetres, typed in millimetres', '42755 mm', '42500 mm', '42140 mm'],
    ['inches', '1680.5 in', '1670 in', '1656 in'],
  ])('%s: a pump at %s, its probe at %s', (_, setting, probe, mended) => {
    expect(fixOf('PR-08', { 'pump.setting': setting, 'pump.lowLevelCutOff': probe }).changes).toEqual([
      { path: 'pump.lowLevelCutOff', to: mended },
    ]);
  });

  test('and the words say the depth that is written', () => {
    expect(fixOf('PR-08', { 'pump.setting': '140.3 ft', 'pump.lowLevelCutOff': '139.5 ft' }).words).toMatch(/138 ft/);
  });
});

describe('a probe guards the pump', () => {
  test('above the intake, not at it or under it', () => {
    const at = (probe: string) => solved({ 'pump.lowLevelCutOff': probe });
    expect([hasCutOff(at('139.9 ft')), hasCutOff(at('140 ft')), hasCutOff(at('141 ft'))]).toEqual([true, false, false]);
    expect([probeOf(at('139 ft')), probeOf(at('140 ft'))]).toEqual([feet(139), null]);
  });

  test('as a cut-off of unknown depth does, which has no probe', () => {
    expect([hasCutOff(solved({})), probeOf(solved({}))]).toEqual([true, null]);
    expect(hasCutOff(solved({ 'pump.lowLevelCutOff': undefined }))).toBe(false);
  });

  test('only where the pump draws the water down to it', () => {
    const lifting = (from: number | null, changes: Changes = {}): Solved => {
      const made = solved({ 'pump.lowLevelCutOff': '130 ft', ...changes });
      return { ...made, curves: { ...made.curves, liftsFromMost: from } };
    };
    expect([drawsTo(lifting(feet(100)), feet(100)), drawsTo(lifting(feet(100)), feet(101))]).toEqual([true, false]);
    // Nobody knows from where it lifts: not doubted.
    expect(drawsTo(lifting(null), feet(1000))).toBe(true);
    expect([isGuarded(lifting(feet(130))), isGuarded(lifting(feet(129)))]).toEqual([true, false]);
    expect(isGuarded(lifting(feet(500), { 'pump.lowLevelCutOff': undefined }))).toBe(false);
    // Without a depth it acts at the intake.
    const anywhere = { 'pump.lowLevelCutOff': true };
    expect([isGuarded(lifting(feet(140), anywhere)), isGuarded(lifting(feet(139), anywhere))]).toEqual([true, false]);
  });
});

describe('dry-run protection is offered', () => {
  const bare = { 'pump.lowLevelCutOff': undefined, 'pump.flowLimiter': '10 gpm', 'pump.setting': '101 ft' };

  test('by a probe, and of a pump near the surface by the current of its motor', () => {
    expect(fixOf('PR-08', bare).changes).toEqual([{ path: 'pump.lowLevelCutOff', to: '99 ft' }]);
    const shallow = {
      ...bare,
      top: { kind: 'seal' },
      'water.staticLevel': '0.5 ft',
      'water.pumping': { kind: 'level', level: '1 ft', flow: '10 gpm' },
    };
    expect(fixOf('PR-08', { ...shallow, 'pump.setting': '2 ft' }).changes).toEqual([
      { path: 'pump.lowLevelCutOff', to: '0 ft' },
    ]);
    expect(fixOf('PR-08', { ...shallow, 'pump.setting': '1.9 ft' }).changes).toEqual([
      { path: 'pump.lowLevelCutOff', to: true },
    ]);
  });
});
