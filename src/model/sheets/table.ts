/** Rows of a table from cells that are words or numbers with their text. */
import type { SheetColumn, SheetRow } from './sheet.ts';

export type Cell = string | { readonly value: number | null; readonly text: string };

/** A number for the reader, or a dash where nobody knows it. */
export function cell(value: number | null, write: (value: number) => string): Cell {
  return { value, text: value === null ? '–' : write(value) };
}

export function row(mark: SheetRow['mark'], ...cells: readonly Cell[]): SheetRow {
  return {
    cells: cells.map((each) => (typeof each === 'string' ? each : each.text)),
    numbers: cells.map((each) => (typeof each === 'string' ? null : each.value)),
    mark,
  };
}

export const columns = (...pairs: readonly (readonly [key: string, title: string])[]): SheetColumn[] =>
  pairs.map(([key, title]) => ({ key, title }));
