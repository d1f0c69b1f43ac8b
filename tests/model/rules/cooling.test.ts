import { describe, expect, test } from 'vitest';
import { fixesOf } from '../../../src/model/fixes/fixesOf.ts';
import { solve } from '../../../src/model/solve.ts';
import { feet, show, toFeet } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayHolding } from '../../../src/words/sayJudgement.ts';
import type { Changes } from './fixture.ts';
import { changed, findingOf, fixOf, judged, saidOf, verdictOf } from './fixture.ts';

/** 3 hp without a sleeve, over inflows at 130 and 175 ft; its motor ends 2.5 ft under the intake. */
const large = { 'pump.shroudDiameter': undefined, 'pump.power': '3 hp', 'wire.size': '6 AWG' };

const messageOf = (rule: string, changes: Changes, units: 'us' | 'metric' = 'us') => {
  const held = judged(changes).holding.find((each) => each.rule === rule);
  return held === undefined ? null : sayHolding(held, en, show(units)).message;
};

describe('water from above the motor', () => {
  test('is told of a motor of 2.2 kW as of one of 3 hp, since that is its metric name', () => {
    const below = { ...large, 'pump.setting': '180 ft' };
    expect(verdictOf('PR-05', { ...below, 'pump.power': '2.2 kW' })).toBe('warning');
    expect(verdictOf('PR-05', { ...below, 'pump.power': '1.5 kW' })).toBe('ok');
  });

  test('is told truly of a small motor, in the reader’s units', () => {
    const small = { ...large, 'pump.power': '1 hp', 'pump.setting': '180 ft' };
    expect(messageOf('PR-05', small)).toBe(
      'The lowest inflow is above it, at 175 ft; motors under 3 hp usually do without a flow sleeve.',
    );
    expect(messageOf('PR-05', small, 'metric')).toMatch(/at 53\.3 m; motors under 2\.2 kW usually/);
  });

  test('ends the band at the depth that is right, and not a foot deeper', () => {
    const band = judged({ ...large, 'pump.setting': '160 ft' }).bands.find(
      ({ setting }) => setting === 'pump.setting',
    )!;
    // The motor ends 2.5 ft under the intake: 175 - 2.5 is 172.5, rounded inward to the foot.
    expect([toFeet(band.to!), band.toEnd.rule]).toEqual([expect.closeTo(172, 6), 'PR-05']);
    expect(verdictOf('PR-05', { ...large, 'pump.setting': '172.5 ft' })).toBe('ok');
    expect(verdictOf('PR-05', { ...large, 'pump.setting': '172.6 ft' })).toBe('warning');
  });

  test('ends no band of a motor that does without a sleeve, or has one', () => {
    const endedBy = (changes: Changes) =>
      judged({ ...large, 'pump.setting': '160 ft', ...changes }).bands.find(({ setting }) => setting === 'pump.setting')
        ?.toEnd.rule;
    expect(endedBy({})).toBe('PR-05');
    expect(endedBy({ 'pump.power': '2 hp' })).not.toBe('PR-05');
    expect(endedBy({ 'pump.shroudDiameter': '4 in' })).not.toBe('PR-05');
    expect(endedBy({ 'well.inflows': undefined })).not.toBe('PR-05');
  });

  test('counts from the lowest of the inflows, in whatever order they are listed', () => {
    const inflows = [
      { depth: '175 ft', share: '70 %' },
      { depth: '130 ft', share: '30 %' },
    ];
    expect(findingOf('PR-05', { ...large, 'pump.setting': '180 ft', 'well.inflows': inflows }).limit).toBeCloseTo(
      feet(175),
      9,
    );
  });

  test('is mended past the inflow, also by a pump that hangs too near the bottom', () => {
    // 10 ft off the bottom alone would be 187 ft, still under the inflow.
    const deep = { ...large, 'pump.setting': '195 ft' };
    expect(fixOf('PR-05', deep).changes).toEqual([{ path: 'pump.setting', to: '172 ft' }]);
    const plan = changed(deep);
    const solution = solve(plan);
    const at = solution.findings.findIndex(({ rule }) => rule === 'PR-05');
    expect(fixesOf(plan, solution)[at]?.button?.changes).toEqual([{ path: 'pump.setting', to: '172 ft' }]);
  });

  test('takes the probe along when the pump is raised', () => {
    const probed = { ...large, 'pump.setting': '180 ft', 'pump.lowLevelCutOff': '175 ft' };
    expect(fixOf('PR-05', probed).changes).toEqual([
      { path: 'pump.setting', to: '172 ft' },
      { path: 'pump.lowLevelCutOff', to: '167 ft' },
    ]);
  });

  test('is a sleeve’s work where the water stands lower than the inflow', () => {
    const above = {
      ...large,
      'pump.flowLimiter': '10 gpm',
      'well.inflows': [{ depth: '75 ft', share: '100 %' }],
      'pump.setting': '120 ft',
    };
    expect(fixOf('PR-05', above)).toEqual({
      changes: null,
      words: 'Fit a flow sleeve: it leads the water past the motor.',
    });
    expect(judged(above).bands.find(({ setting }) => setting === 'pump.setting')?.clash).toEqual([]);
  });
});

test('slow water past a small motor is no finding, past a large one a note', () => {
  const slow = { velocityPastMotor: 0.01 };
  expect(judged({ ...large, 'pump.power': '2 hp' }, slow).verdicts['PR-06']).toBe('ok');
  expect(saidOf('PR-06', large, slow).message).toBe(
    'Water passes the motor at 0.03 ft/s; 0.25 ft/s is the usual least.',
  );
  expect(messageOf('PR-06', { ...large, 'pump.power': '2 hp', 'house.demand': '1 gpm' })).toMatch(
    /^Water passes the motor at .* ft\/s; motors under 3 hp usually do without a flow sleeve\.$/,
  );
});
