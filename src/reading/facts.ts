/** From the pieces of a report to what each of them says: values, stretches, and lines that say nothing. */
import { labelsIn, type Fact, type Labelled } from './labels.ts';
import { TOLD } from './prose.ts';
import { markQuantities, type Marked, type Quantity } from './quantities.ts';
import { isHeading, subjectOf, type Subject } from './sections.ts';
import { headerOf, rowOf, stretchOf, type Header, type Span } from './spans.ts';
import type { Piece } from './text.ts';
import { valueBefore, valueBehind } from './values.ts';

export interface Found {
  readonly fact: Fact;
  /** As the report calls it; '' where it is told in a sentence. */
  readonly name: string;
  readonly quantity: Quantity | null;
  readonly to: Quantity | null;
  /** Words about the value, in small letters. */
  readonly words: string;
  readonly piece: number;
  readonly subject: Subject;
}

/** With a value. */
export type Told = Found & { readonly quantity: Quantity };

export interface Facts {
  readonly pieces: readonly Piece[];
  readonly marked: readonly Marked[];
  readonly found: readonly Found[];
  readonly spans: readonly Span[];
  /** Numbers of pieces that hold something which nobody understood. */
  readonly left: readonly number[];
}

export function factsIn(pieces: readonly Piece[]): Facts {
  const marked = pieces.map(({ text }) => markQuantities(text));
  const found: Found[] = [];
  const spans: Span[] = [];
  const left: number[] = [];
  let heading: Subject = 'none';
  let header: Header | null = null;
  let blanks = 0;
  /** Where the part began: a blank line right under its heading does not end it. */
  let headedAt = -1;
  /** A heading that stands alone: what "Depth" under it is the depth of. */
  let part: Subject = 'none';
  let waiting: Labelled | null = null;

  pieces.forEach(({ text }, piece) => {
    const line = marked[piece];
    if (line === undefined) return;
    if (text.trim() === '') {
      blanks++;
      if (blanks > 1) header = null;
      if (blanks > 1 || headedAt !== piece - 1) [heading, part] = [header?.subject ?? 'none', 'none'];
      waiting = null;
      return;
    }
    blanks = 0;
    // What is said of another well is nobody's here.
    if (OTHER_WELL.test(line.text)) {
      left.push(piece);
      return;
    }
    const own = subjectOf(line.text);
    // "Open hole or material" heads a column of a table of casing.
    const heads = own === 'hole' && /open hole or/.test(line.text) ? 'casing' : own;
    const next = headerOf(line, heads === 'none' ? heading : heads);
    if (next !== null) {
      [header, heading, waiting, headedAt] = [next, next.subject, null, piece];
      return;
    }
    // A value that stands alone under its label.
    if (waiting !== null) {
      const value = aloneOf(line, waiting);
      const { label } = waiting;
      waiting = null;
      if (value !== null) {
        found.push({ fact: label.fact, name: '', ...value, piece, subject: heading });
        return;
      }
    }
    const subject = own === 'none' ? heading : own;
    if (header !== null && !/:/.test(line.text)) {
      const row = rowOf(line, text, header, piece);
      if (row !== null) {
        spans.push(row);
        return;
      }
    }
    // Words that found no room in their column stand alone on the next line.
    const above = spans.at(-1);
    if (
      above !== undefined &&
      (above.wrapped?.at(-1) ?? above.piece) === piece - 1 &&
      above.subject === 'layer' &&
      isWrapped(line, text)
    ) {
      const wrapped = [...(above.wrapped ?? []), piece];
      spans[spans.length - 1] = { ...above, material: `${above.material} ${line.text.trim()}`, wrapped };
      return;
    }
    const labels = labelsIn(line.text);
    const stretches = isStretchLine(line, labels, subject) ? stretchesOf(line, text, subject, piece) : [];
    const used = new Set(stretches.flatMap((each) => each.used));
    spans.push(...stretches);
    const values = [...labelled(line, labels, used), ...toldIn(line, used)].flatMap((value) => inPart(value, part));
    for (const value of values) found.push({ ...value, piece, subject });
    if (values.length > 0 || stretches.length > 0) header = null;
    const isSentence = /[.!?]$/.test(text.trim());
    if (own !== 'none' && !isSentence && (isHeading(line) || HEADS.test(line.text)))
      [heading, header, headedAt, part] = [
        own,
        null,
        piece,
        HEADS.test(line.text) || /[.!?]$/.test(text.trim()) ? 'none' : own,
      ];
    const last = labels.at(-1);
    if (last !== undefined && values.length === 0 && line.quantities.length === 0 && last.label.takes !== 'nothing')
      waiting = last;
    const known = labels.some(
      ({ label }) => label.fact === 'aside' || label.takes === 'words' || label.takes === 'date',
    );
    const nothing = values.every(({ quantity }) => quantity === null) && stretches.length === 0;
    const unused =
      !known &&
      labels.every(({ label }) => label.takes !== 'nothing') &&
      !nothing &&
      line.quantities.some(({ kind }, i) => 'LF'.includes(kind) && !used.has(i));
    if (unused) left.push(piece);
    if (
      nothing &&
      !known &&
      !SAYS_NOTHING.test(line.text) &&
      (line.quantities.length > 0 || !isHeading(line) || saysSomething(line, labels, text))
    )
      left.push(piece);
  });
  return { pieces, marked, found, spans, left };
}

