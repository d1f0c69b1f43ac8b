/** Where the trade would hang the pump and set the adapter: common practice, no source. */
import { describe, expect, test } from 'vitest';
import { solve, type Plan } from '../../../src/model/index.ts';
import { setDepths } from '../../../src/model/place/setDepths.ts';
import { feet } from '../../../src/model/units.ts';
import { SOUND } from '../../wells/sound.ts';
import { planOf } from '../../plans/build.ts';
import { TRADE_WELLS, type Place } from './tradeWells.ts';

/** Of the pump's intake and the adapter's outlet, from the ground, in feet or metres. */
function depthsOf(plan: Plan): { readonly pump: number; readonly adapter: number | null } {
  const { facts } = solve(plan);
  const unit = facts.units === 'us' ? feet(1) : 1;
  return {
    pump: facts.pump.setting / unit,
    adapter: facts.top.kind === 'pitless' ? facts.top.depth / unit : null,
  };
}

function expectAt(is: number | null, was: number | null, place: Place): void {
  if (place === 'stays') {
    expect(is).toBe(was);
    return;
  }
  expect(is).toBeGreaterThanOrEqual(place[0] - 1e-3);
  expect(is).toBeLessThanOrEqual(place[1] + 1e-3);
}

describe.each(TRADE_WELLS)('$name', ({ plan, pump, left, adapter, adapterLeft, guarded, clash }) => {
  const placed = setDepths(plan);
  const was = depthsOf(plan);
  const is = depthsOf(placed.plan);
  const whyOf = (path: string) => placed.left.find((each) => each.path === path)?.why.variant;

  test('the pump', () => {
    expectAt(is.pump, was.pump, pump);
    if (left !== undefined) expect(whyOf('pump.setting')).toBe(left);
  });
  test('the adapter', () => {
    expectAt(is.adapter, was.adapter, adapter ?? 'stays');
    if (adapterLeft !== undefined) expect(whyOf('top.depth')).toBe(adapterLeft);
  });
  test('what stops it, and what excludes each other', () => {
    const { lowLevelCutOff, setting } = solve(placed.plan).facts.pump;
    if (guarded === true) {
      expect(typeof lowLevelCutOff).toBe('number');
      // A probe hangs 2 ft over the intake, or higher.
      expect(setting - Number(lowLevelCutOff)).toBeGreaterThanOrEqual(feet(2) - 1e-3);
    }
    expect(placed.clashes.map(({ rules }) => rules)).toEqual(clash === undefined ? [] : [clash]);
  });
});

// Hung as the trade would: with room, or deep over a cut-off.
test.each(SOUND.map(({ name, plan }) => ({ name, plan: planOf(plan) })))('$name hangs well and stays', ({ plan }) => {
  const { changes, plan: placed } = setDepths(plan);
  expect(placed).toEqual(plan);
  expect(changes).toEqual([]);
});
