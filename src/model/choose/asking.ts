import type { PumpRow } from './pumpRow.ts';

/**
 * What would do, and rests on something of it that nobody said, depends on that; it stands after what surely does.
 *
 * @param rows  in order
 */
export function asking(rows: readonly PumpRow[]): PumpRow[] {
  const asked = new Set(rows.filter(({ does, asks }) => does === 'yes' && asks.length > 0));
  const lastSure = rows.findLastIndex((row) => row.does === 'yes' && !asked.has(row));
  const sureOnes = rows.slice(0, lastSure + 1);
  const ordered = [
    ...sureOnes.filter((row) => !asked.has(row)),
    ...sureOnes.filter((row) => asked.has(row)),
    ...rows.slice(lastSure + 1),
  ];
  return ordered.map((row) => (asked.has(row) ? { ...row, does: 'depends' } : row));
}
