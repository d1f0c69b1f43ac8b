/** A pump's curve from two columns of text: flow and head, as copied from a sheet. */
import { pointsCurve } from '../formulas/pointsCurve.ts';
import type { Metres } from '../si.ts';
import { feet, gpm, parseQuantity, writeQuantity } from '../units.ts';

export type FlowUnit = 'gpm' | 'L/min' | 'L/s' | 'm3/h';
export type HeadUnit = 'ft' | 'm' | 'psi' | 'bar' | 'kPa';

/** As a plan holds them. */
export type TypedPoints = readonly (readonly [flow: string, head: string])[];

/** What is wrong, and where: lines are counted from 1 as pasted. */
export type PasteFault =
  | { readonly what: 'empty' }
  | { readonly what: 'tooLong'; readonly most: number }
  | { readonly what: 'noUnits'; readonly column: 'flow' | 'head' }
  | { readonly what: 'twoColumns'; readonly line: number; readonly text: string; readonly found: number }
  | { readonly what: 'number'; readonly line: number; readonly column: 'flow' | 'head'; readonly text: string }
  /** A comma and three digits: thousands to some, tenths to others. */
  | { readonly what: 'comma'; readonly line: number; readonly text: string }
  | { readonly what: 'swapped'; readonly head: string; readonly flow: string }
  | { readonly what: 'negative'; readonly line: number; readonly column: 'flow' | 'head'; readonly text: string }
  | { readonly what: 'tooFew'; readonly found: number }
  | { readonly what: 'tooMany'; readonly most: number }
  | { readonly what: 'sameFlow'; readonly line: number; readonly other: number; readonly text: string }
  | { readonly what: 'rises'; readonly line: number; readonly other: number };

export type PastedCurve =
  | {
      readonly ok: true;
      readonly points: TypedPoints;
      /** Head that is taken at no flow, where none of the points says it. */
      readonly atNoFlow: Metres | null;
    }
  | { readonly ok: false; readonly fault: PasteFault };

export const MOST_POINTS = 40;
/** Longer than any pump's table. */
const LONGEST = 20_000;

/**
 * Reads two columns: flow, then head. A heading may name the units and their order; without one, the units given are
 * taken for numbers that carry none. Tab, semicolon or space part the columns, a comma where it is no decimal mark.
 *
 * @param text   as pasted
 * @param units  of bare numbers where no heading says them; null: nobody said
 * @returns  the points by rising flow, each with its unit as a plan holds it; or the first fault
 */
export function pastedCurve(
  text: string,
  units: { readonly flow: FlowUnit | null; readonly head: HeadUnit | null },
): PastedCurve {
  if (text.length > LONGEST) return no({ what: 'tooLong', most: LONGEST });
  const lines = text
    .split(/\r\n|\r|\n/)
    .map((line, i) => ({ line: i + 1, text: line.trim() }))
    .filter((each) => each.text !== '');
  const [first] = lines;
  if (first === undefined) return no({ what: 'empty' });
  const heading = /\d/.test(first.text.replace(/m3|m³/gi, '')) ? null : headingOf(first.text);
  const rows = heading === null ? lines : lines.slice(1);
  const columns = {
    flow: heading?.flow ?? units.flow,
    head: heading?.head ?? units.head,
    headFirst: heading?.headFirst ?? false,
  };
  const points: Point[] = [];
  for (const row of rows) {
    const read = pointOf(row, columns);
    if ('what' in read) return no(read);
    points.push(read);
  }
  return pointsIn(points);
}

interface Point {
  readonly line: number;
  readonly flow: { readonly si: number; readonly text: string };
  readonly head: { readonly si: number; readonly text: string };
}

const no = (fault: PasteFault): PastedCurve => ({ ok: false, fault });

function pointsIn(points: readonly Point[]): PastedCurve {
  if (points.length < 2) return no({ what: 'tooFew', found: points.length });
  if (points.length > MOST_POINTS) return no({ what: 'tooMany', most: MOST_POINTS });
  const rising = points.toSorted((one, other) => one.flow.si - other.flow.si);
  let last: Point | null = null;
  for (const point of rising) {
    if (last !== null && point.flow.si === last.flow.si)
      return no({ what: 'sameFlow', line: point.line, other: last.line, text: point.flow.text });
    if (last !== null && point.head.si >= last.head.si)
      return no({ what: 'rises', line: point.line, other: last.line });
    last = point;
  }
  const [least, farthest] = [rising[0], rising.at(-1)];
  if (least !== undefined && farthest !== undefined && isSwapped(least, farthest))
    return no({ what: 'swapped', head: least.head.text, flow: farthest.flow.text });
  const { shutOffHead } = pointsCurve(rising.map(({ flow, head }) => ({ flow: flow.si, head: head.si })));
  return {
    ok: true,
    points: rising.map(({ flow, head }) => [flow.text, head.text] as const),
    atNoFlow: rising[0]?.flow.si === 0 ? null : shutOffHead,
  };
}

/** No submersible well pump lifts so little. Common practice, no source. */
const LEAST_HEAD: Metres = feet(30);

/** Lifts next to nothing, and would be a pump if flow were head. */
function isSwapped(atMostHead: Point, atMostFlow: Point): boolean {
  const turned = (atMostFlow.flow.si / gpm(1)) * feet(1);
  return atMostHead.head.si < LEAST_HEAD && turned >= LEAST_HEAD;
}

interface Columns {
  readonly flow: FlowUnit | null;
  readonly head: HeadUnit | null;
  readonly headFirst: boolean;
}

