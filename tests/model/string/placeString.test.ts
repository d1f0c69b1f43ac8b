import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, type PlacedPart, type Solution } from '../../../src/model/index.ts';
import { isUnasked } from '../../../src/model/string/placedBy.ts';
import { feet, inches, toInches } from '../../../src/model/units.ts';
import { anyPlan } from '../../plans/anyPlan.ts';
import { planOf, rockWell } from '../../plans/build.ts';

const named = ({ parts }: Solution, key: string): PlacedPart => {
  const part = parts.find((each) => each.key === key);
  if (!part) throw new Error(`no part "${key}"`);
  return part;
};

// Generic lengths: common practice, no source.
describe('the pump end of a PE string, from the motor up', () => {
  const solution = solve(rockWell());
  const discharge = feet(138.5);
  test('motor, intake and pump stand on one another around the intake', () => {
    expect(named(solution, 'motor').bottom).toBeCloseTo(feet(141.5), 9);
    expect(named(solution, 'intake').bottom).toBeCloseTo(named(solution, 'motor').top, 9);
    expect(named(solution, 'pump').bottom).toBeCloseTo(named(solution, 'intake').top, 9);
    expect(named(solution, 'pump').top).toBeCloseTo(discharge, 9);
  });
  test('nipple, check valve and insert fitting follow, each on the one before', () => {
    expect(named(solution, 'nipple').bottom).toBeCloseTo(discharge, 9);
    expect(named(solution, 'checkValve').bottom).toBeCloseTo(named(solution, 'nipple').top, 9);
    expect(named(solution, 'insertFitting/pump').bottom).toBeCloseTo(named(solution, 'checkValve').top, 9);
  });
  test('the drop pipe ends at the fitting, 2 in over its shoulder, with two clamps over the barb', () => {
    const pipe = named(solution, 'dropPipe');
    expect(toInches(named(solution, 'insertFitting/pump').bottom - pipe.bottom)).toBeCloseTo(2, 9);
    const barb = named(solution, 'insertFitting/pump');
    for (const key of ['clamp/pump/1', 'clamp/pump/2']) {
      const clamp = named(solution, key);
      expect(clamp.top).toBeGreaterThan(barb.top);
      expect(clamp.bottom).toBeLessThan(pipe.bottom);
    }
    expect(toInches(named(solution, 'clamp/pump/1').top - named(solution, 'clamp/pump/2').bottom)).toBeCloseTo(0.5, 9);
  });
  test('the arrestor stands 2 ft above the discharge, the splice 4 ft, a tie above and below it', () => {
    const middle = (part: PlacedPart) => (part.top + part.bottom) / 2;
    expect(middle(named(solution, 'torqueArrestor'))).toBeCloseTo(discharge - feet(2), 9);
    const splice = named(solution, 'splice');
    expect(middle(splice)).toBeCloseTo(discharge - feet(4), 9);
    const ties = solution.parts.filter((part) => part.kind === 'tie');
    expect(ties.some((tie) => splice.top - tie.bottom > 0 && splice.top - tie.bottom < inches(3))).toBe(true);
    expect(ties.some((tie) => tie.top - splice.bottom > 0 && tie.top - splice.bottom < inches(3))).toBe(true);
  });
});

