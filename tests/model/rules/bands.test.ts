import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withDepth } from '../../../src/model/plan/editPlan.ts';
import { RULES } from '../../../src/model/rules/list.ts';
import { rangesOf } from '../../../src/model/rules/ranges.ts';
import type { Band, BandSetting, EndName } from '../../../src/model/solution.ts';
import { feet, inches, show, toFeet, toInches } from '../../../src/model/units.ts';
import { solve } from '../../../src/model/solve.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayEnd } from '../../../src/words/sayEnd.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import type { Changes } from './fixture.ts';
import { judged } from './fixture.ts';

function band(setting: BandSetting, changes: Changes): Band {
  const found = judged(changes).bands.find((each) => each.setting === setting);
  if (!found) throw new Error(`no band for ${setting}`);
  return found;
}

/** The rule that ends a band, and what the drawing calls that end. */
function said(end: EndName): [string | null, string] {
  return [end.rule, sayEnd(end, en.short, show('us'))];
}

/** What other choices fix is left aside, so that depth alone is on trial: thick wire, a light string. */
const depthAlone = { 'pump.setting': '190 ft', 'pump.flowLimiter': '10 gpm' };

/** With dry-run protection of which nobody said the depth any depth under water would do. */
const bare = { 'pump.lowLevelCutOff': undefined };

describe('a pump that fills no tank from where the water stands', () => {
  test('has no band: no depth of it would be right', () => {
    const weak = { 'house.rise': '700 ft' };
    expect(judged(weak).verdicts['PR-46']).toBe('danger');
    expect(band('pump.setting', weak)).toMatchObject({ from: null, to: null, clash: ['PR-46'] });
  });

  test('in 300 plans a band stands only where the pump lifts, or ends where it does', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const solution = solve(plan);
        const own = solution.bands.find(({ setting }) => setting === 'pump.setting');
        if (own === undefined || own.from === null || solution.verdicts['PR-46'] !== 'danger') return;
        expect(rangesOf(solution, RULES)['pump.setting'].heeded).toContain('PR-46');
      }),
      { seed: 61, numRuns: 300 },
    );
  });
});

describe('the band of the pump', () => {
  test('runs from 10 ft under the dry level to 10 ft off the bottom', () => {
    const found = band('pump.setting', { ...depthAlone, 'water.dryFall': '15 ft' });
    expect(toFeet(found.from!)).toBeCloseTo(82 + 15 + 10, 6);
    expect(said(found.fromEnd)).toEqual(['PR-02', '10 ft under the dry level']);
    // 200 - 10 - 1.5 is 188.5: rounded inward to the foot.
    expect(toFeet(found.to!)).toBeCloseTo(188, 6);
    expect(said(found.toEnd)).toEqual(['PR-01', '10 ft off the bottom']);
  });

  test('ends above the screen in a screened well', () => {
    const found = band('pump.setting', {
      ...depthAlone,
      'well.inflows': undefined,
      'well.casing.bottom': '150 ft',
      'well.intake': { kind: 'screen', diameter: '5 in', top: '150 ft', bottom: '170 ft' },
    });
    expect([toFeet(found.to!), found.toEnd.rule]).toEqual([expect.closeTo(148, 6), 'PR-03']);
  });

  test('is ended by no wire, hook, rope or pipe: those follow the depth', () => {
    const thin = band('pump.setting', { 'wire.size': '14 AWG', 'wire.run': '600 ft', 'pump.power': '3 hp' });
    const heavy = band('pump.setting', { rope: { material: 'polypropylene', breakingStrength: '100 lbf' } });
    expect([thin.toEnd.rule, heavy.toEnd.rule]).toEqual(['PR-01', 'PR-01']);
  });

  test('is not drawn as allowed while nobody knows how far the water falls', () => {
    const unknown = { 'water.pumping': { kind: 'yield only' }, 'pump.lowLevelCutOff': '138 ft' };
    expect(band('pump.setting', unknown).kind).toBe('unknown');
    expect(said(band('pump.setting', unknown).fromEnd)[1]).toBe('pumping level not measured');
    expect(band('pump.setting', {}).kind).toBe('allowed');
  });

  test('is null where the water falls below what the pump lifts from, and names both', () => {
    const found = band('pump.setting', { ...bare, 'water.pumping.level': '185 ft', 'pump.setting': '190 ft' });
    expect([found.from, found.to, found.clash]).toEqual([null, null, ['PR-02', 'PR-46']]);
  });

  test('is nowhere when water falls too low for any depth, and names what excludes what', () => {
    expect(band('pump.setting', { ...bare, 'water.pumping.level': '250 ft' })).toMatchObject({
      from: null,
      to: null,
      clash: ['PR-02', 'PR-46'],
    });
  });

  test('leaves out a fit that no depth fixes: the pump is too wide for the casing from the top', () => {
    expect(band('pump.setting', { 'pump.diameter': '4.95 in' }).from).not.toBeNull();
  });

  test('is not drawn while the static level is unknown', () => {
    expect(judged({ 'water.staticLevel': 'unknown' }).bands.map(({ setting }) => setting)).toEqual(['top.depth']);
  });

  test('is rounded to the tenth of a metre in a metric plan', () => {
    const found = band('pump.setting', { ...depthAlone, units: 'metric' });
    expect(found.from! * 10).toBeCloseTo(Math.ceil(feet(92) * 10), 6);
    expect(found.to! * 10).toBeCloseTo(Math.floor(feet(188.5) * 10), 6);
  });
});

