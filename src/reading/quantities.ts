/** Quantities in a piece of text: each is taken out and a mark stands in its place, so that patterns see words and kinds. */
import { GALLON, IMPERIAL_GALLON } from '../model/units/factors.ts';
import { inDigits } from './numberWords.ts';

/**
 * L a length in feet or metres, S one in inches, cm or mm, F a flow, T a time, P a share in percent, H a power, D a day, N a
 * bare number, X what is measured in something else.
 */
export type Kind = 'L' | 'S' | 'F' | 'T' | 'P' | 'H' | 'D' | 'N' | 'X';

export interface Quantity {
  readonly kind: Kind;
  /** In its own unit; of a day as milliseconds since 1970, NaN where its order of day and month is not known. */
  readonly value: number;
  /** As a plan writes it; '' of a bare number and a day. */
  readonly unit: string;
  /** As it stands in the text. */
  readonly text: string;
  /** "+", "-" or none before it. */
  readonly sign: '' | '+' | '-';
  /** "about", "less than" or "more than" stands before it. */
  readonly about: boolean;
  readonly less: boolean;
  readonly more: boolean;
  /** Where its mark ends. */
  readonly at: number;
}

export interface Marked {
  /** In small letters, with marks such as "«L0»" for the quantities. */
  readonly text: string;
  readonly quantities: readonly Quantity[];
}

/** US gallons in an imperial one. */
const IMPERIAL = IMPERIAL_GALLON / GALLON;

const NUMBER = String.raw`\d{1,2}\/\d{1,2}(?![\d/])|(?:\d{1,3}(?:,\d{3})+(?!\d)|\d+(?:,\d{1,2}(?![\d,]))?)(?:\.\d+)?(?:(?:\s|-|\s?-\s?)\d{1,2}\/\d{1,2}(?!\d|\/))?|\.\d+`;
const FEET = String.raw`(?:'|feet\b|foot\b|ft\b\.?)`;
const INCHES = String.raw`(?:"|inches\b|inch\b|in\b\.?)`;

interface Unit {
  readonly kind: Kind;
  readonly unit: string;
  readonly pattern: RegExp;
  readonly factor?: number;
}

const sticky = (pattern: string): RegExp => new RegExp(String.raw`[\s-]?\s*(?:${pattern})`, 'iy');

