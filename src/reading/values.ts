/** What stands behind a label: "Static level (ft): about 42" gives 42 ft. */
import type { Labelled, Takes } from './labels.ts';
import type { Kind, Marked, Quantity } from './quantities.ts';

export interface Value {
  readonly quantity: Quantity;
  /** A second one, where a range or "from … to" stands there. */
  readonly to: Quantity | null;
  /** Words between the label and the value, and close behind it. */
  readonly words: string;
  /** Numbers of the quantities that it takes up. */
  readonly used: readonly number[];
}

const KINDS: Readonly<Record<Takes, readonly Kind[]>> = {
  length: ['L', 'N', 'S'],
  size: ['S', 'N'],
  flow: ['F', 'N'],
  time: ['T', 'N'],
  power: ['H', 'N'],
  date: ['D'],
  words: [],
  nothing: [],
};

/** Words that may stand between a label and its value. */
const FILLER =
  /^(?:[\s:.,;=*#|/~<>≈±+-]+|\([^()«»]{0,40}\)|(?:is|was|were|are|be|at|of|to|by|from|about|approx(?:imately|\.)?|roughly|around|est(?:imated|\.)?|measured|reported|recorded|found|only|less than|more than|over|under|at least|ft|feet|inches|in|inch|metres|meters|m|cm|mm|gpm|hours|hrs|the|a|an|above|below|ground|surface|level|land|grade|set|down|depth|diameter|dia|size|nominal|rate|test|well|hole|pipe|casing|top|bgl|bgs|n|value|final|now|end|pumping)\b\.?)/;
const MARK = /^«([A-Z])(\d+)»/;
/** How many words are walked over. */
const MOST_FILLERS = 14;
/** A unit that stands with the label: "Depth (m)", "yield in gpm". */
const UNIT_IN_LABEL =
  /\(?\b(?:in |, ?)?(ft|feet|inches|inch|in|metres|meters|m|cm|mm|gpm|gph|l\/min|lpm|l\/s|m3\/h|hrs?|hours|min(?:utes)?)\b\.?/;
const UNIT_NAMES: Readonly<Record<string, string>> = {
  ...{ feet: 'ft', inches: 'in', inch: 'in', metres: 'm', meters: 'm', lpm: 'L/min', 'l/min': 'L/min', 'l/s': 'L/s' },
  ...{ hr: 'h', hrs: 'h', hours: 'h', minutes: 'min' },
};

/** @param end  where the next label begins, or the text ends */
export function valueBehind(marked: Marked, { label, end: from }: Labelled, end: number): Value | null {
  const kinds = KINDS[label.takes];
  if (kinds.length === 0) return null;
  let rest = marked.text.slice(from, end);
  let words = '';
  for (let i = 0; i < MOST_FILLERS; i++) {
    const mark = MARK.exec(rest);
    if (mark !== null) return taken(marked, mark, kinds, words, rest);
    const filler = FILLER.exec(rest);
    if (filler === null) return null;
    words += filler[0];
    rest = rest.slice(filler[0].length);
  }
  return null;
}

/** The value that stands before its label: "42 ft static level". */
export function valueBefore(marked: Marked, { label, start }: Labelled, from: number): Value | null {
  const kinds = KINDS[label.takes];
  const before = marked.text.slice(from, start);
  const found = /«([A-Z])(\d+)»\s*(?:of\s+|in\s+)?$/.exec(before);
  if (found === null) return null;
  const quantity = marked.quantities[Number(found[2])];
  // A bare number belongs to what stands before it.
  if (quantity === undefined || quantity.kind === 'N' || !kinds.includes(quantity.kind)) return null;
  return { quantity, to: null, words: '', used: [Number(found[2])] };
}

function taken(
  marked: Marked,
  [whole, , index]: RegExpExecArray,
  kinds: readonly Kind[],
  words: string,
  rest: string,
): Value | null {
  const quantity = marked.quantities[Number(index)];
  if (quantity === undefined || !kinds.includes(quantity.kind)) return null;
  const behind = rest.slice(whole.length);
  const range = /^\s*(?:-|to|through|thru)\s*«([A-Z])(\d+)»/.exec(behind);
  const second = range === null ? undefined : marked.quantities[Number(range[2])];
  const to = second !== undefined && kinds.includes(second.kind) ? second : null;
  const unit = unitOf(words);
  return {
    quantity: withUnit(quantity, unit),
    to: to === null ? null : withUnit(to, unit),
    words: `${words} ${behind.slice(range?.[0].length ?? 0, (range?.[0].length ?? 0) + 48)}`,
    used: to === null ? [Number(index)] : [Number(index), Number(range?.[2])],
  };
}

/** '' where the words say none. */
export function unitOf(words: string): string {
  const found = UNIT_IN_LABEL.exec(words)?.[1];
  return found === undefined ? '' : (UNIT_NAMES[found] ?? found);
}

function withUnit(quantity: Quantity, unit: string): Quantity {
  return quantity.unit !== '' || unit === '' ? quantity : { ...quantity, unit };
}
