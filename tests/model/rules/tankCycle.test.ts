import { describe, expect, test } from 'vitest';
import { show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayFix } from '../../../src/words/sayJudgement.ts';
import { changed, findingOf, fixesFor, fixOf, judged, solvedPlan, verdictOf } from './fixture.ts';

describe('a small tank', () => {
  const tiny = { 'house.tank': '2 gal', 'pump.curve.flow': '12 gpm' };

  test('of 2 gal on a 12 gpm pump passed in silence', () => {
    expect(verdictOf('PR-56', tiny)).toBe('warning');
  });

  test('is answered by the next usual size that gives a minute', () => {
    // Boyle: 40 to 60 psi on air at 38 psi takes 25.8 % of the tank: 12 gal ask for 46.5 gal.
    expect(fixOf('PR-56', tiny).changes).toEqual([{ path: 'house.tank', to: '62 gal' }]);
  });

  // Boyle at 40 to 60 psi on air at 38 psi: 52.7 / 54.7 - 52.7 / 74.7 of the tank are taken at each start.
  test.each([20, 32, 44, 62, 86, 119])(
    'is answered by %i gal where just that gives a minute, and by none less',
    (gallons) => {
      const share = 52.7 / 54.7 - 52.7 / 74.7;
      const named = (flow: number) =>
        fixOf('PR-56', { 'house.tank': '2 gal', 'pump.curve.flow': `${flow} gpm` }).changes;
      expect(named(0.99 * share * gallons)).toEqual([{ path: 'house.tank', to: `${gallons} gal` }]);
      expect(named(1.01 * share * gallons)).not.toEqual([{ path: 'house.tank', to: `${gallons} gal` }]);
    },
  );

  // 2.8 to 4.1 bar on air at 2.66 bar (2 psi under): 3.676 / 3.813 - 3.676 / 5.113.
  test.each([60, 100, 150, 200, 300, 500])('is answered by %i L in a metric plan', (litres) => {
    const share = 3.676 / 3.813 - 3.676 / 5.113;
    const named = (flow: number) =>
      fixOf('PR-56', {
        units: 'metric',
        'house.cutIn': '2.8 bar',
        'house.cutOut': '4.1 bar',
        'house.tank': '8 L',
        'pump.curve.flow': `${flow} L/min`,
      }).changes;
    expect(named(0.98 * share * litres)).toEqual([{ path: 'house.tank', to: `${litres} L` }]);
    expect(named(1.02 * share * litres)).not.toEqual([{ path: 'house.tank', to: `${litres} L` }]);
  });

  test('is answered in litres for a reader of metric units, while the plan keeps its own', () => {
    const [fix] = fixesFor(findingOf('PR-56', tiny), solvedPlan(changed(tiny)));
    expect(fix?.changes).toEqual([{ path: 'house.tank', to: '62 gal' }]);
    expect(sayFix('PR-56', fix!, en, show('metric'))).toBe('Use a tank of 235 L');
  });

  test('is not the fault where its air is set too high', () => {
    expect(fixOf('PR-56', { 'house.precharge': '58 psi' }).changes).toBeNull();
  });
});

describe('the air of the tank', () => {
  test('at 60 psi over a cut-in of 40 passed in silence', () => {
    expect(verdictOf('PR-57', { 'house.precharge': '60 psi' })).toBe('danger');
  });

  // 2 psi under cut-in: Water Systems Council, Pressure Tanks (2007), pp. 2-3.
  test('is set to 2 psi under cut-in', () => {
    expect(fixOf('PR-57', { 'house.precharge': '60 psi' }).changes).toEqual([
      { path: 'house.precharge', to: '38 psi' },
    ]);
  });

  test('is set in the unit that was typed, rounded down', () => {
    const metric = {
      units: 'metric',
      'house.cutIn': '2.8 bar',
      'house.cutOut': '4.1 bar',
      'house.precharge': '4.2 bar',
    };
    // 2.8 bar less 2 psi, 0.138 bar, is 2.66.
    expect(fixOf('PR-57', metric).changes).toEqual([{ path: 'house.precharge', to: '2.65 bar' }]);
  });

  test('that nobody set follows the switch and is not judged', () => {
    expect(judged({}).holding.some(({ rule }) => rule === 'PR-57')).toBe(false);
  });
});
