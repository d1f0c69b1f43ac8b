/** The first start: what was measured beside what was expected, and what a difference comes of in this very well. */
import type { Metres, Pascals, Ratio } from '../si.ts';
import type { Solution } from '../solution.ts';
import { feet, psi } from '../units.ts';
import { asHung } from './asHung.ts';
import { causesOf, nearIntake } from './causesOf.ts';
import type { Cause } from './cause.ts';
import { expectedOf, type Expected } from './expected.ts';
import { READINGS, readingsAsked, readingsOf, type Reading } from './readings.ts';

export interface Compared {
  readonly reading: Reading;
  readonly kind: (typeof READINGS)[Reading];
  /** SI, in the unit of its reading. */
  readonly measured: number;
  /** Null where nobody knows what to expect. */
  readonly expected: Expected | null;
  readonly verdict: 'as expected' | 'low' | 'high' | 'nothing expected';
  /** What to think of first. None where it is as expected, but water at the intake. */
  readonly causes: readonly Cause[];
}

/** Readings of a pump within this are those of the pump: buckets, gauges and curves are no better. Common practice, no source. */
const FLOW: Ratio = 0.1;
/** A motor bears its rated voltage and a tenth more or less: NEMA MG 1, 12.44 (from memory). */
const VOLTAGE: Ratio = 0.1;
/** Over the nameplate, and the share of it under which a pump mostly lifts no water. Common practice, no source. */
const CURRENT = { over: 0.1, share: 0.65 } as const;
/** What tapes and gauges tell apart. Common practice, no source. */
const LEVEL: Metres = feet(2);
const PRESSURE: Pascals = psi(2);

/** Those that were written down, in their order. */
export function compared(solution: Solution): readonly Compared[] {
  const hung = asHung(solution);
  const readings = readingsOf(solution.plan);
  return readingsAsked(hung.facts.house.kind).flatMap((reading) => {
    const measured = readings[reading];
    if (measured === undefined) return [];
    const expected = expectedOf(reading, hung, readings);
    const verdict = expected === null ? 'nothing expected' : verdictOf(reading, measured, expected);
    const differs = verdict === 'low' || verdict === 'high';
    const causes = differs
      ? causesOf({ reading, hung, readings, measured, verdict })
      : nearIntake(reading, measured, hung);
    return [{ reading, kind: READINGS[reading], measured, expected, verdict, causes }];
  });
}

/** What to expect of each that this well has. */
export function expectations(solution: Solution): ReadonlyMap<Reading, Expected | null> {
  const hung = asHung(solution);
  const readings = readingsOf(solution.plan);
  return new Map(
    readingsAsked(hung.facts.house.kind).map((reading) => [reading, expectedOf(reading, hung, readings)] as const),
  );
}

function verdictOf(reading: Reading, measured: number, { least, most }: Expected): Compared['verdict'] {
  const [under, over] = roomOf(reading, least, most ?? least);
  return measured < least - under ? 'low' : most !== null && measured > most + over ? 'high' : 'as expected';
}

/** How far under the least and over the most a reading may be. */
function roomOf(reading: Reading, least: number, most: number): readonly [number, number] {
  switch (READINGS[reading]) {
    case 'length':
      return [LEVEL, LEVEL];
    case 'pressure':
      return [PRESSURE, PRESSURE];
    case 'voltage':
      return [VOLTAGE * least, VOLTAGE * most];
    case 'current':
      return [-CURRENT.share * most, CURRENT.over * most];
    case 'flow':
      return [FLOW * least, FLOW * most];
    case 'time':
      return [FLOW * least, 0];
  }
}
