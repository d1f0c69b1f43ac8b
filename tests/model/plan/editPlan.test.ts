import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { valueAt, withDepth, withLength, withValue } from '../../../src/model/plan/editPlan.ts';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { feet, inches } from '../../../src/model/units.ts';
import { SAMPLES, sample } from './sample.ts';

describe('one field changes and no other', () => {
  test('a value in a group, in a list, and in a group that was not there', () => {
    const plan = sample();
    expect(withValue(plan, 'pump.setting', '170 ft')).toEqual({ ...plan, pump: { ...plan.pump, setting: '170 ft' } });
    expect(valueAt(withValue(plan, 'well.layers.1.bottom', '60 ft'), 'well.layers.1.bottom')).toBe('60 ft');
    expect(withValue(plan, 'disinfection.strength', '6 %').disinfection).toEqual({ strength: '6 %' });
    expect(valueAt(withValue(plan, 'string.checkValves.1', '100 ft'), 'string.checkValves')).toEqual([
      '0 ft',
      '100 ft',
    ]);
    expect(plan).toEqual(sample());
  });

  test('undefined takes a field out, and an item out of its list', () => {
    const plan = sample();
    expect(withValue(plan, 'rope', undefined)).not.toHaveProperty('rope');
    expect(valueAt(withValue(plan, 'well.layers.0', undefined), 'well.layers.0.material')).toBe('sand and gravel');
    expect(withValue(plan, 'house.precharge', undefined)).toBe(plan);
  });

  test('the order of the fields as typed stays', () => {
    const keys = (value: object) => Object.keys(value);
    const plan = sample();
    expect(keys(withValue(plan, 'water.staticLevel', '60 ft'))).toEqual(keys(plan));
    expect(keys(withValue(plan, 'water.staticLevel', '60 ft').water)).toEqual(keys(plan.water));
  });
});

describe('short forms', () => {
  test('a single casing answers under its place in the list, and stays in its short form', () => {
    const moved = withValue(sample(), 'well.casings.0.bottom', '80 ft');
    expect(valueAt(sample(), 'well.casings.0.bottom')).toBe('90 ft');
    expect(moved.well.casing?.bottom).toBe('80 ft');
    expect(moved.well).not.toHaveProperty('casings');
  });

  test('a second casing turns the short form into a list', () => {
    const two = withValue(sample(), 'well.casings.1', {
      material: 'PVC',
      size: '4 in',
      top: '60 ft',
      bottom: '150 ft',
    });
    expect(two.well).not.toHaveProperty('casing');
    expect(two.well.casings?.map(({ size }) => size)).toEqual(['6 in', '4 in']);
    expect(readPlan(two).ok).toBe(true);
  });

  test('a single screen answers under its place in the list; its slot writes it out', () => {
    const plan = sample('palo-amargo');
    expect(valueAt(plan, 'well.intake.screens.0.top')).toBe('48.5 m');
    expect(withValue(plan, 'well.intake.screens.0.bottom', '60 m').well.intake).toMatchObject({ bottom: '60 m' });
    const slotted = withValue(plan, 'well.intake.screens.0.slot', '1 mm');
    expect(slotted.well.intake.screens).toEqual([{ top: '48.5 m', bottom: '60.5 m', slot: '1 mm' }]);
    expect(readPlan(slotted).ok).toBe(true);
  });
});

describe('a depth is written', () => {
  test('in the unit the field had', () => {
    const plan = withValue(sample(), 'pump.setting', '55 m');
    expect(valueAt(withDepth(plan, 'pump.setting', 54, 0.1), 'pump.setting')).toBe('54 m');
    expect(valueAt(withDepth(sample(), 'site.frostDepth', inches(50), inches(1)), 'site.frostDepth')).toBe('50 in');
    const feetAndInches = withValue(sample(), 'top.depth', `6' 6"`);
    expect(valueAt(withDepth(feetAndInches, 'top.depth', inches(69), inches(1)), 'top.depth')).toBe('5 ft 9 in');
  });

  test('in the plan’s own units where the field had none', () => {
    expect(valueAt(withDepth(sample(), 'water.staticHighest', feet(55)), 'water.staticHighest')).toBe('55 ft');
    expect(valueAt(withDepth(sample('heron-flats'), 'well.soundedDepth', 37), 'well.soundedDepth')).toBe('37 m');
  });

  test('from the datum the field has', () => {
    const plan = sample('palo-amargo'); // depths from the casing top, 0.5 m above the ground
    expect(valueAt(withDepth(plan, 'pump.setting', 41), 'pump.setting')).toBe('41.5 m');
    expect(valueAt(withDepth(plan, 'site.frostDepth', 1), 'site.frostDepth')).toBe('1 m');
    expect(valueAt(withLength(plan, 'water.pumping.drawdown', 9), 'water.pumping.drawdown')).toBe('9 m');
  });

  test('so that it is read back where it was put, whatever unit and datum', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SAMPLES), fc.double({ min: 10, max: 200, noNaN: true }), (name, depth) => {
        const moved = withDepth(sample(name), 'pump.setting', depth);
        expect(readFacts(moved).facts.pump.setting).toBeCloseTo(depth, 9);
      }),
      { seed: 41 },
    );
  });
});
