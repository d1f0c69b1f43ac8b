/** The wall of an open hole: rough as the bit left it, the same roughness at the same depth in every drawing. */
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { tenth } from './outline.ts';
import type { Pen } from './pen.ts';

export interface OpenHolePlace {
  readonly radius: Metres;
  readonly top: Metres;
  readonly bottom: Metres;
  readonly known: boolean;
  readonly fill: string;
  readonly edge: string;
}

/** Depth between two kinks of the wall on paper. */
const KINK_PX = 17;
const ROUGH_PX = 3.2;

/** A number from 0 to 1 that belongs to a whole number: the same for ever. */
function rough(n: number): number {
  const s = Math.sin(n * 12.9898 + 4.1) * 43758.5453;
  return s - Math.floor(s);
}

/** Points of one wall from the top down; the hole is never drawn narrower than it is. */
export function wallPoints(pen: Pen, place: OpenHolePlace, side: 1 | -1): [number, number][] {
  const top = pen.y(Math.max(place.top, pen.top - 0.3));
  const bottom = pen.y(Math.min(place.bottom, pen.bottom + 0.3));
  const wall = pen.x(side * place.radius);
  const points: [number, number][] = [[wall, top]];
  // Kinks are numbered by depth, so that a window that moves shows the same wall.
  const firstKink = Math.ceil(((place.top > pen.top - 0.3 ? place.top : pen.top - 0.3) * pen.down) / KINK_PX);
  const zero = pen.y(0);
  for (let n = firstKink; ; n++) {
    const y = zero + n * KINK_PX + (rough(n * 2 + side) - 0.5) * 6;
    if (y >= bottom - 4) break;
    if (y > top + 4) points.push([wall + side * rough(n * 3 + side) * ROUGH_PX, y]);
  }
  points.push([wall, bottom]);
  return points;
}

export function drawOpenHole(key: string, pen: Pen, place: OpenHolePlace): Shape {
  const left = wallPoints(pen, place, -1);
  const right = wallPoints(pen, place, 1);
  if (pen.y(place.bottom) < pen.y(pen.top) || pen.y(place.top) > pen.y(pen.bottom)) return group(key, []);
  const line = (points: readonly (readonly [number, number])[]): string => points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${tenth(x)} ${tenth(y)}`).join('');
  const floor = place.bottom < pen.bottom ? `M${tenth(pen.x(-place.radius))} ${tenth(pen.y(place.bottom))}H${tenth(pen.x(place.radius))}` : '';
  const dashed = place.known ? {} : { 'stroke-dasharray': '4 3' };
  return group(key, [
    path('hole', `${line([...left, ...right.reverse()])}z`, { fill: place.fill }),
    path('wall', line(left) + line(right) + floor, { fill: 'none', stroke: place.edge, 'stroke-width': 1.8, 'stroke-linejoin': 'round', ...dashed }),
  ]);
}
