/** The rows of a typed test: what stands in them, and what they come to. */
import type { TestReading } from '../../model/aquifer/index.ts';
import { parseQuantity } from '../../model/units.ts';

/** As typed; the key stays with the row when others come and go. */
export interface Row {
  readonly key: number;
  readonly time: string;
  readonly drawdown: string;
}

export type TimeUnit = 'min' | 'h' | 's' | 'd';
export type LengthUnit = 'ft' | 'm' | 'in' | 'cm';

/** Whether what stands in a cell is a number, or nothing yet. */
export function isFine(typed: string): boolean {
  return typed.trim() === '' || numberIn(typed) !== null;
}

/** "0.28", "0,28" */
export function numberIn(typed: string): number | null {
  const text = typed.trim().replace(/^([-+]?\d*),(\d+)$/, '$1.$2');
  return /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(text) ? Number(text) : null;
}

/** The rows that are whole, in SI; half-filled and unreadable rows are left out. */
export function readingsOf(rows: readonly Row[], time: TimeUnit, length: LengthUnit): TestReading[] {
  const second = siOfOne('time', time);
  const metre = siOfOne('length', length);
  return rows.flatMap((row) => {
    const [since, fallen] = [numberIn(row.time), numberIn(row.drawdown)];
    return since === null || fallen === null ? [] : [{ time: since * second, drawdown: fallen * metre }];
  });
}

/** How many rows are begun but do not count. */
export function leftOut(rows: readonly Row[]): number {
  return rows.filter(
    (row) =>
      (row.time.trim() !== '' || row.drawdown.trim() !== '') &&
      (numberIn(row.time) === null || numberIn(row.drawdown) === null),
  ).length;
}

/** SI value of one unit. */
export function siOfOne(kind: 'time' | 'length' | 'transmissivity', unit: string): number {
  const read = parseQuantity(`1 ${unit}`, kind);
  if (!read.ok) throw new RangeError(`siOfOne: no unit "${unit}" of ${kind}`);
  return read.si;
}
