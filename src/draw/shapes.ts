/** Small makers of keyed shapes, and path text with two decimals. */
import { decimals } from '../model/units.ts';
import { nextTenths, tenthsText } from './tenths.ts';
import type { Attributes, Shape, Tag } from './scene.ts';

/** A number as SVG text: two decimals at most. */
export function digits(value: number): string {
  return decimals(value, 2);
}

/** A tenth of a pixel is below what any screen or printer shows: places are written no finer. */
export function tenth(px: number): number {
  return Math.round(px * 10) / 10;
}

export type Point = readonly [x: number, y: number];

/** All shapes are made here and have the same fields, left out or not: what reads them all is then twice as fast. */
export function shape(
  key: string,
  tag: Tag,
  attrs: Attributes,
  d?: string,
  words?: string,
  children?: readonly Shape[],
): Shape {
  return { key, tag, d, attrs, text: words, children };
}

export function rect(key: string, x: number, y: number, width: number, height: number, attrs: Attributes): Shape {
  return shape(key, 'rect', { x, y, width: Math.max(0, width), height: Math.max(0, height), ...attrs });
}

export function line(key: string, x1: number, y1: number, x2: number, y2: number, attrs: Attributes): Shape {
  return shape(key, 'line', { x1, y1, x2, y2, ...attrs });
}

export function circle(key: string, cx: number, cy: number, r: number, attrs: Attributes): Shape {
  return shape(key, 'circle', { cx, cy, r, ...attrs });
}

/** A path; `d` is written by `polyline`, `polygon` and the like, so that it is rounded already. */
export function path(key: string, d: string, attrs: Attributes): Shape {
  return shape(key, 'path', attrs, d);
}

/** How a line looks. */
export function inked(stroke: string, width: number, dash?: string): Attributes {
  const attrs = { stroke, 'stroke-width': width };
  return dash === undefined ? attrs : { ...attrs, 'stroke-dasharray': dash };
}

/** How a face with an edge looks; of a bare line the face is "none". */
export function faced(fill: string, edge: string, width: number): Attributes {
  return { fill, stroke: edge, 'stroke-width': width };
}

/** How a bare line with round joints looks. */
export function roundLine(stroke: string, width: number): Attributes {
  return { fill: 'none', 'stroke-linejoin': 'round', stroke, 'stroke-width': width };
}

export function group(key: string, children: readonly Shape[], attrs: Attributes = {}): Shape {
  return shape(key, 'g', attrs, undefined, undefined, children);
}

/** px on the sheet. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A window that crops what it holds: a nested viewport needs no clip path and so no id. Inside, sheet coordinates go on. */
export function crop(key: string, { x, y, width, height }: Place, children: readonly Shape[]): Shape {
  const viewBox = [x, y, width, height].map(digits).join(' ');
  const attrs = { x, y, width, height, viewBox, overflow: 'hidden' };
  return shape(key, 'svg', attrs, undefined, undefined, children);
}

export interface TextStyle {
  readonly size: number;
  readonly weight?: 400 | 600;
  /** Left out where the group around it says. */
  readonly fill?: string;
  readonly anchor?: 'start' | 'middle' | 'end';
}

/** One line of text; y is its baseline. */
export function text(key: string, x: number, y: number, words: string, style: TextStyle): Shape {
  const attrs: Record<string, string | number> = { x, y, 'font-size': style.size };
  if (style.fill !== undefined) attrs['fill'] = style.fill;
  if (style.weight !== undefined && style.weight !== 400) attrs['font-weight'] = style.weight;
  if (style.anchor !== undefined && style.anchor !== 'start') attrs['text-anchor'] = style.anchor;
  return textWith(key, attrs, words);
}

/** A line of text whose group says most of how it looks. */
export function textWith(key: string, attrs: Attributes, words: string): Shape {
  return shape(key, 'text', attrs, undefined, words);
}

/** Path text through the points, open; level and plumb pieces take one step, and none where nothing moves. */
export function polyline(points: readonly Point[]): string {
  let d = '';
  let lastX = 0;
  let lastY = 0;
  for (const [pointX, pointY] of points) {
    const x = Math.round(pointX * 10);
    const y = Math.round(pointY * 10);
    if (d === '') d = 'M' + tenthsText(x) + nextTenths(y);
    else if (y === lastY) {
      if (x !== lastX) d += 'h' + tenthsText(x - lastX);
    } else if (x === lastX) d += 'v' + tenthsText(y - lastY);
    else d += 'l' + tenthsText(x - lastX) + nextTenths(y - lastY);
    lastX = x;
    lastY = y;
  }
  return d;
}

/** Path text round the points, closed. */
export function polygon(points: readonly Point[]): string {
  return `${polyline(points)}z`;
}