describe('the top', () => {
  test("a pitless adapter's depth is that of the top of its outlet, and the pipe joins under its body", () => {
    const solution = solve(rockWell());
    expect(named(solution, 'buriedLine').top).toBeCloseTo(feet(5), 9);
    expect(named(solution, 'insertFitting/top').top).toBeCloseTo(named(solution, 'pitlessAdapter').bottom, 9);
    expect(named(solution, 'dropPipe').top).toBeGreaterThan(named(solution, 'pitlessAdapter').bottom);
    expect(named(solution, 'clamp/top/1').top).toBeGreaterThan(named(solution, 'dropPipe').top);
  });
  test('over a seal stand collar, nipple, tee and plug; with PE a nipple passes the rubber', () => {
    const solution = solve(rockWell({ top: { kind: 'seal' } }));
    const order = ['plug', 'tee', 'nipple/top', 'coupling/top', 'seal'].map((key) => named(solution, key));
    for (let i = 1; i < order.length; i++) expect(order[i]!.top).toBeCloseTo(order[i - 1]!.bottom, 9);
    expect(named(solution, 'nipple/seal').bottom).toBeGreaterThan(named(solution, 'seal').bottom);
    expect(solution.parts.some((part) => part.kind === 'pitlessAdapter')).toBe(false);
  });
  test('on the line over a seal stand union and tap, at its middle, and it rests on the ground', () => {
    const solution = solve(rockWell({ top: { kind: 'seal' } }));
    const line = named(solution, 'buriedLine');
    const middle = (line.top + line.bottom) / 2;
    const union = named(solution, 'union');
    expect((union.top + union.bottom) / 2).toBeCloseTo(middle, 9);
    expect(named(solution, 'tap').bottom).toBeCloseTo(middle, 9);
    expect(named(solution, 'support')).toMatchObject({ top: line.bottom, bottom: 0 });
    for (const kind of ['union', 'tap', 'support', 'capSplice'] as const) {
      expect(isUnasked({ kind })).toBe(true);
    }
    expect(solve(rockWell()).parts.some(({ kind }) => kind === 'union' || kind === 'support')).toBe(false);
  });
  test('a rope under a seal hangs from its lower plate, one in a capped casing from a hook under the rim', () => {
    const rope = { material: 'polypropylene', tied: 'casing hook' };
    const sealed = solve(rockWell({ top: { kind: 'seal' }, rope }));
    expect(named(sealed, 'rope').top - named(sealed, 'seal').bottom).toBeCloseTo(inches(1), 9);
    const capped = solve(rockWell({ rope }));
    expect(named(capped, 'rope').top).toBeCloseTo(-capped.facts.well.casingHeight + inches(4), 9);
  });
  test('the pump’s cable meets the cable to the house in the casing, above the ground', () => {
    const solution = solve(rockWell());
    const splice = named(solution, 'capSplice');
    expect(splice.top).toBeGreaterThan(-solution.facts.well.casingHeight);
    expect(splice.bottom).toBeLessThan(0);
  });
  test('rigid pipe brings couplings every section and no insert fitting', () => {
    const solution = solve(rockWell({ dropPipe: { material: 'galvanized steel', size: '1-1/4 in' } }));
    expect(solution.parts.filter((part) => part.kind === 'insertFitting')).toEqual([]);
    expect(solution.parts.filter((part) => /^coupling\/\d/.test(part.key))).toHaveLength(6);
  });
});

test('in any plan keys are unique and no part stands on its head', () => {
  fc.assert(
    fc.property(anyPlan, (json) => {
      const { parts } = solve(planOf(json));
      expect(new Set(parts.map((part) => part.key)).size).toBe(parts.length);
      for (const part of parts) expect(part.bottom, part.key).toBeGreaterThanOrEqual(part.top);
    }),
    { numRuns: 200, seed: 11 },
  );
});

test('threaded pipe without a valve is coupled to the nipple, since both have the outer thread', () => {
  const dropPipe = { material: 'galvanized steel', size: '1-1/4 in' };
  const bare = solve(rockWell({ dropPipe, string: { checkValves: [] } }));
  const coupling = named(bare, 'coupling/pump');
  expect((coupling.top + coupling.bottom) / 2).toBeCloseTo(named(bare, 'nipple').top, 9);
  expect(named(bare, 'dropPipe').bottom).toBeCloseTo(named(bare, 'nipple').top, 9);
  expect(solve(rockWell({ dropPipe })).parts.some(({ key }) => key === 'coupling/pump')).toBe(false);
});
