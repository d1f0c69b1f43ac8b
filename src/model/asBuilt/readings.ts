/** What is read at the first start. */
import type { Plan } from '../plan/schema.ts';
import { parseQuantity, type QuantityKind } from '../units.ts';

/** In the order in which they are read. */
export const READINGS = {
  staticLevel: 'length',
  voltage: 'voltage',
  current: 'current',
  flow: 'flow',
  precharge: 'pressure',
  cutIn: 'pressure',
  cutOut: 'pressure',
  pumpingLevel: 'length',
  run: 'time',
} as const satisfies Readonly<Record<string, QuantityKind>>;

export type Reading = keyof typeof READINGS;

/** SI, in the unit of its kind; what was not read is not there. */
export type Readings = Readonly<Partial<Record<Reading, number>>>;

/** An open tank has no air and no pressure switch. */
const OF_PRESSURE: ReadonlySet<Reading> = new Set(['precharge', 'cutIn', 'cutOut']);

/** Those that this well has. */
export function readingsAsked(kind: 'pressure tank' | 'open tank'): readonly Reading[] {
  const all = Object.keys(READINGS) as Reading[];
  return kind === 'open tank' ? all.filter((reading) => !OF_PRESSURE.has(reading)) : all;
}

export function readingsOf({ asBuilt }: Plan): Readings {
  const typed = asBuilt?.measured ?? {};
  return Object.fromEntries(
    Object.entries(READINGS).flatMap(([reading, kind]) => {
      const text = typed[reading as Reading];
      const parsed = text === undefined ? null : parseQuantity(text, kind);
      return parsed?.ok === true ? [[reading, parsed.si]] : [];
    }),
  );
}
