/** A nipple or coupling: a short length of pipe, its threads shown where there is room. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path, rect } from '../shapes.ts';
import { onPaper } from './closed.ts';
import { stroke } from './outline.ts';
import type { Pen } from './pen.ts';
import type { Piece } from './piece.ts';
import type { Ramp } from '../theme.ts';
import { cylinder, turned } from './turned.ts';

export function drawNipple(part: PlacedPart, pen: Pen, ramp: Ramp, offset = 0): Shape {
  const centre = pen.x(offset);
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const rows = Math.min(5, Math.floor((bottom - top) / 4.4));
  const threads = Array.from({ length: rows }, (_, i) => {
    const y = top + ((i + 1) * (bottom - top)) / (rows + 1);
    return stroke(centre - half, y + 0.7, centre + half, y - 0.7);
  }).join('');
  return group(part.key, [
    cylinder('body', { middle: centre, half, from: top, to: bottom }, ramp),
    ...(rows > 0 ? [path('threads', threads, { stroke: ramp.edge, 'stroke-width': 0.7, fill: 'none' })] : []),
  ]);
}

/** A coupling: bevelled at both ends. */
export function drawCoupling(part: PlacedPart, pen: Pen, ramp: Ramp, offset = 0): Shape {
  const half = part.radius * pen.across;
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const bevel = Math.min(3, (bottom - top) * 0.2);
  return group(part.key, [
    turned(
      'body',
      {
        centre: pen.x(offset),
        profile: [
          [top, half * 0.9],
          [top + bevel, half],
          [bottom - bevel, half],
          [bottom, half * 0.9],
        ],
      },
      ramp,
    ),
  ]);
}

const CLOSED_TALL_PX = 5;

/** From afar: a band round the pipe. */
export function closedCoupling(part: PlacedPart, pen: Pen, centre: number, pipeHalf: number): Shape {
  const { steel } = pen.tones;
  const { middle, tall } = onPaper(part, pen);
  const high = Math.min(tall, CLOSED_TALL_PX);
  const half = pipeHalf + 1.6;
  return rect(part.key, centre - half, middle - high / 2, half * 2, high, faced(steel.base, steel.edge, 0.8));
}

/** From afar: what stands between the spool, or a seal, and the upper end of the pipe. */
export function closedNeck({ from, to, middle, half }: Piece, pen: Pen): Shape {
  const { steel } = pen.tones;
  return rect('neck', middle - half, from, half * 2, to - from, faced(steel.base, steel.edge, 1));
}
