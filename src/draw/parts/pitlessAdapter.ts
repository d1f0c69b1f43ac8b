/**
 * The pitless adapter in section: the body fixed through the casing wall with a gasket on either side and a nut outside,
 * and the sliding half that hangs in it, sealed by a ring, with its lift thread pointing up.
 */
import { inches } from '../../model/units.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { group, path, rect } from '../shapes.ts';
import { block, straight, stroke } from './outline.ts';
import { pxText } from '../tenths.ts';
import { DASH, onPaper } from './closed.ts';
import type { Pen } from './pen.ts';

export interface PitlessPlace {
  /** Middle of the drop pipe under it. */
  readonly offset: Metres;
  readonly pipeRadius: Metres;
  readonly pipeBore: Metres;
  readonly casingInsideRadius: Metres;
  readonly casingOutsideRadius: Metres;
  /** Outlet on paper: top at its true depth. */
  readonly outletTop: number;
  readonly outletBottom: number;
}

/** Under this height the parts of an adapter run into one another: it is drawn this tall, upwards from its true foot. */
const LEAST_BODY_PX = 22;
/** Thickness of the outlet that the sizes below are for; they grow with it. */
const OUTLET_PX = 11;

/** What the drawing of an adapter is hung on, in pixels. */
function measures(part: PlacedPart, pen: Pen, place: PitlessPlace) {
  const { outletTop, outletBottom } = place;
  const middle = (outletTop + outletBottom) / 2;
  const bottom = Math.max(pen.y(part.bottom), outletBottom + 3);
  const wallIn = pen.x(place.casingInsideRadius);
  const wallOut = Math.max(pen.x(place.casingOutsideRadius), wallIn + 3);
  const gasket = Math.max(2.4, inches(0.16) * pen.across);
  const seat = wallIn - gasket - Math.max(6, inches(0.55) * pen.across);
  const centre = pen.x(place.offset);
  const half = Math.max(place.pipeRadius * 1.22 * pen.across, 5);
  const bore = place.pipeBore * pen.across * 0.82;
  // The upper end is a symbol's where the true one is too flat to read; the foot and the outlet are true.
  const top = Math.min(pen.y(part.top), bottom - Math.max(LEAST_BODY_PX, half * 2));
  const grow = Math.max(1, (outletBottom - outletTop) / OUTLET_PX);
  const thread = Math.max(8 * grow, Math.min(14, inches(1.6) * pen.down));
  return {
    outletTop,
    outletBottom,
    middle,
    top,
    bottom,
    wallIn,
    wallOut,
    gasket,
    seat,
    centre,
    half,
    bore,
    thread,
    grow,
  };
}
type Measures = ReturnType<typeof measures>;

/** Right rim of the threaded end outside, where the fitting of the line is screwed in [px]. */
export function outletEnd(part: PlacedPart, pen: Pen, place: PitlessPlace): number {
  const { wallOut, gasket } = measures(part, pen, place);
  return wallOut + gasket + nutWidth(pen) + Math.max(4, inches(0.35) * pen.across);
}
const nutWidth = (pen: Pen): number => Math.max(5, inches(0.5) * pen.across);

export function drawPitlessAdapter(part: PlacedPart, pen: Pen, place: PitlessPlace): Shape {
  const m = measures(part, pen, place);
  return group(part.key, [
    ...drawBody(m, pen, outletEnd(part, pen, place)),
    ...drawSpool(m, pen),
    ...drawSeals(m, pen),
  ]);
}

/** Fixed half: saddle inside, neck through the wall, nut outside. */
function drawBody(m: Measures, pen: Pen, end: number): Shape[] {
  const { brass } = pen.tones;
  const skin = Math.max(2.5, (m.outletBottom - m.outletTop) * 0.28);
  const neckTop = m.outletTop - skin * 0.4;
  const neckBottom = m.outletBottom + skin * 0.4;
  const saddleLeft = m.seat + (m.wallIn - m.seat) * 0.42;
  const saddle = straight([
    [m.wallIn - m.gasket, m.middle - 15 * m.grow],
    [m.wallIn - m.gasket, m.middle + 15 * m.grow],
    [saddleLeft, m.middle + 12 * m.grow],
    [saddleLeft, m.middle - 12 * m.grow],
  ]);
  const nutLeft = m.wallOut + m.gasket;
  const nutRight = nutLeft + nutWidth(pen);
  const edge = { stroke: brass.edge, 'stroke-width': 1.1 };
  return [
    path('body', saddle + block(saddleLeft, neckTop, end, neckBottom), { fill: brass.shade, ...edge }),
    path('bodyLight', block(nutRight, neckTop + 1.5, end - 1, neckTop + 3.5), { fill: brass.light }),
    path('nut', block(nutLeft, m.middle - 13 * m.grow, nutRight, m.middle + 13 * m.grow), {
      fill: brass.base,
      ...edge,
    }),
    path('nutFaces', block(nutLeft, m.middle - 7 * m.grow, nutRight, m.middle - 2 * m.grow), { fill: brass.shine }),
    path(
      'nutEdges',
      stroke(nutLeft, m.middle - 7 * m.grow, nutRight, m.middle - 7 * m.grow) +
        stroke(nutLeft, m.middle + 6 * m.grow, nutRight, m.middle + 6 * m.grow),
      { stroke: brass.edge, 'stroke-width': 0.8 },
    ),
    path(
      'outletThread',
      [0.3, 0.6]
        .map((s) => stroke(nutRight + (end - nutRight) * s, neckTop, nutRight + (end - nutRight) * s, neckBottom))
        .join(''),
      { stroke: brass.edge, 'stroke-width': 0.7 },
    ),
  ];
}

