/**
 * Layout and status codes: USGS, National Water Information System, help pages of the groundwater-level service. That only
 * a blank status is water at rest: common practice, no source. The readings are made up.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readGroundwaterLevels, type LevelTable } from '../../../src/model/records/groundwaterLevels.ts';
import { toFeet } from '../../../src/model/units.ts';

const NAMES = ['agency_cd', 'site_no', 'lev_dt', 'lev_tm', 'lev_va', 'lev_status_cd'];

function tableOf(rows: readonly (readonly string[])[], names: readonly string[] = NAMES): string {
  const widths = names.map(() => '12s');
  return ['# made up', names, widths, ...rows]
    .map((row) => (typeof row === 'string' ? row : row.join('\t')))
    .join('\n');
}

const at = (date: string, level: string, status = '', time = ''): string[] => ['USGS', '1', date, time, level, status];

function read(text: string): LevelTable {
  const reading = readGroundwaterLevels(text);
  if (!reading.ok) throw new Error(reading.problem);
  return reading;
}

test('highest is nearest the sky, lowest farthest down, and above the land surface is negative', () => {
  const table = read(tableOf([at('2001-05-02', '-1.50'), at('2002-09', '12.25'), at('2003-05-01', '3')]));
  expect(toFeet(table.highest?.depth ?? NaN)).toBeCloseTo(-1.5, 9);
  expect(toFeet(table.lowest?.depth ?? NaN)).toBeCloseTo(12.25, 9);
  expect(table.latest?.date).toBe('2003-05-01');
});

test.each(['P', 'R', 'S', 'D', 'O', 'X', 'A', 'N', 'Z', 'p'])('a reading with status %s is not at rest', (status) => {
  const table = read(tableOf([at('2001-05-02', '30'), at('2002-05-02', '55', status)]));
  expect(table.readings).toHaveLength(2);
  expect(table.statics).toHaveLength(1);
  expect(table.excluded.map(({ code }) => code)).toEqual([status.toUpperCase()]);
  expect(table.latest?.date).toBe('2001-05-02');
});

test('fields may stand in any order', () => {
  const table = read(tableOf([['', '31.2', '2019-05']], ['lev_status_cd', 'lev_va', 'lev_dt']));
  expect(table.latest).toMatchObject({ date: '2019-05', line: 4, status: '' });
});

test('a blank level is no reading and no fault', () => {
  const table = read(tableOf([at('2001', ''), at('2002', '', 'P'), at('2003', '8')]));
  expect(table).toMatchObject({ blank: 2, dry: 0, faults: [], excluded: [] });
  expect(table.readings).toHaveLength(1);
});

test('a well that was found dry is told as dry, not as a line without a level', () => {
  const table = read(tableOf([at('2001', '', 'D'), at('2002', '', 'd'), at('2003', ''), at('2004', '8')]));
  expect(table).toMatchObject({ dry: 2, blank: 1, faults: [] });
  expect(table.readings).toHaveLength(1);
});

test('a date without its day never passes for later than a day of that year; the time decides within a day', () => {
  const days = read(tableOf([at('2021', '1'), at('2021-01-02', '2'), at('2021-01', '3')]));
  expect(days.latest?.date).toBe('2021-01-02');
  const hours = read(tableOf([at('2021-01-02', '1', '', '14:00'), at('2021-01-02', '2', '', '09:30')]));
  expect(hours.latest?.time).toBe('14:00');
});

test('lines that cannot be read are left out, each with its number and what to write', () => {
  const { faults, readings } = read(
    tableOf([
      at('2001-02-29', '5'),
      at('2001-03-01', 'deep'),
      ['USGS', '1', '2001-03-02', '', '7'],
      at('2001-03-03', '8'),
    ]),
  );
  expect(readings).toHaveLength(1);
  expect(faults.map(({ line }) => line)).toEqual([4, 5, 6]);
  expect(faults.map(({ problem }) => problem)).toEqual([
    'lev_dt is "2001-02-29"',
    'lev_va is "deep"',
    'the line ends before its last field',
  ]);
  for (const { write } of faults) expect(write).not.toBe('');
});

test('line ends of every kind and a mark at the start of the file are read', () => {
  const text = tableOf([at('2001-05-02', '30'), at('2002-05-02', '31')]);
  expect(read(`\uFEFF${text.replaceAll('\n', '\r\n')}\r\n`)).toEqual(read(text));
});

test.each([
  ['', /no table/],
  ['# only a comment', /no table/],
  ['a letter from the driller', /has no lev_dt, lev_va, lev_status_cd/],
  [tableOf([at('2001', '1')]).replaceAll('\t', ' '), /keep its tabs/],
  [tableOf([at('2001', '1'), ['USGS', '2', '2002', '', '9', '']]), /2 wells \(site_no 1, 2\)/],
])('what is no table of one well is refused in words: %j', (text, words) => {
  const reading = readGroundwaterLevels(text);
  expect(reading.ok ? '' : reading.problem).toMatch(words);
});

test('for any lines: highest, latest and lowest are at rest and in order, and no line is lost', () => {
  const cell = fc.constantFrom('', '1', '-3.5', '2001', '2001-05', '2001-13', 'P', 'x', '1e400', '\u0000');
  const rows = fc.array(
    fc.array(cell, { maxLength: 4 }).map((cells) => ['USGS', '1', ...cells]),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(rows, (lines) => {
      const { highest, latest, lowest, statics, readings, faults, dry, blank } = read(tableOf(lines));
      expect(readings.length + faults.length + dry + blank).toBe(lines.length);
      if (statics.length === 0) expect([highest, latest, lowest]).toEqual([null, null, null]);
      else if (highest !== null && latest !== null && lowest !== null) {
        expect(highest.depth).toBeLessThanOrEqual(latest.depth);
        expect(latest.depth).toBeLessThanOrEqual(lowest.depth);
        expect([highest.status, latest.status, lowest.status]).toEqual(['', '', '']);
      }
    }),
    { seed: 7 },
  );
});

test('any text at all gives a reading, never a fault of the program', () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      expect(typeof readGroundwaterLevels(text).ok).toBe('boolean');
    }),
    { seed: 7 },
  );
});
