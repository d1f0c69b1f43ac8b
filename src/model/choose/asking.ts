import { STRONGEST } from './outfit.ts';
import type { Ask } from './asks.ts';
import type { PumpRow } from './pumpRow.ts';

/**
 * What would do, and rests on something of it that nobody said, depends on that; it stands after what surely does. What
 * no answer helps is none.
 *
 * @param rows  in order
 */
export function asking(rows: readonly PumpRow[]): PumpRow[] {
  const asked = new Set(rows.filter(({ does, asks }) => (does === 'yes' || does === 'works') && asks.length > 0));
  const lastSure = rows.findLastIndex((row) => row.does === 'yes' && !asked.has(row));
  const sureOnes = rows.slice(0, lastSure + 1);
  const ordered = [
    ...sureOnes.filter((row) => !asked.has(row)),
    ...sureOnes.filter((row) => asked.has(row)),
    ...rows.slice(lastSure + 1),
  ];
  const told = ordered.map((row): PumpRow => {
    const need = Math.max(0, ...row.asks.map(needOf));
    if (row.does !== 'no' && need > STRONGEST && row.solution.facts.dropPipe.material === 'PE')
      return { ...row, does: 'no', why: { variant: 'overAnyPipe', numbers: { need } } };
    return asked.has(row) ? { ...row, does: 'depends' } : row;
  });
  return told.toSorted((one, other) => Number(one.does === 'no') - Number(other.does === 'no'));
}

function needOf(ask: Ask): number {
  return ask.variant === 'pipeRating' ? ask.numbers.need : 0;
}
