/** A pumping test as it was typed, whole or not: kept until it is emptied, since nothing that was typed may be lost. */
import type { LengthUnit, TimeUnit } from './readings.ts';

export interface TestDraft {
  readonly flow: string;
  readonly where: 'pumped well' | 'observation well';
  readonly distance: string;
  /** How long the pump ran, as typed; empty while it ran to the end of the readings. */
  readonly ranFor: string;
  readonly timeUnit: TimeUnit;
  readonly lengthUnit: LengthUnit;
  readonly rows: readonly { readonly time: string; readonly drawdown: string }[];
}

export const TIME_UNITS: readonly TimeUnit[] = ['min', 'h', 's', 'd'];
export const LENGTH_UNITS: readonly LengthUnit[] = ['ft', 'm', 'in', 'cm'];

export function blankDraft(units: 'us' | 'metric'): TestDraft {
  return {
    flow: '',
    where: 'pumped well',
    distance: '',
    ranFor: '',
    timeUnit: 'min',
    lengthUnit: units === 'metric' ? 'm' : 'ft',
    rows: [],
  };
}

/** Nothing has been typed that could be lost. */
export function isBlank({ flow, distance, ranFor, rows }: TestDraft): boolean {
  return [flow, distance, ranFor, ...rows.flatMap(({ time, drawdown }) => [time, drawdown])].every(
    (text) => text.trim() === '',
  );
}

/** @returns  what `JSON.stringify` wrote of a draft; null for anything else */
export function readDraft(text: string | null): TestDraft | null {
  if (text === null) return null;
  let kept: unknown;
  try {
    kept = JSON.parse(text);
  } catch (fault) {
    console.info('wellcut: a kept pumping test cannot be read', fault);
    return null;
  }
  if (typeof kept !== 'object' || kept === null) return null;
  const { flow, where, distance, ranFor, timeUnit, lengthUnit, rows } = kept as Record<keyof TestDraft, unknown>;
  if (typeof flow !== 'string' || typeof distance !== 'string' || typeof ranFor !== 'string') return null;
  if (where !== 'pumped well' && where !== 'observation well') return null;
  const time = TIME_UNITS.find((unit) => unit === timeUnit);
  const length = LENGTH_UNITS.find((unit) => unit === lengthUnit);
  if (time === undefined || length === undefined || !Array.isArray(rows) || !rows.every(isRow)) return null;
  return { flow, where, distance, ranFor, timeUnit: time, lengthUnit: length, rows };
}

function isRow(row: unknown): row is TestDraft['rows'][number] {
  return (
    typeof row === 'object' &&
    row !== null &&
    'time' in row &&
    typeof row.time === 'string' &&
    'drawdown' in row &&
    typeof row.drawdown === 'string'
  );
}
