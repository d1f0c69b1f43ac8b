/** A pump that cannot lift from where the water was measured is not hung higher for it. */
import { expect, test } from 'vitest';
import { setDepths } from '../../../src/model/place/setDepths.ts';
import { planOf } from '../../plans/build.ts';

const measuredAt = (level: string) =>
  planOf({
    format: 'wellcut-plan/1',
    site: { frostDepth: '36 in' },
    well: {
      depth: '230 ft',
      casing: { material: 'steel', size: '6 in', bottom: '163 ft' },
      intake: { kind: 'screen', diameter: '5 in', top: '163 ft', bottom: '186 ft' },
    },
    water: { staticLevel: '50 ft', pumping: { kind: 'level', level } },
    house: { demand: '4 gpm', tank: '20 gal', distance: '50 ft', rise: '5 ft', line: { material: 'PE', size: '1 in' } },
    top: { kind: 'pitless', depth: '5 ft' },
    pump: { setting: '211 ft', power: '1/2 hp' },
    dropPipe: { material: 'PE', size: '1 in', rating: '200 psi' },
  });

test('it is left where it is, and that is told', () => {
  const { changes, left, clashes } = setDepths(measuredAt('176 ft'));
  expect(changes.filter(({ path }) => path === 'pump.setting')).toEqual([]);
  expect([...left.map(({ path }) => path), ...clashes.map(({ setting }) => setting)]).toContain('pump.setting');
});

test('from water that it does lift it is hung', () => {
  expect(setDepths(measuredAt('60 ft')).changes.map(({ path }) => path)).toContain('pump.setting');
});
