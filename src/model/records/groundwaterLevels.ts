/**
 * Reads a table of groundwater levels: the tab-separated text in which the US Geological Survey has long handed out what
 * was measured in a well.
 *
 * Layout  lines with # are comments; then the names of the fields, in any order; then their widths ("5s 15s 10d"), never
 *         data; then a line for each reading
 * Level   lev_va [ft] below the land surface, negative above it; blank is no reading
 * Rest    only a blank lev_status_cd is water at rest: common practice
 * Source  USGS, National Water Information System, help pages of the groundwater-level service: fields and status codes
 */
import type { Metres } from '../si.ts';
import { feet } from '../units.ts';
import { compareDates, isPartialDate } from './partialDate.ts';

export interface LevelReading {
  /** Of the text, from 1. */
  readonly line: number;
  /** As in the table: "2021-04-02", "2019-05" or "2019". */
  readonly date: string;
  /** "09:15", or blank. */
  readonly time: string;
  /** Below the land surface; negative above it. */
  readonly depth: Metres;
  /** Blank for water at rest. */
  readonly status: string;
}

export interface ExcludedStatus {
  readonly code: string;
  readonly meaning: string;
  readonly count: number;
}

export interface LineFault {
  readonly line: number;
  readonly problem: string;
  /** What to write instead. */
  readonly write: string;
}

export interface LevelTable {
  readonly ok: true;
  /** Every line with a level, in the text's order. */
  readonly readings: readonly LevelReading[];
  /** Of these, water at rest. */
  readonly statics: readonly LevelReading[];
  /** The last, the one nearest the sky and the one farthest down of those at rest; null where there is none. */
  readonly latest: LevelReading | null;
  readonly highest: LevelReading | null;
  readonly lowest: LevelReading | null;
  /** Readings that are not at rest, by their code. */
  readonly excluded: readonly ExcludedStatus[];
  /** Lines without a level that say why: the well was dry. */
  readonly dry: number;
  /** Lines without a level that say nothing of the water. */
  readonly blank: number;
  /** Lines that cannot be read, and are left out. */
  readonly faults: readonly LineFault[];
}

export type LevelTableReading = LevelTable | { readonly ok: false; readonly problem: string };

export const STATUS_WORDS: Readonly<Record<string, string>> = {
  A: 'moved by the weight of the air',
  D: 'dry',
  N: 'no longer measured',
  O: 'obstructed',
  P: 'pumping',
  R: 'pumped shortly before',
  S: 'a well nearby was pumping',
  X: 'moved by a river or a lake',
};

const DRY = 'D';

const NEEDED = ['lev_dt', 'lev_va', 'lev_status_cd'] as const;
const WIDTH = /^\d+[sdn]$/;
const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)$/;

interface Line {
  readonly number: number;
  readonly text: string;
}

/** Never throws: what is no such table is told in words. */
export function readGroundwaterLevels(text: string): LevelTableReading {
  const [heading, ...rest] = linesOf(text);
  if (heading === undefined)
    return refuse('There is no table in this text. Paste the lines from the names of the fields on.');
  const names = cellsOf(heading).map((name) => name.toLowerCase());
  const missing = NEEDED.filter((name) => !names.includes(name));
  if (missing.length > 0) {
    return refuse(
      `Line ${heading.number} should name the fields, parted by tabs, but has no ${missing.join(', ')}. Paste the table with its line of names, and keep its tabs.`,
    );
  }
  const data = rest.filter((line, i) => !(i === 0 && cellsOf(line).every((cell) => WIDTH.test(cell))));
  const sites = new Set(data.map((line) => cellOf(line, names, 'site_no') ?? '').filter((site) => site !== ''));
  if (sites.size > 1) {
    return refuse(
      `The table holds ${sites.size} wells (site_no ${[...sites].slice(0, 4).join(', ')}). Keep the lines of one.`,
    );
  }
  return summed(data.map((line) => readLine(line, names)));
}

function refuse(problem: string): LevelTableReading {
  return { ok: false, problem };
}

/** Without comments and empty lines, each with its number in the text. */
function linesOf(text: string): readonly Line[] {
  return text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\r|\n/)
    .map((line, i) => ({ number: i + 1, text: line }))
    .filter((line) => line.text.trim() !== '' && !line.text.startsWith('#'));
}

function cellsOf({ text }: Line): readonly string[] {
  return text.split('\t').map((cell) => cell.trim());
}

function cellOf(line: Line, names: readonly string[], name: string): string | undefined {
  return cellsOf(line)[names.indexOf(name)];
}

/** A line without a level: the well was dry, or nobody wrote one down. */
type NoLevel = 'dry' | 'blank';

function readLine(line: Line, names: readonly string[]): LevelReading | LineFault | NoLevel {
  const fault = (problem: string, write: string): LineFault => ({ line: line.number, problem, write });
  const [date, level, status] = NEEDED.map((name) => cellOf(line, names, name));
  // A line that was cut short may have lost the very code that says the pump was running.
  if (date === undefined || level === undefined || status === undefined) {
    return fault(
      'the line ends before its last field',
      `${names.length} fields parted by tabs, also where they are blank`,
    );
  }
  if (level === '') return status.toUpperCase() === DRY ? 'dry' : 'blank';
  const depthFeet = Number(level);
  if (!NUMBER.test(level) || !Number.isFinite(depthFeet)) {
    return fault(`lev_va is "${level}"`, 'feet below the land surface, as in 31.20, or leave it blank');
  }
  if (!isPartialDate(date))
    return fault(`lev_dt is "${date}"`, 'a day, month or year, as in 2021-04-02, 2021-04 or 2021');
  const time = cellOf(line, names, 'lev_tm') ?? '';
  return { line: line.number, date, time, depth: feet(depthFeet), status: status.toUpperCase() };
}

function summed(read: readonly (LevelReading | LineFault | NoLevel)[]): LevelTable {
  const faults = read.filter((each) => typeof each !== 'string' && 'problem' in each);
  const readings = read.filter((each) => typeof each !== 'string' && 'depth' in each);
  const statics = readings.filter(({ status }) => status === '');
  const best = (better: (one: LevelReading, than: LevelReading) => boolean): LevelReading | null =>
    statics.reduce<LevelReading | null>((found, each) => (found === null || better(each, found) ? each : found), null);
  return {
    ok: true,
    readings,
    statics,
    latest: best((one, than) => (compareDates(one.date, than.date) || compareDates(one.time, than.time)) >= 0),
    highest: best((one, than) => one.depth < than.depth),
    lowest: best((one, than) => one.depth > than.depth),
    excluded: excludedOf(readings),
    dry: read.filter((each) => each === 'dry').length,
    blank: read.filter((each) => each === 'blank').length,
    faults,
  };
}

function excludedOf(readings: readonly LevelReading[]): readonly ExcludedStatus[] {
  const codes = [...new Set(readings.map(({ status }) => status))].filter((code) => code !== '');
  return codes.map((code) => ({
    code,
    meaning: Object.hasOwn(STATUS_WORDS, code) ? (STATUS_WORDS[code] ?? '') : 'a code that is not in the list',
    count: readings.filter(({ status }) => status === code).length,
  }));
}
