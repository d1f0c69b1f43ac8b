/** What lies outside the casing: air, turf, layers with their line work, frost. */
import type { Metres, Ratio } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import { lookOf } from '../hatch/materials.ts';
import type { Box } from '../hatch/clip.ts';
import { hatch } from '../hatch/patterns.ts';
import type { Shape } from '../scene.ts';
import { spreadFor, type Closeness } from '../section/ground.ts';
import { group, inked, path, rect } from '../shapes.ts';
import { LINE, type Ink } from '../theme.ts';
import { stroke, tenth } from '../parts/outline.ts';
import { pxText } from '../tenths.ts';
import type { Pen } from '../parts/pen.ts';
import { drawTurf, NEAR } from '../parts/turf.ts';

const CLOSE: Closeness = { area: 52_000, letters: 1_600 };

export interface GroundPlace {
  /** The window, right of the rail. */
  readonly box: Box;
  /** Left and right edge of what is drilled [px]: no line work there. */
  readonly holeLeft: number;
  readonly holeRight: number;
  /** Where labels stand: line work ends left of it, so that words are read on a calm ground [px]. */
  readonly labelsFrom: number;
  /** Line work in full ink: there are no greys to fade it to. */
  readonly bold: boolean;
  /** How much of the frost depth the winter has frozen. */
  readonly frostShare: Ratio;
  /** How much of it has thawed again from the surface down. */
  readonly thawShare: Ratio;
}

interface Layer {
  readonly material: string | null;
  readonly top: Metres;
  readonly bottom: Metres;
}

/** Layers without gaps down to the window's foot; what nobody described is drawn as unknown. */
function layersOf({ facts }: Solution, pen: Pen): Layer[] {
  const layers: Layer[] = facts.well.layers.map(({ material, top, bottom }) => ({ material, top, bottom }));
  const last = layers[layers.length - 1];
  const end = last?.bottom ?? 0;
  if (end < pen.bottom) {
    // A report ends with the hole: what the last layer was made of goes on below it, as in the section.
    const goesOn = last !== undefined && end >= facts.well.depth - 0.01;
    if (goesOn) layers[layers.length - 1] = { ...last, bottom: pen.bottom + 1 };
    else layers.push({ material: null, top: Math.max(0, end), bottom: pen.bottom + 1 });
  }
  return layers.filter(({ top, bottom }) => bottom > pen.top && top < pen.bottom);
}

export function drawGround(solution: Solution, pen: Pen, ink: Ink, place: GroundPlace): Shape[] {
  const { box } = place;
  const shapes: Shape[] = [];
  if (pen.top < 0)
    shapes.push(rect('air', box.left, box.top, box.right - box.left, pen.y(0) - box.top, { fill: pen.tones.air }));
  const names = new Map<string, number>();
  for (const layer of layersOf(solution, pen)) {
    const top = Math.max(box.top, pen.y(Math.max(0, layer.top)));
    const bottom = Math.min(box.bottom, pen.y(layer.bottom));
    if (bottom <= top) continue;
    const { ground, pattern } = lookOf(layer.material);
    const { fill, hatch: lines } = ink.ground[ground];
    const foot = pen.y(Math.max(solution.facts.well.bottom, solution.facts.well.depth));
    const { d, dashes, solid } = hatch(
      pattern,
      [
        { left: box.left, right: place.holeLeft, top, bottom },
        { left: place.holeRight, right: place.labelsFrom, top, bottom },
        // Under the hole the ground is whole.
        ...(foot < bottom
          ? [
              {
                left: place.holeLeft,
                right: Math.min(place.holeRight, place.labelsFrom),
                top: Math.max(top, foot),
                bottom,
              },
            ]
          : []),
      ],
      spreadFor(box, pattern, CLOSE),
    );
    const work = {
      fill: 'none',
      stroke: lines,
      'stroke-width': LINE.hatch,
      ...(place.bold ? {} : { 'stroke-opacity': 0.5 }),
    };
    // The same material may come twice down a hole.
    const name = layer.material ?? 'unknown';
    const times = (names.get(name) ?? 0) + 1;
    names.set(name, times);
    shapes.push(
      group(times === 1 ? `layer/${name}` : `layer/${name}/${times}`, [
        rect('fill', box.left, top, box.right - box.left, bottom - top, { fill }),
        path('lines', d, dashes === undefined ? work : { ...work, 'stroke-dasharray': dashes }),
        ...(solid === undefined || solid === '' ? [] : [path('solid', solid, work)]),
        ...(layer.top > pen.top && layer.top > 0
          ? [
              path('contact', stroke(box.left, top, box.right, top), {
                stroke: lines,
                'stroke-width': 1,
                ...(layer.material === null ? { 'stroke-dasharray': '4 3' } : {}),
              }),
            ]
          : []),
      ]),
    );
  }
  const frost = solution.values.frostDepth;
  if (frost !== null && frost > 0 && pen.top < frost) shapes.push(drawFrost(pen, ink, place, frost));
  if (pen.top < 0 && pen.bottom > 0) shapes.push(...drawSurface(solution, pen, ink, place));
  return shapes;
}