/** The longer spellings first. */
const UNITS: readonly Unit[] = [
  {
    ...{ kind: 'F', unit: 'gpm', factor: IMPERIAL },
    pattern: sticky(
      String.raw`(?:imp(?:erial)?\.?\s*gal(?:lon)?s?\.?\s*(?:\/|per|a)\s*min(?:ute)?\b|i\.?gpm\b|imp\.?\s*gpm\b)`,
    ),
  },
  {
    ...{ kind: 'F', unit: 'gpm' },
    pattern: sticky(
      String.raw`(?:u\.?s\.?\s*)?(?:gal(?:lon)?s?\.?\s*(?:\/|per|a)\s*min(?:ute)?s?\b\.?|g\.?p\.?m\b\.?)`,
    ),
  },
  {
    kind: 'F',
    unit: 'gph',
    pattern: sticky(
      String.raw`(?:u\.?s\.?\s*)?(?:gal(?:lon)?s?\.?\s*(?:\/|per|an)\s*h(?:ou)?r?s?\b\.?|g\.?p\.?h\b\.?)`,
    ),
  },
  {
    kind: 'F',
    unit: 'L/min',
    pattern: sticky(String.raw`(?:lit(?:re|er)s?\s*(?:\/|per|a)\s*min(?:ute)?\b|l\s*\/\s*min(?:ute)?\b|lpm\b)`),
  },
  {
    kind: 'F',
    unit: 'L/s',
    pattern: sticky(String.raw`(?:lit(?:re|er)s?\s*(?:\/|per|a)\s*sec(?:ond)?\b|l\s*\/\s*s(?:ec)?\b|lps\b)`),
  },
  {
    kind: 'F',
    unit: 'm3/h',
    pattern: sticky(String.raw`(?:m3|m\^3|cubic met(?:re|er)s?)\s*(?:\/|per|an)\s*h(?:ou)?r?\b`),
  },
  {
    kind: 'F',
    unit: 'm3/d',
    pattern: sticky(String.raw`(?:m3|m\^3|cubic met(?:re|er)s?)\s*(?:\/|per|a)\s*d(?:ay)?\b`),
  },
  {
    kind: 'X',
    unit: '',
    pattern: sticky(
      String.raw`(?:lbs?\b|pounds?\b|psi\b|#|sacks?\b|bags?\b|yards?\b|yds?\b|volts?\b|v\b|amps?\b|stages?\b|years?\b|acres?\b|gallons?\b|gals?\b|lit(?:re|er)s?\b|cubic\b|cu\b|m3\b|kg\b|mg\b|ppm\b|mesh\b|degrees?\b|°|slots?\b|holes?\b|miles?\b|km\b|people\b|persons?\b|bedrooms?\b|lengths?\b|joints?\b|%?\s*chlorine\b|mils?\b)`,
    ),
  },
  { kind: 'L', unit: 'ft', pattern: sticky(String.raw`(?:feet\b|foot\b|ft\b\.?|')`) },
  { kind: 'S', unit: 'mm', pattern: sticky(String.raw`(?:mm\b|millimet(?:re|er)s?\b)`) },
  { kind: 'S', unit: 'cm', pattern: sticky(String.raw`(?:cm\b|centimet(?:re|er)s?\b)`) },
  { kind: 'L', unit: 'm', pattern: sticky(String.raw`(?:met(?:re|er)s?\b|m\b(?!\/))`) },
  { kind: 'S', unit: 'in', pattern: sticky(String.raw`(?:inches\b|inch\b|in\b\.?(?!\s+(?:the|a|an|this|19|20)\b)|")`) },
  { kind: 'T', unit: 'h', pattern: sticky(String.raw`(?:hours?\b|hrs?\b\.?|h\b)`) },
  { kind: 'T', unit: 'min', pattern: sticky(String.raw`(?:minutes?\b|mins?\b\.?)`) },
  { kind: 'T', unit: 'd', pattern: sticky(String.raw`days?\b`) },
  { kind: 'P', unit: '%', pattern: sticky(String.raw`(?:%|per\s?cent\b)`) },
  { kind: 'H', unit: 'hp', pattern: sticky(String.raw`(?:horse\s?power\b|h\.?p\b\.?)`) },
  { kind: 'H', unit: 'kW', pattern: sticky(String.raw`kw\b`) },
];

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const MONTH = String.raw`(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\.?`;
const DAY = new RegExp(
  String.raw`\b(?:(\d{4})-(\d{1,2})-(\d{1,2})|(\d{1,2})[/.-](\d{1,2})[/.-](\d{4}|\d{2})|(${MONTH})\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})|(\d{1,2})(?:st|nd|rd|th)?\s+(${MONTH}),?\s+(\d{4}))\b`,
  'iy',
);
/** Telephones, times of day, coordinates and numbers with letters in them measure nothing. */
const OTHER =
  /(?:\(\d{3}\)\s*\d{3}-\d{4}|\d{3}-\d{3}-\d{4}|\d{3}-\d{4}(?!\d)|\d{1,2}:\d{2}(?::\d{2})?(?:\s*[ap]\.?m\b\.?)?|\d+(?:st|nd|rd|th)\b)/iy;