/** "Neighbor's well: 340 ft deep"; a neighbour who is written to is none. */
const OTHER_WELL =
  /(?<!dear )\bneighbou?rs?\b|\bneighbou?r(?:ing|'s)\b|\b(?:adjacent|nearby|other|old|abandoned) wells?\b/;

/** "Depth" under "Casing" is the casing's. */
const IN_PART: Readonly<Partial<Record<Fact, Readonly<Partial<Record<Subject, Fact>>>>>> = {
  bareDepth: {
    ...{ none: 'depth', casing: 'casingBottom', pump: 'pumpDepth', recommended: 'recommendedDepth', grout: 'grout' },
    hole: 'drilledDepth',
  },
  bareSize: { casing: 'casingSize', hole: 'holeSize' },
  bareMaterial: { casing: 'casingMaterial' },
};

function inPart<Value extends { readonly fact: Fact }>(value: Value, subject: Subject): Value[] {
  const meanings = IN_PART[value.fact];
  if (meanings === undefined) return [value];
  const fact = meanings[subject];
  return fact === undefined ? [] : [{ ...value, fact }];
}

/** Behind what a zone gives, or its lower end, the next begins. */
const NEXT_ZONE = /(?<=«[LNF]\d+»\s*)[,;](?=\s*(?:and\s+)?(?:from\s+)?«[LN]\d+»\s*(?:-|to))/g;

/** "Liner: 4 in PVC from 20 to 360 ft, perforated 280 to 360 ft" tells of two. */
function stretchesOf(line: Marked, raw: string, subject: Subject, piece: number): Span[] {
  const at = subject === 'zones' ? NEXT_ZONE : /(?<=«[LN]\d+»[^«»]{0,12})\b(?=perforat|slotted|screened)/g;
  return line.text.split(at).flatMap((text) => stretchOf({ ...line, text }, raw, subject, piece) ?? []);
}

/** Indented, or begun in the middle of a sentence, and without a number or a colon. */
function isWrapped({ text, quantities }: Marked, raw: string): boolean {
  return (
    quantities.length === 0 && /^(?:\s{3,}[A-Za-z]|\s*[a-z])[A-Za-z ,/-]{2,50}$/.test(raw) && subjectOf(text) === 'none'
  );
}

/** Words that stand at the head of a list, on the same line as its first row. */
const HEADS = /^[^«:]{3,40}:/;

/** "SWL: N/A" */
const SAYS_NOTHING = /(?:[:=-]\s*|\s)(?:n\/?a|unknown|not known|none|nil|-+|\?+)\s*$/;

/** A heading has fewer words, or stands in capitals. */
const MOST_IN_HEADING = 5;

/** "Yield: adequate" is no heading, and no sentence is one. */
function saysSomething({ text }: Marked, labels: readonly Labelled[], raw: string): boolean {
  if (raw.trim().split(/\s+/).length >= MOST_IN_HEADING && raw !== raw.toUpperCase() && !/:\s*$/.test(raw)) return true;
  const last = labels.at(-1);
  if (/[a-z]{2}[.!?]$/.test(text.trim())) return true;
  return last !== undefined && last.label.takes !== 'nothing' && /[a-z]{3}/.test(text.slice(last.end));
}

const OF_STRETCHES: ReadonlySet<Fact> = new Set([
  ...(['casingSize', 'casingInside', 'casingBottom', 'casingHeight', 'casingMaterial', 'casingWall'] as const),
  ...(['grout', 'holeSize'] as const),
]);

/** Numbers with "to" between them, in a part or under words that tell of stretches. */
function isStretchLine({ text }: Marked, labels: readonly Labelled[], subject: Subject): boolean {
  if (
    labels.some(
      ({ label }) => label.fact === 'aside' && /range|distance|lot|remarks|concession/.test(text.slice(0, 24)),
    )
  )
    return false;
  const range = /«[LN]\d+»\s*(?:-|to|through)\s*«[LN]\d+»/.exec(text)?.index ?? Infinity;
  // "Static level 60-75 ft" under a heading of casings is a level all the same.
  if (labels.some(({ label, start }) => start < range && label.takes !== 'nothing' && !OF_STRETCHES.has(label.fact)))
    return false;
  if (/^\s*(?:from\s+)?(?:«[LN]\d+»|surface|ground)\s*(?:-|to|through)\s*«[LN]\d+»/.test(text))
    return subject !== 'test' && subject !== 'pump';
  if (/«[LN]\d+»\s*(?:-|to|through|\s)\s*«[LN]\d+»\s*$/.test(text) && subject === 'layers') return true;
  if (!['casing', 'liner', 'screen', 'hole', 'grout', 'zones', 'layers'].includes(subject)) return false;
  return !/\b(?:lowered|fell|dropped|drew|rose)\b/.test(text);
}

function labelled(line: Marked, labels: readonly Labelled[], used: Set<number>): Omit<Found, 'piece' | 'subject'>[] {
  const values: Omit<Found, 'piece' | 'subject'>[] = [];
  labels.forEach((each, i) => {
    const { label } = each;
    const end = labels[i + 1]?.start ?? line.text.length;
    const name = line.text.slice(each.start, each.end);
    if (label.takes === 'words') {
      values.push({ fact: label.fact, name, quantity: null, to: null, words: line.text.slice(each.end, end) });
      return;
    }
    const value = valueBehind(line, each, end) ?? valueBefore(line, each, labels[i - 1]?.end ?? 0);
    if (value === null || value.used.some((index) => used.has(index))) return;
    for (const index of value.used) used.add(index);
    values.push({ fact: label.fact, name, quantity: value.quantity, to: value.to, words: value.words });
    if (label.fact === 'static') values.push(...furtherLevels(line, name, value.used, end, used));
  });
  return values;
}

/** "Static 38' (2003), 52' (2020)": the others are levels too, and nobody knows which one holds. */
function furtherLevels(
  line: Marked,
  name: string,
  taken: readonly number[],
  end: number,
  used: Set<number>,
): Omit<Found, 'piece' | 'subject'>[] {
  const last = Math.max(...taken);
  const from = line.quantities[last]?.at ?? 0;
  const further = /^[^«»:;]{0,8}(?:«[ND]\d+»[^«»:;]{0,8})?(?:and|,|;|\/)[^«»:;]{0,10}«L(\d+)»/.exec(
    line.text.slice(from, end),
  );
  const index = Number(further?.[1]);
  const quantity = further === null ? undefined : line.quantities[index];
  if (quantity === undefined || used.has(index)) return [];
  used.add(index);
  return [{ fact: 'static', name, quantity, to: null, words: '' }];
}

function toldIn(line: Marked, used: Set<number>): Omit<Found, 'piece' | 'subject'>[] {
  const values: Omit<Found, 'piece' | 'subject'>[] = [];
  for (const { fact, pattern, name } of TOLD)
    for (const match of line.text.matchAll(pattern)) {
      const index = Number(match[1]);
      const quantity = line.quantities[index];
      if (quantity === undefined || used.has(index)) continue;
      used.add(index);
      values.push({
        fact,
        name,
        quantity,
        to: null,
        words: line.text.slice(match.index, match.index + match[0].length + 48),
      });
    }
  return values;
}

function aloneOf(line: Marked, { label }: Labelled): { quantity: Quantity; to: null; words: string } | null {
  if (line.quantities.length !== 1 || !/^\s*[<>~]?«.\d+»[\s.]*$/.test(line.text)) return null;
  const [quantity] = line.quantities;
  const fits = { length: 'LNS', size: 'SN', flow: 'FN', time: 'TN', power: 'HN', date: 'D', words: '', nothing: '' }[
    label.takes
  ];
  return quantity !== undefined && fits.includes(quantity.kind) ? { quantity, to: null, words: '' } : null;
}
