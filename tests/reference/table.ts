/** Every check as a table: for the terminal, and as the page of the documents. */
import { judgedBad, judgedSound, wellsChapter, wellsText } from '../wells/judged.ts';
import { sheets } from './sheets.ts';
import type { Comparison } from './checkValues.ts';

export interface CheckedSheet {
  readonly title: string;
  readonly rows: readonly Comparison[];
}

export function everyCheck(): readonly CheckedSheet[] {
  return sheets.map(({ title, checks, compare }) => ({ title, rows: checks.flatMap(({ id }) => compare(id)) }));
}

/** The sound wells and the bad ones, judged. */
export function everyWell() {
  return [...judgedSound(), ...judgedBad()];
}

export { wellsText };

/** Six digits: what the files print, and no noise of the last bits. */
export function figure(value: unknown): string {
  if (typeof value !== 'number') return String(value);
  if (value === 0) return '0';
  const size = Math.abs(value);
  return size >= 1e6 || size < 1e-4
    ? value.toExponential(5).replace(/\.?0+e/, 'e')
    : String(Number(value.toPrecision(6)));
}

/** Two digits; what lies in the noise of the conversions is none. */
export function differenceText({ difference, expected }: Comparison): string {
  if (difference === null) return '';
  if (Math.abs(difference) <= 1e-9 * Math.max(Math.abs(Number(expected)), 1e-9)) return '0';
  return `${difference > 0 ? '+' : '-'}${figure(Number(Math.abs(difference).toPrecision(2)))}`;
}

const toleranceText = ({ tolerance, difference }: Comparison) =>
  difference === null ? 'exact' : figure(Number(tolerance.toPrecision(3)));

const COLUMNS = ['check', 'what', 'figure', 'source', 'expected', 'computed', 'difference', 'tolerance', 'agrees'];

function cells(row: Comparison): string[] {
  return [
    row.id,
    row.title,
    row.quantity,
    row.status === 'published' ? row.source : `${row.source} (${row.status})`,
    figure(row.expected),
    figure(row.computed),
    differenceText(row),
    toleranceText(row),
    row.agrees ? 'yes' : 'NO',
  ];
}

function tally(checked: readonly CheckedSheet[]): string {
  const rows = checked.flatMap((sheet) => sheet.rows);
  const checks = new Set(rows.map(({ id }) => id)).size;
  const off = rows.filter(({ agrees }) => !agrees).length;
  return `${checks} checks with ${rows.length} figures; ${off === 0 ? 'all agree' : `${off} disagree`}.`;
}

/** Columns as wide as they need be, the longest texts cut. */
export function checksText(checked: readonly CheckedSheet[]): string {
  const widest = [8, 44, 30, 52, 16, 16, 12, 12, 6];
  const lines = checked.flatMap(({ title, rows }) => {
    const table = [COLUMNS, ...rows.map(cells)];
    const widths = COLUMNS.map((_, i) => Math.min(widest[i]!, Math.max(...table.map((line) => line[i]!.length))));
    const cut = (text: string, width: number) =>
      text.length > width ? `${text.slice(0, width - 1)}…` : text.padEnd(width);
    return [
      '',
      title,
      ...table.map((line) =>
        line
          .map((text, i) => cut(text, widths[i]!))
          .join('  ')
          .trimEnd(),
      ),
    ];
  });
  return [...lines, '', tally(checked), ''].join('\n');
}

/** The page docs/checks.md. */
export function checksPage(checked: readonly CheckedSheet[], wells = everyWell()): string {
  const line = (texts: readonly string[]) => `| ${texts.map((text) => text.replaceAll('|', '\\|')).join(' | ')} |`;
  const tables = checked.flatMap(({ title, rows }) => [
    `## ${title}`,
    '',
    line(COLUMNS),
    line(COLUMNS.map(() => '---')),
    ...rows.map((row) => line(cells(row))),
    '',
  ]);
  return [
    '# Checks against the outside world',
    '',
    'Made by `npm run checks`; do not edit. Each figure was printed by somebody outside this project, or follows by hand',
    'from a published formula, which is then named ("computed from the formula"). "From memory" marks a source that nobody',
    'has in hand. Names of figures carry their unit. The tests hold the same figures by the same code.',
    '',
    tally(checked),
    '',
    ...tables,
    wellsChapter(wells),
  ].join('\n');
}