function pointOf({ line, text }: { line: number; text: string }, columns: Columns): Point | PasteFault {
  const cells = cellsOf(text);
  const [one, other] = cells;
  if (cells.length !== 2 || one === undefined || other === undefined)
    return { what: 'twoColumns', line, text: short(text), found: cells.length };
  const [flow, head] = columns.headFirst ? [other, one] : [one, other];
  const readFlow = quantityIn(flow, 'flow', columns.flow, line);
  if ('what' in readFlow) return readFlow;
  const readHead = quantityIn(head, 'head', columns.head, line);
  if ('what' in readHead) return readHead;
  return { line, flow: readFlow, head: readHead };
}

/** A comma parts columns only where nothing else does, and where it stands between two whole numbers with their units. */
function cellsOf(text: string): string[] {
  const strong = text.split(/\s*[\t;|]\s*/).filter((cell) => cell !== '');
  if (strong.length > 1) return strong;
  const spacedComma = text.split(/,\s+/).filter((cell) => cell !== '');
  if (spacedComma.length > 1) return spacedComma;
  const commas = text.split(',');
  // "5,180" parts two columns; "5,5 180" is a decimal comma and a blank.
  if (commas.length === 2 && !/\d\s+[\d.]/.test(text)) return commas.map((cell) => cell.trim());
  // "0.5,180,2" is three columns whatever the commas are.
  if (commas.length > 2 && !/\s/.test(text)) return commas;
  const byBlank = /^(\S+(?:\s+[a-z][^\s\d]*\d?(?:\/[a-z]+)?)?)\s+(\S+(?:\s+[a-z][^\s\d]*\d?(?:\/[a-z]+)?)?)$/i.exec(
    text,
  );
  if (byBlank) return [byBlank[1] ?? '', byBlank[2] ?? ''];
  return text.split(/\s+/);
}

/** "1,400", with or without a unit. */
const EITHER_COMMA = /^[-+]?[1-9]\d{0,2},\d{3}(?![\d.,])/;
const BARE = /^[-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;

function quantityIn(
  cell: string,
  column: 'flow' | 'head',
  unit: FlowUnit | HeadUnit | null,
  line: number,
): { si: number; text: string } | PasteFault {
  if (EITHER_COMMA.test(cell)) return { what: 'comma', line, text: short(cell) };
  const bare = BARE.test(cell);
  if (bare && unit === null) return { what: 'noUnits', column };
  const typed = bare ? `${cell.replace(',', '.')} ${unit ?? ''}` : cell;
  const si = column === 'flow' ? readFlow(typed) : readHead(typed);
  if (si === null) return { what: 'number', line, column, text: short(cell) };
  if (si.value < 0) return { what: 'negative', line, column, text: short(cell) };
  return { si: si.value, text: si.text };
}

function readFlow(typed: string): { value: number; text: string } | null {
  const read = parseQuantity(typed, 'flow');
  return read.ok ? { value: read.si, text: typed } : null;
}

/** Some sheets print head as pressure: of cold water, at the density of 1000 kg/m³ that such tables are made with. */
const PASCALS_PER_METRE = 9806.65;

function readHead(typed: string): { value: number; text: string } | null {
  const head = parseQuantity(typed, 'length');
  if (head.ok) return { value: head.si, text: typed };
  const pressure = parseQuantity(typed, 'pressure');
  if (!pressure.ok) return null;
  const metres = pressure.si / PASCALS_PER_METRE;
  const text =
    pressure.unit === 'psi'
      ? writeQuantity(metres, 'length', 'ft', 0.03048)
      : writeQuantity(metres, 'length', 'm', 0.01);
  return { value: metres, text };
}

interface Heading {
  readonly flow: FlowUnit | null;
  readonly head: HeadUnit | null;
  readonly headFirst: boolean;
}

const FLOW_WORD = /\b(?:flow|capacity|discharge|q)\b|gpm|l\/min|lpm|l\/s|m3\/h|m³\/h/i;
const HEAD_WORD = /\b(?:head|tdh|h|lift|pressure)\b|\bft\b|\bfeet\b|\bm\b|\bpsi\b|\bbar\b|\bkpa\b/i;

function headingOf(text: string): Heading {
  const plain = text.replace(/³/g, '3').toLowerCase();
  const flowAt = plain.search(FLOW_WORD);
  const headAt = plain.replace(/m3/g, '##').search(HEAD_WORD);
  return { flow: flowUnitIn(plain), head: headUnitIn(plain), headFirst: headAt >= 0 && flowAt > headAt };
}

function flowUnitIn(text: string): FlowUnit | null {
  if (/gpm/.test(text)) return 'gpm';
  if (/l\/min|lpm/.test(text)) return 'L/min';
  if (/l\/s/.test(text)) return 'L/s';
  return /m3\/h/.test(text) ? 'm3/h' : null;
}

function headUnitIn(text: string): HeadUnit | null {
  const rest = text.replace(/m3\/h|l\/min/g, ' ');
  if (/\b(?:ft|feet|foot)\b/.test(rest)) return 'ft';
  if (/\bpsi\b/.test(rest)) return 'psi';
  if (/\bbar\b/.test(rest)) return 'bar';
  if (/\bkpa\b/.test(rest)) return 'kPa';
  return /\b(?:m|metres?|meters?)\b/.test(rest) ? 'm' : null;
}

function short(text: string): string {
  return text.length > 24 ? `${text.slice(0, 24)}…` : text;
}
