/** A dimension between two depths: thin line, arrow ends, its figure on a patch so that it reads on any ground. */
import type { Box, Segment } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path, rect, text } from '../shapes.ts';
import type { Measure } from '../type/measure.ts';
import { stroke } from '../parts/outline.ts';
import { nextTenths, pxText } from '../tenths.ts';
import { drawDots } from '../assumed.ts';
import { isClear, nearestFree } from './leaders.ts';

export interface DimensionPlace {
  readonly x: number;
  readonly from: number;
  readonly to: number;
  readonly words: string;
  readonly ink: string;
  readonly patch: string;
  readonly type: Measure;
  /** The figure rests on what nobody said. */
  readonly assumed?: boolean;
  /** Extension lines reach from here to the dimension [px], where given. */
  readonly reach?: number;
  /** Where the figure stands between the two, from 0 at the top; half way unless said. */
  readonly share?: number;
  /** The figure may stand a little to the side [px]. */
  readonly figureX?: number;
  /** Leaders of labels, which the figure keeps off. */
  readonly leaders: readonly Segment[];
  /** Which it does not leave [px]. */
  readonly box: Box;
}

const SIZE = 12;
const ARROW = 4.5;
/** Of the figure's patch [px]. */
const HALF = 8;
/** A figure beside its dimension stands no farther past its ends [px]. */
const BESIDE = 40;

/** Of the figure's patch [px]. */
export const dimensionWidth = (words: string, type: Measure): number => type.width(words, SIZE, 600) + 6;

export function drawDimension(key: string, dimension: DimensionPlace): Shape {
  const { x, from, to, words, ink, patch, type, assumed = false, reach, share = 0.5, figureX = x } = dimension;
  const top = Math.min(from, to);
  const bottom = Math.max(from, to);
  const width = dimensionWidth(words, type);
  const tight = bottom - top < ARROW * 2 + 15;
  // Where there is no room between, arrows point in from outside and the figure stands beside.
  const heads = tight ? `${head(x, top, -1)}${head(x, bottom, 1)}` : `${head(x, top, 1)}${head(x, bottom, -1)}`;
  const shaft = tight ? stroke(x, top - 12, x, bottom + 12) : stroke(x, top, x, bottom);
  const wanted = top + (bottom - top) * share;
  const beside = 5 + width / 2;
  const besides: Column[] = [
    [x + beside, top - BESIDE, bottom + BESIDE],
    [x - beside, top - BESIDE, bottom + BESIDE],
    // In a frame full of leaders it stands left of where they begin.
    [dimension.box.left + beside, -Infinity, Infinity],
  ];
  const columns: Column[] = tight ? besides : [[figureX, top + HALF + 1, bottom - HALF - 1], ...besides];
  const place = figurePlace(wanted, width / 2, columns, dimension);
  const ends = reach === undefined ? '' : stroke(reach, top, x - 4, top) + stroke(reach, bottom, x - 4, bottom);
  return group(key, [
    path('shaft', shaft, { stroke: ink }),
    ...(ends === '' ? [] : [path('ends', ends, inked(ink, 0.8, '5 2'))]),
    path('heads', heads, { fill: ink }),
    ...(place === null
      ? []
      : [
          rect('patch', place.x - width / 2, place.y - HALF, width, 2 * HALF, { fill: patch, rx: 2 }),
          text('figure', place.x, place.y + 4.2, words, { size: SIZE, weight: 600, fill: ink, anchor: 'middle' }),
          ...drawDots(assumed ? [{ x: place.x - width / 2 + 3, y: place.y + 6.7, width: width - 6 }] : [], ink),
        ]),
  ]);
}

type Column = readonly [x: number, from: number, to: number];

/** The first column that has a free place, and there the one nearest to what is wanted; none where leaders run everywhere. */
function figurePlace(
  wanted: number,
  halfWidth: number,
  columns: readonly Column[],
  { leaders, box }: Pick<DimensionPlace, 'leaders' | 'box'>,
): { readonly x: number; readonly y: number } | null {
  for (const [x, from, to] of columns) {
    const inBox = Math.min(Math.max(x, box.left + halfWidth), box.right - halfWidth);
    const reach = { from: Math.max(from, box.top + HALF), to: Math.min(to, box.bottom - HALF), step: 2 };
    const y = nearestFree(wanted, reach, (at) => isClear(leaders, inBox, at, halfWidth, HALF));
    if (y !== null) return { x: inBox, y };
  }
  return null;
}

/** An arrow's head from its point on: its sides run down from it, or up. */
const sidesOf = (down: 1 | -1): string =>
  `l${pxText(-ARROW * 0.6)}${nextTenths(Math.round(ARROW * 16 * down))}h${pxText(ARROW * 1.2)}z`;
const SIDES_DOWN = sidesOf(1);
const SIDES_UP = sidesOf(-1);

function head(x: number, y: number, down: 1 | -1): string {
  return `M${pxText(x)} ${pxText(y)}${down === 1 ? SIDES_DOWN : SIDES_UP}`;
}
