/** The wall of an open hole: rough as the bit left it, the same roughness at the same depth in every drawing. */
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { group, path, type Point } from '../shapes.ts';
import { straight } from './outline.ts';
import type { Pen } from './pen.ts';

export interface OpenHolePlace {
  readonly radius: Metres;
  readonly top: Metres;
  readonly bottom: Metres;
  readonly known: boolean;
  /** Ends on the floor of the well. */
  readonly last: boolean;
  readonly fill: string;
  readonly edge: string;
}

/** Depth between two kinks of the wall on paper. */
const KINK_PX = 26;
const ROUGH_PX = 2.6;

/** A number from 0 to 1 that belongs to a whole number: the same for ever. */
function rough(n: number): number {
  const s = Math.sin(n * 12.9898 + 4.1) * 43758.5453;
  return s - Math.floor(s);
}

/** Points of one wall from the top down; the hole is never drawn narrower than it is. */
export function wallPoints(pen: Pen, place: OpenHolePlace, side: 1 | -1): Point[] {
  const top = pen.y(Math.max(place.top, pen.top - 0.3));
  const bottom = pen.y(Math.min(place.bottom, pen.bottom + 0.3));
  const wall = pen.x(side * place.radius);
  const points: Point[] = [[wall, top]];
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
  const ends = place.bottom < pen.bottom && place.last;
  const dashed = place.known ? {} : { 'stroke-dasharray': '4 3' };
  // One outline does for fill and wall, unless its upper edge is in the frame: no line crosses the hole there.
  const up = [...right].reverse();
  const open = place.top > pen.top;
  const outline = !open
    ? straight([...left, ...up])
    : ends
      ? straight([...left, ...up], false)
      : straight(left, false) + straight(up, false);
  const whole = !open || ends;
  const hole = whole ? [] : [path('hole', straight([...left, ...up]), { fill: place.fill })];
  return group(key, [
    ...hole,
    path('wall', outline, { fill: whole ? place.fill : 'none', stroke: place.edge, 'stroke-width': 1.8, ...dashed }),
  ]);
}
