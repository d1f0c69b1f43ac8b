import { describe, expect, test } from 'vitest';
import { candidatesFor } from '../../../src/model/fixes/candidatesFor.ts';
import { givenBy } from '../../../src/model/rules/index.ts';
import { solve } from '../../../src/model/solve.ts';
import { gpm, psi } from '../../../src/model/units.ts';
import { CASES } from './cases.ts';
import { changed, fixesFor, fixOf, judged, saidOf, solvedPlan } from './fixture.ts';

test('the change is the smallest: thin wire, which has a fix of its own, does not push the pump further', () => {
  const thin = { 'pump.setting': '198 ft', 'wire.size': '14 AWG' };
  expect(fixOf('PR-01', thin).changes).toEqual([{ path: 'pump.setting', to: '188 ft' }]);
  expect(judged(thin).verdicts['PR-49']).toBe('warning');
});

describe('the button', () => {
  test('lowers the adapter to the margin below frost, in the unit that was typed', () => {
    const shallow = { 'top.depth': '36 in', 'site.frostDepth': '48 in' };
    expect(saidOf('PR-19', shallow).amount).toBe('18 in too high');
    expect(fixOf('PR-19', shallow)).toEqual({
      changes: [{ path: 'top.depth', to: '54 in' }],
      words: 'Lower to 54 in',
    });
    expect(fixOf('PR-19', { 'top.depth': '0.9 m', 'site.frostDepth': '48 in' }).changes).toEqual([
      { path: 'top.depth', to: '1.4 m' },
    ]);
  });

  test('raises the pump to whole feet off the bottom', () => {
    const low = { 'pump.setting': '194 ft', 'wire.size': '4 AWG' };
    expect(saidOf('PR-01', low).amount).toBe('5.5 ft too low');
    expect(fixOf('PR-01', low)).toEqual({
      changes: [{ path: 'pump.setting', to: '188 ft' }],
      words: 'Raise to 188 ft',
    });
  });

  test('counts from the casing top where the plan does', () => {
    const fix = fixOf('PR-01', {
      'well.depthsFrom': 'casing top',
      'pump.setting': '195 ft',
      'wire.size': '4 AWG',
    });
    // The well is 200 ft from a casing top 1 ft above the ground: 199 - 10 - 1.5 is 187.5, so 187 ft deep, 188 ft typed.
    expect(fix.changes).toEqual([{ path: 'pump.setting', to: '188 ft' }]);
  });

  test('is words where the part is reported or installed', () => {
    for (const status of [{ 'pump.setting': 'installed' }, { 'pump.setting': 'reported' }, { pump: 'installed' }]) {
      const fix = fixOf('PR-01', { 'pump.setting': '194 ft', status });
      expect(fix.changes).toBeNull();
      expect(fix.words).toMatch(/\.$/);
    }
    expect(
      fixOf('PR-01', { 'pump.setting': '194 ft', status: { 'pump.setting': 'to choose' } }).changes,
    ).not.toBeNull();
  });

  test('is words where no depth meets every rule, and says which exclude each other', () => {
    expect(
      fixOf('PR-02', {
        'water.pumping.level': '185 ft',
        'pump.setting': '190 ft',
        'pump.lowLevelCutOff': undefined,
      }),
    ).toEqual({
      changes: null,
      words: 'No depth meets both: 10 ft under the lowest pumping level, and as deep as the pump lifts.',
    });
  });

  test('names the thinnest wire that does', () => {
    const { changes, words } = fixOf('PR-49', { 'wire.size': '14 AWG', 'wire.run': '200 ft' });
    expect(words).toBe(`Use ${(changes?.[0]?.to as string) ?? ''}`);
  });

  test('never changes the well, the water or the site', () => {
    for (const { changes: broken } of CASES) {
      const solved = solvedPlan(changed(broken));
      for (const finding of judged(broken).findings) {
        for (const { changes } of fixesFor(finding, solved)) {
          for (const { path } of changes ?? []) expect(path).not.toMatch(/^(?:well|water|site)\./);
        }
      }
    }
  });
});

