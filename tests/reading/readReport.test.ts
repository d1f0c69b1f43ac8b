/**
 * Reports are read as they stand there, and nothing else. The layouts follow public forms: Colorado, Office of the State
 * Engineer, form GWS-31 "Well construction and test report"; California, Department of Water Resources, "How to fill out a
 * well completion report" (1999); Washington, WAC 173-160-141; Ontario, Wells Regulation, well record; Quebec, Groundwater
 * Catchment Regulation, s. 20. How drillers write beside them is common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import { draftPlan } from '../../src/reading/draftPlan.ts';
import { soundDraft } from '../../src/reading/soundDraft.ts';
import { readReport } from '../../src/reading/readReport.ts';
import { HABIT_REPORTS } from './habitReports.ts';
import { REPORTS } from './reports.ts';
import { ROUGH_REPORTS } from './roughReports.ts';

describe.each([...REPORTS, ...HABIT_REPORTS, ...ROUGH_REPORTS])(
  '$name',
  ({ text, read, doubts = {}, asides = [], left }) => {
    const report = readReport(text);

    test('all that stands there is read, and nothing else', () => {
      expect(Object.fromEntries(report.readings.map(({ path, value }) => [path, value]))).toEqual(read);
      expect(new Set(report.readings.map(({ path }) => path)).size).toBe(report.readings.length);
    });

    test('what is doubtful says why', () => {
      const said = report.readings.flatMap(({ path, doubt }) => (doubt === null ? [] : [[path, doubt.kind] as const]));
      expect(Object.fromEntries(said)).toEqual(doubts);
    });

    test('what is not taken says why', () => {
      expect([...new Set(report.asides.map(({ why }) => why))].sort()).toEqual([...asides].sort());
    });

    test('each value shows the lines that it came from', () => {
      const lines = text.split('\n');
      for (const { lines: numbers, path } of report.readings) {
        expect([path, numbers.length]).not.toEqual([path, 0]);
        for (const number of numbers) expect(lines[number - 1]?.trim()).toBeTruthy();
      }
    });

    test('what was read makes a plan that says no more', () => {
      const plan = draftPlan(report, report.readings);
      const reading = readPlan(plan);
      if (read['well.depth'] === undefined) expect(reading.ok).toBe(false);
      else expect(reading.ok ? [] : reading.problems).toEqual([]);
      for (const part of ['house', 'dropPipe', 'wire', 'site', ...('top.kind' in read ? [] : ['top'])])
        expect(plan).not.toHaveProperty(part);
    });

    if (left !== undefined)
      test('what was not understood stands below it', () => {
        expect(report.left.map((each) => each.text)).toEqual(left);
      });
  },
);

/** Lengths and flows of the plan, as numbers. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'string') return (value.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
  if (typeof value === 'object' && value !== null) return Object.values(value).flatMap(numbersIn);
  return [];
}

describe('laws', () => {
  const WORDS = [
    ...[
      'well',
      'depth',
      'total',
      'static',
      'level',
      'water',
      'pump',
      'test',
      'casing',
      'screen',
      'liner',
      'from',
      'to',
    ],
    ...[
      'yield',
      'drawdown',
      'air',
      'set',
      'at',
      'ft',
      'in',
      'gpm',
      'hours',
      'steel',
      'PVC',
      'clay',
      'granite',
      ':',
      '-',
      '|',
    ],
    ...[
      'first',
      'recommended',
      'drilled',
      'completed',
      'above',
      'ground',
      'and',
      'hundred',
      'forty',
      'date',
      '5/6/2011',
      '\n',
      '\n',
    ],
  ];
  const word = fc.oneof(
    fc.constantFrom(...WORDS),
    fc.integer({ min: 1, max: 997 }).map(String),
    fc.constantFrom("12'", '6"', '3/4', '41.5'),
  );

  test('a number that stands nowhere in the text is never read', () => {
    fc.assert(
      fc.property(fc.array(word, { maxLength: 60 }), (words) => {
        const text = words.join(' ');
        const report = readReport(text);
        const there = new Set(numbersIn(text.replaceAll(',', '')));
        for (const { path, value, doubt, note } of report.readings) {
          // Shares are worked out, feet and inches are put together, and a height is taken off: all of it is said.
          if (note === 'shares' || doubt?.kind === 'takenOff' || /hundred|forty|'|\//.test(text)) continue;
          if (path === 'well.intake.screens') continue;
          for (const number of numbersIn(value))
            expect([path, there.has(number) || number === 40, text]).toEqual([path, true, text]);
        }
      }),
      { numRuns: 1500 },
    );
  });

  test('whatever stands there, it is read or left without a fault, and each line at most as often as it stands', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ maxLength: 600, unit: 'binary' }),
          fc.array(word, { maxLength: 80 }).map((all) => all.join(' ')),
        ),
        (text) => {
          const { readings, left, asides } = readReport(text);
          const count = text.split(/\r\n|\n|\r/).length;
          for (const { lines } of [...readings, ...left, ...asides])
            for (const line of lines) expect(line >= 1 && line <= count).toBe(true);
        },
      ),
      { numRuns: 600 },
    );
  });

  test('the order of lines that stand by themselves does not matter', () => {
    const lines = [
      'Total depth: 240 ft',
      'Static water level: 35 ft',
      'Yield: 12 gpm',
      'Casing depth: 62 ft',
      'Stick-up: 18 in',
    ];
    const read = (text: string) =>
      Object.fromEntries(readReport(text).readings.map(({ path, value }) => [path, value]));
    const first = read(lines.join('\n'));
    expect(Object.keys(first)).toHaveLength(5);
    fc.assert(
      fc.property(fc.shuffledSubarray(lines, { minLength: 5 }), (shuffled) => {
        expect(read(shuffled.join('\n'))).toEqual(first);
      }),
      { numRuns: 40 },
    );
  });
});

describe('what would hurt if it were read', () => {
  test.each([
    ['Water level 50 ft when pumping 5 gpm, 30 ft at rest', 'water.staticLevel'],
    ['Proposed pump: 1/2 hp set at 180 ft', 'pump.setting'],
    ['Pump set 20 ft off bottom. Well 250 ft.', 'pump.setting'],
    ['No pump is installed. Pump was quoted at 1/2 hp set at 180 ft.', 'pump.setting'],
    ['Static level in 2019: 41 ft', 'water.staticLevel'],
    ['Pumped dry at 10 gpm', 'well.yield'],
    ['Casing 8 in 0-40 ft. Screen 100-120 ft', 'well.intake.screens'],
  ])('“%s” gives no %s that is not there', (text, path) => {
    expect(readReport(text).readings.filter((each) => each.path === path && each.doubt === null)).toEqual([]);
  });

  test.each([
    [
      'Water bearing zones: 140-145 ft 3 gpm, 290-292 ft 7 gpm',
      'well.inflows',
      [
        { depth: '140 ft', share: '30 %' },
        { depth: '290 ft', share: '70 %' },
      ],
    ],
    ['Well depth 200 ft from top of casing, casing sticks up 2 ft.', 'well.depth', '198 ft'],
    ['No pump installed.\nDepth 250 ft', 'well.depth', '250 ft'],
    ['PUMP INSTALLED: 1/2 hp\nStatic level 55 feet; Well depth 200 feet', 'well.depth', '200 ft'],
    [
      'Yield 10 gal/min with 80 ft drawdown after 4 hrs\nAirtest 15 gal/min with stem set at 180 ft for 1 hrs',
      'water.pumping.flow',
      '10 gpm',
    ],
    ['Casing 8 in 0-40 ft. Screen 100-120 ft', 'well.casing.bottom', '40 ft'],
  ])('of “%s” %s is read', (text, path, value) => {
    expect(readReport(text).readings.find((each) => each.path === path)?.value).toEqual(value);
  });

  test('how far the water falls in summer is no drawdown of a test', () => {
    expect(readReport('Static 50 ft\nMax drawdown 200 ft in summer').readings.map(({ path }) => path)).toEqual([
      'water.staticLevel',
    ]);
  });

  test('what a person has to settle is in no plan, and what was only understood is', () => {
    const { readings, ...report } = readReport('Well depth 200 ft\nYield <1 gpm\nStatic level 60-75 ft');
    const { plan } = soundDraft(report, readings);
    expect(plan).toMatchObject({ well: { depth: '200 ft' }, water: { staticLevel: '75 ft' } });
    expect(plan).not.toHaveProperty('well.yield');
  });

  test('an older yield beside a newer one is asked about', () => {
    const [found] = readReport('Yield 10 gpm before, 2 gpm now').readings;
    expect(found?.doubt).toEqual({ kind: 'two', other: '2 gpm' });
  });
});

describe('hostile text', () => {
  test.each([
    ['a megabyte', 'depth 100 ft '.repeat(80_000)],
    ['one long line of a million letters', 'a'.repeat(1_000_000)],
    ['more lines than a report has', '1-2 a\n'.repeat(5_000)],
  ])('%s is refused', (_, text) => {
    expect(() => readReport(text)).toThrow(RangeError);
  });

  test.each([
    ['digits without end', '9'.repeat(190_000)],
    ['labels without values', 'static water level depth of well casing '.repeat(4_500)],
    ['signs and marks', "«L0» 6' - ' \" 5/ /8 +-".repeat(8_000)],
    ['number words', 'hundred and forty '.repeat(10_000)],
    ['spaces', ' '.repeat(190_000)],
    ['columns', '| 12 '.repeat(35_000)],
    ['controls', '\u0000\u0007\u200f'.repeat(60_000)],
    ['short lines', '1-2 a\n'.repeat(3_900)],
    ['fractions', '1 1/2-'.repeat(30_000)],
  ])('%s are read or left, and nothing hangs', (_, text) => {
    const report = readReport(text);
    expect(report.readings.length).toBeLessThan(40);
  });
});
