/** Numbers as they stand in a sum: enough digits to do it again on a pocket calculator. */

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** Digits that operands carry, so that a result of four is not spoilt by them. */
export const OPERAND_DIGITS = 7;
const RESULT_DIGITS = 4;

/** "96", "138.6203", "1.40608 × 10⁻⁵", "−3.5": at most so many significant digits, without trailing zeros. */
export function significant(value: number, digits: number): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  const text = size < 1e-3 || size >= 1e9 ? scientific(size, digits) : String(Number(size.toPrecision(digits)));
  return value < 0 ? `−${text}` : text;
}

/** A part of a sum: with the decimals that its unit is worth, since a sum is no finer than they are. */
export function partText(value: number, decimals: number): string {
  const rounded = Number(value.toFixed(Math.min(decimals, 20)));
  // What would vanish in the decimals keeps two digits.
  return rounded === 0 && value !== 0 ? significant(value, 2) : significant(rounded, 15);
}

/** A result for the reader: four digits, and never finer than so many decimals. */
export function resultText(value: number, decimals: number): string {
  const size = Math.abs(value);
  const whole = size < 1 ? 0 : Math.floor(Math.log10(size)) + 1;
  const places = Math.max(0, Math.min(decimals, RESULT_DIGITS - whole));
  const scale = 10 ** places;
  const rounded = Math.round(size * scale) / scale;
  // A tiny flow or clearance would vanish in the decimals: then the digits count.
  if (rounded === 0 && size > 1e-9) return significant(value, 2);
  const text = rounded < 1e9 ? String(Number(rounded.toFixed(places))) : scientific(rounded, RESULT_DIGITS);
  return value < 0 && rounded !== 0 ? `−${text}` : text;
}

function scientific(size: number, digits: number): string {
  const [mantissa = '0', exponent = '0'] = size.toExponential(digits - 1).split('e');
  const power = Number(exponent);
  const raised = [...String(Math.abs(power))].map((digit) => SUPERSCRIPTS[Number(digit)] ?? '').join('');
  return `${String(Number(mantissa))} × 10${power < 0 ? '⁻' : ''}${raised}`;
}
