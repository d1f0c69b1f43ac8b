/** Rows and sentences that tell of a stretch of the well: casing from here to there, a screen, a layer, a zone of water. */
import type { Marked, Quantity } from './quantities.ts';
import { subjectOf, type Subject } from './sections.ts';

export interface Span {
  readonly subject: 'casing' | 'liner' | 'screen' | 'perforated' | 'hole' | 'grout' | 'layer' | 'zone';
  readonly from: Quantity | null;
  readonly to: Quantity | null;
  readonly size: Quantity | null;
  /** The size is the inside diameter. */
  readonly inside?: boolean;
  readonly flow: Quantity | null;
  readonly material: string;
  /** Of the wall: "schedule 40", "SDR 21", "0.188 in". */
  readonly wall: string;
  readonly slot: Quantity | null;
  readonly piece: number;
  /** Pieces behind it on which its words go on. */
  readonly wrapped?: readonly number[];
  readonly used: readonly number[];
}

export type Column = 'size' | 'inside' | 'from' | 'to' | 'material' | 'wall' | 'slot' | 'flow' | 'length' | 'other';

export interface Header {
  readonly columns: readonly { readonly column: Column; readonly at: number; readonly unit: string }[];
  readonly subject: Subject;
}

const COLUMNS: readonly (readonly [Column, RegExp])[] = [
  ['slot', /\bslot(?: size| opening)?\b/g],
  ['wall', /\bwall(?: thickness| size)?\b|\bthickness\b(?! of)|\bgauge\b|\bweight\b|\bschedule\b|\bsdr\b/g],
  ['inside', /\binside dia(?:m(?:eter)?)?\b\.?|\bi\.?d\.?\b/g],
  ['size', /\b(?:outside |nominal )?dia(?:m(?:eter)?)?\b\.?|\bo\.?d\.?\b|\bsize\b/g],
  ['from', /\bfrom\b|\btop\b|\bstart\b/g],
  ['to', /\bto\b|\bbottom\b|\bend\b|\bbase\b/g],
  ['flow', /\b(?:gpm|yield|flow|rate|quantity)\b/g],
  [
    'material',
    /\bmaterials?\b|\btype\b|\bkind\b|\bdescription\b|\bformation\b|\blithology\b|\bstrata\b|\brock\b|\bcolou?r\b/g,
  ],
  ['length', /\blength\b|\bthick\b/g],
];

