/** The line to the house: pipe cut open, on firm bedding, joined with an insert fitting and two clamps. */
import { inches } from '../../model/units.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, path, polyline } from '../shapes.ts';
import { drawBarb } from './insertFitting.ts';
import { block, stroke } from './outline.ts';
import type { Pen } from './pen.ts';
import type { Piece } from './piece.ts';
import type { Cut, Ramp } from '../theme.ts';
import { turned } from './turned.ts';

/**
 * A lying pipe is as thick as its widths are enlarged, if not quite: this share of it, downwards from its true top, which
 * is the depth that counts for frost.
 */
const THICK_SHARE = 0.64;

export interface LineOnPaper {
  readonly top: number;
  readonly bottom: number;
}

export function lineOnPaper(part: PlacedPart, pen: Pen): LineOnPaper {
  const top = pen.y(part.top);
  return {
    top,
    bottom: top + Math.max((part.bottom - part.top) * pen.down, (part.bottom - part.top) * pen.across * THICK_SHARE),
  };
}

export interface BuriedLinePlace {
  /** Where the fitting is screwed in [px]. */
  readonly from: number;
  readonly to: number;
  readonly wall: Cut;
  readonly fitting: Ramp | null;
  readonly clamps: number;
  /** Where the bedding begins, outside the grout [px]; null above the ground. */
  readonly beddingFrom: number | null;
  /** Inside diameter as a share of the outside one. */
  readonly shareOfBore: number;
}

export function drawBuriedLine(part: PlacedPart, pen: Pen, place: BuriedLinePlace): Shape {
  const { top, bottom } = lineOnPaper(part, pen);
  const middle = (top + bottom) / 2;
  const half = (bottom - top) / 2;
  const inside = Math.max(half * place.shareOfBore, 2);
  const { water, waterShine, bedding } = pen.tones;
  const unit = Math.max(3, inches(0.5) * pen.across);
  const shoulder = place.from + (place.fitting ? unit * 3 : 0);
  const tip = shoulder + unit * 4;
  const shapes: Shape[] = [];
  if (place.beddingFrom !== null)
    shapes.push(...drawBedding({ from: place.beddingFrom, to: place.to, middle, half }, bedding));
  shapes.push(
    path('wall', block(shoulder, top, place.to, bottom), { fill: place.wall.fill, stroke: place.wall.ink }),
    path('bore', block(shoulder, middle - inside, place.to, middle + inside), faced(water, place.wall.ink, 0.6)),
    path('glint', block(tip + 2, middle - inside * 0.6, place.to, middle - inside * 0.2), {
      fill: waterShine,
      'fill-opacity': 0.5,
    }),
  );
  if (place.fitting) {
    shapes.push(
      ...drawBarb({ from: shoulder, to: tip, middle, half: inside }, place.fitting, true),
      turned(
        'hexagon',
        {
          centre: middle,
          profile: [
            [place.from, half * 0.8],
            [place.from + unit * 0.8, half * 0.8],
            [place.from + unit * 0.8, half * 1.3],
            [place.from + unit * 2.3, half * 1.3],
            [place.from + unit * 2.3, half],
            [shoulder, half],
          ],
          lying: true,
        },
        place.fitting,
      ),
      ...drawClamps({ from: shoulder, to: tip, middle, half }, place.clamps, pen),
    );
  }
  return group(part.key, shapes);
}

/** Over the barb. */
function drawClamps({ from, to, middle, half }: Piece, count: number, pen: Pen): Shape[] {
  const { steel } = pen.tones;
  const pitch = (to - from) / (count + 0.6);
  const wide = Math.min(pitch * 0.6, Math.max(3.2, inches(0.5) * pen.across));
  const reach = half + 1.5;
  return Array.from({ length: count }, (_, i) => {
    const centre = from + pitch * (i + 0.8);
    const up = i % 2 === 0;
    const screwTop = up ? middle - reach - 4 : middle + reach - 1;
    return group(`clamp/line/${['first', 'second', 'third', 'fourth'][i] ?? 'further'}`, [
      path(
        'band',
        block(centre - wide / 2, middle - reach, centre + wide / 2, middle + reach) +
          block(centre - wide * 0.75, screwTop, centre + wide * 0.75, screwTop + 5),
        {
          fill: steel.base,
          stroke: steel.edge,
        },
      ),
      path('shine', block(centre - wide * 0.3, middle - reach * 0.6, centre + wide * 0.3, middle - reach * 0.15), {
        fill: steel.shine,
      }),
    ]);
  });
}

/** Firm, even bedding under and round the line. */
function drawBedding({ from, to, middle, half }: Piece, { fill, ink }: Cut): Shape[] {
  const [top, bottom] = [middle - half, middle + half];
  const grains =
    stroke(from + 5, bottom + 3.4, to, bottom + 3.4) +
    stroke(from + 2, bottom + 6.6, to, bottom + 6.6) +
    stroke(from + 4, top - 3.4, to, top - 3.4);
  return [
    path('bedding', block(from, top - 6, to, bottom + 10), { fill }),
    path('beddingGrains', grains, { stroke: ink, 'stroke-dasharray': '1.3 6' }),
  ];
}

/** Middle and ends of a lying part for hits and labels. */
export const lineMiddle = (part: PlacedPart, pen: Pen): number => {
  const { top, bottom } = lineOnPaper(part, pen);
  return (top + bottom) / 2;
};

const CLOSED_THICK_PX = 5;
/** Of its way to the house, where the line is broken, clear of the signs beside the hole. */
const BREAK_SHARE = 0.62;
/** A shorter line has no room for a break [px]. */
const BREAK_FROM = 70;

export interface ClosedLine {
  readonly from: number;
  readonly to: number;
  readonly ramp: Ramp;
  /** What shows where it is broken. */
  readonly paper: string;
}

/** From afar: round and closed. Across the ground it is not to scale, so it is broken once. */
export function closedLine(part: PlacedPart, pen: Pen, { from, to, ramp, paper }: ClosedLine): Shape {
  const y = pen.y((part.top + part.bottom) / 2);
  const thick = Math.max(CLOSED_THICK_PX, 2 * part.radius * pen.across);
  const d = stroke(from, y, to, y);
  const shapes = [
    path('wall', d, inked(ramp.edge, thick)),
    path('body', d, inked(ramp.base, Math.max(1, thick - 2.2))),
    path('shine', d, inked(ramp.light, Math.max(0.8, thick * 0.24))),
  ];
  if (to - from > BREAK_FROM) {
    const x = from + (to - from) * BREAK_SHARE;
    const gap = thick / 2 + 3;
    const side = (at: number): string =>
      polyline([
        [at - 3, y + gap],
        [at - 1, y + 1],
        [at + 1, y - 1],
        [at + 3, y - gap],
      ]);
    shapes.push(path('break', side(x) + side(x + 5), faced('none', paper, 2.4)));
  }
  return group(part.key, shapes);
}
