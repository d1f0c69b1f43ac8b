/** A sample tap on its tee in the line: stem and handle above, the smooth spout turned down. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path } from '../shapes.ts';
import { pxText } from '../tenths.ts';
import { block } from './outline.ts';
import type { Pen } from './pen.ts';
import type { Piece } from './piece.ts';
import { turned } from './turned.ts';

/** @param line  the stretch of it that the tap's tee takes */
export function drawTap(part: PlacedPart, pen: Pen, line: Piece): Shape {
  const { from, to, middle, half } = line;
  const { steel, brass } = pen.tones;
  const x = (from + to) / 2;
  const top = pen.y(part.top);
  const wide = (to - from) / 2;
  const run = middle - half;
  const tall = run - top;
  const stem = Math.min(wide * 0.5, tall * 0.34);
  const spout = top + tall * 0.56;
  const thick = Math.max(2.4, Math.min(tall * 0.22, stem * 1.1));
  const nose = x + stem + thick * 2.2;
  const end = spout + Math.min(tall * 0.36, thick * 1.6);
  const handle = Math.max(2.4, Math.min(tall * 0.13, stem * 0.6));
  return group(part.key, [
    turned(
      'saddle',
      {
        centre: middle,
        profile: [
          [from, half * 1.25],
          [to, half * 1.25],
        ],
        lying: true,
      },
      steel,
    ),
    path(
      'spout',
      `M${pxText(x)} ${pxText(spout - thick / 2)}H${pxText(nose - thick)}Q${pxText(nose)} ${pxText(spout - thick / 2)} ${pxText(nose)} ${pxText(spout + thick / 2)}V${pxText(end)}h${pxText(-thick)}V${pxText(spout + thick / 2)}H${pxText(x)}z`,
      faced(brass.light, brass.edge, 0.9),
    ),
    path('stem', block(x - stem, top + tall * 0.36, x + stem, run), faced(brass.base, brass.edge, 0.9)),
    path(
      'handle',
      block(x - stem * 0.55, top + handle, x + stem * 0.55, top + tall * 0.36) +
        block(x - stem * 1.7, top, x + stem * 1.7, top + handle),
      faced(brass.shade, brass.edge, 0.9),
    ),
  ]);
}