describe('the band of the pitless adapter', () => {
  test('runs from the margin below frost to the static level, which it does not reach', () => {
    const found = band('top.depth', { 'water.staticLevel': '10 ft' });
    expect(toInches(found.from!)).toBeCloseTo(48, 6);
    expect(said(found.fromEnd)).toEqual(['PR-19', '6 in below frost']);
    expect(toInches(found.to!)).toBeCloseTo(119, 6);
    expect(said(found.toEnd)).toEqual(['PR-20', 'above the static level']);
  });

  test('ends where nobody digs any deeper', () => {
    const found = band('top.depth', { 'water.staticLevel': '60 ft' });
    // 12 ft: common practice, no source.
    expect(toInches(found.to!)).toBeCloseTo(144, 6);
    expect(said(found.toEnd)[1]).toBe('as deep as one digs');
  });

  test('names frost and water where they exclude each other', () => {
    expect(band('top.depth', { 'water.staticLevel': '45 in' })).toMatchObject({
      from: null,
      to: null,
      clash: ['PR-19', 'PR-20'],
    });
  });

  test('is not drawn while the frost depth is unknown, nor for a seal on top', () => {
    expect(judged({ 'site.frostDepth': undefined }).bands.map(({ setting }) => setting)).toEqual(['pump.setting']);
    expect(judged({ top: { kind: 'seal' } }).bands.map(({ setting }) => setting)).toEqual(['pump.setting']);
  });

  test('starts at the depth that holds and not an inch sooner', () => {
    const { from } = band('top.depth', {});
    const verdictAt = (depth: number) => judged({ 'top.depth': `${Math.round(toInches(depth))} in` }).verdicts['PR-19'];
    expect([verdictAt(from!), verdictAt(from! - inches(1))]).toEqual(['ok', 'warning']);
  });
});

test('at both ends of a band every rule that it heeds is met, in 200 plans made at random', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const solution = solve(plan);
      const ranges = rangesOf(solution, RULES);
      for (const range of [ranges['pump.setting'], ranges['top.depth']]) {
        if (range === null || range.ends === null || !range.known) continue;
        for (const end of [range.ends.from, range.ends.to]) {
          const { verdicts } = solve(withDepth(plan, range.setting, end));
          for (const rule of range.heeded)
            // Dry-run protection of which nobody said the depth leaves its rules to turn on that.
            expect(`${rule} ${range.setting} ${end} ${verdicts[rule]}`).toMatch(
              plan.pump?.lowLevelCutOff === true ? /(?:ok|note|not judged|depends)$/ : /(?:ok|note|not judged)$/,
            );
        }
      }
    }),
    { seed: 22, numRuns: 200 },
  );
});

test('just outside a band the rule that ends it is broken, in 200 plans made at random', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      for (const band of solve(plan).bands) {
        if (band.from === null || band.to === null) continue;
        // The ends are rounded inward by a foot or an inch at most, so half a metre further out is past the limit.
        for (const [rule, depth] of [
          [band.fromEnd.rule, band.from - 0.5],
          [band.toEnd.rule, band.to + 0.5],
        ] as const) {
          if (rule === null) continue;
          const { verdicts } = solve(withDepth(plan, band.setting, depth));
          // With dry-run protection of which nobody said the depth it turns on that.
          expect(`${rule} ${depth} ${verdicts[rule]}`).toMatch(/(?:danger|warning|depends)$/);
        }
      }
    }),
    { seed: 23, numRuns: 200 },
  );
});
