/** A well screen in section: the wall cut into rings, with a slot between each and the next. */
import type { BoreStretch } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path } from '../shapes.ts';
import { stroke, tenth } from './outline.ts';
import type { Pen } from './pen.ts';

const PITCH_PX = 5;
const LEAST_WALL_PX = 3.4;

export function drawScreen(key: string, pen: Pen, place: BoreStretch): Shape {
  const { steel } = pen.tones;
  const centre = pen.x(0);
  const inside = place.insideRadius * pen.across;
  const outside = Math.max(inside + LEAST_WALL_PX, place.outsideRadius * pen.across);
  const top = pen.y(Math.max(place.top, pen.top - 0.1));
  const bottom = pen.y(Math.min(place.bottom, pen.bottom + 0.1));
  if (bottom <= top) return group(key, []);
  const wall = outside - inside;
  // A dashed stroke as wide as the wall is a stack of rings: edge first, face over it. It hangs on the sheet, so that
  // the slots stay while the window's ends move.
  const first = Math.ceil(top / PITCH_PX) * PITCH_PX;
  const walls =
    stroke(centre - inside - wall / 2, first, centre - inside - wall / 2, bottom) +
    stroke(centre + inside + wall / 2, first, centre + inside + wall / 2, bottom);
  return group(key, [
    // Seen on the far half, the slots go on round: faint, so that the string stands out before them.
    path('farSlots', stroke(centre, first + 3.6, centre, bottom), {
      stroke: steel.edge,
      'stroke-width': tenth(inside * 2),
      'stroke-dasharray': `.7 ${PITCH_PX - 0.7}`,
      'stroke-opacity': place.known ? 0.3 : 0.15,
    }),
    path('rings', walls, inked(steel.edge, tenth(wall), `3.4 ${PITCH_PX - 3.4}`)),
    path(
      'faces',
      walls,
      inked(place.known ? steel.light : pen.tones.bore, tenth(wall - 1.5), `0 .7 2 ${PITCH_PX - 2.7}`),
    ),
  ]);
}
