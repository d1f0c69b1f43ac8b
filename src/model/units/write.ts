/** Writes an SI number as one would type it: "180 ft", "1.5 m", "48 in". */
import { LEAST_MEASURED } from './measured.ts';
import { FOOT, INCH } from './factors.ts';
import { fromSi, toSi, unitOf } from './table.ts';
import type { QuantityKind, Unit } from './table.ts';

/**
 * The shortest text in the unit that reads back as the same number; with a `step` (SI), the nearest multiple of it.
 * "ft in" writes feet and inches.
 */
export function writeQuantity(si: number, kind: QuantityKind, unitName: string, step?: number): string {
  const rounded = step === undefined || step <= 0 ? si : Math.round(si / step) * step;
  if (kind === 'length' && unitName === 'ft in') return writeFeetAndInches(orNothing(rounded));
  const unit = unitOf(kind, unitName);
  if (kind === 'gauge' && unit.name === 'AWG' && rounded < 1) return `${1 - Math.round(rounded)}/0 AWG`;
  const value = orNothing(
    step === undefined ? shortest(rounded, unit) : neat(fromSi(rounded, unit), (step * unit.divisor) / unit.factor),
  );
  return unit.name === '' ? plainNumber(value) : `${plainNumber(value)} ${unit.name}`;
}

/** A sum that should come to nothing may be off by a bit. */
function orNothing(value: number): number {
  return Math.abs(value) < LEAST_MEASURED ? 0 : value;
}

/** "5 ft 6 in", "5 ft", "6 in", to the sixteenth of an inch; never "3 ft 12 in". */
function writeFeetAndInches(length: number): string {
  const sixteenths = Math.round((Math.abs(length) / INCH) * 16);
  const feet = Math.floor(sixteenths / 192);
  const inches = (sixteenths - feet * 192) / 16;
  const sign = length < 0 && sixteenths > 0 ? '-' : '';
  // Exact to the last bit where the sixteenths say it all, else decimals of an inch, so that nothing typed is lost.
  const exact = feet * FOOT + inches * INCH;
  const rest = exact === Math.abs(length) ? inches : Number(((Math.abs(length) - feet * FOOT) / INCH).toPrecision(12));
  const spoken = rest < 0 || rest >= 12 ? inches : rest;
  return (
    sign +
    (feet === 0 ? `${plainNumber(spoken)} in` : spoken === 0 ? `${feet} ft` : `${feet} ft ${plainNumber(spoken)} in`)
  );
}

function shortest(si: number, unit: Unit): number {
  const value = fromSi(si, unit);
  for (const precision of [12, 14, 15, 16]) {
    const candidate = Number(value.toPrecision(precision));
    if (toSi(candidate, unit) === si) return candidate;
  }
  return value;
}

/** A multiple of a round step shows the step's decimals; of an odd one (0.1 m in feet), as many as tell steps apart. */
function neat(value: number, step: number): number {
  const decimals = [0, 1, 2, 3].find(
    (places) => Math.abs(step * 10 ** places - Math.round(step * 10 ** places)) < 1e-6 && step * 10 ** places > 0.5,
  );
  return Number(value.toFixed(decimals ?? Math.min(9, Math.max(0, Math.ceil(-Math.log10(step))))));
}

/** A number without an exponent, a trailing zero or a negative zero. */
export function plainNumber(value: number): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e-6 && size < 1e21) return String(value);
  return size < 1e-6 ? value.toFixed(20).replace(/0+$/, '') : String(value);
}