/** Null where the line heads no table of stretches. */
export function headerOf({ text, quantities }: Marked, subject: Subject): Header | null {
  if (quantities.length > 0 || text.trim().length > 160) return null;
  const found: { column: Column; at: number; end: number }[] = [];
  for (const [column, pattern] of COLUMNS)
    for (const match of text.matchAll(pattern)) {
      const [at, end] = [match.index, match.index + match[0].length];
      if (!found.some((each) => at < each.end && each.at < end)) found.push({ column, at, end });
    }
  found.sort((a, b) => a.at - b.at);
  const kinds = found.map(({ column }) => column);
  if (!kinds.includes('from') || !kinds.includes('to')) return null;
  // "from" and "to" of a sentence are no heads of columns.
  if (text.trim().split(/\s+/).length > kinds.length * 4 + 2) return null;
  const joined = joinColour(found);
  return {
    subject,
    columns: joined.map(({ column, at, end }, i) => {
      const unit = /^\s*[.,]?\s*\(?\s*(ft|feet|in|inches|m|metres|meters|mm|cm|gpm)\b/.exec(
        text.slice(end, joined[i + 1]?.at),
      );
      return { column, at, unit: unit === null ? '' : (NAMES[unit[1] ?? ''] ?? unit[1] ?? '') };
    }),
  };
}

const NAMES: Readonly<Record<string, string>> = { feet: 'ft', inches: 'in', metres: 'm', meters: 'm' };

/** Several columns of words are one description. */
function joinColour<C extends { column: Column }>(columns: readonly C[]): C[] {
  const kept: C[] = [];
  for (const each of columns) if (each.column !== 'material' || kept.at(-1)?.column !== 'material') kept.push(each);
  return kept;
}

/** A row under a header, or null where it is none. */
export function rowOf(marked: Marked, raw: string, header: Header, piece: number): Span | null {
  const cells = cellsOf(marked.text);
  const { columns } = header;
  const byColumn =
    cells.length === columns.length
      ? new Map(columns.map(({ column }, i) => [column, cells[i]?.text ?? ''] as const))
      : byPlace(cells, columns);
  const number = (column: Column): Quantity | null => {
    const cell = byColumn.get(column);
    const mark = cell === undefined ? null : /«.(\d+)»/.exec(cell);
    const found = mark === null ? undefined : marked.quantities[Number(mark[1])];
    if (found === undefined || found.kind === 'X') return null;
    const unit = columns.find((each) => each.column === column)?.unit ?? '';
    return found.unit === '' && unit !== '' ? { ...found, unit } : found;
  };
  const [from, to] = [number('from'), number('to')];
  if (to === null || (from === null && !/surface|ground|grade|top|gl\b/.test(byColumn.get('from') ?? ''))) return null;
  const wallCell = byColumn.get('wall') ?? '';
  return {
    subject: spanSubject(header.subject, marked.text),
    from,
    to,
    size: number('size') ?? number('inside'),
    inside: number('inside') !== null,
    flow: number('flow'),
    material:
      header.subject === 'layers' || header.subject === 'none'
        ? layerWords(byColumn.get('material') ?? restOf(marked.text))
        : materialIn(marked.text),
    wall: wallIn(raw) || (number('wall') === null ? '' : wallText(number('wall'), wallCell)),
    slot: number('slot'),
    piece,
    used: marked.quantities.map((_, i) => i),
  };
}

function wallText(wall: Quantity | null, cell: string): string {
  if (wall === null) return '';
  if (/sch|sdr/.test(cell)) return cell.trim();
  return wall.unit === '' || wall.unit === 'in' ? `${wall.value} in` : `${wall.value} ${wall.unit}`;
}

function spanSubject(subject: Subject, whole: string): Span['subject'] {
  // A form says of what there is none too.
  const text = whole.replace(/\b(?:screens?|liners?|perforations?)\s*:?\s*(?:none|no)\b/g, '');
  if (/perforat|slotted/.test(text)) return 'perforated';
  if (/\bscreen/.test(text)) return 'screen';
  if (/\bliner/.test(text)) return 'liner';
  if (/\bopen hole/.test(text)) return 'hole';
  switch (subject) {
    case 'casing':
    case 'liner':
    case 'screen':
    case 'hole':
    case 'grout':
      return subject;
    case 'zones':
      return 'zone';
    default:
      return 'layer';
  }
}

interface Cell {
  readonly text: string;
  readonly at: number;
}

function cellsOf(text: string): readonly Cell[] {
  const separator = text.includes('|') ? /[^|]+/g : /\S+(?: \S+)*/g;
  return [...text.matchAll(separator)]
    .map((match) => ({ text: match[0].trim(), at: match.index }))
    .filter((cell) => cell.text !== '');
}

/** Where a row has fewer cells than the table columns, numbers go in order and words where words belong. */
function byPlace(cells: readonly Cell[], columns: Header['columns']): Map<Column, string> {
  const parts = cells.flatMap(({ text }) => text.match(/«.\d+»|[^«»]+/g) ?? []).map((part) => part.trim());
  const numbers = parts.filter((part) => part.startsWith('«'));
  const words = parts.filter((part) => /[a-z]/.test(part) && !part.startsWith('«'));
  const placed = new Map<Column, string>();
  const numeric = columns.filter(({ column }) => column !== 'material' && column !== 'other');
  // One that is short of numbers has them where a stretch must have them.
  const takers =
    numbers.length >= numeric.length ? numeric : numeric.filter(({ column }) => column === 'from' || column === 'to');
  if (numbers.length >= takers.length) takers.forEach(({ column }, i) => placed.set(column, numbers[i] ?? ''));
  placed.set('material', words.join(' '));
  return placed;
}

const STRETCH = String.raw`(?:from\s+)?(?:(«[LN]\d+»)|surface|ground(?: level)?|grade|top)\s*(?:-|to|through|thru|down to|until)\s*(?:about\s+)?(«[LN]\d+»)`;

/** A line or a sentence that tells of one stretch by itself: "6 in steel casing +1.5 to 84 ft", "0-28 clay". */
export function stretchOf(marked: Marked, raw: string, subject: Subject, piece: number): Span | null {
  const { text } = marked;
  // Columns of a log without their heads: words, and two depths at the end.
  const columns = subject === 'layers' ? /()(«[LN]\d+»)\s+(«[LN]\d+»)\s*$/.exec(text) : null;
  const range = new RegExp(STRETCH).exec(text) ?? (columns === null ? null : shifted(columns));
  const at = (mark: string | undefined): Quantity | null =>
    mark === undefined ? null : (marked.quantities[Number(/\d+/.exec(mark)?.[0])] ?? null);
  if (range === null) return null;
  const [from, to] = [at(range[1]), at(range[2])];
  if (to === null) return null;
  const sized = /«S(\d+)»|«N(\d+)»\s*(?:dia|nominal|o\.?d|i\.?d)/.exec(text);
  const size = sized === null ? null : (marked.quantities[Number(sized[1] ?? sized[2])] ?? null);
  const flow = /«F(\d+)»/.exec(text);
  // Of two on a line the word before the figures names them.
  const before = text.slice(0, text.indexOf(range[0]));
  const near = subjectOf(before);
  const named = near === 'none' ? spanSubject(subject, text) : spanSubject(near, before);
  const words = layerWords(text.replace(range[0], ' '));
  // "0-28 clay" under a line of casing is ground all the same.
  const isGround = subjectOf(text) === 'none' && size === null && materialIn(text) === '' && /[a-z]{3}/.test(words);
  const own = isGround && named !== 'zone' ? 'layer' : named;
  const used = [range[1], range[2]].flatMap((mark) => (mark === undefined ? [] : [Number(/\d+/.exec(mark)?.[0])]));
  return {
    subject: own,
    from,
    to,
    size,
    flow: flow === null ? null : (marked.quantities[Number(flow[1])] ?? null),
    material: own === 'layer' ? words : materialIn(text),
    wall: wallIn(raw),
    slot: null,
    piece,
    used: [
      ...used,
      ...(sized === null ? [] : [Number(sized[1] ?? sized[2])]),
      ...(flow === null ? [] : [Number(flow[1])]),
    ],
  };
}

/** As a stretch is found: the whole, from, to. */
function shifted(found: RegExpExecArray): readonly [string, string | undefined, string | undefined] {
  return [found[0], found[2], found[3]];
}

const MATERIALS: readonly (readonly [string, RegExp])[] = [
  ['stainless steel', /stainless/],
  ['PVC', /\bpvc\b|\bplastic\b|\bp\.v\.c|\bthermoplastic|\babs\b/],
  ['concrete', /\bconcrete (?:tile|rings?|casing|pipe|crock)|\bcement tile/],
  ['steel', /\bsteel\b|\biron\b|\bgalvani[sz]ed\b/],
];

/** Without what stands beside a box that nobody ticked: "Steel [x] Plastic [ ]", or the box before its word. */
function ticked(text: string): string {
  if (!/\[\s*\]/.test(text)) return text;
  const isBehind = /(?:steel|plastic|pvc|concrete|iron)\s*\[/.test(text.slice(0, text.indexOf('[') + 1));
  return text.replace(isBehind ? /[a-z]+\s*\[\s*\]/g : /\[\s*\]\s*[a-z]+/g, ' ');
}

/** '' where none is named. */
export function materialIn(whole: string): string {
  const text = ticked(whole);
  return MATERIALS.find(([, pattern]) => pattern.test(text))?.[0] ?? '';
}

/** "schedule 40", "SDR 21", "0.188 in wall"; '' where none is named. */
export function wallIn(raw: string): string {
  const schedule = /\b(?:schedule|sched\.?|sch\.?)\s*-?\s*(40|80|10|5|120)\b/i.exec(raw);
  if (schedule !== null) return `schedule ${schedule[1]}`;
  const sdr = /\bSDR\s*-?\s*([\d.]+)/i.exec(raw);
  if (sdr !== null) return `SDR ${sdr[1]}`;
  const wall =
    /(\d*\.\d{2,3})\s*("|in\b\.?|inch|cm\b|mm\b)?\s*(?:wall|thick)/i.exec(raw) ??
    /wall[^0-9]{0,20}(\d*\.\d{2,3})\s*("|in\b\.?|inch|cm\b|mm\b)?/i.exec(raw);
  if (wall === null) return '';
  const unit = wall[2]?.toLowerCase();
  return `${Number(wall[1])} ${unit === 'cm' || unit === 'mm' ? unit : 'in'}`;
}

/** What a layer is called: its words without marks and units. */
function layerWords(text: string): string {
  return restOf(text)
    .replace(/[|;:.=*#()/-]+/g, ' ')
    .replace(/\b(?:from|to|ft|feet|m|metres|depth)\b/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/\s+,/g, ',')
    .replace(/^[\s,]+|[\s,]+$/g, '');
}

function restOf(text: string): string {
  return text.replace(/«.\d+»/g, ' ');
}
