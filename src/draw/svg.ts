/** A scene as SVG text: no id, no style, no class, no definitions, the same bytes every time. */
import type { Attributes, Shape } from './scene.ts';
import { sheetBox } from './paper.ts';
import { digits, shape } from './shapes.ts';
import { decimals } from '../model/units.ts';
import type { Scene } from './view.ts';

/**
 * The face of every drawing. Where it is not there, a narrow one with the same widths stands in, else a plain one.
 */
export const FONT_FAMILY =
  "'Barlow Semi Condensed', 'Arial Narrow', 'Liberation Sans Narrow', 'Nimbus Sans Narrow', Arial, 'Liberation Sans', sans-serif";

export interface SvgOptions {
  /** For a page that has its own title and table beside the picture. Default false. */
  readonly hidden?: boolean;
}

export function toSvg(scene: Scene, options: SvgOptions = {}): string {
  const attrs = rootAttributes(scene, options);
  const title = shape('title', 'title', {}, undefined, scene.title);
  const desc = shape('desc', 'desc', {}, undefined, scene.describe());
  return `${write('', shape('svg', 'svg', attrs, undefined, undefined, [title, desc, ...scene.shapes]))}\n`;
}

/** What stands on the outermost element; the page's patcher sets the same. */
export function rootAttributes(scene: Scene, options: SvgOptions = {}): Attributes {
  return {
    xmlns: 'http://www.w3.org/2000/svg',
    ...sizeOf(scene),
    ...(options.hidden === true ? { 'aria-hidden': 'true' } : { role: 'graphics-document' }),
    'font-family': FONT_FAMILY,
    // A page that it is put into may run from right to left.
    direction: 'ltr',
    'text-rendering': 'geometricPrecision',
  };
}

/** Millimetres on paper, px on a screen. */
function sizeOf({ paper, width, height }: Scene): Attributes {
  if (paper === null) return { viewBox: `0 0 ${digits(width)} ${digits(height)}`, width, height };
  const { left, top, right, bottom } = sheetBox(paper);
  return {
    viewBox: [left, top, right - left, bottom - top].map(digits).join(' '),
    width: `${digits(paper.width)}mm`,
    height: `${digits(paper.height)}mm`,
  };
}

/** An attribute's value as it is written, before escaping: the serializer and the patcher agree by both using this. */
export function attributeText(name: string, value: string | number): string {
  if (typeof value !== 'number') return value;
  return decimals(value, WAYS.get(name)?.isPlace === true ? 1 : 2);
}

/** How an attribute is written. */
interface Way {
  readonly first: string;
  /** Behind another: with the quotation mark that ends that one. */
  readonly next: string;
  /** Places and lengths on the sheet are written to a tenth of a pixel, all other numbers to a hundredth. */
  readonly isPlace: boolean;
  /** Its values are the drawing's own: there is nothing in them to escape. */
  readonly isOurs: boolean;
}

function wayOf(name: string): Way {
  return { first: ` ${name}="`, next: `" ${name}="`, isPlace: PLACES.has(name), isOurs: OURS.has(name) };
}

const PLACES: ReadonlySet<string> = new Set(['x', 'y', 'width', 'height', 'x1', 'y1', 'x2', 'y2', 'cx', 'cy']);
const OURS: ReadonlySet<string> = new Set([
  'fill',
  'stroke',
  'stroke-dasharray',
  'stroke-linejoin',
  'stroke-linecap',
  'text-anchor',
  'fill-rule',
  'paint-order',
  'viewBox',
  'overflow',
  'transform',
]);

/** The attributes that a sheet is full of, looked up once each instead of put together. */
const WAYS: ReadonlyMap<string, Way> = new Map(
  [...PLACES, ...OURS, 'r', 'rx', 'stroke-width', 'font-size', 'font-weight'].map((name) => [name, wayOf(name)]),
);

/** Written on to `out` in few large pieces: a sheet has some six hundred elements. */
function write(out: string, { tag, d, attrs, text, children }: Shape): string {
  let written = out + '<' + tag;
  let isFirst = d === undefined;
  // There is nothing to escape in an outline; its mark is closed by what follows.
  if (d !== undefined) written += ' d="' + d;
  for (const name in attrs) {
    const value = attrs[name];
    if (value === undefined) continue;
    const way = WAYS.get(name) ?? wayOf(name);
    written += isFirst ? way.first : way.next;
    isFirst = false;
    if (typeof value === 'number') written += decimals(value, way.isPlace ? 1 : 2);
    else written += way.isOurs ? value : escape(value);
  }
  const hasText = text !== undefined && text !== '';
  if (!hasText && (children === undefined || children.length === 0)) return written + (isFirst ? '/>' : '"/>');
  written += isFirst ? '>' : '">';
  if (hasText) written += escape(text);
  if (children !== undefined) for (const child of children) written = write(written, child);
  return written + '</' + tag + '>';
}

const SPECIAL: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** A plan may come from a stranger: markup is spelled out, and signs that XML forbids become the replacement sign. */
export function escape(words: string): string {
  return needsCare.test(words)
    ? words.replace(special, (sign) => SPECIAL[sign] ?? sign).replace(forbidden, '\uFFFD')
    : words;
}

// Char of XML 1.0 (fifth edition), section 2.2: everything else may not stand in a document, not even escaped.
const forbidden = /[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;
const special = /[&<>"]/g;
// Surrogates are left to the careful way, which tells pairs from strays.
const needsCare = /[&<>"]|[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD]/;
