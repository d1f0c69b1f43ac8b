/** A pressure switch on its stem: a cover with its screw; or the sensor of a drive, which is a knob. */
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, path } from '../shapes.ts';
import { roundBlock, stroke } from './outline.ts';
import type { Tones } from '../theme.ts';

/** Of its height, what is stem. */
const STEM = 0.36;

export function drawPressureSwitch({ left, top, right, bottom }: Box, tones: Tones): Shape {
  const x = (left + right) / 2;
  const wide = right - left;
  const foot = bottom - (bottom - top) * STEM;
  return group('switch', [
    path('stem', stroke(x, foot, x, bottom), inked(tones.brass.edge, Math.max(1.1, wide * 0.12))),
    path(
      'box',
      roundBlock(left, top, right, foot, Math.min(3, wide * 0.16)),
      faced(tones.conduit.light, tones.ink, 1.1),
    ),
    path(
      'screw',
      stroke(x - wide * 0.16, foot - wide * 0.62, x + wide * 0.16, foot - wide * 0.3),
      inked(tones.ink, 1.1),
    ),
  ]);
}

export function drawSensor({ left, top, right, bottom }: Box, tones: Tones): Shape {
  const x = (left + right) / 2;
  const half = (right - left) / 2;
  return group('switch', [
    path('stem', stroke(x, top, x, bottom), inked(tones.brass.edge, Math.max(1.1, half * 0.6))),
    path('knob', roundBlock(left, top, right, bottom - half * 1.6, half * 0.4), {
      fill: tones.cast.base,
      stroke: tones.ink,
    }),
  ]);
}