/** Behind a foot mark the inches may stand without theirs: 45'6. */
const FEET_AND_INCHES = new RegExp(
  String.raw`(?:(${NUMBER})\s*'(?:\s*|-)(${NUMBER})(?![\d/])(?:\s*${INCHES}|(?!\s*[a-z%]))|(${NUMBER})\s*${FEET}\s*-?\s*(?:and\s+)?(${NUMBER})\s*${INCHES})`,
  'iy',
);
const BARE = new RegExp(`(?:${NUMBER})`, 'iy');
const ABOUT = /(?:about|approx\.?|approximately|roughly|around|circa|ca\.|est\.?|estimated|~|≈|±|\+\/-)\s*$/i;
const LESS = /(?:<|less than|under|not quite|barely)\s*$/i;
const MORE = /(?:>|more than|over|at least|better than)\s*$/i;

/** @param text  one piece of a report */
export function markQuantities(text: string): Marked {
  const digits = inDigits(text);
  const quantities: Quantity[] = [];
  let marked = '';
  let at = 0;
  while (at < digits.length) {
    const read = startsNumber(digits, at) ? quantityAt(digits, at) : null;
    // "Static level in 2019" is a year and no level.
    const found = read !== null && isYear(read, marked) ? { ...read, kind: 'X' as const } : read;
    if (found === null) {
      marked += digits[at] === '«' || digits[at] === '»' ? ' ' : digits[at]?.toLowerCase();
      at++;
      continue;
    }
    const before = marked.slice(-24);
    const sign = signBefore(marked);
    if (sign !== '') marked = marked.slice(0, -1);
    marked += `«${found.kind}${quantities.length}»`;
    quantities.push({
      ...found,
      sign,
      about: ABOUT.test(before),
      less: LESS.test(before),
      more: MORE.test(before) || digits[found.end] === '+',
      at: marked.length,
    });
    at = found.end;
  }
  return inherited(marked, quantities);
}

function isYear({ kind, value }: Found, before: string): boolean {
  return kind === 'N' && value >= 1900 && value < 2100 && /\b(?:in|since)\s+$/.test(before);
}