/** Sliding half: cut open to its elbow, lift thread above. */
function drawSpool(m: Measures, pen: Pen): Shape[] {
  const { brassCut, brass, water } = pen.tones;
  const left = m.centre - m.half;
  const right = m.seat;
  const shoulder = m.top + (m.middle - m.top) * 0.34;
  const bodyRight = Math.min(m.centre + m.half, right - 2);
  const outline = straight([
    [left + m.half * 0.36, m.top],
    [bodyRight - m.half * 0.36, m.top],
    [bodyRight, shoulder],
    [right, m.middle - 12 * m.grow],
    [right, Math.min(m.middle + 12 * m.grow, m.bottom)],
    [Math.max(bodyRight, m.centre + m.half), m.bottom],
    [left, m.bottom],
    [left, shoulder],
  ]);
  const way = Math.min(m.bore, m.half - 3);
  const waterTop = Math.max(m.outletTop + 1, m.middle - way);
  const waterBottom = Math.min(m.outletBottom - 1, m.middle + way);
  const elbow = `M${pxText(m.centre - way)} ${pxText(m.bottom)}V${pxText(waterTop + way * 0.6)}Q${pxText(m.centre - way)} ${pxText(waterTop)} ${pxText(m.centre - way * 0.2)} ${pxText(waterTop)}H${pxText(m.wallOut + m.gasket)}V${pxText(waterBottom)}H${pxText(m.centre + way)}V${pxText(m.bottom)}z`;
  const threadHalf = m.half * 0.56;
  const threadTop = m.top - m.thread;
  const turns = Math.max(2, Math.floor(m.thread / 3.4));
  const threads = Array.from({ length: turns }, (_, i) => {
    const y = threadTop + ((i + 0.6) * m.thread) / turns;
    return stroke(m.centre - threadHalf, y + 0.8, m.centre + threadHalf, y - 0.8);
  }).join('');
  return [
    path('spool', outline, { fill: brassCut.fill, stroke: brassCut.ink }),
    path('spoolHatch', hatchIn(left, m.centre - way, shoulder + 2, m.bottom), {
      stroke: brassCut.ink,
      'stroke-width': 0.7,
      fill: 'none',
      'stroke-opacity': 0.8,
    }),
    path('waterway', elbow, { fill: water, stroke: brassCut.ink, 'stroke-width': 0.8 }),
    path('lift', block(m.centre - threadHalf, threadTop, m.centre + threadHalf, m.top), {
      fill: brass.light,
      stroke: brass.edge,
    }),
    path('liftBore', block(m.centre - threadHalf * 0.45, threadTop, m.centre + threadHalf * 0.45, m.top - 1), {
      fill: brass.shade,
    }),
    path('liftThread', threads, { stroke: brass.edge, 'stroke-width': 0.8 }),
  ];
}

/** Rubber: the ring between the halves, and the gaskets in and out. */
function drawSeals(m: Measures, pen: Pen): Shape[] {
  const { rubber } = pen.tones;
  const tall = Math.max(3, (m.outletBottom - m.outletTop) * 0.3);
  const ringRight = m.seat + (m.wallIn - m.seat) * 0.42;
  const ring =
    block(m.seat - 1, m.outletTop - tall, ringRight, m.outletTop) +
    block(m.seat - 1, m.outletBottom, ringRight, m.outletBottom + tall);
  const gaskets = [m.wallIn - m.gasket, m.wallOut]
    .map(
      (x) =>
        block(x, m.middle - 15 * m.grow, x + m.gasket, m.outletTop) +
        block(x, m.outletBottom, x + m.gasket, m.middle + 15 * m.grow),
    )
    .join('');
  return [path('seals', ring + gaskets, { fill: rubber.base, stroke: rubber.edge, 'stroke-width': 0.6 })];
}

function hatchIn(left: number, right: number, top: number, bottom: number): string {
  let d = '';
  const wide = right - left;
  for (let y = top + 4; y < bottom + wide; y += 4.5) {
    const from = Math.min(y, bottom);
    const to = Math.max(y - wide, top);
    if (from > to) d += stroke(left + (y - from), from, left + (y - to), to);
  }
  return d;
}

/** From afar, how far its sliding half reaches into the casing [px]. */
export const CLOSED_SPOOL_PX = 11;
const CLOSED_BODY_PX = 7;

/** From afar: body outside, sliding half inside; the pipe bends down from it. */
export function closedAdapter(part: PlacedPart, casingInsideRadius: Metres, pen: Pen): Shape {
  const { brass } = pen.tones;
  const wall = pen.x(casingInsideRadius);
  const { middle, tall } = onPaper(part, pen);
  const edge = { stroke: brass.edge, 'stroke-width': 1 };
  return group(part.key, [
    rect('spool', wall - CLOSED_SPOOL_PX, middle - tall / 2, CLOSED_SPOOL_PX, tall, {
      rx: 2,
      fill: brass.base,
      ...edge,
      ...(tall > (part.bottom - part.top) * pen.down ? DASH : {}),
    }),
    rect('body', wall, middle - tall * 0.36, CLOSED_BODY_PX, tall * 0.72, { rx: 1.5, fill: brass.shadow, ...edge }),
  ]);
}
