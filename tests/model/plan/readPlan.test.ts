import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPlan, readPlanText, sayProblem } from '../../../src/model/plan/readPlan.ts';
import { fields } from '../../../src/model/plan/fields.ts';
import { PIPE_MATERIAL_NAMES } from '../../../src/model/tables/pipeMaterials.ts';
import { SAMPLES, sample, sampleText, spoiled } from './sample.ts';

/** '"PE", "PVC" or "steel"' */
function oneOf(names: readonly string[]): string {
  const quoted = names.map((name) => `"${name}"`);
  return `${quoted.slice(0, -1).join(', ')} or ${quoted.at(-1)}`;
}

function said(plan: unknown): string[] {
  const reading = readPlan(plan);
  return reading.ok ? [] : reading.problems.map(sayProblem);
}

describe('plans that can be read', () => {
  test.each(SAMPLES)('%s reads, and comes back byte for byte', (name) => {
    const reading = readPlanText(sampleText(name));
    expect(reading.ok ? [] : reading.problems).toEqual([]);
    expect(reading.ok && JSON.stringify(reading.plan)).toBe(JSON.stringify(JSON.parse(sampleText(name))));
  });

  test('a file that begins with a byte order mark reads too', () => {
    expect(readPlanText(`\uFEFF${sampleText('heron-flats')}`).ok).toBe(true);
  });

  test('what is not computed yet is accepted', () => {
    const plan = { ...sample(), house: { ...sample().house, people: 4, fixtures: { shower: 2 }, irrigation: '3 gpm' } };
    expect(said(plan)).toEqual([]);
  });

  test('unknown is an answer for a fact of the place, not for a choice', () => {
    expect(said(spoiled('water.staticLevel', 'unknown'))).toEqual([]);
    expect(said(spoiled('well.casing.bottom', 'unknown'))).toEqual([]);
    expect(said(spoiled('pump.voltage', 'unknown'))).toHaveLength(1);
  });

  test('what is odd or bad but can be is left to the rules', () => {
    expect(said(spoiled('pump.setting', '400 ft'))).toEqual([]);
    expect(said(spoiled('water.staticLevel', '-3 ft'))).toEqual([]);
    expect(said(spoiled('site.frostDepth', '9 ft'))).toEqual([]);
    expect(said(spoiled('string.clampsPerJoint', 0))).toEqual([]);
  });
});

describe('each fault is said with its path, what was read and what to write', () => {
  test.each([
    ['well.casing.bottom', 90, 'well.casing.bottom is 90, without a unit; write it as "90 ft" or "27.4 m".'],
    ['house.demand', '8', 'house.demand is "8", without a unit; write it as "8 gpm" or "30.3 L/min".'],
    ['wire.size', 12, 'wire.size is 12, without a unit; write it as "12 AWG" or "12 mm2".'],
    [
      'wire.size',
      '5 mm2',
      'wire.size is "5 mm2", not a size in the tables; write one of "1.5 mm2", "2.5 mm2", "4 mm2", "6 mm2", "10 mm2", "16 mm2", "25 mm2".',
    ],
    [
      'dropPipe',
      { material: 'PE', size: '45 mm' },
      'dropPipe.size is "45 mm", not a size of ISO 4427-2 in the tables; write one of "20 mm", "25 mm", "32 mm", "40 mm", "50 mm", "63 mm", "75 mm", "90 mm", "110 mm".',
    ],
    ['house.reliefValve', 'yes', 'house.reliefValve is "yes", not yes or no; write true or false, without quotes.'],
    ['pump.phase', 2, 'pump.phase is 2, which is not one of the choices; write 1 or 3.'],
    [
      'dropPipe.material',
      'lead',
      `dropPipe.material is "lead", which is not one of the choices; write ${oneOf(PIPE_MATERIAL_NAMES)}.`,
    ],
    [
      'pump.curve.kind',
      'pionts',
      'pump.curve.kind is "pionts", which is not one of the choices; write "generic" or "points".',
    ],
    ['top.kind', undefined, 'top.kind is missing; write it as "pitless" or "seal".'],
    ['water.staticLevel', undefined, 'water.staticLevel is missing; write it as "62 ft", "18.9 m" or "unknown".'],
    [
      'string.checkValves',
      '0 ft',
      'string.checkValves is "0 ft", not a list; write it in square brackets: [ "0 ft" ].',
    ],
    [
      'well.depth',
      '0 ft',
      'well.depth is "0 ft", which is not possible: it must be more than 0 ft; write a value above "0 ft" and up to "5000 ft".',
    ],
    [
      'pump.diameter',
      '-4 in',
      'pump.diameter is "-4 in", which is not possible: it must be at least 1 in; write a value from "1 in" to "40 in".',
    ],
    [
      'water.pumping.drawdown',
      '5,400 ft',
      'water.pumping.drawdown is "5,400 ft", either thousands or a decimal comma; write "5400 ft" or "5.4 ft".',
    ],
    [
      'dropPipe.size',
      '1-3/4 in',
      'dropPipe.size is "1-3/4 in", not a size of ASTM D2239 in the tables; write one of "3/4 in", "1 in", "1-1/4 in", "1-1/2 in", "2 in".',
    ],
    [
      'wire.size',
      '13 AWG',
      'wire.size is "13 AWG", not a size in the tables; write one of "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "3 AWG", "2 AWG".',
    ],
    [
      'pump.curve',
      { kind: 'points', points: [['0 gpm', '300 ft'], ['5 gpm']] },
      'pump.curve.points.1 is ["5 gpm"], not a pair; write it as [ "10 gpm", "200 ft" ].',
    ],
    [
      'status',
      { 'pump.seting': 'installed' },
      'status.pump.seting is "installed", said of no field of the plan; did you mean "pump.setting"?',
    ],
  ])('%s %j', (path, value, sentence) => {
    expect(said(spoiled(path, value))).toEqual([sentence]);
  });

  test('an unknown name is answered with the nearest', () => {
    const plan = spoiled('well.casng', {});
    expect(said(plan)).toEqual(['well has no "casng"; did you mean "casing"?']);
  });

  test('a name in the wrong place is sent to its own', () => {
    expect(said(spoiled('well.staticLevel', '62 ft'))).toEqual(['well has no "staticLevel"; it belongs in "water".']);
  });

  test('a metric plan is asked in metres first', () => {
    expect(said(spoiled('pump.setting', 24, 'heron-flats'))).toEqual([
      'pump.setting is 24, without a unit; write it as "24 m" or "78.7 ft".',
    ]);
  });

  test('all faults are told at once', () => {
    const plan = sample() as unknown as Record<string, Record<string, unknown>>;
    Object.assign(plan['well']!, { depth: 220, colour: 'blue' });
    Object.assign(plan['house']!, { cutOut: '30 psi', rise: 'high' });
    Object.assign(plan['pump']!, { curve: {} });
    delete plan['water'];
    const problems = readPlan(plan);
    const paths = problems.ok ? [] : problems.problems.map(({ path }) => path);
    expect(paths.sort()).toEqual([
      'house.cutOut',
      'house.rise',
      'pump.curve.kind',
      'water',
      'well.colour',
      'well.depth',
    ]);
  });
});

