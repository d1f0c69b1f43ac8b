/** The rows of a typed test: what stands in them, and what they come to. */
import type { PumpingTest, TestReading } from '../../model/aquifer/index.ts';
import type { Seconds } from '../../model/si.ts';
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

/**
 * The rows that are whole, in SI; half-filled and unreadable rows are left out.
 *
 * @param ranFor  how long the pump ran [s]: what was read later is the recovery; null while it ran to the end
 */
export function readingsOf(
  rows: readonly Row[],
  time: TimeUnit,
  length: LengthUnit,
  ranFor: Seconds | null,
): Pick<PumpingTest, 'readings' | 'recovery' | 'pumpedFor'> {
  const second = siOfOne('time', time);
  const metre = siOfOne('length', length);
  const all = rows.flatMap((row): TestReading[] => {
    const [since, fallen] = [numberIn(row.time), numberIn(row.drawdown)];
    return since === null || fallen === null ? [] : [{ time: since * second, drawdown: fallen * metre }];
  });
  if (ranFor === null) return { readings: all };
  const isLater = (reading: TestReading): boolean => reading.time > ranFor * (1 + 1e-9);
  return {
    readings: all.filter((reading) => !isLater(reading)),
    recovery: all.filter(isLater).map((reading) => ({ sinceStop: reading.time - ranFor, drawdown: reading.drawdown })),
    pumpedFor: ranFor,
  };
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
