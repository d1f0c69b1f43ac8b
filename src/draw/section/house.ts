/** House with tank and switch, a symbol without scale, where the line arrives at the section's edge. */
import type { Solution } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { circle, group, line, path, polygon, polyline, rect, type Point } from '../shapes.ts';
import { within, type SectionFrame } from './frame.ts';

/** A narrower house could not hold its tank [px]. */
const LEAST_HOUSE = 40;

export interface HousePlace {
  readonly left: number;
  readonly width: number;
  readonly eaves: number;
  /** Where the line from the well turns up. */
  readonly pipeX: number;
}

/** @param arrives  y of the line from the well: one above the ground needs a wall to go through */
export function housePlace(arrives: number, { right, axis, holeHalf, y }: SectionFrame): HousePlace {
  const ground = y(0);
  const wall = Math.max(30, ground - arrives + 14);
  const width = Math.min(Math.max(70, wall * 0.9), (right - axis - holeHalf) * 0.58);
  if (width < LEAST_HOUSE) return { left: right, width, eaves: ground, pipeX: right - 12 };
  const left = right - width;
  return { left, width, eaves: ground - wall, pipeX: left + width * 0.28 };
}

export function drawHouse({ facts, parts }: Solution, frame: SectionFrame): Shape[] {
  const buried = parts.find((part) => part.key === 'buriedLine');
  if (buried === undefined) return [];
  const { ink, right } = frame;
  const ground = frame.y(0);
  const arrives = within(frame, frame.y((buried.top + buried.bottom) / 2));
  const { left, width, eaves, pipeX } = housePlace(arrives, frame);
  const tones = (facts.house.line ?? facts.dropPipe).material === 'PE' ? ink.pipeBody : ink.metalPipe;
  if (width < LEAST_HOUSE) return [arrow(pipeX, arrives, tones.edge)];
  const tankWide = Math.min(18, width * 0.34);
  const tankX = left + width * 0.76 - tankWide / 2 - 3;
  const open = facts.house.kind === 'open tank';
  const riser = polyline([
    [pipeX, arrives],
    [pipeX, ground - 5],
    [tankX, ground - 5],
  ]);
  const walls: Point[] = [
    [left + 4, ground],
    [left + 4, eaves],
    [left, eaves],
    [left + width / 2, eaves - width * 0.22],
    [right, eaves],
    [right - 4, eaves],
    [right - 4, ground],
  ];
  const pipe = { fill: 'none', 'stroke-linejoin': 'round' };
  const gauge = [
    circle('switch', pipeX, ground - 13, 3.6, { fill: ink.paper, stroke: ink.ink2, 'stroke-width': 1.2 }),
    line('needle', pipeX, ground - 13, pipeX + 1.8, ground - 14.8, { stroke: ink.ink2, 'stroke-width': 1 }),
  ];
  return [
    group('house', [
      path('walls', polyline(walls), {
        fill: ink.paper,
        stroke: ink.ink2,
        'stroke-width': 1.2,
        'stroke-linejoin': 'round',
        'stroke-dasharray': '4 2.5',
      }),
      path('riser/wall', riser, { ...pipe, stroke: tones.edge, 'stroke-width': 4 }),
      path('riser/body', riser, { ...pipe, stroke: tones.mid, 'stroke-width': 2.2 }),
      rect('tank', tankX, ground - 24, tankWide, 22, {
        rx: open ? 1 : tankWide * 0.42,
        fill: ink.water,
        stroke: ink.static,
        'stroke-width': 1.3,
      }),
      ...(open ? [] : gauge),
    ]),
  ];
}

/** Where there is no room for a house: on to it. */
function arrow(x: number, y: number, fill: string): Shape {
  return path(
    'house',
    polygon([
      [x, y - 6],
      [x + 11, y],
      [x, y + 6],
    ]),
    { fill },
  );
}
