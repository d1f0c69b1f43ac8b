/** Water levels inside the bore: static an open triangle on a solid line, pumping a filled one on long dashes. */
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path } from '../shapes.ts';
import { stroke } from '../parts/outline.ts';
import { pxText } from '../tenths.ts';
import type { Pen } from '../parts/pen.ts';
import type { Ink } from '../theme.ts';
import type { Placed } from '../well/stage.ts';

type Line = Pick<Placed, 'left' | 'right'> & { readonly y: number };

function drawLevel(key: 'staticLevel' | 'pumpingLevel', { left, right, y }: Line, ink: string, paper: string): Shape {
  const x = right - 9;
  const bars = stroke(x - 5, y + 3.4, x + 5, y + 3.4) + stroke(x - 2.5, y + 6.4, x + 2.5, y + 6.4);
  return group(key, [
    path('line', stroke(left, y, right, y), {
      stroke: ink,
      'stroke-width': 2,
      ...(key === 'pumpingLevel' ? { 'stroke-dasharray': '12 4' } : {}),
    }),
    path('triangle', `M${pxText(x)} ${pxText(y - 1)}l-5.5 -9h11z`, {
      fill: key === 'staticLevel' ? paper : ink,
      stroke: ink,
      'stroke-width': 1.5,
      'stroke-linejoin': 'round',
    }),
    path('bars', bars, inked(ink, 1.3)),
  ]);
}

/** A level that stands in the window. */
export function levelIn(level: Metres | null, { top, bottom }: Pen): Metres | null {
  return level !== null && level > top && level < bottom ? level : null;
}

export interface WaterLevels {
  readonly shapes: readonly Shape[];
  readonly placed: readonly Placed[];
}

export function drawWaterLevels({ levels, bore }: Pick<Solution, 'levels' | 'bore'>, pen: Pen, ink: Ink): WaterLevels {
  const placed: Placed[] = [];
  const shapes: Shape[] = [];
  for (const [key, depth, colour] of [
    ['staticLevel', levels.static, ink.static],
    ['pumpingLevel', levels.pumping, ink.pumping],
  ] as const) {
    if (depth === null || levelIn(depth, pen) === null) continue;
    const stretch = bore.find((each) => each.bottom >= depth);
    const radius = stretch?.insideRadius ?? 0.08;
    const [left, right, y] = [pen.x(-radius), pen.x(radius), pen.y(depth)];
    shapes.push(drawLevel(key, { left, right, y }, colour, ink.paper));
    placed.push({ part: key, kind: key, left, right, top: y - 6, bottom: y + 6 });
  }
  return { shapes, placed };
}
