import { describe, expect, test } from 'vitest';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { spoiled } from './sample.ts';

function faults(plan: unknown): string[] {
  const reading = readPlan(plan);
  return reading.ok ? [] : reading.problems.map(({ path, problem }) => `${path}: ${problem}`);
}

const SCREENS = 'well.intake.screens';

describe('numbers that cannot be true together', () => {
  test.each([
    ['well.casing.bottom', '-17 in', undefined, /^well.casing.bottom: not below its top/],
    ['well.inflows.1.share', '71 %', undefined, /^well.inflows: shares that add up to more than 100 %/],
    ['well.layers.1.bottom', '27 ft', undefined, /^well.layers.1.bottom: above the bottom of the layer before it/],
    ['house.cutOut', '40 psi', undefined, /^house.cutOut: not above cut-in/],
    ['pump.setting', '7 ft', undefined, /^pump.setting: so high/],
    ['water.dryFall', '2 m', 'heron-flats', /^water.dryFall: beside water.staticLowest/],
    [`${SCREENS}.0.bottom`, '32 m', 'heron-flats', /^well.intake.screens.0.bottom: not below its top/],
    [`${SCREENS}.0.bottom`, '38.1 m', 'heron-flats', /^well.intake.screens.0.bottom: below the bottom/],
    ['well.intake.bottom', '48 m', 'palo-amargo', /^well.intake.bottom: not below its top/],
    ['well.casings', [], 'palo-amargo', /^well.casings: a list of 0/],
  ] as const)('%s %j', (path, value, name, fault) => {
    const found = faults(spoiled(path, value, name));
    expect(found.some((sentence) => fault.test(sentence))).toBe(true);
  });

  test.each([
    ['a casing that ends below the well', 'well.casing.bottom', '221 ft', undefined],
    ['a pumping level above the level at rest', 'water.pumping.level', '7.8 m', 'heron-flats'],
  ] as const)('%s is read: the rules tell the contradiction', (_what, path, value, name) => {
    expect(faults(spoiled(path, value, name))).toEqual([]);
  });

  test('screens are told from the top down', () => {
    const screens = [
      { top: '34 m', bottom: '36 m' },
      { top: '32 m', bottom: '33 m' },
    ];
    expect(faults(spoiled(SCREENS, screens, 'heron-flats'))).toEqual([
      'well.intake.screens.1.top: above the bottom of the screen before it',
    ]);
  });

  test('a pump curve rises in flow and falls in head', () => {
    const points = [
      ['0 gpm', '300 ft'],
      ['5 gpm', '310 ft'],
      ['4 gpm', '200 ft'],
    ];
    expect(faults(spoiled('pump.curve', { kind: 'points', points }))).toEqual([
      'pump.curve.points.1.1: not below the head of the point before it',
      'pump.curve.points.2.0: not above the flow of the point before it',
    ]);
  });

  test('steps of a test rise in flow', () => {
    const steps = [
      { flow: '5 gpm', drawdown: '10 ft' },
      { flow: '5 gpm', drawdown: '12 ft' },
    ];
    expect(faults(spoiled('water.pumping', { kind: 'steps', steps }))).toEqual([
      'water.pumping.steps.1.flow: not above the flow of the step before it',
    ]);
  });

  test('a well has one casing or a list of them, not both and not neither', () => {
    expect(faults(spoiled('well.casings', [{ material: 'steel', size: '6 in' }]))).toEqual([
      'well.casing: beside well.casings',
    ]);
    expect(faults(spoiled('well.casing', undefined))).toEqual(['well.casing: missing']);
  });

  test('a casing of which nobody knows size or material is unknown, not impossible', () => {
    expect(faults(spoiled('well.casing', {}))).toEqual([]);
    expect(faults(spoiled('well.casing', { material: 'other', insideDiameter: '5.5 in' }))).toEqual([]);
  });

  test('a screen needs both its ends', () => {
    expect(faults(spoiled('well.intake.bottom', undefined, 'palo-amargo'))).toEqual(['well.intake.bottom: missing']);
  });

  test('equal depths typed in other units are equal', () => {
    expect(faults(spoiled('well.casing.bottom', '67.056 m'))).toEqual([]);
    expect(faults(spoiled('well.layers.1.bottom', '8.5344 m'))).toEqual([]);
  });
});
