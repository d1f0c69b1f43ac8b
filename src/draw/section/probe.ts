/** The probe at the section's scale: its bare end at the level it watches, beside pipe or pump, and its wires up to the top. */
import type { Metres } from '../../model/si.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { StringAxis } from '../parts/stringAxis.ts';
import type { Shape } from '../scene.ts';
import { digits, group, path, polyline, rect, roundLine, tenth, type Point } from '../shapes.ts';
import type { HitPlace } from '../view.ts';
import { isSeen, within, type SectionFrame } from './frame.ts';

/** No smaller, and nobody could see it [px]. */
const LEAST_TALL = 9;
const LEAST_HALF = 2.2;
const WIRE_PX = 1.2;
/** Over this height the wires come off the pipe to the probe's head [px]. */
const LEAVES = 10;

export interface Beside {
  /** Half of what the pipe takes up [px]. */
  readonly pipeHalf: number;
  /** Half of what the pump takes up, and where its symbol begins [px]. */
  readonly pumpHalf: number;
  readonly pumpTop: number;
  readonly pumpBottom: number;
}

export function drawProbe(
  probe: PlacedPart,
  top: Metres,
  axis: StringAxis,
  beside: Beside,
  frame: SectionFrame,
): { readonly shapes: readonly Shape[]; readonly hit: HitPlace | null } {
  const { ink } = frame;
  const half = Math.max(LEAST_HALF, probe.radius * frame.kx);
  const foot = frame.y(probe.bottom);
  const tall = Math.max(LEAST_TALL, (probe.bottom - probe.top) * frame.k);
  const head = foot - tall;
  const isByPump = foot > beside.pumpTop && head < beside.pumpBottom;
  const x = frame.x(axis.pipe(probe.bottom)) + (isByPump ? beside.pumpHalf : beside.pipeHalf) + half + 0.8;
  const wireAt = (depth: Metres): number =>
    Math.max(frame.x(axis.wire(depth)), depth > axis.centredFrom ? frame.x(axis.pipe(depth)) + beside.pipeHalf : 0);
  const from = frame.cut.top ? Math.max(top, frame.topDepth) : top;
  const leaves = Math.max(from, frame.depthAt(head - LEAVES));
  const points: Point[] = [];
  const drift = Math.min(leaves, Math.max(from, axis.centredFrom));
  if (leaves > from) {
    const steps = Math.max(2, Math.min(20, Math.round(((drift - from) * frame.k) / 4)));
    if (drift > from)
      for (let i = 0; i <= steps; i++) {
        const depth = from + ((drift - from) * i) / steps;
        points.push([wireAt(depth), frame.y(depth)]);
      }
    points.push([wireAt(leaves + 1e-9), within(frame, frame.y(leaves))]);
  }
  points.push([x, within(frame, head + 1)]);
  const shapes: Shape[] = [path('probe/wires', polyline(points), roundLine(ink.tape, WIRE_PX))];
  if (!isSeen(frame, probe.bottom)) return { shapes, hit: null };
  const tip = tall * 0.3;
  shapes.push(
    group('probe', [
      rect('body', x - half, head, half * 2, tall - tip, {
        rx: 1.2,
        fill: ink.rubber.mid,
        stroke: ink.rubber.edge,
        'stroke-width': 0.8,
      }),
      rect('tip', x - half * 0.6, foot - tip, half * 1.2, tip, {
        fill: ink.brass.mid,
        stroke: ink.brass.edge,
        'stroke-width': 0.8,
      }),
      ...(isByPump
        ? []
        : [
            path(
              'strap',
              `M${digits(tenth(frame.x(axis.pipe(probe.top)) - beside.pipeHalf - 1))} ${digits(tenth(head + 3))}H${digits(tenth(x + half + 0.8))}`,
              { stroke: ink.tape, 'stroke-width': 1.6, fill: 'none' },
            ),
          ]),
    ]),
  );
  return {
    shapes,
    hit: { part: 'probe', kind: 'probe', x: x - half - 2, y: head, width: half * 2 + 4, height: tall, view: 'O' },
  };
}
