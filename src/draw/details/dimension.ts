/** A dimension between two depths: thin line, arrow ends, its figure on a patch so that it reads on any ground. */
import type { Shape } from '../scene.ts';
import { group, path, rect, text } from '../shapes.ts';
import type { Measure } from '../type/measure.ts';
import { stroke } from '../parts/outline.ts';
import { pxText } from '../tenths.ts';

export interface DimensionPlace {
  readonly x: number;
  readonly from: number;
  readonly to: number;
  readonly words: string;
  readonly ink: string;
  readonly patch: string;
  readonly type: Measure;
  /** Extension lines reach from here to the dimension [px], where given. */
  readonly reach?: number;
  /** Where the figure stands between the two, from 0 at the top; half way unless said. */
  readonly share?: number;
  /** The figure may stand a little to the side [px]. */
  readonly figureX?: number;
}

const SIZE = 12;
const ARROW = 4.5;

/** Of the figure's patch [px]. */
export const dimensionWidth = (words: string, type: Measure): number => type.width(words, SIZE, 600) + 6;

export function drawDimension(
  key: string,
  { x, from, to, words, ink, patch, type, reach, share = 0.5, figureX = x }: DimensionPlace,
): Shape {
  const top = Math.min(from, to);
  const bottom = Math.max(from, to);
  const width = dimensionWidth(words, type);
  const tight = bottom - top < ARROW * 2 + 15;
  // Where there is no room between, arrows point in from outside and the figure stands beside.
  const heads = tight ? `${head(x, top, -1)}${head(x, bottom, 1)}` : `${head(x, top, 1)}${head(x, bottom, -1)}`;
  const shaft = tight ? stroke(x, top - 12, x, bottom + 12) : stroke(x, top, x, bottom);
  const middle = top + (bottom - top) * share;
  const textX = tight ? x + 5 + width / 2 : figureX;
  const ends = reach === undefined ? '' : stroke(reach, top, x - 4, top) + stroke(reach, bottom, x - 4, bottom);
  return group(key, [
    path('shaft', shaft, { stroke: ink }),
    ...(ends === '' ? [] : [path('ends', ends, { stroke: ink, 'stroke-width': 0.8, 'stroke-dasharray': '5 2' })]),
    path('heads', heads, { fill: ink }),
    rect('patch', textX - width / 2, middle - 8, width, 16, { fill: patch, rx: 2 }),
    text('figure', textX, middle + 4.2, words, { size: SIZE, weight: 600, fill: ink, anchor: 'middle' }),
  ]);
}

const head = (x: number, y: number, down: 1 | -1): string =>
  `M${pxText(x)} ${pxText(y)}l${-ARROW * 0.6} ${ARROW * 1.6 * down}h${ARROW * 1.2}z`;
