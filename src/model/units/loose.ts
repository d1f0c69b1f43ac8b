/** The slow way of reading a quantity: fractions, feet with inches, commas, typographic marks, and what is wrong. */
import { LEAST_MEASURED, MOST_MEASURED } from './measured.ts';
import type { ReadQuantity, Unread } from './parsed.ts';
import { BAR, FOOT, INCH } from './factors.ts';
import { SPELLINGS, toSi } from './table.ts';
import type { QuantityKind } from './table.ts';

/** Longer than any quantity; whatever is longer is not looked at closely. */
const LONGEST = 60;

const DECIMAL = String.raw`\d+(?:[.,]\d*)?(?:e[+-]?\d+)?|[.,]\d+(?:e[+-]?\d+)?`;
const MIXED = String.raw`\d+(?:\s+|\s*-\s*)\d+/\d+|\d+/\d+|${DECIMAL}`;
const ONE_NUMBER = new RegExp(`^([-+]?)\\s*(${MIXED})\\s*(.*)$`, 'i');
const FEET_AND_INCHES = new RegExp(
  `^(-?)\\s*(${DECIMAL})\\s*(?:ft|feet|foot|')[.]?\\s*[-,]?\\s*(${MIXED})\\s*(?:in|inch|inches|"|'')?[.]?$`,
  'i',
);
const LARGE_GAUGE = /^#?\s*([1-4])\/0\s*(?:awg|ga|gauge)$/i;
/** "PN 16", as metric pipe is marked: the pressure in bar. */
const NOMINAL_PRESSURE = /^PN\s*(\d+(?:[.,]\d+)?)$/i;
const TWO_VOLTAGES = /^\d+\s*[/-]\s*\d+/;
const MARKED = /^[-+]?\s*([\d.,]*\d)\s*(.*)$/;

export function readLoosely(typed: string, kind: QuantityKind): ReadQuantity {
  const text = plainMarks(typed);
  if (text === '') return unread({ is: 'empty' });
  if (text.length > LONGEST) return unread({ is: 'tooLong' });
  if (kind === 'gauge') {
    const large = LARGE_GAUGE.exec(text);
    if (large) return { ok: true, si: 1 - Number(large[1]), unit: 'AWG' };
  }
  if (kind === 'pressure') {
    const nominal = NOMINAL_PRESSURE.exec(text);
    if (nominal) return { ok: true, si: Number((nominal[1] ?? '').replace(',', '.')) * BAR, unit: 'bar' };
  }
  // Never read as a fraction: half a volt is no voltage, and what is in the panel is not what the motor is made for.
  if (kind === 'voltage' && TWO_VOLTAGES.test(text)) return unread({ is: 'twoVoltages' });
  const marked = MARKED.exec(text);
  const doubt = marked && thousands(marked[1] ?? '', marked[2] ?? '');
  if (doubt) return doubt;
  if (kind === 'length') {
    const both = FEET_AND_INCHES.exec(text);
    if (both) return feetAndInches(both);
  }
  const parts = ONE_NUMBER.exec(kind === 'gauge' ? text.replace(/^#\s*/, '') : text);
  if (!parts) return unread({ is: 'noNumber' });
  const [, sign, digits, spelled] = parts as unknown as [string, string, string, string];
  const unitText = spelled.replace(/\.$/, '');
  const size = mixedNumber(digits);
  const value = sign === '-' ? -size : size;
  if (!Number.isFinite(value)) return unread({ is: 'notFinite' });
  if (size !== 0 && (size < LEAST_MEASURED || size > MOST_MEASURED))
    return unread({ is: size < LEAST_MEASURED ? 'tooSmall' : 'tooLarge' });
  const spellings = SPELLINGS[kind];
  const unit = spellings.get(unitText) ?? spellings.get(unitText.toLowerCase());
  if (unit) return { ok: true, si: toSi(value, unit), unit: unit.name };
  return unread(unitText === '' ? { is: 'withoutUnit', value } : { is: 'unknownUnit', unit: unitText });
}

function feetAndInches([, sign, feetText = '', inchText = '']: RegExpExecArray): ReadQuantity {
  const feet = mixedNumber(feetText);
  const inches = mixedNumber(inchText);
  if (!Number.isInteger(feet) || !(inches < 12)) return unread({ is: 'oddInches', feet, inches });
  const size = feet * FOOT + inches * INCH;
  return { ok: true, si: sign === '-' ? -size : size, unit: 'ft in' };
}

/**
 * "5,400 ft" may be five thousand feet or five and a bit: nobody but the writer can say. Marks between thousands with a
 * decimal mark after them leave no doubt, but they are refused all the same, so that one rule holds.
 */
function thousands(digits: string, unit: string): Unread | null {
  const grouped = /^(\d{1,3})(?:([.,])(\d{3}(?:\2\d{3})*))(?:[.,](\d+))?$/.exec(digits);
  if (!grouped) return null;
  const [, head = '', mark = '', groups = '', rest] = grouped;
  const once = groups.length === 3 && rest === undefined;
  if (once && (mark === '.' || head.startsWith('0'))) return null;
  const large = `${head}${groups.replaceAll(mark, '')}${rest === undefined ? '' : `.${rest}`}`;
  if (!once) return unread({ is: 'manyThousands', large, unit });
  return unread({ is: 'thousandsOrDecimal', large, small: Number(`${head}.${groups}`), unit });
}

function unread(fault: Unread['fault']): Unread {
  return { ok: false, fault };
}

function mixedNumber(text: string): number {
  const fraction = /^(?:(\d+)(?:\s+|\s*-\s*))?(\d+)\/(\d+)$/.exec(text);
  if (fraction) return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
  return Number(text.replace(',', '.'));
}

/** Typographic marks as the typewriter's: primes, fractions, minus, degree sign, raised figures, wide spaces. */
function plainMarks(text: string): string {
  return text
    .slice(0, LONGEST * 2)
    .replace(/\s*[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign.trim()] ?? ''}`)
    .replace(/[′’‘]/g, "'")
    .replace(/[″”“]/g, '"')
    .replace(/[−–]/g, '-')
    .replace(/°\s*/g, 'deg')
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/[µμ]/g, 'u')
    .replace(/\s+/g, ' ')
    .trim();
}

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
