import { expect, test } from 'vitest';
import { handlesOf } from '../../../src/model/handles.ts';
import { solve } from '../../../src/model/index.ts';
import { adapterRoom } from '../../../src/model/rules/adapterRoom.ts';
import { ROOM_OVER_PUMP } from '../../../src/model/string/lengths.ts';
import { toFeet, toInches } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';

// The discharge stands 1.5 ft over the intake of a usual pump.
test.each([
  ['an adapter at 5 ft', { kind: 'pitless', depth: '5 ft' }, 5 + 1.5 + 1.5],
  ['a seal 1 ft over the ground', { kind: 'seal' }, -1 + 1.5 + 1.5],
])('as high as a pump goes under %s, the pipe still reaches over both of its barbs', (_, top, highest) => {
  const low = solve(rockWell({ top }));
  expect(toFeet(handlesOf(low).find(({ id }) => id === 'pumpSetting')!.min)).toBeCloseTo(highest, 6);
  const pump = { setting: `${highest} ft`, power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } };
  expect(toInches(solve(rockWell({ top, pump })).values.dropPipeToCut!)).toBeGreaterThanOrEqual(4 - 1e-6);
});

test('and an adapter goes as deep over it as it hangs under the adapter', () => {
  const pump = { setting: '8 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } };
  const { facts } = solve(rockWell({ pump }));
  expect(adapterRoom(facts)).toEqual({
    deepest: facts.pump.setting - facts.pump.intakeToDischarge - ROOM_OVER_PUMP,
    by: 'pump',
  });
});