/** A well that shows no drawdown: its lowest water stands at the level at rest. */
const noFall = { 'water.pumping.level': '40 ft' };

describe('the smallest change', () => {
  test('of a weak pipe is the next class that carries the pump, by SIDR and PE4710', () => {
    // 2 x 1000 psi / (SIDR + 1), ASTM D2239: SIDR 9 is 200 psi, SIDR 7 is 250 psi.
    expect(fixOf('PR-18', {}, { shutOffPressureAtPump: psi(230) }).changes).toEqual([
      { path: 'dropPipe.rating', to: '250 psi' },
    ]);
  });

  test('of bad joints fixes all that is wrong with them at once', () => {
    const { changes } = fixOf('PR-18', {
      'string.fittings': 'nylon',
      'string.clampsPerJoint': 1,
      'string.clampScrew': 'carbon steel',
    });
    expect(changes?.map(({ path }) => path)).toEqual(['string.fittings', 'string.clampsPerJoint', 'string.clampScrew']);
  });

  test('of a narrow pipe is the next size', () => {
    expect(fixOf('PR-47', { 'house.demand': '16 gpm' }).changes).toEqual([{ path: 'dropPipe.size', to: '1-1/4 in' }]);
  });

  test('of a switch set too high lowers cut-in and cut-out alike, by steps of 5 psi', () => {
    expect(fixOf('PR-46', noFall, { shutOffPressureAtTankLeast: psi(61) }).changes).toEqual([
      { path: 'house.cutOut', to: '50 psi' },
      { path: 'house.cutIn', to: '30 psi' },
    ]);
  });

  test('of a switch in a metric plan is written in bar, rounded down so that the margin stays', () => {
    // Two steps of 5 psi are 0.689 bar (1 psi = 6.894757 kPa, NIST SP 811), from 4.1 and 2.8 bar.
    expect(fixOf('PR-46', { ...noFall, units: 'metric' }, { shutOffPressureAtTankLeast: psi(61) }).changes).toEqual([
      { path: 'house.cutOut', to: '3.41 bar' },
      { path: 'house.cutIn', to: '2.11 bar' },
    ]);
  });

  test('of a switch is words where the house would be left with less than 20 psi', () => {
    expect(fixOf('PR-46', noFall, { shutOffPressureAtTankLeast: psi(45) }).changes).toBeNull();
  });

  test('of a pump too strong for the well is a valve for its yield, or a cut-off where the house wants more', () => {
    const strong = { operatingFlowAtCutInMost: gpm(20) };
    expect(fixOf('PR-07', { 'pump.lowLevelCutOff': undefined }, strong).changes).toEqual([
      { path: 'pump.flowLimiter', to: '15 gpm' },
    ]);
    expect(fixOf('PR-07', { 'pump.lowLevelCutOff': undefined, 'well.yield': '5 gpm' }, strong).changes).toEqual([
      { path: 'pump.lowLevelCutOff', to: '138 ft' },
    ]);
  });

  test('of a poor well that no depth suits is the deepest place, with a probe that holds water over the intake', () => {
    const poor = {
      'water.pumping.level': '250 ft',
      'well.yield': '2 gpm',
      'pump.setting': '120 ft',
      'pump.lowLevelCutOff': undefined,
      'pump.power': '3 hp',
    };
    // The well is 200 ft deep: 200 - 10 - 2.5 is 187.5, so 187 ft, and common practice stops the pump 2 ft above that.
    const solution = solve(changed(poor));
    const dry = solution.findings.find(({ rule }) => rule === 'PR-02')!;
    const deepest = candidatesFor(dry, givenBy(solution)).find(({ variant }) => variant === 'hangWithCutOff');
    expect(deepest?.changes).toEqual([
      { path: 'pump.setting', to: '187 ft' },
      { path: 'pump.lowLevelCutOff', to: '185 ft' },
    ]);
  });
});