/** A sign belongs to the number that it touches; a dash behind another number is a "to". */
function signBefore(marked: string): Quantity['sign'] {
  const sign = marked.at(-1);
  if (sign !== '+' && sign !== '-') return '';
  const before = marked.slice(0, -1);
  if (before !== '' && !/[\s(:|,]$/.test(before)) return '';
  return sign === '-' && /»\s?$/.test(before) ? '' : sign;
}

function startsNumber(text: string, at: number): boolean {
  const letter = text[at] ?? '';
  if (/[\d.(]/.test(letter))
    return !/[\w.]/.test(text[at - 1] ?? ' ') && (letter !== '.' || /\d/.test(text[at + 1] ?? ''));
  // A month may stand before its day.
  return /[a-z]/i.test(letter) && !/\w/.test(text[at - 1] ?? ' ');
}

type Found = Pick<Quantity, 'kind' | 'value' | 'unit' | 'text'> & { readonly end: number };

function quantityAt(text: string, at: number): Found | null {
  const day = dayAt(text, at);
  if (day !== null) return day;
  if (!/[\d.(]/.test(text[at] ?? '')) return null;
  const other = matchAt(OTHER, text, at);
  if (other !== null) return { kind: 'X', value: NaN, unit: '', text: other[0], end: at + other[0].length };
  const both = matchAt(FEET_AND_INCHES, text, at);
  if (both !== null && !isRange(text, at, both)) {
    const [whole, a, b, c, d] = both;
    const [feet, inches] = [a ?? c ?? '', b ?? d ?? ''];
    const value = numberOf(feet) + numberOf(inches) / 12;
    if (numberOf(inches) < 12) return { kind: 'L', value, unit: 'ft', text: whole.trim(), end: at + whole.length };
  }
  const number = matchAt(BARE, text, at);
  if (number === null) return null;
  const end = at + number[0].length;
  const value = numberOf(number[0]);
  for (const { kind, unit, pattern, factor = 1 } of UNITS) {
    const found = matchAt(pattern, text, end);
    if (found === null) continue;
    const all = number[0] + found[0];
    return {
      kind,
      value: factor === 1 ? value : Number((value * factor).toPrecision(4)),
      unit,
      text: all.trim(),
      end: at + all.length,
    };
  }
  return /[a-z]/i.test(text[end] ?? '') && !/^[x]/i.test(text[end] ?? '')
    ? { kind: 'X', value, unit: '', text: number[0], end }
    : { kind: 'N', value, unit: '', text: number[0], end };
}

/** "40' - 45'" is a range, and "45' 6" is not. */
function isRange(text: string, at: number, [whole]: RegExpExecArray): boolean {
  return /^\s*(?:'|ft|feet)/i.test(text.slice(at + whole.length, at + whole.length + 8));
}

function dayAt(text: string, at: number): Found | null {
  const found = matchAt(DAY, text, at);
  if (found === null) return null;
  const [all, y1, m1, d1, a = '', b = '', y2 = '', monthA, dayA, yearA, dayB, monthB, yearB] = found;
  const done = (year: number, month: number, day: number): Found => ({
    ...{ kind: 'D', unit: '', text: all },
    ...{ value: isDay(month, day) ? Date.UTC(year, month - 1, day) : NaN, end: at + all.length },
  });
  if (y1 !== undefined) return done(Number(y1), Number(m1), Number(d1));
  if (monthA !== undefined) return done(Number(yearA), monthOf(monthA), Number(dayA));
  if (monthB !== undefined) return done(Number(yearB), monthOf(monthB), Number(dayB));
  const [first, second] = [Number(a), Number(b)];
  if (first > 31 || second > 31 || first === 0 || second === 0) return null;
  const year = y2.length === 2 ? (Number(y2) > 40 ? 1900 : 2000) + Number(y2) : Number(y2);
  // Month and day in the order of the country: where both could be either, the American order, which only ranks readings.
  return first > 12 ? done(year, second, first) : done(year, first, second);
}

function isDay(month: number, day: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= 31;
}

function monthOf(name: string): number {
  return MONTHS.indexOf(name.slice(0, 3).toLowerCase()) + 1;
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** "6-5/8", "1,200.5", "3/4" */
export function numberOf(text: string): number {
  const decimal = /^\d+,\d{1,2}$/.test(text.trim());
  const plain = text.replaceAll(',', decimal ? '.' : '').trim();
  const fraction = /^(?:(\d+(?:\.\d+)?)[\s-]+)?\s*(\d+)\/(\d+)$/.exec(plain);
  if (fraction === null) return Number(plain);
  const [, whole = '0', over = '0', under = '1'] = fraction;
  return Number(whole) + Number(over) / Number(under);
}

/** "140 - 145 ft", "110, 160 and 240 ft": what stands before has the unit of the last, and its mark. */
function inherited(marked: string, quantities: readonly Quantity[]): Marked {
  const all = [...quantities];
  let text = marked;
  const take = (from: string, kind: string, to: string): string => {
    const [first, second] = [all[Number(from)], all[Number(to)]];
    if (first === undefined || second === undefined) return `«N${from}»`;
    all[Number(from)] = { ...first, kind: second.kind, unit: second.unit };
    return `«${kind}${from}»`;
  };
  text = text.replace(/«N(\d+)»(?=\s*(?:-|to|through|x|and|&)\s*«([LSF])(\d+)»)/g, (_, ...groups: string[]) =>
    take(groups[0] ?? '', groups[1] ?? '', groups[2] ?? ''),
  );
  // A list with commas is one where its last comes with an "and".
  return {
    text: text.replace(/(?:«N\d+»,\s*)+(?=«([LSF])(\d+)»\s*(?:and|&)\s*«\1\d+»)/g, (list, kind: string, to: string) =>
      list.replace(/«N(\d+)»/g, (_, from: string) => take(from, kind, to)),
    ),
    quantities: all,
  };
}
