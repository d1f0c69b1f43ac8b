/** A scene as SVG text: no id, no style, no class, no definitions, the same bytes every time. */
import type { Attributes, Shape } from './scene.ts';
import { digits } from './shapes.ts';
import type { Scene } from './view.ts';

/** The face of every drawing; a generic one stands in where it is not there. */
export const FONT_FAMILY = "'Barlow Semi Condensed', sans-serif";

export interface SvgOptions {
  /** For a page that has its own title and table beside the picture. Default false. */
  readonly hidden?: boolean;
}

export function toSvg(scene: Scene, options: SvgOptions = {}): string {
  const attrs = rootAttributes(scene, options);
  const title = element({ key: 'title', tag: 'title', attrs: {}, text: scene.title });
  const desc = element({ key: 'desc', tag: 'desc', attrs: {}, text: scene.desc });
  return `<svg${attributes(attrs)}>${title}${desc}${scene.shapes.map(element).join('')}</svg>\n`;
}

/** What stands on the outermost element; the page's patcher sets the same. */
export function rootAttributes(scene: Scene, options: SvgOptions = {}): Attributes {
  return {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${digits(scene.width)} ${digits(scene.height)}`,
    width: scene.width,
    height: scene.height,
    ...(options.hidden === true ? { 'aria-hidden': 'true' } : { role: 'graphics-document' }),
    'font-family': FONT_FAMILY,
    'text-rendering': 'geometricPrecision',
  };
}

/** An attribute's value as it is written, before escaping: the serializer and the patcher agree by both using this. */
export function attributeText(value: string | number): string {
  return typeof value === 'number' ? digits(value) : value;
}

function element(shape: Shape): string {
  const open = `<${shape.tag}${attributes(shape.attrs)}`;
  const inner = (shape.text === undefined ? '' : escape(shape.text)) + (shape.children?.map(element).join('') ?? '');
  return inner === '' ? `${open}/>` : `${open}>${inner}</${shape.tag}>`;
}

function attributes(attrs: Attributes): string {
  let out = '';
  for (const name in attrs) {
    const value = attrs[name];
    if (value === undefined) continue;
    if (typeof value === 'number') out += ` ${name}="${digits(value)}"`;
    else out += ` ${name}="${OURS.has(name) ? value : escape(value)}"`;
  }
  return out;
}

/** Values that only the drawing writes, and most of all text: there is nothing in them to escape. */
const OURS: ReadonlySet<string> = new Set(['d', 'fill', 'stroke', 'stroke-dasharray', 'viewBox', 'transform']);

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
const needsCare = /[^\u0020\u0021\u0023-\u0025\u0027-\u003B\u003D\u003F-\u007E]/;
