/** In the table of depths: what was chosen is chosen, and what rests on something assumed says so. */
import { describe, expect, test } from 'vitest';
import { assumedEnds, isPlaceKnown } from '../../../src/model/string/placedBy.ts';
import { setDepths } from '../../../src/model/place/setDepths.ts';
import { solve, type Plan } from '../../../src/model/index.ts';

const BARE: Plan = {
  format: 'wellcut-plan/1',
  site: { frostDepth: '36 in' },
  well: {
    depth: '200 ft',
    casing: { material: 'steel', size: '6 in', bottom: '42 ft' },
    intake: { kind: 'open hole' },
  },
  water: { staticLevel: '40 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '34 ft' } },
  house: { demand: '8 gpm', distance: '90 ft', line: { material: 'PE', size: '1 in' } },
  pump: { power: '1 hp' },
};

function endsOf(plan: Plan, key: string) {
  const solution = solve(plan);
  return assumedEnds(
    solution,
    solution.parts.find((part) => part.key === key)!,
  );
}

const NEITHER = { top: false, bottom: false };
const BOTH = { top: true, bottom: true };

test.each(['pump', 'intake', 'motor', 'nipple', 'checkValve', 'insertFitting/pump', 'insertFitting/top', 'conduit'])(
  'of a well with nothing chosen, the place of the %s is assumed',
  (key) => {
    expect(endsOf(BARE, key)).toEqual(BOTH);
  },
);

test.each(['bond', 'tank', 'switch', 'gauge'])('the %s is drawn unasked', (key) => {
  expect(endsOf(BARE, key)).toEqual(BOTH);
});

describe('after the depths were set', () => {
  const { plan } = setDepths(BARE);

  test('the intake hangs where it was put; how long the pump is over it and under it stays assumed', () => {
    expect(plan.pump?.setting).toBeDefined();
    expect(endsOf(plan, 'intake')).toEqual(NEITHER);
    expect(endsOf(plan, 'pump')).toEqual({ top: true, bottom: false });
    expect(endsOf(plan, 'motor')).toEqual({ top: false, bottom: true });
  });

  test('with the lengths of the pump said, nothing of it is assumed', () => {
    const said = { ...plan, pump: { ...plan.pump, intakeToDischarge: '18 in', intakeToMotorBottom: '24 in' } };
    for (const key of ['pump', 'intake', 'motor', 'nipple']) expect(endsOf(said, key)).toEqual(NEITHER);
  });
});

test('what stands in the house has a height only where the rise is known', () => {
  expect(isPlaceKnown(solve(BARE), { kind: 'tank' })).toBe(false);
  expect(isPlaceKnown(solve(BARE), { kind: 'motor' })).toBe(true);
  expect(isPlaceKnown(solve({ ...BARE, house: { ...BARE.house, rise: '6 ft' } }), { kind: 'tank' })).toBe(true);
});
