/** The drop cable: down the far wall from its spare loop, then along the pipe to the pump, under the guard strip, past the intake, to the motor's head. */
import { inches } from '../../model/units.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path, roundLine } from '../shapes.ts';
import { Pen as Line } from '../hatch/pen.ts';
import { curveDown, tenth } from './outline.ts';
import { pxText } from '../tenths.ts';
import type { Strip } from './cableGuardStrip.ts';
import type { Pen } from './pen.ts';
import { runPoints, type Runs } from './runs.ts';
import type { PumpStick } from './pumpStick.ts';
import type { StringAxis } from './stringAxis.ts';

export interface CablePlace {
  /** Where the cable's plumb run begins, under its loop. */
  readonly top: Metres;
  /** Discharge of the pump, where it leaves the pipe. */
  readonly discharge: Metres;
  /** Its last run lies under it. */
  readonly strip: Strip;
  readonly bendsTo: Metres;
  /** Stretches hidden by a splice's own drawing. */
  readonly splices: readonly PlacedPart[];
}

const PIECES = 3;

export function drawCable(part: PlacedPart, pen: Pen, axis: StringAxis, place: CablePlace): Shape {
  const depthAt = (y: number): Metres => pen.top + (y - pen.y(pen.top)) / pen.down;
  const x = (y: number): number => pen.x(axis.cable(depthAt(y)));
  const last = Math.min(place.discharge - inches(8), pen.bottom + 0.2);
  const first = Math.max(place.top, pen.top - 0.2);
  let d = '';
  for (const { from, to } of gaps(first, last, place.splices)) d += run(x, pen, { from, to, bendsTo: place.bendsTo });
  const leaves = place.discharge - inches(8);
  if (leaves < pen.bottom) d += toStrip(pen, x(pen.y(leaves)), leaves, place);
  const wide = Math.max(2.6, part.radius * 2 * pen.across);
  return group(part.key, [
    path('jacket', d, faced('none', pen.tones.cable, tenth(wide))),
    path('glint', d, faced('none', pen.tones.cableShine, tenth(wide * 0.26))),
  ]);
}

/**
 * The flat lead, out of the strip's lower end and into the motor's head.
 *
 * @param bottom  depth of the strip's lower end [m]
 * @param plug    where it enters
 */
export function drawLead(
  pen: Pen,
  { middle, width }: Strip,
  bottom: Metres,
  plug: { readonly offset: Metres; readonly depth: Metres },
): Shape {
  const y = pen.y(plug.depth);
  const d = `M${pxText(middle)} ${pxText(pen.y(bottom) - 2)}Q${pxText(middle)} ${pxText(y)} ${pxText(pen.x(plug.offset))} ${pxText(y)}`;
  return path('lead', d, faced('none', pen.tones.cable, tenth(Math.max(2, width * 0.5))));
}

interface Run {
  readonly from: Metres;
  readonly to: Metres;
}

/** The run between the splices. */
function gaps(from: Metres, to: Metres, splices: readonly PlacedPart[]): Run[] {
  const runs: Run[] = [];
  let at = from;
  for (const { top, bottom } of [...splices].sort((a, b) => a.top - b.top)) {
    if (bottom <= at || top >= to) continue;
    if (top > at) runs.push({ from: at, to: top });
    at = bottom;
  }
  if (to > at) runs.push({ from: at, to });
  return runs;
}

function run(x: (y: number) => number, pen: Pen, { from, to, bendsTo }: Run & { readonly bendsTo: Metres }): string {
  const bend = Math.min(to, Math.max(from, bendsTo));
  const curve =
    bend > from ? curveDown(x, pen.y(from), pen.y(bend), PIECES) : `M${pxText(x(pen.y(from)))} ${pxText(pen.y(from))}`;
  return to > bend ? `${curve}V${pxText(pen.y(to))}` : curve;
}

/** Over to the strip, and down under its upper end. */
function toStrip(pen: Pen, x: number, leaves: Metres, { strip, discharge }: CablePlace): string {
  const side = strip.middle;
  const top = pen.y(leaves);
  const shoulder = pen.y(discharge);
  const middle = (top + shoulder) / 2;
  return `M${pxText(x)} ${pxText(top)}C${pxText(x)} ${pxText(middle)} ${pxText(side)} ${pxText(middle)} ${pxText(side)} ${pxText(shoulder)}v4`;
}

const CLOSED_PX = 2;

/** From afar: down to the pump, and where this is drawn slimmer than the cable hangs, along it to the motor's head. */
export function closedCable(part: PlacedPart, pen: Pen, runs: Runs, pump: PumpStick): Shape {
  const points = runPoints((depth) => runs.cable(depth), part, runs.centredFrom, pen);
  const last = points[points.length - 1];
  if (part.bottom <= pen.bottom && last !== undefined && last[1] <= pump.top + 1) {
    const side = pump.left - 1;
    if (last[0] < side) {
      points[points.length - 1] = [last[0], last[1] - (side - last[0])];
      points.push([side, pump.top + 2], [side, pump.intake]);
    } else points.push([last[0], pump.top + 1]);
  }
  return path(part.key, new Line().through(points).path, roundLine(pen.tones.cable, CLOSED_PX));
}
