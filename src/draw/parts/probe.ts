/** The probe of a dry-run protection: a slim electrode strapped to the drop pipe, its bare end at the level it watches, its wires going up. */
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import { inches } from '../../model/units.ts';
import type { Shape } from '../scene.ts';
import { faced, group, inked, path, polyline, rect, roundLine, type Point } from '../shapes.ts';
import { pxText } from '../tenths.ts';
import { curveDown, stroke, tenth } from './outline.ts';
import type { Pen } from './pen.ts';
import type { PumpStick } from './pumpStick.ts';
import { runPoints, type Runs } from './runs.ts';
import type { StringAxis } from './stringAxis.ts';

export interface ProbePlace {
  /** Middle of its body: beside what it is strapped to. */
  readonly offset: Metres;
  /** Half-width of the pipe or pump that the straps go round; null where it hangs by its wires alone. */
  readonly strapped: { readonly middle: Metres; readonly radius: Metres; readonly at: readonly Metres[] } | null;
  /** Where the wires come from, under the well's top, and where they leave the pipe. */
  readonly top: Metres;
  readonly leaves: Metres;
}

/** The bare end, as a share of the body. */
const TIP = 0.24;
const LEAST_PX = 5;
const PIECES = 4;
/** Over this height they bend from the pipe to the probe. */
const BEND: Metres = inches(5);

/** Behind the pipe, which they cross near the top to go up beside the cable. */
export function drawProbeWires(part: PlacedPart, pen: Pen, axis: StringAxis, place: ProbePlace): Shape {
  const depthAt = (y: number): Metres => pen.top + (y - pen.y(pen.top)) / pen.down;
  const x = (y: number): number => pen.x(axis.wire(depthAt(y)));
  const { offset, top } = place;
  const from = Math.max(top, pen.top - 0.2);
  const head = part.top + (part.bottom - part.top) * 0.1;
  const leaves = Math.max(top, place.leaves);
  const to = Math.min(leaves, pen.bottom + 0.2);
  const bend = Math.min(to, Math.max(from, axis.centredFrom));
  let d = to > from ? curveDown(x, pen.y(from), pen.y(bend), PIECES) : '';
  if (to > bend) d += `V${pxText(pen.y(to))}`;
  if (leaves < pen.bottom) {
    const start = pen.y(leaves);
    const end = pen.y(Math.min(head, leaves + BEND));
    const middle = (start + end) / 2;
    d += `M${pxText(x(start))} ${pxText(start)}C${pxText(x(start))} ${pxText(middle)} ${pxText(pen.x(offset))} ${pxText(middle)} ${pxText(pen.x(offset))} ${pxText(end)}V${pxText(pen.y(head))}`;
  }
  return group(`${part.key}/wires`, [
    path('jacket', d, faced('none', pen.tones.tape, tenth(Math.max(1.8, WIRES * pen.across)))),
  ]);
}

/** Two small conductors side by side. Common practice, no source. */
const WIRES: Metres = 0.005;

export function drawProbe(part: PlacedPart, pen: Pen, { offset, strapped }: ProbePlace): Shape {
  const { rubber, brass, tape } = pen.tones;
  const x = pen.x(offset);
  const half = Math.max(LEAST_PX / 2, part.radius * pen.across);
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const tall = Math.max(8, bottom - top);
  const tip = tall * TIP;
  const shoulder = bottom - tip;
  const shapes: Shape[] = [
    rect('body', x - half, bottom - tall, half * 2, tall - tip, {
      rx: Math.min(half, 3),
      fill: rubber.base,
      stroke: rubber.edge,
      'stroke-width': 0.9,
    }),
    path(
      'glint',
      `M${pxText(x - half * 0.35)} ${pxText(bottom - tall + 3)}V${pxText(shoulder - 2)}`,
      inked(rubber.shine, 0.9),
    ),
    rect('tip', x - half * 0.55, shoulder, half * 1.1, tip, {
      rx: Math.min(half * 0.5, 2),
      fill: brass.base,
      stroke: brass.edge,
      'stroke-width': 0.9,
    }),
  ];
  if (strapped !== null) {
    const left = pen.x(strapped.middle - strapped.radius) - 1.4;
    const right = x + half + 1.2;
    shapes.push(
      ...strapped.at.map((depth, i) =>
        rect(`strap/${i + 1}`, left, pen.y(depth) - 1.4, right - left, 2.8, { rx: 1, fill: tape }),
      ),
    );
  }
  return group(part.key, shapes);
}

/** From afar: no smaller, and nobody could see it [px]. */
const CLOSED_TALL_PX = 9;
const CLOSED_HALF_PX = 2.2;
const CLOSED_WIRE_PX = 1.2;
/** Over this height the wires come off the pipe to the probe's head [px]. */
const CLOSED_BEND_PX = 10;

export interface ClosedProbe {
  readonly left: number;
  readonly right: number;
  readonly head: number;
  readonly foot: number;
  /** It hangs beside the pump, and nothing is strapped there. */
  readonly byPump: boolean;
  /** Where its wires come from. */
  readonly top: Metres;
}

interface ProbeBy extends Pick<ClosedProbe, 'top'> {
  readonly pump: PumpStick;
}

/** Its bare end at the level that it watches, beside pipe or pump. */
export function closedProbeOn(part: PlacedPart, pen: Pen, runs: Runs, { pump, top }: ProbeBy): ClosedProbe {
  const half = Math.max(CLOSED_HALF_PX, part.radius * pen.across);
  const foot = pen.y(part.bottom);
  const head = foot - Math.max(CLOSED_TALL_PX, (part.bottom - part.top) * pen.down);
  const byPump = foot > pump.top && head < pump.bottom;
  const left = runs.pipe(part.bottom) + (byPump ? pump.width / 2 : runs.pipeHalf) + 0.8;
  return { left, right: left + half * 2, head, foot, byPump, top };
}

export function closedProbeWires(
  part: PlacedPart,
  pen: Pen,
  runs: Runs,
  { left, right, head, top }: ClosedProbe,
): Shape {
  const leaves = Math.max(top, pen.top + (head - CLOSED_BEND_PX - pen.y(pen.top)) / pen.down);
  const points: Point[] = runPoints((depth) => runs.wire(depth), { top, bottom: leaves }, runs.centredFrom, pen);
  if (leaves <= pen.bottom) points.push([(left + right) / 2, head + 1]);
  return path(`${part.key}/wires`, polyline(points), roundLine(pen.tones.tape, CLOSED_WIRE_PX));
}

export function closedProbe(part: PlacedPart, pen: Pen, runs: Runs, place: ClosedProbe): Shape {
  const { rubber, brass, tape } = pen.tones;
  const { left, right, head, foot, byPump } = place;
  const tip = (foot - head) * 0.3;
  const inset = (right - left) * 0.2;
  return group(part.key, [
    rect('body', left, head, right - left, foot - head - tip, {
      rx: 1.2,
      fill: rubber.base,
      stroke: rubber.edge,
      'stroke-width': 0.8,
    }),
    rect('tip', left + inset, foot - tip, right - left - 2 * inset, tip, faced(brass.base, brass.edge, 0.8)),
    ...(byPump
      ? []
      : [
          path(
            'strap',
            stroke(runs.pipe(part.top) - runs.pipeHalf - 1, head + 3, right + 0.8, head + 3),
            inked(tape, 1.6),
          ),
        ]),
  ]);
}
