/** A well screen in section: the wall cut into rings, with a slot between each and the next. */
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { group, path } from '../shapes.ts';
import { block } from './outline.ts';
import type { Pen } from './pen.ts';

export interface ScreenPlace {
  readonly insideRadius: Metres;
  readonly outsideRadius: Metres;
  readonly top: Metres;
  readonly bottom: Metres;
  readonly known: boolean;
}

const PITCH_PX = 5;
const LEAST_WALL_PX = 3.4;

export function drawScreen(key: string, pen: Pen, place: ScreenPlace): Shape {
  const { steel } = pen.tones;
  const centre = pen.x(0);
  const inside = place.insideRadius * pen.across;
  const outside = Math.max(inside + LEAST_WALL_PX, place.outsideRadius * pen.across);
  const top = pen.y(Math.max(place.top, pen.top - 0.1));
  const bottom = pen.y(Math.min(place.bottom, pen.bottom + 0.1));
  if (bottom <= top) return group(key, []);
  let rings = '';
  let across = '';
  const first = Math.ceil(top / PITCH_PX) * PITCH_PX;
  for (let y = first; y + 3 <= bottom; y += PITCH_PX) {
    rings += block(centre - outside, y, centre - inside, y + 3) + block(centre + inside, y, centre + outside, y + 3);
    across += `M${Math.round(centre - inside)} ${y + 4}H${Math.round(centre + inside)}`;
  }
  const dashed = place.known ? {} : { 'stroke-dasharray': '3 2' };
  return group(key, [
    // Seen on the far half, the slots go on round: faint, so that the string stands out before them.
    path('farSlots', across, { stroke: steel.edge, 'stroke-width': 0.6, 'stroke-opacity': 0.35, fill: 'none' }),
    path('rings', rings, { fill: steel.base, stroke: steel.edge, 'stroke-width': 0.8, ...dashed }),
  ]);
}
