/** The tee above a seal: branch towards the house, upright port closed by a square-headed plug that takes the lift-out pipe. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, path, rect } from '../shapes.ts';
import { block, stroke } from './outline.ts';
import type { Pen } from './pen.ts';
import type { Ramp } from '../theme.ts';
import { cylinder, turned } from './turned.ts';

export interface TeePlace {
  /** Top and bottom of the branch [px]. */
  readonly branchTop: number;
  readonly branchBottom: number;
}

/** How far the branch reaches from the axis [px]. */
export const branchEnd = (part: PlacedPart, pen: Pen): number => pen.x(0) + part.radius * pen.across * 2;

export function drawTee(part: PlacedPart, pen: Pen, ramp: Ramp, { branchTop, branchBottom }: TeePlace): Shape {
  const centre = pen.x(0);
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const middle = (branchTop + branchBottom) / 2;
  const branch = (branchBottom - branchTop) / 2 + 1.5;
  const end = branchEnd(part, pen);
  const bead = Math.min(3.5, (bottom - top) * 0.2);
  return group(part.key, [
    turned(
      'branch',
      {
        centre: middle,
        profile: [
          [centre, branch],
          [end - 4, branch],
          [end - 4, branch * 1.2],
          [end, branch * 1.2],
        ],
        lying: true,
      },
      ramp,
    ),
    turned(
      'run',
      {
        centre,
        profile: [
          [top, half * 1.1],
          [top + bead, half * 1.1],
          [top + bead, half * 0.92],
          [bottom - bead, half * 0.92],
          [bottom - bead, half * 1.1],
          [bottom, half * 1.1],
        ],
      },
      ramp,
    ),
  ]);
}

export function drawPlug(part: PlacedPart, pen: Pen, ramp: Ramp): Shape {
  const centre = pen.x(0);
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const head = Math.max(4, bottom - top);
  return group(part.key, [
    cylinder('head', { middle: centre, half: half * 0.5, from: bottom - head, to: bottom }, ramp),
    path(
      'flat',
      block(centre - half * 0.9, bottom - head * 0.35, centre + half * 0.9, bottom),
      faced(ramp.base, ramp.edge, 0.9),
    ),
    path(
      'edge',
      stroke(centre + half * 0.1, bottom - head, centre + half * 0.1, bottom - head * 0.35),
      inked(ramp.edge, 0.7),
    ),
  ]);
}

/** From afar: pipe, tee and plug stand on the seal. */
export function closedStandpipe(tee: PlacedPart, plug: PlacedPart | undefined, seal: PlacedPart, pen: Pen): Shape[] {
  const { steel } = pen.tones;
  const centre = pen.x(0);
  const half = Math.max(4, tee.radius * pen.across);
  const top = pen.y(plug?.top ?? tee.top);
  const base = pen.y(seal.top);
  const tall = Math.max(8, (tee.bottom - tee.top) * pen.down);
  const edge = inked(steel.edge, 1);
  return [
    rect('standpipe', centre - half * 0.7, Math.min(top, base - 12), half * 1.4, Math.max(12, base - top), {
      fill: steel.base,
      ...edge,
    }),
    rect('tee', centre - half, pen.y((tee.top + tee.bottom) / 2) - tall / 2, half * 2, tall, {
      rx: 1.5,
      fill: steel.light,
      ...edge,
    }),
  ];
}