/** A light band from the ground down, six-arm ticks, dash-dot line. */
function drawFrost(pen: Pen, ink: Ink, place: GroundPlace, frost: Metres): Shape {
  const { box, labelsFrom, holeLeft, holeRight, frostShare, thawShare } = place;
  const top = Math.max(box.top, pen.y(0));
  const line = pen.y(frost);
  const inside = line < box.bottom;
  const front = pen.y(frost * frostShare);
  const thaw = Math.min(Math.max(top, pen.y(frost * thawShare)), box.bottom);
  let ticks = '';
  const row = inside ? line - 11 : box.bottom - 14;
  for (let x = box.left + 13, i = 0; x < labelsFrom - 8; x += 26, i++) {
    if ((x < holeLeft - 7 || x > holeRight + 7) && row > top + 8) ticks += sixArms(x, row - (i % 2) * 9, 4);
  }
  return group('frost', [
    rect('band', box.left, thaw, box.right - box.left, Math.max(0, Math.min(front, box.bottom) - thaw), {
      fill: ink.frostFill,
      'fill-opacity': 0.72,
    }),
    ...(frostShare > 0 && frostShare < 1 && front > top && front < box.bottom
      ? [path('front', stroke(box.left, front, box.right, front), inked(ink.frost, 1.2))]
      : []),
    ...(thawShare > 0 && thawShare < 1 && thaw > top && thaw < box.bottom
      ? [path('thaw', stroke(box.left, thaw, box.right, thaw), inked(ink.frost, 1.2))]
      : []),
    path('ticks', ticks, { stroke: ink.frost, 'stroke-width': 1, fill: 'none' }),
    ...(inside ? [path('line', stroke(box.left, line, box.right, line), inked(ink.frost, 1.8, '10 3 2 3'))] : []),
  ]);
}

function sixArms(x: number, y: number, r: number): string {
  const a = tenth(r * 0.5);
  const b = tenth(r * 0.87);
  return `M${pxText(x - r)} ${pxText(y)}h${2 * r}m${pxText(a - 2 * r)}-${b}l${2 * a} ${2 * b}m0-${2 * b}l-${2 * a} ${2 * b}`;
}

/** The ground line, and what grows and lies on it. */
function drawSurface({ facts, values }: Solution, pen: Pen, ink: Ink, place: GroundPlace): Shape[] {
  const { box, holeLeft, holeRight } = place;
  const y = pen.y(0);
  const casing = (facts.well.casings[0]?.outsideDiameter ?? 0) / 2;
  const grouted = facts.well.intake.kind !== 'driven point';
  const snows = place.frostShare > 0 && place.thawShare === 0 && (values.frostDepth ?? 0) > 0;
  return [
    path('surface', stroke(box.left, y, box.right, y), inked(ink.grass, LINE.ground)),
    drawTurf(ink, NEAR, {
      grown: [
        [box.left, grouted ? holeLeft : pen.x(-casing)],
        [grouted ? holeRight : pen.x(casing), place.labelsFrom],
      ],
      snowed: snows
        ? [
            [box.left, pen.x(-casing)],
            [pen.x(casing), box.right],
          ]
        : [],
      y,
    }),
  ];
}
