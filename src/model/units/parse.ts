/** Reads a quantity as people type it: "62 ft", 5' 6", "1-1/4 in", "1,5 m". */
import { sayFault } from './faults.ts';
import { readLoosely } from './loose.ts';
import type { ParsedQuantity, ReadQuantity } from './parsed.ts';
import { SPELLINGS, toSi } from './table.ts';
import type { QuantityKind } from './table.ts';

/**
 * Text with its unit, to SI. Temperatures become degC, gauges their AWG number (1/0 is 0, 2/0 is -1;
 * of mm2 a fraction).
 *
 * A whole plan is parsed on every pointer event, so the common form (number, space, unit) is read by character code;
 * whatever else people write goes the slow way round.
 */
export function readQuantity(text: string, kind: QuantityKind): ReadQuantity {
  const length = text.length;
  let at = 0;
  const negative = text.charCodeAt(0) === MINUS;
  if (negative) at = 1;
  let digits = 0;
  let mantissa = 0;
  let decimals = -1;
  for (; at < length; at++) {
    const code = text.charCodeAt(at);
    if (code >= ZERO && code <= NINE) {
      mantissa = mantissa * 10 + (code - ZERO);
      digits++;
      if (decimals >= 0) decimals++;
    } else if (code === POINT && decimals < 0) decimals = 0;
    else break;
  }
  // Up to 15 digits the integer and the power of ten are both exact, so one division rounds as a full parse would.
  // More decimals than nine are looked at closely.
  if (digits > 0 && digits <= 15 && decimals <= 9) {
    if (text.charCodeAt(at) === SPACE) at++;
    const unit = SPELLINGS[kind].get(at === 0 ? text : text.slice(at));
    if (unit) {
      const value = decimals > 0 ? mantissa / (POWERS_OF_TEN[decimals] ?? 1) : mantissa;
      return { ok: true, si: toSi(negative ? -value : value, unit), unit: unit.name };
    }
  }
  return readLoosely(text, kind);
}

/** The same, with words for what is wrong: `solve`, which reads plans that were found readable, does without them. */
export function parseQuantity(text: string, kind: QuantityKind): ParsedQuantity {
  const read = readQuantity(text, kind);
  return read.ok ? read : sayFault(read.fault, kind);
}

const MINUS = 45;
const POINT = 46;
const SPACE = 32;
const ZERO = 48;
const NINE = 57;
const POWERS_OF_TEN = Array.from({ length: 16 }, (_, power) => Number(`1e${power}`));
