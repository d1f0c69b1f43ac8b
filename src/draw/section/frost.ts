/** Frozen ground: a pale band from the surface and a dash-dot line with six-armed stars at its foot. */
import type { Metres, Ratio } from '../../model/si.ts';
import { Pen } from '../hatch/pen.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, line, path, rect } from '../shapes.ts';
import { LINE } from '../theme.ts';
import { within, type SectionFrame } from './frame.ts';

/**
 * Drawn under the hole, so that the tint never lies over the grout.
 *
 * @param share   how much of the depth the winter has frozen: the band reaches as far, and the line stays where it is
 * @param thawed  how much of it has thawed again from the surface down: the band begins there
 */
export function drawFrost(depth: Metres | null, frame: SectionFrame, share: Ratio = 1, thawed: Ratio = 0): Shape[] {
  if (depth === null || depth <= 0) return [];
  const { left, right, ink } = frame;
  const top = thawed > 0 ? within(frame, frame.y(depth * thawed)) : frame.y(0);
  const foot = within(frame, frame.y(depth));
  const front = within(frame, frame.y(depth * share));
  const band = rect('frost/band', left, top, right - left, Math.max(0, front - top), {
    fill: ink.frostFill,
    'fill-opacity': 0.82,
  });
  const edge = line('frost/line', left, foot, right, foot, inked(ink.frost, 1.6, '9 3 1.6 3'));
  const moving = inked(ink.frost, LINE.narrow);
  return [
    group('frost', [
      band,
      ...(share > 0 && share < 1 ? [line('frost/front', left, front, right, front, moving)] : []),
      ...(thawed > 0 && thawed < 1 ? [line('frost/thaw', left, top, right, top, moving)] : []),
      stars(frame, foot),
      edge,
    ]),
  ];
}

/** A star every 64 px along the line, clear of the hole. */
function stars({ left, right, axis, holeHalf, ink }: SectionFrame, y: number): Shape {
  const places: number[] = [];
  for (let x = left + 36; x < right - 8; x += 64) if (Math.abs(x - axis) > holeHalf + 10) places.push(x);
  const pen = new Pen();
  for (const x of places) pen.stamp(x - 4, y, 'h8m-6-3.5l4 7m0-7l-4 7', 2, 3.5);
  return path('frost/stars', pen.path, faced('none', ink.frost, LINE.narrow));
}
