import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { handlesOf, moveHandle, solve, type Plan } from '../../src/model/index.ts';
import { feet, inches } from '../../src/model/units.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { planOf, rockWell } from '../plans/build.ts';

const drag = (plan: Plan, id: string, depth: number, options = {}) => moveHandle(plan, solve(plan), id, depth, options);
const at = (plan: Plan, id: string) => handlesOf(solve(plan)).find((handle) => handle.id === id)!.depth;

test('the pump goes where it is dragged and is written in the unit it had', () => {
  const { plan, blocked } = drag(rockWell(), 'pumpSetting', feet(150));
  expect(plan.pump?.setting).toBe('150 ft');
  expect(blocked).toBeNull();
});

test('a depth typed from the casing top is written from the casing top', () => {
  const plan = rockWell({
    well: {
      depth: '200 ft',
      depthsFrom: 'casing top',
      casing: { material: 'steel', size: '6 in', bottom: '200 ft', height: '12 in' },
      intake: { kind: 'open hole', diameter: '6 in' },
    },
  });
  expect(drag(plan, 'pumpSetting', feet(150)).plan.pump?.setting).toBe('151 ft');
});

describe('water', () => {
  test("the static level carries a test's pumping level along", () => {
    const before = rockWell();
    const { plan } = drag(before, 'staticLevel', feet(50));
    expect(at(plan, 'pumpingLevel') - at(before, 'pumpingLevel')).toBeCloseTo(feet(10), 6);
  });
  test('dragging the pumping level writes the drawdown at the tested flow', () => {
    const { plan } = drag(rockWell(), 'pumpingLevel', feet(75));
    expect((plan.water.pumping as { drawdown: string }).drawdown).toBe('50 ft');
    expect(at(plan, 'pumpingLevel')).toBeCloseTo(feet(75), 6);
  });
  test('a step of the pumping level is one on the drawing, though what is written is the drawdown at another flow', () => {
    const tested = rockWell({
      house: { ...rockWell().house, demand: '6 gpm' },
      water: { staticLevel: '43.7 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '41 ft' } },
    });
    for (const feetDown of [61.2, 70.6, 88]) {
      const { plan } = drag(tested, 'pumpingLevel', feet(feetDown), { step: feet(1) });
      expect(at(plan, 'pumpingLevel') / feet(1)).toBeCloseTo(Math.round(feetDown), 1);
    }
  });
  test('a step never leads the pumping level over the static one', () => {
    const { plan } = drag(
      rockWell({ water: { staticLevel: '40.4 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '9 ft' } } }),
      'pumpingLevel',
      feet(40.45),
      { step: feet(1) },
    );
    expect((plan.water.pumping as { drawdown: string }).drawdown).toBe('0 ft');
  });
  test('a measured pumping level stays when the static level moves, and blocks it at no drawdown', () => {
    const plan = rockWell({
      water: { staticLevel: '40 ft', pumping: { kind: 'level', level: '70 ft', flow: '7 gpm' } },
    });
    expect(at(drag(plan, 'staticLevel', feet(60)).plan, 'pumpingLevel')).toBeCloseTo(feet(70), 6);
    const met = drag(plan, 'staticLevel', feet(90));
    expect(met.blocked).toBe('meetsMeasuredLevel');
    expect(met.depth).toBeCloseTo(feet(70), 6);
  });
  test('with the drawdown locked both levels of a measured pair move', () => {
    const plan = rockWell({
      water: { staticLevel: '40 ft', pumping: { kind: 'level', level: '70 ft', flow: '7 gpm' } },
    });
    expect(at(drag(plan, 'staticLevel', feet(60), { lockDrawdown: true }).plan, 'pumpingLevel')).toBeCloseTo(
      feet(90),
      6,
    );
  });
  test("an aquifer's pumping level has no handle and says why", () => {
    const plan = rockWell({
      water: { staticLevel: '40 ft', pumping: { kind: 'aquifer', transmissivity: '5 m2/d', storativity: '0.0001' } },
    });
    const { blocked, plan: after } = drag(plan, 'pumpingLevel', feet(100));
    expect(blocked).toBe('followsFromAquifer');
    expect(after).toBe(plan);
  });
});

test('the impossible blocks: a motor on the bottom, an adapter out of the ground', () => {
  const pump = drag(rockWell(), 'pumpSetting', feet(500));
  expect(pump.depth).toBeCloseTo(feet(198.5), 6);
  expect(pump.blocked).toBe('motorOnBottom');
  expect(drag(rockWell(), 'pitlessDepth', -1).depth).toBeGreaterThan(0);
  const bottom = drag(
    rockWell({
      well: {
        depth: '200 ft',
        casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '12 in' },
        intake: { kind: 'open hole', diameter: '6 in' },
      },
    }),
    'wellBottom',
    feet(100),
  );
  expect(bottom.depth).toBeCloseTo(feet(141.5), 6);
  expect(bottom.blocked).toBe('meetsMotor');
});

test('a step keeps the readout honest', () => {
  expect(drag(rockWell(), 'pumpSetting', feet(150.3), { step: feet(1) }).plan.pump?.setting).toBe('150 ft');
  expect(drag(rockWell(), 'pitlessDepth', inches(61.4), { step: inches(1) }).plan.top).toMatchObject({
    depth: expect.stringMatching(/5\.08\d* ft|61 in|5 ft 1 in/),
  });
});

test('in any plan, any handle dragged anywhere leaves a readable plan with the handle where it is said to be', () => {
  fc.assert(
    fc.property(anyPlan, fc.double({ min: -5, max: 400, noNaN: true }), fc.nat(20), (json, depth, pick) => {
      const plan = planOf(json);
      const solution = solve(plan);
      const handles = handlesOf(solution);
      const handle = handles[pick % handles.length]!;
      const moved = moveHandle(plan, solution, handle.id, depth);
      const after = planOf(moved.plan);
      if (handle.locked !== null) expect(moved.plan).toBe(plan);
      else
        expect(
          Math.abs(handlesOf(solve(after)).find((each) => each.id === handle.id)!.depth - moved.depth),
        ).toBeLessThan(0.002);
    }),
    { numRuns: 300, seed: 5 },
  );
});
