/** The slow way of reading a quantity: fractions, feet with inches, commas, typographic marks, and what is wrong. */
import { LEAST_MEASURED, MOST_MEASURED } from './measured.ts';
import type { ParsedQuantity, QuantityFault } from './parsed.ts';
import { BAR, FOOT, INCH } from './factors.ts';
import { SPELLINGS, UNITS, fromSi, listUnits, toSi, unitOf } from './table.ts';
import type { QuantityKind } from './table.ts';
import { plainNumber } from './write.ts';

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

export function readLoosely(typed: string, kind: QuantityKind): ParsedQuantity {
  const text = plainMarks(typed);
  if (text === '') return fault('empty', examples(kind));
  if (text.length > LONGEST) return fault('too long for a quantity', examples(kind));
  if (kind === 'gauge') {
    const large = LARGE_GAUGE.exec(text);
    if (large) return { ok: true, si: 1 - Number(large[1]), unit: 'AWG' };
  }
  if (kind === 'pressure') {
    const nominal = NOMINAL_PRESSURE.exec(text);
    if (nominal) return { ok: true, si: Number((nominal[1] ?? '').replace(',', '.')) * BAR, unit: 'bar' };
  }
  // Never read as a fraction: half a volt is no voltage, and what is in the panel is not what the motor is made for.
  if (kind === 'voltage' && TWO_VOLTAGES.test(text)) return fault('two voltages', examples(kind));
  const marked = MARKED.exec(text);
  const doubt = marked && thousands(marked[1] ?? '', marked[2] ?? '');
  if (doubt) return doubt;
  if (kind === 'length') {
    const both = FEET_AND_INCHES.exec(text);
    if (both) return feetAndInches(both);
  }
  const parts = ONE_NUMBER.exec(kind === 'gauge' ? text.replace(/^#\s*/, '') : text);
  if (!parts) return fault('not a number with a unit', examples(kind));
  const [, sign, digits, spelled] = parts as unknown as [string, string, string, string];
  const unitText = spelled.replace(/\.$/, '');
  const size = mixedNumber(digits);
  const value = sign === '-' ? -size : size;
  if (!Number.isFinite(value)) return fault('not a finite number', examples(kind));
  if (size !== 0 && (size < LEAST_MEASURED || size > MOST_MEASURED))
    return fault(
      size < LEAST_MEASURED ? 'smaller than anything measured' : 'larger than anything measured',
      examples(kind),
    );
  const spellings = SPELLINGS[kind];
  const unit = spellings.get(unitText) ?? spellings.get(unitText.toLowerCase());
  if (unit) return { ok: true, si: toSi(value, unit), unit: unit.name };
  return unitText === '' ? withoutUnit(value, kind) : unknownUnit(unitText, kind);
}

/** A bare number, with the two units it may have been meant in. */
export function withoutUnit(value: number, kind: QuantityKind): QuantityFault {
  return { ...fault('without a unit', inBothUnits(value, kind)), bare: value };
}

/**
 * '"90 ft" or "27.4 m"'; the metric one first when `units` says so: '"90 m" or "295.3 ft"'.
 *
 * @param pair  names of the customary and the metric unit, where they are not the kind's first two
 */
export function inBothUnits(
  value: number,
  kind: QuantityKind,
  units: 'us' | 'metric' = 'us',
  pair: readonly string[] = UNITS[kind].map(({ name }) => name),
): string {
  const [customary, metric] = pair.slice(0, 2).map((name) => unitOf(kind, name));
  if (!customary) return '';
  const first = units === 'metric' && metric && kind !== 'time' ? metric : customary;
  const second = kind === 'time' ? null : first === customary ? metric : customary;
  const start = `"${joined(plainNumber(value), first.name)}"`;
  if (!second) return start;
  // No size of one family is one of the other: it is the same number under another name.
  if (kind === 'gauge') return `${start} or "${joined(plainNumber(value), second.name)}"`;
  const converted = Number(fromSi(toSi(value, first), second).toPrecision(value === 0 ? 1 : 3));
  const rounded = Math.abs(converted) >= 100 ? Math.round(fromSi(toSi(value, first), second)) : converted;
  return `${start} or "${joined(plainNumber(rounded), second.name)}"`;
}

function feetAndInches([, sign, feetText = '', inchText = '']: RegExpExecArray): ParsedQuantity {
  const feet = mixedNumber(feetText);
  const inches = mixedNumber(inchText);
  if (!Number.isInteger(feet) || !(inches < 12)) {
    const total = feet * 12 + inches;
    const whole = Math.floor(total / 12 + 1e-9);
    const rest = Number((total - whole * 12).toPrecision(6));
    return fault(
      Number.isInteger(feet) ? `${plainNumber(inches)} in is a foot or more` : 'inches after a part of a foot',
      Number.isFinite(total) ? `"${rest === 0 ? `${whole} ft` : `${whole} ft ${rest} in`}"` : examples('length'),
    );
  }
  const size = feet * FOOT + inches * INCH;
  return { ok: true, si: sign === '-' ? -size : size, unit: 'ft in' };
}

/**
 * "5,400 ft" may be five thousand feet or five and a bit: nobody but the writer can say. Marks between thousands with a
 * decimal mark after them leave no doubt, but they are refused all the same, so that one rule holds.
 */
function thousands(digits: string, unit: string): QuantityFault | null {
  const grouped = /^(\d{1,3})(?:([.,])(\d{3}(?:\2\d{3})*))(?:[.,](\d+))?$/.exec(digits);
  if (!grouped) return null;
  const [, head = '', mark = '', groups = '', rest] = grouped;
  const once = groups.length === 3 && rest === undefined;
  if (once && (mark === '.' || head.startsWith('0'))) return null;
  const large = `${head}${groups.replaceAll(mark, '')}${rest === undefined ? '' : `.${rest}`}`;
  if (!once) return fault('with marks between the thousands', `"${joined(large, unit)}"`);
  const small = plainNumber(Number(`${head}.${groups}`));
  return fault('either thousands or a decimal comma', `"${joined(large, unit)}" or "${joined(small, unit)}"`);
}

/**
 * What was meant by the number nobody knows, so it is never shown again with another unit: whoever takes that over has a
 * wrong value that looks read.
 */
function unknownUnit(unitText: string, kind: QuantityKind): QuantityFault {
  const shown = unitText.length > 20 ? `${unitText.slice(0, 20)}…` : unitText;
  const rest = /^[,.\d]/.test(unitText);
  if (rest) return fault('not one number with a unit', examples(kind));
  if (kind === 'acidity') return fault('with a unit, and a pH has none', examples(kind));
  return fault(`with the unit "${shown}", which is not read here (these are: ${listUnits(kind)})`, examples(kind));
}

function fault(what: string, write: string): QuantityFault {
  return { ok: false, problem: `${what}; write ${write}`, fault: what, write, bare: null };
}

/** What a quantity of the kind looks like. */
export function examples(kind: QuantityKind): string {
  return EXAMPLES[kind];
}

const EXAMPLES: Readonly<Record<QuantityKind, string>> = {
  length: '"62 ft" or "18.9 m"',
  flow: '"8 gpm" or "30 L/min"',
  pressure: '"60 psi" or "4.1 bar"',
  temperature: '"50 degF" or "10 degC"',
  volume: '"44 gal" or "167 L"',
  time: '"4 h" or "240 min"',
  transmissivity: '"500 ft2/d" or "46 m2/d"',
  mass: '"30 lb" or "13.6 kg"',
  force: '"1125 lbf" or "5000 N"',
  voltage: 'the motor’s own voltage: "115 V" or "230 V"',
  current: '"9.8 A"',
  power: '"1-1/2 hp" or "1.1 kW"',
  gauge: '"12 AWG" or "4 mm2"',
  ratio: '"30 %" or "0.3"',
  acidity: '"7.2", a bare number from 0 to 14',
  concentration: '"100 mg/L"',
  freezingIndex: '"1500 degF d" or "833 degC d"',
  conductivity: '"400 uS/cm"',
};

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

function joined(number: string, unit: string): string {
  return unit === '' ? number : `${number} ${unit}`;
}