describe('files that are no plan', () => {
  test('broken JSON is told by line and column', () => {
    const reading = readPlanText('{\n  "format": "wellcut-plan/1",\n  "title": oops\n}');
    expect(reading.ok ? '' : sayProblem(reading.problems[0]!)).toContain('line 3, column 12');
  });

  test('text that breaks off is told at its end', () => {
    const reading = readPlanText('[1,\n2');
    expect(reading.ok ? '' : sayProblem(reading.problems[0]!)).toContain('line 2, column 2: the text ends too early');
  });

  test('a newer form is refused with both numbers, and nothing else is said of it', () => {
    const sentences = said({ format: 'wellcut-plan/2', anything: 1 });
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toMatch(/form 2.*form 1/);
  });

  test.each([[null], [3], ['plan'], [[]]])('%j is not a plan', (json) => {
    expect(readPlan(json).ok).toBe(false);
  });

  test('an empty object is told every part that a plan needs', () => {
    const reading = readPlan({});
    const paths = reading.ok ? [] : reading.problems.map(({ path }) => path);
    expect(paths).toEqual(['format', 'well', 'water']);
  });
});

test('a plan nested ten thousand deep is refused, not fallen over', () => {
  const deep = `${'['.repeat(10000)}${']'.repeat(10000)}`;
  const reading = readPlanText(sampleText('tamarack-ridge').replace('"48 in"', deep));
  expect(reading.ok ? [] : reading.problems.map(({ path }) => path)).toEqual(['site.frostDepth']);
});

test('whatever stands in any one field, reading answers with the plan or with sentences', () => {
  const anything = fc.oneof(
    fc.jsonValue(),
    fc.constantFrom('1e400 ft', '0 ft', '-1 ft', 'unknown', '12 AWG', '1 in', 'PE'),
  );
  const paths = fields.map(({ path }) => path).filter((path) => !/[*\d]/.test(path));
  fc.assert(
    fc.property(fc.constantFrom(...paths), anything, (path, value) => {
      const plan = structuredClone(sample()) as unknown as Record<string, unknown>;
      const keys = path.split('.');
      const last = keys.pop()!;
      let owner = plan;
      for (const key of keys) owner = (owner[key] ??= {}) as Record<string, unknown>;
      owner[last] = value;
      const reading = readPlan(plan);
      return (
        reading.ok ||
        reading.problems.every(
          (problem) => /[.?]$/.test(sayProblem(problem)) && !sayProblem(problem).includes('undefined'),
        )
      );
    }),
    { seed: 21, numRuns: 1500 },
  );
});
